import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { mutateValue } from '../../test/support/mutate.ts';
import { random } from '../num/random.ts';
import { planJsonSchema } from './json-schema.ts';
import { writeJson } from './json-write.ts';
import { planSchema } from './schema.ts';

const published = readFileSync(new URL('../../schema/needlefall-plan.schema.json', import.meta.url), 'utf8');
const full: unknown = JSON.parse(readFileSync(new URL('../../test/corpus/plans/version-1.needlefall.json', import.meta.url), 'utf8'));

describe('the published JSON Schema', () => {
  it('is the one the schema gives (write it again with `npm run schema`)', () => {
    expect(published).toBe(`${writeJson(planJsonSchema())}\n`);
  });

  it('names no address to fetch', () => {
    expect(published.match(/https?:[^"]*/g)).toEqual(['https://json-schema.org/draft/2020-12/schema']);
  });

  it('says the same as the reader about 5,000 changed plans (seed 2)', () => {
    // Second opinion: Ajv, a JSON Schema validator that shares no code with the reader.
    const validate = new Ajv2020({ strict: false }).compile(JSON.parse(published) as object);
    expect(validate(full), JSON.stringify(validate.errors)).toBe(true);
    const seeded = random(2);
    const verdicts = { good: 0, bad: 0 };
    for (let i = 0; i < 5000; i++) {
      const value = mutateValue(full, seeded);
      const good = planSchema.safeParse(value).success;
      verdicts[good ? 'good' : 'bad']++;
      if (validate(value) !== good) expect.fail(`schema ${good ? 'refuses' : 'takes'} what the reader ${good ? 'takes' : 'refuses'}: ${JSON.stringify(validate.errors)} ${JSON.stringify(value)}`);
    }
    expect(Math.min(verdicts.good, verdicts.bad)).toBeGreaterThan(500);
  });
});
