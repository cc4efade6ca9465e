// How a sheet's passes are multiplied: read in words, chosen, changed.

import type { Draft } from 'immer';
import { segmentsOf } from '../../geometry/path.ts';
import type { Frieze, RepeatStep, Side } from '../../model/plan.ts';
import type { Area, ReferenceLine } from '../../top/area.ts';
import { countAlong, unitLines } from '../../stitch/unit-lines.ts';
import { changePlan } from '../change-plan.ts';
import { type Session, planOf } from '../store.ts';
import type { Spoken } from './spoken.ts';

export type RepeatWord = 'line' | 'times' | 'frieze' | 'count';

/** Whose repeat is meant: a sheet's own, or that of one placement. */
export interface RepeatOf {
  readonly sheet: string;
  readonly placement?: string;
}

/** The seven arrangements in words. */
export const FRIEZES: { readonly [frieze in Frieze]: { readonly name: string; readonly how: string } } = {
  run: { name: 'Run', how: 'slid along' },
  step: { name: 'Step', how: 'slid along, every other one turned over the centre line' },
  scallop: { name: 'Scallop', how: 'mirrored at every division line' },
  spin: { name: 'Spin', how: 'turned half round at every division line' },
  wave: { name: 'Wave', how: 'mirrored in its division, then turned half round at the next' },
  twin: { name: 'Twin', how: 'mirrored across the centre line, and slid along' },
  lantern: { name: 'Lantern', how: 'mirrored both ways, and slid along' },
};

/** The arrangements in the order in which they are offered. */
export const FRIEZE_ORDER: readonly Frieze[] = ['run', 'step', 'scallop', 'spin', 'wave', 'twin', 'lantern'];

/** A step of a repeat as a sentence with its words marked. */
export function sayStep(step: RepeatStep, area: Area, before: readonly RepeatStep[]): Spoken<RepeatWord> {
  if ('turn' in step) return [{ text: 'Turn ' }, { text: timesOf(step.turn), word: 'times' }, { text: '.' }];
  if ('mirror' in step) return [{ text: 'Mirror across ' }, { text: lineName(step.mirror, area, before), word: 'line' }, { text: '.' }];
  if ('mirrorAndTurn' in step) {
    return [{ text: 'Mirror across ' }, { text: lineName(step.across ?? 'line:vertical-centre', area, before), word: 'line' }, { text: ' and turn ' }, { text: timesOf(step.mirrorAndTurn), word: 'times' }, { text: '.' }];
  }
  const { name, how } = FRIEZES[step.along];
  return [{ text: name, word: 'frieze' }, { text: ` along the border, ${how}, ` }, { text: sayCount(step.count), word: 'count' }, { text: '.' }];
}

function timesOf(count: number): string {
  return count === 1 ? 'once' : `${count} times`;
}

/** "8 times", or "8 times on top and bottom, 12 on the sides". */
export function sayCount(count: number | { readonly [side in Side]?: number }): string {
  if (typeof count === 'number') return timesOf(count);
  const groups = new Map<number, Side[]>();
  for (const side of ['top', 'bottom', 'left', 'right'] as const) {
    const here = count[side];
    if (here === undefined) continue;
    const same = groups.get(here);
    if (same) same.push(side);
    else groups.set(here, [side]);
  }
  if (groups.size === 0) return 'no count yet';
  return [...groups].map(([many, sides], i) => `${many}${i === 0 ? ' times' : ''} on ${sides.join(' and ') === 'left and right' ? 'the sides' : sides.join(' and ')}`).join(', ');
}

function lineName(on: string, area: Area, before: readonly RepeatStep[]): string {
  const line = linesIn(area, before).find(({ id }) => `line:${id}` === on);
  return line ? `the ${line.name}` : 'a line that is not here';
}

/** The lines a mirror may stand on: those of a division until a repeat has run along the area. */
function linesIn(area: Area, before: readonly RepeatStep[]): readonly ReferenceLine[] {
  return unitLines(area, before.some((step) => 'along' in step) ? undefined : countAlong(before, area.side));
}

