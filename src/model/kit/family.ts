// A family: a parametric generator of templates of one generic shape, with the sizes a person may choose.
// A family's outline is made of true lines and arcs wherever the shape is; the origin of its coordinates is the natural
// centre of the shape, where a maker would etch the cross.

import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { type SizeRule, sizesWithinRules } from './sizes.ts';
import type { ShapeProblem, TemplateShape } from './shape.ts';
import { checkedShape } from './checked-shape.ts';

/** A plain name for a set of sizes worth having; sizes it leaves out are the usual ones. */
export interface UsefulSizes {
  readonly name: string;
  readonly sizes: { readonly [size: string]: number };
}

export interface Family {
  readonly id: string;
  readonly name: string;
  /** One sentence: what it looks like, and which length each size is where that could be misread. */
  readonly about: string;
  readonly sizes: readonly SizeRule[];
  readonly useful: readonly UsefulSizes[];
  /**
   * The template of these sizes (inches, degrees and counts, by size id; sizes left out are the usual ones), in
   * template coordinates. Sizes beyond their rules, or that cannot be drawn together, come back as a problem that
   * names the size and its limit.
   */
  readonly draw: (sizes: { readonly [size: string]: number }) => Outcome<TemplateShape, ShapeProblem>;
}

/** What a family's own file says; the rest is the same for all. */
export interface FamilyDescription<Id extends string> {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  /** In the order in which a person is asked for them. */
  readonly sizes: { readonly [id in Id]: Omit<SizeRule, 'id'> };
  readonly useful: readonly { readonly name: string; readonly sizes: { readonly [id in Id]?: number } }[];
  /** Draws sizes that each keep their rule; says which cannot be drawn together. */
  readonly draw: (sizes: { readonly [id in Id]: number }) => Outcome<TemplateShape, ShapeProblem>;
}

/** The family of a description, its drawing guarded: sizes are held to their rules before, and the shape is checked after. */
export function family<Id extends string>(description: FamilyDescription<Id>): Family {
  const ids = Object.keys(description.sizes) as Id[];
  const rules: readonly SizeRule[] = ids.map((id) => ({ id, ...description.sizes[id] }));
  const useful: readonly UsefulSizes[] = description.useful.map(({ name, sizes }) => ({ name, sizes: stated(sizes) }));
  const draw: Family['draw'] = (given) => {
    const sizes = sizesWithinRules(description.name, rules, given);
    if (!sizes.ok) return fail(sizes.problem);
    const shape = description.draw(sizes.value as { [id in Id]: number });
    return shape.ok ? checkedShape(shape.value) : shape;
  };
  return { id: description.id, name: description.name, about: description.about, sizes: rules, useful, draw };
}

function stated(sizes: { readonly [size: string]: number | undefined }): { readonly [size: string]: number } {
  return Object.fromEntries(Object.entries(sizes).filter((entry): entry is [string, number] => entry[1] !== undefined));
}

/** A shape without windows. */
export function plainShape(shape: Omit<TemplateShape, 'windows'>): Outcome<TemplateShape, ShapeProblem> {
  return ok({ ...shape, windows: [] });
}
