// The published JSON Schema of the plan file, made from the same schema the reader checks against.

import { z } from 'zod';
import { PLAN_VERSION } from './plan.ts';
import { planSchema } from './schema.ts';

/** The JSON Schema (draft 2020-12) of a plan file of this version. */
export function planJsonSchema(): { readonly [field: string]: unknown } {
  const { $schema, ...rest } = z.toJSONSchema(planSchema, { target: 'draft-2020-12', io: 'input' });
  return {
    $schema,
    title: `Needlefall plan, version ${PLAN_VERSION}`,
    description: 'What a quilter decided about the ruler work of one quilt. Lengths are inches, angles degrees clockwise, x to the right, y down. Fields not named here are kept.',
    ...rest,
  };
}
