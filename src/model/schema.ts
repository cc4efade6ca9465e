// What a plan file may hold, said once: the reader checks against it, and the published JSON Schema is written from it.
// Every object is open: a field this version does not know is kept as it came. What ids refer to is not looked at here;
// a plan with a dangling reference can still be opened, and the checks say what is missing.

import { z } from 'zod';
import { GREATEST_DIAMETER } from './kit/foot-limits.ts';
import { type Plan, PLAN_FORMAT, PLAN_VERSION } from './plan.ts';
import { RESERVED_NAMES } from './reserved-names.ts';

// The pages of the app allow no code made from text, which zod would otherwise try for.
z.config({ jitless: true });

/** No length in a plan is greater, in inches. */
export const GREATEST_LENGTH = 1000;
/** No block count along one side is greater. */
export const MOST_BLOCKS = 200;
/** No count of turns or repeats is greater. */
export const MOST_REPEATS = 1000;

/** An object with these fields, and others that are kept without being looked at. */
function open<Shape extends z.ZodRawShape>(what: string, shape: Shape): z.ZodObject<Shape, z.core.$strip> {
  // The index signature of a loose object is left out of the type, so that it can be compared with the types of the plan.
  return z.looseObject(shape, said(what));
}

/** One of several kinds of object, told apart by the field named beside it; the fields that tell the others apart may not be there too. */
function kindOf<Shape extends z.ZodRawShape>(what: string, told: string, by: readonly string[], shape: Shape): z.ZodObject<Shape, z.core.$strip> {
  const others = by.filter((field) => field !== told);
  const absent = Object.fromEntries(others.map((field) => [field, z.never(said(`nothing here, since "${told}" is given`)).optional()]));
  return open(what, { ...shape, ...absent });
}

/** What was expected, in words, whatever is wrong with the value. */
function said(expected: string): { readonly error: () => string } {
  return { error: () => expected };
}

// ---- leaves: each says what it is (in the published schema) and what is expected (in a problem) ----

function text(what: string, expected = 'text') {
  return z.string(said(expected)).describe(what);
}

function number(what: string, expected: string, least: number, most: number) {
  return z.number(said(expected)).gte(least, said(expected)).lte(most, said(expected)).describe(what);
}

function whole(what: string, least: number, most: number) {
  const expected = `a whole number from ${least} to ${most}`;
  return z.number(said(expected)).int(said(expected)).gte(least, said(expected)).lte(most, said(expected)).describe(what);
}

/** A length that something has: more than nothing. */
function size(what: string, most = GREATEST_LENGTH) {
  const expected = `inches, more than 0 and at most ${most}`;
  return z.number(said(expected)).gt(0, said(expected)).lte(most, said(expected)).describe(`${what}, in inches`);
}

/** A distance that may be nothing. */
function gap(what: string, most = GREATEST_LENGTH) {
  return number(`${what}, in inches`, `inches, from 0 to ${most}`, 0, most);
}

/** A coordinate or a signed distance. */
function coordinate(what: string) {
  return number(`${what}, in inches`, `inches, from ${-GREATEST_LENGTH} to ${GREATEST_LENGTH}`, -GREATEST_LENGTH, GREATEST_LENGTH);
}

function degrees(what: string) {
  return number(`${what}, in degrees, clockwise`, 'degrees, from -3600 to 3600', -3600, 3600);
}

function yesOrNo(what: string) {
  return z.boolean(said('true or false')).describe(what);
}

function oneOf<const Words extends readonly [string, ...string[]]>(what: string, words: Words) {
  const quoted = words.map((word) => `"${word}"`);
  return z.enum(words, said(`${quoted.slice(0, -1).join(', ')} or ${quoted.at(-1)}`)).describe(what);
}

function place(what: string) {
  return z.tuple([coordinate('x'), coordinate('y')], said('two numbers, [x, y]')).describe(what);
}

function dimensions(what: string) {
  return z.tuple([size('width'), size('height')], said('two numbers, [width, height]')).describe(what);
}

function pathData(what: string) {
  const expected = 'SVG path data in inches, such as "M 0 0 H 4 V 4 H 0 Z"';
  return z.string(said(expected)).min(1, said(expected)).describe(`${what}: SVG path data in inches`);
}

function id(what: string) {
  const expected = 'an id: no spaces, none of "/", ",", ":", and no name the language keeps for itself, such as "constructor"';
  return z.string(said(expected)).regex(new RegExp(`^(?!(?:${RESERVED_NAMES.join('|')})$)[^\\s/,:]+$`), said(expected)).describe(what);
}

function map<Item extends z.ZodType>(things: string, item: Item) {
  return z.record(id('an id'), item, said(`a map of ${things} by id`));
}

function list<Item extends z.ZodType>(things: string, item: Item) {
  return z.array(item, said(`a list of ${things}`));
}

// ---- the kit ----

