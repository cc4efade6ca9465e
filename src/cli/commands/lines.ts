// `needlefall lines`: every line the needle will sew.

import type { Command } from 'commander';
import { evaluate } from '../../engine/evaluate.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { writePathData } from '../../geometry/svg/write.ts';
import { quiltPath } from '../../stitch/quilt-path.ts';
import { styleOf } from '../../model/length-style.ts';
import { type Answer, type Give, asJson, done, refused } from '../answer.ts';
import { readPlanFile } from '../files.ts';
import { counted, lengthBy, runBy, table } from '../say/words.ts';

export function linesCommand(program: Command, give: Give): void {
  program
    .command('lines')
    .description('Set out the stitching of the chosen sheets: every line the needle will sew, repeats and all.')
    .argument('<plan>', 'a plan file, or - for standard input')
    .option('--json', 'as JSON, each line as SVG path data in quilt coordinates')
    .addHelpText('after', '\nExample:\n  needlefall lines my-quilt.needlefall.json')
    .action((plan: string, options: { json?: boolean }) => give(lines(plan, options.json ?? false)));
}

/** The stitched lines as the documented JSON holds them, in quilt coordinates and inches. */
export function linesJson(evaluation: Evaluation) {
  return evaluation.lines.map((line) => ({
    id: line.id,
    area: line.area,
    sheet: line.sheet,
    placement: line.placement,
    pass: line.pass,
    d: writePathData(quiltPath(line)),
    length: line.length,
  }));
}

/** Of all stitched lines together, in inches. */
export function totalLengthOf(evaluation: Evaluation): number {
  return evaluation.lines.reduce((sum, line) => sum + line.length, 0);
}

function lines(file: string, json: boolean): Answer {
  const plan = readPlanFile(file);
  if (!plan.ok) return refused(plan.problem);
  const evaluation = evaluate(plan.value);
  const total = totalLengthOf(evaluation);
  if (json) return done(asJson({ lines: linesJson(evaluation), totalLength: total }));
  if (evaluation.lines.length === 0) return done(`${plan.value.name}: nothing to sew. No chosen sheet has a pass that can be sewn.`);
  const length = lengthBy(styleOf(plan.value));
  const run = runBy(styleOf(plan.value));
  const rows = passesOf(evaluation, length).map(({ sheet, placement, pass, count, areas, each }) => [
    plan.value.sheets[sheet]?.name ?? sheet,
    `${placement}/${pass}`,
    length(each),
    counted(count, 'line'),
    `in ${counted(areas, 'area')}`,
  ]);
  return done(`${plan.value.name}: ${counted(evaluation.lines.length, 'line')}, ${run(total)} of stitching.\n\n${table(['sheet', 'pass', 'length', 'how many', ''], rows)}`);
}

interface SewnPass {
  readonly sheet: string;
  readonly placement: string;
  readonly pass: string;
  readonly each: number;
  count: number;
  areas: number;
}

/** The passes that are sewn, with how often, in the order of their lines; a pass that comes out longer in another area, so that it shows, counts by itself. */
function passesOf({ lines: all }: Evaluation, shown: (inches: number) => string): readonly SewnPass[] {
  const passes = new Map<string, SewnPass & { readonly in: Set<string> }>();
  for (const { area, sheet, placement, pass, length } of all) {
    const key = [sheet, placement, pass, shown(length)].join('/');
    const known = passes.get(key) ?? { sheet, placement, pass, each: length, count: 0, areas: 0, in: new Set<string>() };
    known.count++;
    known.in.add(area);
    known.areas = known.in.size;
    passes.set(key, known);
  }
  return [...passes.values()];
}
