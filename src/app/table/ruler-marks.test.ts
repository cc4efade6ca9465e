import { describe, expect, it } from 'vitest';
import { rulerMarks } from './ruler-marks.ts';

describe('ruler marks', () => {
  it('fall where the inches are', () => {
    const { labels, ticks } = rulerMarks(-2, 1000, 10, 60, 'in');
    expect(labels.slice(0, 3)).toEqual([
      { at: 20, text: '0' },
      { at: 80, text: '6' },
      { at: 140, text: '12' },
    ]);
    expect(labels.at(-1)).toEqual({ at: 620, text: '60' });
    expect(ticks[0]).toEqual({ at: 20, reach: 1 });
  });

  // 1 in = 2.54 cm exactly (NIST, 1959): the 10 cm mark lies at 10 / 2.54 in.
  it('fall where the centimetres are', () => {
    const { labels } = rulerMarks(0, 1000, 12.7, 60, 'cm');
    const ten = labels.find(({ text }) => text === '10')!;
    expect(ten.at).toBeCloseTo((10 / 2.54) * 12.7, 9);
  });

  it('never crowd, at any scale', () => {
    for (const unit of ['in', 'cm'] as const) {
      for (let scale = 2; scale < 2000; scale *= 1.07) {
        const { labels, ticks } = rulerMarks(1.3, 900, scale, 120, unit);
        expect(leastGap(labels)).toBeGreaterThan(43);
        expect(leastGap(ticks)).toBeGreaterThan(3.9);
      }
    }
  });

  it('are written as fractions of an inch', () => {
    expect(rulerMarks(0, 300, 200, 60, 'in').labels.map(({ text }) => text)).toContain('1/4');
  });
});

function leastGap(marks: readonly { readonly at: number }[]): number {
  return Math.min(...marks.slice(1).map(({ at }, i) => at - marks[i]!.at));
}
