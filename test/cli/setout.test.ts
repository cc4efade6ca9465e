import { describe, expect, it } from 'vitest';
import { example, say } from './run.ts';

interface Result {
  readonly count: number;
  readonly spacing: number;
  readonly height: number;
  readonly pose: { readonly x: number; readonly y: number; readonly angle: number; readonly flipped: boolean };
  readonly forgiveness: { readonly heightPerSpacing: number };
  readonly divisions: readonly { readonly at: number; readonly rounded: number }[];
  readonly terms: { readonly [term: string]: number };
  readonly score: number;
}

const SIDE = ['setout', '--length', '60', '--width', '6', '--clearance', '1/4', '--foot', '1/2'];
// A circle of 6 in and a half-inch foot: the needle runs at 3 1/4.
const R = 3.25;

describe('needlefall setout', () => {
  it('sets out one side with a circle: crest R - sqrt(R^2 - s^2 / 4), nothing once the spacing exceeds 2 R', async () => {
    const { exit, text } = await say(...SIDE, '--template', 'circle', '--pattern', 'scallop', '--from', '8', '--to', '20', '--most', '50', '--json');
    expect(exit).toBe(0);
    const { results, refused } = JSON.parse(text) as { readonly results: readonly Result[]; readonly refused: readonly { readonly count: number; readonly why: string }[] };
    expect(refused.map(({ count, why }) => [count, why])).toEqual([[8, 'wider-than-the-needle-line'], [9, 'wider-than-the-needle-line']]);
    expect(results.map(({ count }) => count).sort((a, b) => a - b)).toEqual([10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20]);
    for (const { count, spacing, height, pose, forgiveness, divisions } of results) {
      const level = Math.sqrt(R * R - (60 / count) ** 2 / 4);
      expect(spacing).toBeCloseTo(60 / count, 12);
      expect(height).toBeCloseTo(R - level, 9);
      expect(forgiveness.heightPerSpacing).toBeCloseTo(60 / count / (4 * level), 9);
      expect(pose.flipped).toBe(false);
      expect(Math.hypot(pose.x, pose.y - level)).toBeLessThan(1e-9);
      expect(divisions).toHaveLength(count + 1);
    }
  });

  it('says the same to people, and why other counts do not work', async () => {
    const { exit, text } = await say(...SIDE, '--template', 'circle', '--pattern', 'scallop', '--from', '9', '--to', '10');
    expect(exit).toBe(0);
    expect(text).toContain('2 in');
    expect(text).toContain('the spacing exceeds what the needle line spans');
  });

  it('sets out a border of a plan with its kit, and gives the sheets', async () => {
    const { exit, text } = await say('setout', example('tidewater'), '--border', 'border:1:top', '--pattern', 'scallop', '--template', 'tide', '--json');
    expect(exit).toBe(0);
    const { borders } = JSON.parse(text) as { readonly borders: readonly { readonly counts: { readonly [side: string]: number }; readonly sheets: readonly { readonly repeat: unknown }[] }[] };
    expect(borders.length).toBeGreaterThan(0);
    for (const { counts, sheets } of borders) {
      expect(counts['top']).toBe(counts['bottom']);
      expect(sheets.length).toBeGreaterThan(0);
    }
  });

  it.each([
    [['setout'], 'Give a plan with --border'],
    [['setout', '--border', '1'], 'name the plan file first'],
    [[...SIDE, '--pattern', 'run'], 'Give either an --outline or a --template.'],
    [[...SIDE, '--template', 'circle'], 'Give a --pattern'],
    [[...SIDE, '--template', 'circle', '--pattern', 'zigzag'], 'There is no pattern "zigzag"'],
    [[...SIDE, '--template', 'circle', '--pattern', 'run', '--from', '3'], '--from and --to together'],
    [[...SIDE, '--template', 'circle', '--pattern', 'run', '--from', '9', '--to', '3'], 'must not be the greater'],
    [[...SIDE, '--template', 'circle', '--pattern', 'run', '--from', 'x', '--to', '3'], '--from must be a whole number'],
    [[...SIDE, '--template', 'circle', '--pattern', 'scallop', '--from', '2', '--to', '3'], 'From 10 divisions on'],
    [['setout', '--length', '-60', '--width', '6', '--template', 'circle', '--pattern', 'run'], '--length must be more than 0'],
    [['setout', '--length', '60', '--width', '6', '--clearance', '3', '--template', 'circle', '--pattern', 'run'], 'leave no room'],
  ])('%j is refused in a sentence', async (args, words) => {
    const { exit, text, complaint } = await say(...args);
    expect({ exit, text }).toEqual({ exit: 2, text: '' });
    expect(complaint).toContain(words);
  });
});
