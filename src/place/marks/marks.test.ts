import { describe, expect, it } from 'vitest';
import { polygon, straight } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { type Pose, mirrorAcross, poseOf, stay, turnAbout } from '../../geometry/pose.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import { random } from '../../num/random.ts';
import { STEADY } from '../../num/tolerances.ts';
import type { ReferenceLine } from '../../top/area.ts';
import { wander } from '../wander/wander.ts';
import { fewestMarks } from './fewest.ts';
import { type DrawnMark, type Hold, holdsBy, holdsThere, marksFor } from './hold.ts';
import { readyLaying } from './holding.ts';
import type { Laying } from './laying.ts';
import { type LayingToMark, markAll } from './marks.ts';
import { letter } from './say.ts';

const reference = (id: string, kind: ReferenceLine['kind'], name: string, from: Point<'area'>, to: Point<'area'>): ReferenceLine => ({ id, kind, name, path: straight(from, to) });

/** The lines of a block of 12 inches about its centre. */
const BLOCK: readonly ReferenceLine[] = [
  reference('vertical-centre', 'centre', 'vertical centre line', { x: 0, y: -6 }, { x: 0, y: 6 }),
  reference('horizontal-centre', 'centre', 'horizontal centre line', { x: -6, y: 0 }, { x: 6, y: 0 }),
  reference('diagonal-down', 'diagonal', 'diagonal down to the right', { x: -6, y: -6 }, { x: 6, y: 6 }),
  reference('diagonal-up', 'diagonal', 'diagonal up to the right', { x: -6, y: 6 }, { x: 6, y: -6 }),
  reference('edge-top', 'edge', 'top edge', { x: -6, y: -6 }, { x: 6, y: -6 }),
  reference('edge-left', 'edge', 'left edge', { x: -6, y: 6 }, { x: -6, y: -6 }),
];

const bar: TemplateShape = { outline: polygon([{ x: -5, y: -1 }, { x: 5, y: -1 }, { x: 5, y: 1 }, { x: -5, y: 1 }]), windows: [], etchings: [] };
// A rounded bar has no tips, so that everything has to be drawn.
const smooth = shapeOf({ family: 'long-round', sizes: {}, name: 'Long round', thickness: 0.25, grips: 'none' });
const bald: TemplateShape = smooth.ok ? { ...smooth.value, etchings: [] } : bar;

function laying(shape: TemplateShape, pose: Pose<'template', 'area'>, rest: Partial<LayingToMark> = {}): LayingToMark {
  const { lines } = needleLines(shape, 0.5);
  return {
    id: 'sheet/placement',
    pose,
    lines: BLOCK,
    images: [{ motion: stay(), numbers: [0] }],
    needle: lines,
    sewn: [{ line: lines[0]!, from: 0, to: lines[0]!.length }],
    centred: true,
    top: 'block',
    ends: [],
    ...rest,
  };
}

const style = { unit: 'in', smallest: 16 } as const;
const marked = (shape: TemplateShape, ...layings: LayingToMark[]) => markAll([{ id: 'template', shape, layings }], { style });

