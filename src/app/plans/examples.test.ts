import { describe, expect, it } from 'vitest';
import { readPlan } from '../../model/codec.ts';
import { EXAMPLES } from './examples.ts';
import { planOfExample } from './open.ts';

describe('examples', () => {
  it('begin with the one a first visitor sees', () => {
    expect(EXAMPLES.map(({ name }) => name)).toContain('King size');
    expect(EXAMPLES[0].id).toBe('tidewater');
  });

  it.each(EXAMPLES)('$name is read by the reader of plans as just what stands in its file', async (example) => {
    const text = await example.text();
    expect(readPlan(text)).toEqual({ ok: true, value: JSON.parse(text) as unknown });
    expect(await planOfExample(example)).toEqual(readPlan(text));
  });
});
