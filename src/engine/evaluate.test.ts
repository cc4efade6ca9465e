import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { boundsOf } from '../geometry/bounds.ts';
import { pathLength } from '../geometry/measure.ts';
import { endOf, startOf } from '../geometry/path.ts';
import { readPlan } from '../model/codec.ts';
import type { Plan } from '../model/plan.ts';
import { quiltPath } from '../stitch/quilt-path.ts';
import { evaluate, setOut } from './evaluate.ts';

const FOLDER = new URL('../../examples/', import.meta.url);

function example(name: string): Plan {
  const read = readPlan(readFileSync(new URL(`${name}.needlefall.json`, FOLDER), 'utf8'));
  if (!read.ok) throw new Error(read.problem.map((p) => p.message).join('\n'));
  return read.value;
}

describe('evaluating the examples', () => {
  it('there are four, and all can be placed and sewn as they say', () => {
    const names = readdirSync(FOLDER).filter((name) => name.endsWith('.needlefall.json'));
    expect(names).toHaveLength(4);
    for (const name of names) {
      const { placements, findings } = evaluate(example(name.replace('.needlefall.json', '')));
      expect(placements.flatMap((laid) => laid.passes.filter((pass) => pass.kind === 'missing')), name).toEqual([]);
      expect(placements.filter(({ standing }) => standing.kind === 'impossible' || standing.kind === 'unreadable'), name).toEqual([]);
      expect(findings.filter((finding) => finding.severity === 'error'), name).toEqual([]);
    }
  });

  it('a petal of the practice block is as long as its chord and radius say, and closes at both tips', () => {
    // R = 6 + 1/4; the cross lies R - 1 (the middle of a 2-inch band, less the foot) from the arc's centre and 3/8 in beyond the diagonal.
    const R = 6.25;
    const half = Math.sqrt(R * R - 5.375 * 5.375);
    const petals = setOut(example('practice-block')).lines.filter((line) => line.placement === 'petal');
    expect(petals).toHaveLength(8);
    for (const line of petals) expect(pathLength(quiltPath(line))).toBeCloseTo(2 * R * Math.asin(half / R), 9);
    const [one, other] = petals.map(quiltPath);
    const tips = [startOf(one!)!, endOf(one!)!];
    for (const tip of [startOf(other!)!, endOf(other!)!]) {
      expect(Math.min(...tips.map((t) => Math.hypot(t.x - tip.x, t.y - tip.y)))).toBeLessThan(1e-9);
    }
  });

  it('the tides of the border run on from division to division without a gap, on all four measured sides', () => {
    const { lines } = setOut(example('tidewater'));
    for (const side of ['top', 'right', 'bottom', 'left']) {
      const tides = lines.filter((line) => line.area === `border:1:${side}`).map(quiltPath);
      expect(tides).toHaveLength(side === 'top' || side === 'bottom' ? 16 : 20);
      const ends = tides.flatMap((path) => [startOf(path)!, endOf(path)!]);
      const lonely = ends.filter((end, i) => !ends.some((other, j) => i !== j && Math.hypot(other.x - end.x, other.y - end.y) < 1e-9));
      expect(lonely).toHaveLength(4);
    }
  });

  it('what is mirrored and turned eight times about the middle looks the same after an eighth of a turn', () => {
    const { lines, top } = setOut(example('medallion'));
    const veins = lines.filter((line) => line.placement === 'vein').map((line) => boundsOf(quiltPath(line)));
    expect(veins).toHaveLength(16);
    const middles = veins.map((b) => ({ x: (b.minX + b.maxX) / 2 - top.width / 2, y: (b.minY + b.maxY) / 2 - top.height / 2 }));
    const away = middles.map(({ x, y }) => Math.hypot(x, y));
    expect(Math.max(...away) - Math.min(...away)).toBeLessThan(0.05);
    const quarter = middles.map(({ x, y }) => ({ x: -y, y: x }));
    for (const q of quarter) expect(Math.min(...middles.map((m) => Math.hypot(m.x - q.x, m.y - q.y)))).toBeLessThan(1e-9);
  });

  it('the king-size top has more than ten thousand lines', () => {
    expect(setOut(example('king-size')).lines.length).toBeGreaterThan(10_000);
  });

  it('a change to one placement keeps what was made of the others', () => {
    const plan = example('tidewater');
    const before = setOut(plan);
    const sheet = plan.sheets['petals']!;
    const moved: Plan = { ...plan, sheets: { ...plan.sheets, petals: { ...sheet, placements: { ...sheet.placements, middle: { ...sheet.placements['middle']!, pose: { x: 0.1, y: 0, angle: 0 }, registrations: [] } } } } };
    const after = setOut(moved);
    expect(after.top.areas).toBe(before.top.areas);
    const same = after.placements.filter((laid, i) => laid === before.placements[i]);
    expect(same).toHaveLength(before.placements.filter((laid) => laid.sheet !== 'petals' || laid.placement !== 'middle').length);
    expect(after.lines.filter((line, i) => line !== before.lines[i]).every((line) => line.placement === 'middle')).toBe(true);
  });
});
