// `needlefall areas`: the top laid out.

import type { Command } from 'commander';
import { evaluate } from '../../engine/evaluate.ts';
import { carryPath } from '../../geometry/change.ts';
import { writePathData } from '../../geometry/svg/write.ts';
import type { Area, LaidTop } from '../../top/area.ts';
import { styleOf } from '../../model/length-style.ts';
import { type Answer, type Give, asJson, done, refused } from '../answer.ts';
import { readPlanFile } from '../files.ts';
import { counted, lengthBy, table } from '../say/words.ts';

export function areasCommand(program: Command, give: Give): void {
  program
    .command('areas')
    .description('Lay out the top: every block, strip, triangle, border side and corner, with its size and its reference lines.')
    .argument('<plan>', 'a plan file, or - for standard input')
    .option('--json', 'as JSON, in quilt coordinates')
    .addHelpText('after', '\nExample:\n  needlefall areas my-quilt.needlefall.json')
    .action((plan: string, options: { json?: boolean }) => give(areas(plan, options.json ?? false)));
}

/** The areas as the documented JSON holds them, in quilt coordinates and inches. */
export function areasJson(top: LaidTop) {
  return top.areas.map((area) => ({
    id: area.id,
    kind: area.kind,
    width: area.width,
    height: area.height,
    boundary: writePathData(carryPath(area.frame, area.boundary)),
    referenceLines: area.referenceLines.map((line) => ({ id: line.id, d: writePathData(carryPath(area.frame, line.path)) })),
  }));
}

function areas(file: string, json: boolean): Answer {
  const plan = readPlanFile(file);
  if (!plan.ok) return refused(plan.problem);
  const { top } = evaluate(plan.value);
  if (json) return done(asJson({ areas: areasJson(top) }));
  const length = lengthBy(styleOf(plan.value));
  const size = (area: Area) => `${length(area.width)} x ${length(area.height)}`;
  const rows = top.areas.map((area) => [area.id, area.name, size(area), area.referenceLines.map((line) => line.id).join(', ')]);
  return done(`${plan.value.name}: ${length(top.width)} x ${length(top.height)}, ${counted(top.areas.length, 'area')}.\n\n${table(['area', 'which', 'size', 'reference lines'], rows)}`);
}
