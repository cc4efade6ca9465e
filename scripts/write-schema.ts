// Writes the JSON Schema of the plan file to schema/. A test fails when the file there is not what this writes.

import { mkdirSync, writeFileSync } from 'node:fs';
import { planJsonSchema } from '../src/model/json-schema.ts';
import { writeJson } from '../src/model/json-write.ts';

const folder = new URL('../schema/', import.meta.url);
mkdirSync(folder, { recursive: true });
writeFileSync(new URL('needlefall-plan.schema.json', folder), `${writeJson(planJsonSchema())}\n`);
