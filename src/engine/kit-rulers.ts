// The kit as solvers want it: every template that can be drawn, with its needle lines for a foot.

import { shapeOf } from '../model/kit/shape-of.ts';
import { footOnTheMachine } from '../model/kit/on-the-machine.ts';
import type { Kit } from '../model/plan.ts';
import type { TemplateShape } from '../model/kit/shape.ts';
import type { NeedleLines } from '../needle/needle-line.ts';
import { needleLines } from '../needle/needle-lines.ts';

export interface RulerInKit {
  readonly id: string;
  readonly ruler: { readonly shape: TemplateShape; readonly needle: NeedleLines };
}

/** The templates of a kit that are not hidden and have a good shape, or the one asked for, with the foot on the machine. */
export function rulersOf(kit: Kit, template?: string): readonly RulerInKit[] {
  const foot = footOnTheMachine(kit)?.foot;
  if (!foot) return [];
  return Object.entries(kit.templates).flatMap(([id, made]) => {
    if (template === undefined ? made.hidden === true : id !== template) return [];
    const shape = shapeOf(made);
    return shape.ok ? [{ id, ruler: { shape: shape.value, needle: needleLines(shape.value, foot.diameter) } }] : [];
  });
}
