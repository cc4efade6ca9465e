// Plan files of older versions, brought up to this one step by step. When the version grows, a step is added here and
// a file of the version before goes to test/corpus/plans; the gate below fails the build until both are done.

import { PLAN_VERSION } from './plan.ts';

/** Any JSON object. */
export type JsonObject = { readonly [field: string]: unknown };

/** One step from a version to the next. */
export interface Migration {
  readonly from: number;
  /** What changed, in a sentence. */
  readonly about: string;
  /** The file's value in the next version; must not throw, whatever it is given, and leaves alone what it does not understand. */
  readonly change: (file: JsonObject) => JsonObject;
}

/** In order; there is none yet, since version 1 is the first. */
export const MIGRATIONS: readonly Migration[] = [];

/** The file's value after every step from its version to `to`, with its version set. */
export function migrate(file: JsonObject, from: number, to: number = PLAN_VERSION, migrations: readonly Migration[] = MIGRATIONS): JsonObject {
  let value = file;
  for (let version = from; version < to; version++) {
    const step = migrations.find((migration) => migration.from === version);
    value = { ...(step ? step.change(value) : value), version: version + 1 };
  }
  return value;
}

/** What is still missing before a version may be published: a step from each older version, and a file of each version to try it on. */
export function migrationGaps(version: number, migrations: readonly Migration[], versionsOnFile: readonly number[]): readonly string[] {
  const gaps: string[] = [];
  for (let older = 1; older < version; older++) {
    if (migrations.filter((migration) => migration.from === older).length !== 1) gaps.push(`exactly one migration from version ${older}`);
  }
  for (let each = 1; each <= version; each++) {
    if (!versionsOnFile.includes(each)) gaps.push(`a plan file of version ${each}`);
  }
  return gaps;
}
