// Paper as people name it on the command line.

import { type Outcome, fail, ok } from '../num/outcome.ts';
import { readLength } from '../num/inches.ts';
import type { Paper } from '../paper/pdf/options.ts';

const SHEETS = ['letter', 'a4', 'tabloid', 'a3'] as const;

/** The paper of that name: `letter`, `a4`, `tabloid`, `a3`, or `roll:` and a width such as 36 or 90cm. */
export function readPaper(text: string): Outcome<Paper, string> {
  const name = text.trim().toLowerCase();
  const sheet = SHEETS.find((each) => each === name);
  if (sheet) return ok(sheet);
  const roll = /^roll[:=](.+)$/.exec(name)?.[1];
  if (roll === undefined) return fail(`There is no paper "${text}". There are ${SHEETS.join(', ')}, and roll: with a width, such as roll:36.`);
  const width = readLength(roll);
  return width.ok ? ok({ roll: width.value }) : fail(`The width of the roll could not be understood. ${width.problem.message}`);
}
