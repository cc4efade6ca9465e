// Real path data from a general icon set, read, fitted, written and read back. The set is a development package; without it the
// test fails.

import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import svgpath from 'svgpath';
import { describe, expect, it } from 'vitest';
import { cubic } from '../../src/geometry/fit/bezier.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { readPathData } from '../../src/geometry/svg/read.ts';
import { writePathData } from '../../src/geometry/svg/write.ts';
import { distanceToPath } from './fit-measure.ts';

const folder = iconFolder();

describe('path data of an icon set (package lucide-static)', () => {
  // Every tenth path keeps the test to seconds; the whole set has been read in one go outside the suite.
  const data = folder === undefined ? [] : pathDataIn(folder).filter((_, i) => i % 10 === 0);

  it('has hundreds of paths with arcs and curves', () => {
    expect(data.length).toBeGreaterThan(400);
    expect(data.filter((d) => /a/i.test(d)).length).toBeGreaterThan(100);
    expect(data.filter((d) => /[cqst]/i.test(d)).length).toBeGreaterThan(20);
  });

  it('is read without exception, and comes back from being written', () => {
    for (const d of data) {
      const outcome = readPathData<'template'>(d);
      if (!outcome.ok) throw new Error(`${d}: ${outcome.problem.message}`);
      for (const path of outcome.value) {
        const back = readPathData<'template'>(writePathData(path));
        if (!back.ok) throw new Error(`${d}: ${back.problem.message}`);
        expect(back.value, d).toHaveLength(1);
        expect(back.value[0]!.vertices, d).toHaveLength(path.vertices.length);
        expect(Math.abs(pathLength(back.value[0]!) - pathLength(path)), d).toBeLessThan(1e-8);
      }
    }
  });

  it('lies where the cubics of another library lie', () => {
    let compared = 0;
    for (const d of data.filter((_, i) => i % 3 === 0)) {
      const outcome = readPathData<'template'>(d);
      if (!outcome.ok) throw new Error(outcome.problem.message);
      for (const p of pointsOfCubics(d)) {
        compared++;
        const off = Math.min(...outcome.value.map((path) => distanceToPath(p, path)));
        // Our half thousandth, and 2.8e-4 of the radius (at most 11 in a set 24 wide) for their cubic of a quarter turn.
        expect(off, d).toBeLessThan(0.0005 + 2.8e-4 * 11);
      }
    }
    expect(compared).toBeGreaterThan(1000);
  });
});

function iconFolder(): string | undefined {
  try {
    const icons = join(dirname(createRequire(import.meta.url).resolve('lucide-static/package.json')), 'icons');
    return existsSync(icons) ? icons : undefined;
  } catch {
    return undefined;
  }
}

function pathDataIn(icons: string): readonly string[] {
  const files = readdirSync(icons).filter((name) => name.endsWith('.svg')).sort();
  return files.flatMap((name) => [...readFileSync(join(icons, name), 'utf8').matchAll(/\sd="([^"]+)"/g)].map((match) => match[1]!));
}

function pointsOfCubics(d: string): readonly { x: number; y: number }[] {
  const { segments } = svgpath(d).abs().unarc().unshort() as unknown as { segments: [string, ...number[]][] };
  const points: { x: number; y: number }[] = [];
  let at = { x: 0, y: 0 };
  for (const [command, ...n] of segments) {
    const p = (i: number) => ({ x: n[i]!, y: n[i + 1]! });
    if (command === 'C') for (let i = 1; i <= 8; i++) points.push(cubic<'template'>(at, p(0), p(2), p(4))(i / 8).point);
    if (command === 'H') at = { x: n[0]!, y: at.y };
    else if (command === 'V') at = { x: at.x, y: n[0]! };
    else if (n.length >= 2) at = p(n.length - 2);
  }
  return points;
}
