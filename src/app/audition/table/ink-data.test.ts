import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { setOut } from '../../../engine/evaluate.ts';
import { boundsOf } from '../../../geometry/bounds.ts';
import { pathLength } from '../../../geometry/measure.ts';
import { readPathData } from '../../../geometry/svg/read.ts';
import { readPlan } from '../../../model/codec.ts';
import { quiltPath } from '../../../stitch/quilt-path.ts';
import { inkData } from './ink-data.ts';

function example(name: string) {
  const read = readPlan(readFileSync(new URL(`../../../../examples/${name}.needlefall.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(`${name} cannot be read`);
  return setOut(read.value);
}

describe('ink of a moving placement', () => {
  // Against the lines the pipeline carries to the quilt one by one, which the drawing and the paper show.
  it.each(['practice-block', 'tidewater', 'medallion'])('lies where the stitched lines lie: %s', (name) => {
    const { plan, placements, lines, top } = example(name);
    let compared = 0;
    for (const laid of placements) {
      const areas = laid.areas.map((id) => top.areas.find((area) => area.id === id)!);
      const strokes = inkData(laid, areas).split('M').slice(1).map((data) => `M${data}`);
      const mine = lines.filter((line) => line.sheet === laid.sheet && line.placement === laid.placement && laid.areas.includes(line.area));
      if (!plan.sheets[laid.sheet]!.chosen) continue;
      expect(strokes).toHaveLength(mine.length);
      strokes.forEach((data, i) => {
        const read = readPathData<'quilt'>(data);
        if (!read.ok) throw new Error(data);
        const [path] = read.value;
        const expected = quiltPath(mine[i]!);
        expect(pathLength(path!)).toBeCloseTo(pathLength(expected), 2);
        const [a, b] = [boundsOf(path!), boundsOf(expected)];
        for (const side of ['minX', 'minY', 'maxX', 'maxY'] as const) expect(a[side]).toBeCloseTo(b[side], 2);
        compared++;
      });
    }
    expect(compared).toBeGreaterThan(16);
  });

  it('leaves out what is out of sight, and nothing that is in sight', () => {
    const { placements, lines, top } = example('tidewater');
    const laid = placements.find(({ areas }) => areas.length > 4)!;
    const areas = laid.areas.map((id) => top.areas.find((area) => area.id === id)!);
    const inSight = { minX: 0, minY: 0, maxX: top.width / 3, maxY: top.height / 3 };
    const mine = lines.filter((line) => line.sheet === laid.sheet && line.placement === laid.placement && laid.areas.includes(line.area)).map((line) => boundsOf(quiltPath(line)));
    const seen = mine.filter((b) => b.minX <= inSight.maxX && b.minY <= inSight.maxY);
    const drawn = inkData(laid, areas, inSight).split('M').length - 1;
    expect(seen.length).toBeGreaterThan(0);
    expect(drawn).toBeGreaterThanOrEqual(seen.length);
    expect(drawn).toBeLessThan(mine.length);
  });
});