// Worked out by hand from elementary geometry: what crosses what, and how many freedoms each takes. Drawing a line across the face, a tick at
// the edge or a dot on it is common practice of the trade.
describe('marks', () => {
  it('an etched line on the horizontal and an etched cross on the vertical need no mark at all', () => {
    const shape: TemplateShape = {
      ...bald,
      etchings: [
        { kind: 'line', id: 'long', name: 'long line', path: straight({ x: -2, y: 0.25 }, { x: 2, y: 0.25 }) },
        { kind: 'cross', id: 'cross', name: 'cross', at: { x: 1, y: -0.5 }, angle: 0 },
      ],
    };
    const { templates } = marked(shape, laying(shape, poseOf(-1, -0.25)));
    expect(templates[0]!.marks).toEqual([]);
    expect(templates[0]!.layings[0]!.sentences).toEqual([{ images: [0], faceDown: false, say: 'Face up: cross on the vertical centre line, long line along the horizontal centre line.' }]);
  });

  it('a bare template off the centre takes two: one line gives two freedoms, and one more thing the third', () => {
    const { templates, tops } = marked(bald, laying(bald, poseOf(-0.5, 0.25)));
    const { marks, layings, fewest } = templates[0]!;
    expect(fewest).toBe(true);
    expect(marks.map((mark) => mark.letter)).toEqual(['A', 'B']);
    expect(marks.some(({ mark }) => mark.kind === 'line')).toBe(true);
    expect(layings[0]!.holding!.worst).toBeLessThanOrEqual(STEADY);
    expect(tops[0]!.lines.length).toBeLessThanOrEqual(2);
  });

  it('mirrored and turned images share the marks, seen from the other side where they lie face down', () => {
    const mirror = mirrorAcross<'area'>({ x: 0, y: 0 }, Math.PI / 2);
    const half = turnAbout<'area'>({ x: 0, y: 0 }, Math.PI);
    const shape: TemplateShape = { ...bald, etchings: [{ kind: 'line', id: 'long', name: 'long line', path: straight({ x: -2, y: 0 }, { x: 2, y: 0 }) }] };
    const images = [stay<'area'>(), mirror, half].map((motion, i) => ({ motion, numbers: [i] }));
    const { templates } = marked(shape, laying(shape, poseOf(-2, -6), { images, lines: BLOCK.filter(({ id }) => id === 'edge-top' || id === 'vertical-centre') }));
    expect(templates[0]!.marks).toHaveLength(1);
    const said = templates[0]!.layings[0]!.sentences;
    expect(said.map(({ faceDown }) => faceDown)).toEqual([false, true, false]);
    expect(said[0]!.say).toMatch(/^Face up: long line along the top edge, A (on|along) the vertical centre line\.$/);
    expect(said[1]!.say).toBe(said[0]!.say.replace('Face up', 'Face down'));
    expect(said[2]!.say).toContain('long line along the top edge turned 180 degrees');
  });

  it('two layings a pencil line apart share one mark; layings elsewhere get their own', () => {
    const near = marked(bald, laying(bald, poseOf(-0.5, 0.25)), laying(bald, poseOf(-0.505, 0.25)));
    expect(near.templates[0]!.marks).toHaveLength(2);
    const far = marked(bald, laying(bald, poseOf(-0.5, 0.25)), laying(bald, poseOf(-1.5, 0.5)));
    expect(far.templates[0]!.marks.length).toBeGreaterThan(2);
  });

  it('where no line crosses the template, dots go on the top, told by lines', () => {
    const shape: TemplateShape = { ...bald, etchings: [{ kind: 'cross', id: 'cross', name: 'cross', at: { x: -3, y: 0 }, angle: 0 }, { kind: 'point', id: 'far', name: 'far point', at: { x: 3, y: 0 } }] };
    const { templates, tops } = marked(shape, laying(shape, poseOf(20, 3), { lines: BLOCK.filter(({ id }) => id === 'vertical-centre' || id === 'edge-top') }));
    expect(templates[0]!.marks).toEqual([]);
    expect(templates[0]!.layings[0]!.sentences[0]!.say).toBe('Face up: cross on dot 1, far point on dot 2.');
    expect(tops[0]!.dots.map(({ say }) => say)).toEqual(['17 in right of the vertical centre line and 9 in below the top edge', '23 in right of the vertical centre line and 9 in below the top edge']);
  });

  it('a start on a line nobody sees gets a dot, one on a seam none', () => {
    const lines = BLOCK.filter(({ id }) => id !== 'diagonal-up');
    const ends = [{ what: 'start' as const, at: { x: -6, y: 1 }, on: 'edge-left' }, { what: 'stop' as const, at: { x: 1.5, y: 1.5 } }];
    const { tops } = marked(bald, laying(bald, poseOf(-0.5, 0.25), { ends, lines }));
    expect(tops[0]!.ends).toHaveLength(1);
    expect(tops[0]!.ends[0]).toMatchObject({ what: 'stop', at: { x: 1.5, y: 1.5 } });
  });

  it('letters run from A to Z and on with AA', () => {
    expect([0, 25, 26, 27, 51, 52, 701, 702].map(letter)).toEqual(['A', 'Z', 'AA', 'AB', 'AZ', 'BA', 'ZZ', 'AAA']);
  });
});

describe('the fewest marks are as few as trying every set of them finds', () => {
  it.each([21, 22, 23, 24, 25, 26])('seed %i: one or two layings at random', (seed) => {
    const chance = random(seed);
    const layings = Array.from({ length: chance.whole(1, 2) }, () => laying(bald, poseOf(chance.between(-4, 4), chance.between(-4, 4), chance.between(-3, 3), chance.next() < 0.5)));
    const found = fewestMarks(layings.map((one) => readyLaying(one, bald)), bald);
    if (found.candidates.some(({ dot }) => dot)) return; // Counted below: dots are taken only where marks do not do it.
    expect(found.exact).toBe(true);
    const marks = found.candidates.flatMap(({ mark }) => (mark ? [mark] : []));
    expect(marks.length).toBeGreaterThan(4);
    const few = found.chosen.length;
    expect(holdsAll(layings, found.chosen.map(({ mark }) => mark!))).toBe(true);
    // Sets of three and more are too many to try one by one.
    for (let size = 0; size < Math.min(few, 3); size++) expect(anySet(marks, size, (set) => holdsAll(layings, set))).toBe(false);
  });

  it('most of those seeds are held by marks alone', () => {
    const counts = [21, 22, 23, 24, 25, 26].map((seed) => {
      const chance = random(seed);
      const layings = Array.from({ length: chance.whole(1, 2) }, () => laying(bald, poseOf(chance.between(-4, 4), chance.between(-4, 4), chance.between(-3, 3), chance.next() < 0.5)));
      return layings.every((one) => holdsAll([one], marksFor(one, bald)));
    });
    expect(counts.filter(Boolean).length).toBeGreaterThanOrEqual(4);
  });

  function holdsAll(layings: readonly Laying[], marks: readonly DrawnMark[]): boolean {
    return layings.every((one) => {
      const holds: readonly Hold[] = [...holdsThere(one, bald), ...marks.flatMap((mark) => holdsBy(mark, one))];
      const result = wander(holds.map(({ requirement }) => requirement), { pose: one.pose, shape: bald, needle: one.needle, sewn: one.sewn }, { spacing: Infinity });
      return result.kind === 'held' && result.worst <= STEADY;
    });
  }

  function anySet<Item>(items: readonly Item[], size: number, test: (set: readonly Item[]) => boolean, from = 0, taken: readonly Item[] = []): boolean {
    if (taken.length === size) return test(taken);
    for (let i = from; i < items.length; i++) if (anySet(items, size, test, i + 1, [...taken, items[i]!])) return true;
    return false;
  }
});
