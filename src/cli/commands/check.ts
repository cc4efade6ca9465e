// `needlefall check`: what is to be mended before sewing.

import type { Command } from 'commander';
import type { Finding, Severity } from '../../check/finding.ts';
import { evaluate } from '../../engine/evaluate.ts';
import type { Plan } from '../../model/plan.ts';
import { type Answer, type Give, DONE, TO_MEND, asJson, refused } from '../answer.ts';
import { readPlanFile } from '../files.ts';
import { isToMend } from '../say/to-mend.ts';
import { counted } from '../say/words.ts';

export function checkCommand(program: Command, give: Give): void {
  program
    .command('check')
    .description('Look the plan over before sewing: what would be cut off, cannot be reached, does not meet or does not fit.')
    .argument('<plan>', 'a plan file, or - for standard input')
    .option('--json', 'as JSON')
    .addHelpText('after', '\nThe exit code is 1 when something is to be mended before sewing.\n\nExample:\n  needlefall check my-quilt.needlefall.json')
    .action((plan: string, options: { json?: boolean }) => give(checked(plan, options.json ?? false)));
}

function checked(file: string, json: boolean): Answer {
  const plan = readPlanFile(file);
  if (!plan.ok) return refused(plan.problem);
  const { findings } = evaluate(plan.value);
  const exit = findings.some(isToMend) ? TO_MEND : DONE;
  return { exit, text: json ? asJson({ findings: findings.map(findingJson) }) : inWords(plan.value, findings) };
}

/** A finding as the documented JSON holds it: null where there is nothing to measure, `accepted` only where it is left so. */
function findingJson({ code, severity, message, where, measured, limit, accepted }: Finding) {
  return { code, severity, message, where, measured: measured ?? null, limit: limit ?? null, ...(accepted !== undefined && { accepted }) };
}

interface Group {
  readonly heading: string;
  /** As in "2 to mend". */
  readonly short: string;
  readonly holds: (finding: Finding) => boolean;
}

const stands = (severity: Severity) => (finding: Finding) => finding.severity === severity && finding.accepted === undefined;

const GROUPS: readonly Group[] = [
  { heading: 'Mend before sewing', short: 'to mend', holds: stands('error') },
  { heading: 'Look at it and decide', short: 'to decide', holds: stands('warning') },
  { heading: 'Good to know', short: 'good to know', holds: stands('note') },
  { heading: 'Left so', short: 'left so', holds: (finding) => finding.accepted !== undefined },
];

function inWords(plan: Plan, findings: readonly Finding[]): string {
  const groups = GROUPS.map(({ heading, short, holds }) => ({ heading, short, held: findings.filter(holds) })).filter(({ held }) => held.length > 0);
  if (groups.length === 0) return `${plan.name}: nothing to mend.`;
  const summary = groups.map(({ short, held }) => `${held.length} ${short}`).join(', ');
  const pages = groups.map(({ heading, held }) => `\n${heading}\n${held.map(inLines).join('\n')}`);
  return `${plan.name}: ${counted(findings.length, 'finding')}, ${summary}.\n${pages.join('\n')}`;
}

function inLines({ message, where, accepted }: Finding): string {
  const place = [where.sheet, where.placement, where.pass].filter((part) => part !== undefined).join('/');
  const ids = [where.area, place, where.field].filter((part) => part !== undefined && part !== '').join(', ');
  const under = [ids, accepted === undefined ? '' : `Left so: ${accepted}`].filter((line) => line !== '');
  return [`  - ${message}`, ...under.map((line) => `      ${line}`)].join('\n');
}
