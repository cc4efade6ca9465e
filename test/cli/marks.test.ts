import { describe, expect, it } from 'vitest';
import { marksContract } from './contracts.ts';
import { example, json, say } from './run.ts';

describe('needlefall marks', () => {
  it.each(['practice-block', 'medallion', 'tidewater', 'king-size'])('gives the documented JSON for %s', async (name) => {
    const { exit, value } = await json(marksContract, 'marks', example(name));
    expect(exit).toBe(0);
    expect(value.templates.length).toBeGreaterThan(2);
    for (const { marks, placements } of value.templates) {
      const letters = new Set(marks.map(({ letter }) => `mark:${letter}`));
      for (const { by, held, wander } of placements) {
        expect(held).toBe(true);
        expect(by.length).toBeGreaterThan(0);
        for (const { put } of by) if (put.startsWith('mark:')) expect(letters).toContain(put);
        expect(wander!.worst).toBe(Math.max(...wander!.bands.flat().map(({ wide }) => wide)));
      }
    }
  });

  it('reads as a list: what to draw on templates and top, and one sentence for each way of laying', async () => {
    const { exit, text } = await say('marks', example('practice-block'));
    expect(exit).toBe(0);
    expect(text).toContain('ON THE TEMPLATES');
    expect(text).toContain('Face down: A along the diagonal down to the right, B on the right edge.');
    expect(text).toContain('dot 1: on the vertical centre line, 4 in above the horizontal centre line, and its images: 4 in all');
    expect(text).toMatch(/The needle line may stray 1\/\d+ in/);
  });

  it('says in one sentence what cannot be read', async () => {
    const { exit, text, complaint } = await say('marks', 'no-such-file.needlefall.json');
    expect(exit).toBe(2);
    expect(text).toBe('');
    expect(complaint.trim().split('\n')).toHaveLength(1);
  });
});
