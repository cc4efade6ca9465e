// A border of four sides set out with whole kits: milliseconds of processor time, how they grow, and the same poses looked for by trying every pair
// of points along the needle lines (the search of the property tests) in the same run.

import { FAMILIES } from '../src/model/kit/families.ts';
import { shapeOf } from '../src/model/kit/shape-of.ts';
import type { Frieze } from '../src/model/plan.ts';
import { needleLines } from '../src/needle/needle-lines.ts';
import { countsFor } from '../src/place/setout/counts.ts';
import { bothSides } from '../src/place/setout/set-out-border.ts';
import { type KitRuler, setOutKit } from '../src/place/setout/set-out-kit.ts';
import { crestsByTrying, sampled, symmetricByTrying } from '../test/property/set-out-brute.ts';

const POINTS = 1200;
const HEIGHT = 2.5;
const BORDER = { lengths: { top: 60, right: 72, bottom: 60, left: 72 }, width: 6, outerClearance: 0.5, innerClearance: 0.25 };

/** Every family in each of its useful sizes, over and over until there are enough. */
function kitOf(size: number): readonly KitRuler[] {
  const all = FAMILIES.flatMap((family) => family.useful.map(({ sizes }, i) => ({ id: `${family.id}-${i}`, family: family.id, sizes })));
  const spread = Array.from({ length: size }, (_, i) => all[Math.floor((i * all.length) / Math.max(size, all.length))] ?? all[i % all.length]!);
  return spread.flatMap(({ id, family, sizes }, i) => {
    // A new shape each, so that nothing is remembered of another.
    const shape = shapeOf({ name: id, family, sizes, thickness: 0.25, grips: 'none' });
    return shape.ok ? [{ id: `${id}/${i}`, ruler: { shape: shape.value, needle: needleLines(shape.value, 0.5) } }] : [];
  });
}

function processorTime(run: () => unknown): number {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

const solve = (kit: readonly KitRuler[], pattern: Frieze) => setOutKit(kit, BORDER, { pattern, spacing: 6, ...(pattern === 'lantern' && { height: HEIGHT }) });

for (const pattern of ['scallop', 'lantern'] as const) {
  // Once to warm up: an app that stands open is warm.
  solve(kitOf(10), pattern);
  console.log(`\n${pattern}, sides of 60 and 72, divisions about 6 in`);
  console.log('templates   counts tried   results    ms   ms a template');
  for (const size of [10, 20, 40, 80]) {
    const tries = [0, 1, 2].map(() => {
      const kit = kitOf(size);
      let results = 0;
      const ms = processorTime(() => (results = solve(kit, pattern).results.reduce((sum, { all }) => sum + all.length, 0)));
      return { ms, results, templates: kit.length };
    });
    const best = tries.sort((a, b) => a.ms - b.ms)[0]!;
    const counts = bothSides(BORDER).reduce((sum, side) => sum + countsFor(side, { pattern, spacing: 6 }).length, 0);
    console.log(`${String(best.templates).padStart(9)}${String(counts).padStart(15)}${String(best.results).padStart(10)}${best.ms.toFixed(0).padStart(6)}${(best.ms / best.templates).toFixed(1).padStart(16)}`);
  }
  const few = kitOf(10);
  const trying = processorTime(() => {
    for (const { ruler } of few) {
      for (const { path } of ruler.needle.lines) {
        const line = sampled(path.vertices, POINTS);
        for (const side of bothSides(BORDER)) {
          for (const count of countsFor(side, { pattern, spacing: 6 })) {
            if (pattern === 'lantern') crestsByTrying(line, side.length / count / 2, HEIGHT);
            else symmetricByTrying(line, side.length / count);
          }
        }
      }
    }
  });
  const solving = Math.min(...[0, 1, 2].map(() => processorTime(() => solve(few, pattern))));
  console.log(`10 templates by trying every pair of ${POINTS} points (found to about 1/50 in): ${trying.toFixed(0)} ms; solved to rounding: ${solving.toFixed(0)} ms; ${(trying / solving).toFixed(0)} times as long`);
}
