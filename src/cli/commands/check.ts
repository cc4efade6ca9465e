// `needlefall check`: what is to be mended before sewing.

import type { Command } from 'commander';
import type { Finding, Severity } from '../../check/finding.ts';
import { evaluate } from '../../engine/evaluate.ts';
import type { Plan } from '../../model/plan.ts';
import { type Answer, DONE, TO_MEND, asJson, refused } from '../answer.ts';
import type { Give } from '../command-line.ts';
import { readPlanFile } from '../files.ts';
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
  const exit = findings.some((finding) => finding.severity === 'error') ? TO_MEND : DONE;
  return { exit, text: json ? asJson({ findings: findings.map(findingJson) }) : inWords(plan.value, findings) };
}

/** A finding as the documented JSON holds it: every field there, null where there is nothing to measure. */
function findingJson({ code, severity, message, where, measured, limit }: Finding) {
  return { code, severity, message, where, measured: measured ?? null, limit: limit ?? null };
}

const HEADINGS: readonly (readonly [Severity, string])[] = [
  ['error', 'Mend before sewing'],
  ['warning', 'Look at it and decide'],
  ['note', 'Good to know'],
];

function inWords(plan: Plan, findings: readonly Finding[]): string {
  if (findings.length === 0) return `${plan.name}: nothing to mend.`;
  const groups = HEADINGS.map(([severity, heading]) => [heading, findings.filter((finding) => finding.severity === severity)] as const).filter(([, group]) => group.length > 0);
  const summary = groups.map(([heading, group]) => `${group.length} to ${SUMMARY[heading]}`);
  return `${plan.name}: ${counted(findings.length, 'finding')}, ${summary.join(', ')}.\n${groups.map(([heading, group]) => `\n${heading}\n${group.map(inLines).join('\n')}`).join('\n')}`;
}

const SUMMARY: { readonly [heading: string]: string } = {
  'Mend before sewing': 'mend',
  'Look at it and decide': 'decide',
  'Good to know': 'know',
};

function inLines({ message, where }: Finding): string {
  const place = [where.sheet, where.placement, where.pass].filter((part) => part !== undefined).join('/');
  const ids = [where.area, place, where.field].filter((part) => part !== undefined && part !== '');
  return `  - ${message}${ids.length > 0 ? `\n      ${ids.join(', ')}` : ''}`;
}
