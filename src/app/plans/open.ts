// Plans from files onto the table. A file that cannot be read changes nothing; everything wrong with it comes back.

import type { PlanProblem } from '../../model/codec.ts';
import type { Plan } from '../../model/plan.ts';
import type { Outcome } from '../../num/outcome.ts';
import { fail } from '../../num/outcome.ts';
import { openPlan } from '../../session/change-plan.ts';
import type { Session } from '../../session/store.ts';
import type { Example } from './examples.ts';

/** Why a file was not opened. */
export interface NotOpened {
  readonly fileName: string;
  readonly problems: readonly PlanProblem[];
}

/** A plan larger than this, in bytes, is another kind of file. */
const LARGEST = 64 * 1024 * 1024;

/** Opens a file the quilter chose or dropped; answers with what is wrong, or with nothing. */
export async function openFile(session: Session, file: File): Promise<NotOpened | undefined> {
  const read = file.size > LARGEST ? tooLarge(file.size) : await planIn(() => file.text());
  if (!read.ok) return { fileName: file.name, problems: read.problem };
  openPlan(session, read.value, { kind: 'file', name: file.name });
  return undefined;
}

/** The plan of an example, fetched from beside the page. */
export async function planOfExample(example: Example): Promise<Outcome<Plan, readonly PlanProblem[]>> {
  return planIn(async () => {
    const answer = await fetch(example.address);
    if (!answer.ok) throw new Error(`${answer.status}`);
    return answer.text();
  });
}

async function planIn(textOf: () => Promise<string>): Promise<Outcome<Plan, readonly PlanProblem[]>> {
  const codec = import('../../model/codec.ts');
  let text: string;
  try {
    text = await textOf();
  } catch {
    await codec;
    return fail([{ path: '', expected: 'a file that can be read', found: 'nothing', message: 'The file could not be read. Is it still where it was?' }]);
  }
  const { readPlan } = await codec;
  return readPlan(text);
}

function tooLarge(bytes: number): Outcome<Plan, readonly PlanProblem[]> {
  const found = `${Math.round(bytes / 1024 / 1024)} MB`;
  return fail([{ path: '', expected: 'a plan', found, message: `This file is ${found} large; a plan is far smaller.` }]);
}
