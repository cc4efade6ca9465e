// Plans from files. A file that cannot be read changes nothing; everything wrong with it comes back.

import type { PlanProblem } from '../../model/codec.ts';
import type { Plan } from '../../model/plan.ts';
import type { Outcome } from '../../num/outcome.ts';
import { fail, ok } from '../../num/outcome.ts';
import type { Example } from './examples.ts';

/** Why a plan was not opened. */
export interface NotOpened {
  /** Of the file, or of the plan in the list. */
  readonly fileName: string;
  readonly problems: readonly PlanProblem[];
}

export type PlanRead = Outcome<Plan, readonly PlanProblem[]>;

/** A plan larger than this, in bytes, is another kind of file. */
const LARGEST = 64 * 1024 * 1024;

/** The plan in a file the quilter chose or dropped. */
export async function planOfFile(file: File): Promise<PlanRead> {
  return file.size > LARGEST ? tooLarge(file.size) : planIn(() => file.text());
}

/**
 * The plan of an example. The examples are part of the app and were tried with it: read whole, each is just what stands in its file,
 * so the reader need not be waited for.
 */
export async function planOfExample(example: Example): Promise<PlanRead> {
  try {
    return ok(JSON.parse(await example.text()) as Plan);
  } catch {
    return fail([NOT_THERE]);
  }
}

const NOT_THERE: PlanProblem = { path: '', expected: 'a file that can be read', found: 'nothing', message: 'The file could not be read. Is it still where it was?' };

async function planIn(textOf: () => Promise<string>): Promise<PlanRead> {
  const codec = import('../../model/codec.ts');
  let text: string;
  try {
    text = await textOf();
  } catch {
    await codec;
    return fail([NOT_THERE]);
  }
  const { readPlan } = await codec;
  return readPlan(text);
}

function tooLarge(bytes: number): PlanRead {
  const found = `${Math.round(bytes / 1024 / 1024)} MB`;
  return fail([{ path: '', expected: 'a plan', found, message: `This file is ${found} large; a plan is far smaller.` }]);
}