const etching = z.discriminatedUnion(
  'kind',
  [
    open('an etching', { kind: z.literal('line'), from: place('where the line starts'), to: place('where the line ends'), name: text('a name').optional() }),
    open('an etching', { kind: z.literal('point'), at: place('where the point is'), name: text('a name').optional() }),
    open('an etching', { kind: z.literal('cross'), at: place('where the cross is'), angle: degrees('the angle of the cross'), name: text('a name').optional() }),
    open('an etching', { kind: z.literal('curve'), path: pathData('the curve'), name: text('a name').optional() }),
  ],
  said('an etching whose kind is "line", "point", "cross" or "curve"'),
);

const foot = open('a foot', {
  name: text('a name'),
  diameter: size('across the round foot', GREATEST_DIAMETER).describe('Across the round foot, in inches.'),
  needleOffset: place('where the needle falls, from the foot\'s centre').describe("Where the needle falls, from the foot's centre: x to the sewer's right, y towards the sewer."),
  shank: oneOf('the shank', ['low', 'medium', 'high']),
});

const anyTemplate = {
  name: text('a name'),
  thickness: size('the thickness of the acrylic', 2).describe('Of the acrylic, in inches.'),
  grips: oneOf('which faces carry grips', ['none', 'one-face', 'both-faces']),
  etchings: map('etchings', etching).optional(),
  notEtched: list('etching ids', id('Of an etching of the family.')).optional(),
  hidden: yesOrNo('hidden').optional(),
  notes: text('notes').optional(),
};

const TEMPLATES = ['family', 'outline'];

const template = z.union(
  [
    kindOf('a template', 'family', TEMPLATES, {
      ...anyTemplate,
      family: id('One of the built-in families.'),
      sizes: z.record(z.string(), number('inches, degrees or a count', 'a number from -3600 to 3600', -3600, 3600), said("a map of the family's sizes")),
    }),
    kindOf('a template', 'outline', TEMPLATES, {
      ...anyTemplate,
      outline: pathData('the outline'),
      windows: map('windows', pathData('a window')).optional(),
    }),
  ],
  said('a template with either a "family" and "sizes", or an "outline"'),
);

const kit = open('the kit', { feet: map('feet', foot), templates: map('templates', template), onTheMachine: id('The foot new placements are laid for.').optional() });

// ---- materials and machine ----

const materials = open('the materials', {
  thread: open('the thread', {
    name: text('a name').optional(),
    tex: number('grams a kilometre', 'a number from 1 to 1000', 1, 1000).optional(),
    thickness: size('the thickness of the thread', 1).optional(),
  }).optional(),
  bobbin: open('the bobbin', { name: text('a name').optional(), yards: number('yards on a bobbin', 'a number from 1 to 10000', 1, 10_000).optional() }).optional(),
  batting: open('the batting', {
    name: text('a name').optional(),
    widestGap: size('the widest gap the label allows', 100).describe('The widest gap the label allows, in inches.').optional(),
    gapMeans: oneOf("what the label's figure means", ['line-distance', 'open-square']).optional(),
  }).optional(),
});

const machine = open('the machine', {
  name: text('a name').optional(),
  kind: oneOf('the kind of machine', ['sit-down', 'frame']).optional(),
  reach: size('the reach').optional(),
  stitchLength: size('the stitch length', 1).optional(),
  stitchesPerMinute: number('stitches a minute', 'a number from 1 to 10000', 1, 10_000).optional(),
});

// ---- the top ----

const perSide = <Item extends z.ZodType>(what: string, item: Item) =>
  open(what, { top: item.optional(), right: item.optional(), bottom: item.optional(), left: item.optional() });

const top = open('the top', {
  blocks: open('the blocks', {
    setting: oneOf('the setting', ['straight', 'on-point']),
    rows: whole('rows', 1, MOST_BLOCKS),
    columns: whole('columns', 1, MOST_BLOCKS),
    size: dimensions('the finished size of a block'),
    sashing: gap('the finished width of the sashing'),
    cornerstones: yesOrNo('cornerstones'),
    sashedRound: yesOrNo('sashing round the outside').optional(),
  }).optional(),
  panel: open('the panel', { size: dimensions('the size of the panel') }).optional(),
  borders: list(
    'borders, from the inside out',
    open('a border', {
      width: size('the finished width of the border'),
      corners: oneOf('the corners', ['butted', 'mitred', 'squares']),
      through: oneOf('the sides that run through', ['top-and-bottom', 'left-and-right']).optional(),
      measured: perSide('a map with "top", "right", "bottom" or "left"', size('a measured length')).optional(),
    }),
  ).max(50, said('at most 50 borders')),
  drawnAreas: map('drawn areas', open('a drawn area', { name: text('a name'), outline: pathData('the outline'), angle: degrees('the angle').optional() })),
  keepOuts: map('keep-outs', open('a keep-out', { name: text('a name'), outline: pathData('the outline'), clearance: gap('the clearance').optional() })),
  clearance: open('the clearances', { rawEdge: gap('clearance from the raw edge'), seam: gap('clearance from a seam') }),
});

// ---- tracing sheets ----

const frieze = oneOf('the way it runs along', ['run', 'step', 'scallop', 'spin', 'wave', 'twin', 'lantern']);

const count = whole('how often it repeats', 1, MOST_REPEATS);

