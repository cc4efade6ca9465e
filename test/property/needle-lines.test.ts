// Needle lines of thousands of random outlines and windows, judged by true distance to the edge. The judge shares no code with
// the offset. NEEDLE_OUTLINES sets how many seeds of each kind are tried (a long hunt takes 10,000), NEEDLE_SEED the first of them.

import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { carryPath, reversedPath, startingAt } from '../../src/geometry/change.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { type OffsetOutcome, offsetClosed } from '../../src/geometry/offset/offset-closed.ts';
import { type Path, closedPath } from '../../src/geometry/path.ts';
import { mirrorAcross, poseOf } from '../../src/geometry/pose.ts';
import { WITHIN, judge } from './needle-judge.ts';
import { KINDS, randomEdge } from './needle-outlines.ts';

const COUNT = Number(process.env['NEEDLE_OUTLINES'] ?? 570);
const FIRST = Number(process.env['NEEDLE_SEED'] ?? 1);
const SIDES = ['outside', 'inside'] as const;

describe(`random outlines, seeds ${FIRST} to ${FIRST + COUNT - 1} of each kind`, () => {
  let judged = 0;

  it.each(KINDS)('%s: nowhere nearer than the foot, touching where the contact map says, nothing left out', (kind) => {
    const wrong: string[] = [];
    // A dense outline of hundreds of segments takes the judge as long as many others.
    const count = kind === 'dense' ? Math.ceil(COUNT / 16) : COUNT;
    for (let seed = FIRST; seed < FIRST + count; seed++) {
      const edge = randomEdge(seed, kind);
      if (!edge) continue;
      judged++;
      for (const where of SIDES) {
        const offset = offsetClosed(edge.path, edge.radius, where);
        const { faults } = judge(edge.path, edge.radius, where, offset, { samplesAPiece: 4, samplesOfEdge: 60, mayBeTight: kind === 'nearly' });
        if (where === 'outside' && offset.kind === 'collapsed') wrong.push(`seed ${seed} outside: nothing`);
        if (faults.length > 0) wrong.push(`seed ${seed} ${where}: ${faults[0]}`);
      }
    }
    expect(wrong).toEqual([]);
  }, 240_000);

  it('were enough to mean something: five thousand, unless asked for another number', () => {
    expect(judged).toBeGreaterThan((5000 / 570) * COUNT);
  });
});

describe('the same needle lines under symmetry, seeds 1 to 40 of each kind', () => {
  /** Lengths and areas, longest first, and what is missed, to a hundred-thousandth. */
  const measures = (offset: OffsetOutcome<'template'>) => ({
    lines: (offset.kind === 'loops' ? offset.loops : []).map((l) => `${l.length.toFixed(5)} ${l.area.toFixed(5)} ${l.path.closed ? 'closed' : 'open'}`).sort(),
    missed: offset.missed.reduce((sum, m) => sum + m.length, 0).toFixed(5),
  });

  it.each(KINDS.filter((kind) => kind !== 'nearly'))('%s: mirrored, turned, moved, reversed, started elsewhere', (kind) => {
    for (let seed = 1; seed <= 40; seed++) {
      const edge = randomEdge(seed, kind);
      if (!edge) continue;
      const { path, radius } = edge;
      const images: readonly [string, Path<'template'>][] = [
        ['mirrored', carryPath(mirrorAcross<'template'>({ x: 0.3, y: 0.1 }, 0.7), path)],
        ['turned and moved', carryPath(poseOf<'template', 'template'>(1.37, -2.11, 0.83), path)],
        ['reversed', reversedPath(path)],
        ['started at another vertex', closedPath([...path.vertices.slice(2), ...path.vertices.slice(0, 2)])],
        ['started within a stretch', startingAt(path, pathLength(path) * 0.61803)],
      ];
      for (const where of SIDES) {
        const known = measures(offsetClosed(path, radius, where));
        for (const [how, image] of images) closeTo(measures(offsetClosed(image, radius, where)), known, `${kind}, seed ${seed}, ${where}, ${how}`);
      }
    }
  });

  function closeTo(found: ReturnType<typeof measures>, known: ReturnType<typeof measures>, what: string): void {
    const numbers = (m: ReturnType<typeof measures>) => [...m.lines.flatMap((l) => l.split(' ').slice(0, 2)), m.missed].map(Number);
    expect(found.lines.length, what).toBe(known.lines.length);
    numbers(found).forEach((n, i) => expect(Math.abs(n - numbers(known)[i]!), what).toBeLessThan(2e-5));
  }
});

describe('outlines that went wrong once', () => {
  const folder = new URL('../corpus/needle/', import.meta.url);
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'));

  interface Case {
    readonly about: string;
    readonly radius: number;
    readonly where: 'outside' | 'inside';
    readonly mayBeTight: boolean;
    readonly vertices: readonly (readonly [number, number, number])[];
  }

  it('are there', () => {
    expect(files.length).toBeGreaterThan(10);
  });

  it.each(files)('%s', (name) => {
    const { radius, where, mayBeTight, vertices, about } = JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Case;
    const path = closedPath<'template'>(vertices.map(([x, y, bulge]) => ({ x, y, bulge })));
    const { faults, worst } = judge(path, radius, where, offsetClosed(path, radius, where), { mayBeTight, samplesOfEdge: 400, samplesAPiece: 12 });
    expect(faults, about).toEqual([]);
    expect(worst).toBeLessThan(WITHIN);
  });
});