/** The straight lines of an area that something can be mirrored across; those within it before its edges. */
export function mirrorLines(area: Area, steps: readonly RepeatStep[], index: number): readonly ReferenceLine[] {
  const alongLater = steps.slice(index).some((step) => 'along' in step) && !steps.slice(0, index).some((step) => 'along' in step);
  const lines = unitLines(area, alongLater ? countAlong(steps, area.side) : undefined);
  const straight = lines.filter(({ path }) => segmentsOf(path).length === 1 && segmentsOf(path)[0]?.kind === 'line');
  return [...straight.filter(({ kind }) => kind !== 'edge'), ...straight.filter(({ kind }) => kind === 'edge')];
}

/** The usual repeats, to begin from. */
export interface UsualRepeat {
  readonly id: 'none' | 'mirror' | 'turn' | 'mirror-and-turn' | 'corners' | 'along';
  readonly name: string;
  readonly steps: readonly RepeatStep[];
}

/** What is offered for an area: "along the border" for the sides of a border and for sashing, the others for every area. */
export function usualRepeats(area: Area): readonly UsualRepeat[] {
  const has = (id: string) => area.referenceLines.some((line) => line.id === id);
  const mirror = mirrorLines(area, [], 0)[0];
  const isStrip = area.kind === 'border-side' || area.kind === 'sashing';
  return [
    { id: 'none', name: 'Sewn once', steps: [] },
    ...(isStrip ? [{ id: 'along', name: area.kind === 'sashing' ? 'Along the strip' : 'Along the border', steps: [{ along: 'run', count: usualCount(area) }] } as const] : []),
    ...(mirror ? [{ id: 'mirror', name: 'Mirrored', steps: [{ mirror: `line:${mirror.id}` }] } as const] : []),
    ...(isStrip ? [] : [{ id: 'turn', name: 'Turned', steps: [{ turn: 4 }] } as const]),
    ...(has('vertical-centre') && !isStrip ? [{ id: 'mirror-and-turn', name: 'Mirrored and turned', steps: [{ mirrorAndTurn: 4 }] } as const] : []),
    ...(has('vertical-centre') && has('horizontal-centre') && !isStrip
      ? [{ id: 'corners', name: 'In all four corners', steps: [{ mirror: 'line:vertical-centre' }, { mirror: 'line:horizontal-centre' }] } as const]
      : []),
  ];
}

/** About as many divisions as the strip is wide, one at least. */
function usualCount(area: Area): number {
  return Math.max(1, Math.round(area.width / Math.max(area.height, 1) / 2));
}

/** The repeat of a sheet, or of a placement when it has one of its own. */
export function repeatOf(session: Session, { sheet, placement }: RepeatOf): readonly RepeatStep[] {
  const found = planOf(session.getState()).sheets[sheet];
  return (placement === undefined ? undefined : found?.placements[placement]?.repeat) ?? found?.repeat ?? [];
}

/** Sets how a sheet repeats, or one placement by itself; `undefined` lets a placement repeat as its sheet does. */
export function setRepeat(session: Session, { sheet, placement }: RepeatOf, steps: readonly RepeatStep[] | undefined): void {
  const found = planOf(session.getState()).sheets[sheet];
  if (!found || (placement !== undefined && !found.placements[placement]) || (placement === undefined && !steps)) return;
  changePlan(session, 'Say how it repeats', (plan) => {
    const draft = plan.sheets[sheet]!;
    const said = steps as Draft<readonly RepeatStep[]> as Draft<RepeatStep>[] | undefined;
    if (placement === undefined) draft.repeat = said ?? [];
    else if (said) draft.placements[placement]!.repeat = said;
    else delete draft.placements[placement]!.repeat;
  });
}

/** Changes one step of a repeat, or takes it out when `step` is undefined. */
export function setStep(session: Session, of: RepeatOf, index: number, step: RepeatStep | undefined): void {
  const steps = repeatOf(session, of);
  setRepeat(session, of, steps.flatMap((old, i) => (i !== index ? [old] : step ? [step] : [])));
}