const STEPS = ['mirror', 'turn', 'mirrorAndTurn', 'along'];

const repeatStep = z.union(
  [
    kindOf('a repeat step', 'mirror', STEPS, { mirror: text('A reference line.', 'a reference line, such as "line:diagonal-down"') }),
    kindOf('a repeat step', 'turn', STEPS, { turn: whole('how many turns', 1, MOST_REPEATS) }),
    kindOf('a repeat step', 'mirrorAndTurn', STEPS, { mirrorAndTurn: whole('how many turns', 1, MOST_REPEATS), across: text('A reference line.', 'a reference line, such as "line:vertical-centre"').optional() }),
    kindOf('a repeat step', 'along', STEPS, {
      along: frieze,
      count: z.union([count, perSide('a map with "top", "right", "bottom" or "left"', count)], said('a whole number, or one for each of "top", "right", "bottom", "left"')),
    }),
  ],
  said('a repeat step: "mirror", "turn", "mirrorAndTurn" or "along"'),
);

const ENDS = ['crosses', 'along'];

const passEnd = z.union(
  [
    kindOf('an end of a pass', 'crosses', ENDS, { crosses: text('A reference line.', 'a reference line, such as "line:diagonal-down"'), nth: whole('which crossing', 1, 10_000).optional() }),
    kindOf('an end of a pass', 'along', ENDS, { along: gap('how far along the needle line', 100_000) }),
  ],
  said('an end of a pass: "crosses" a reference line, or inches "along" the needle line'),
);

const pass = open('a pass', {
  edge: text('The edge the foot runs along.', '"outline" or "window:" and its id').optional(),
  loop: whole('which loop', 0, 10_000).optional(),
  start: passEnd,
  stop: z.union([passEnd, z.literal('all-round')], said('an end of a pass, or "all-round"')),
  way: oneOf('the way it runs', ['clockwise', 'counterclockwise']),
  name: text('a name').optional(),
});

const placement = open('a placement', {
  template: id('Of a template in the kit.'),
  foot: id('Of a foot in the kit.'),
  flipped: yesOrNo('flipped'),
  pose: open('a pose', { x: coordinate('x'), y: coordinate('y'), angle: degrees('the angle') }),
  registrations: list(
    'registrations',
    open('a registration', {
      put: text('What is put.', '"etching:ID", "tip:N", "point:X,Y" or "needle-line"'),
      on: text('What it is put on.', '"line:ID", "crossing:ID,ID", "centre" or "end:SHEET/PLACEMENT/PASS/start"'),
      distance: coordinate('how far from it').optional(),
      angle: degrees('the angle between them').optional(),
    }),
  ),
  passes: map('passes', pass),
  repeat: list('repeat steps', repeatStep).optional(),
  name: text('a name').optional(),
});

const fill = open('a fill', {
  kind: text('the kind of fill'),
  at: place('a place in the space'),
  options: z.record(z.string(), z.union([z.number(), z.string(), z.boolean()], said('a number, text, true or false')), said('a map of options')),
  seed: z.number(said('a whole number')).int(said('a whole number')).describe('The same seed always draws the same fill.'),
});

const sheet = open('a sheet', {
  name: text('a name'),
  for: open('what the sheet is for', {
    kind: oneOf('the kind of area', ['block', 'sashing', 'cornerstone', 'setting-triangle', 'corner-triangle', 'panel', 'border-side', 'border-corner', 'drawn', 'top']),
    border: whole('which border', 1, 50).optional(),
    only: list('area ids', text('an area id', 'an area id')).optional(),
    except: list('area ids', text('an area id', 'an area id')).optional(),
  }),
  chosen: yesOrNo('chosen'),
  placements: map('placements', placement),
  repeat: list('repeat steps', repeatStep),
  fills: map('fills', fill),
  notes: text('notes').optional(),
});

/** A plan as it lies in a file of this version. */
export const planSchema = open('a plan', {
  format: z.literal(PLAN_FORMAT, said(`"${PLAN_FORMAT}"`)),
  version: z.literal(PLAN_VERSION, said(`version ${PLAN_VERSION}`)),
  name: text('the name of the plan'),
  notes: text('notes').optional(),
  shownIn: oneOf('the unit people see', ['in', 'cm']),
  kit,
  materials,
  machine,
  top,
  sheets: map('sheets', sheet),
  sheetOrder: list('sheet ids', id('a sheet')).optional(),
  accepted: z.record(z.string(), open('why it is left so', { reason: text('the reason') }), said('a map of reasons by finding')).optional(),
});

// ---- the schema and the types of the plan say the same ----

type Bare<T> = T extends string | number | boolean | undefined
  ? T
  : T extends readonly unknown[]
    ? { readonly [Index in keyof T]: Bare<T[Index]> }
    : { readonly [Key in keyof T]: Bare<T[Key]> };

type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;

/** Does not compile when a field is in one and not in the other, or differs. */
export const SCHEMA_AGREES_WITH_PLAN: Same<Bare<z.infer<typeof planSchema>>, Bare<Plan>> = true;
