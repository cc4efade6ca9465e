// `needlefall export`: the drawing for other programs, at true size.

import { type Command, Option } from 'commander';
import { drawTop } from '../../drawing/draw.ts';
import { evaluate } from '../../engine/evaluate.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { paintDxf } from '../../paper/dxf.ts';
import { paintSvg } from '../../paper/svg.ts';
import { type Answer, type Give, asJson, done, refused } from '../answer.ts';
import { areaProblem } from '../area-named.ts';
import { readPlanFile, writeFileBeside } from '../files.ts';
import { areasJson } from './areas.ts';
import { linesJson, totalLengthOf } from './lines.ts';
import { toMendFirst } from '../say/to-mend.ts';

interface Options {
  readonly to: 'svg' | 'dxf' | 'json';
  readonly out: string;
  readonly area?: string;
}

export function exportCommand(program: Command, give: Give): void {
  program
    .command('export')
    .description('Write the drawing for other programs, at true size: SVG or DXF with arcs kept as arcs, or everything as JSON.')
    .argument('<plan>', 'a plan file, or - for standard input')
    .addOption(new Option('--to <kind>', 'what to write').choices(['svg', 'dxf', 'json']).makeOptionMandatory())
    .requiredOption('--out <file>', 'the file to write')
    .option('--area <id>', 'only this area; `needlefall areas` lists them')
    .addHelpText('after', '\nExamples:\n  needlefall export my-quilt.needlefall.json --to svg --out quilt.svg\n  needlefall export my-quilt.needlefall.json --to dxf --out border.dxf --area border:1:top')
    .action((plan: string, options: Options) => give(exported(plan, options)));
}

function exported(file: string, { to, out, area }: Options): Answer {
  const plan = readPlanFile(file);
  if (!plan.ok) return refused(plan.problem);
  const evaluation = evaluate(plan.value);
  const unknown = areaProblem(evaluation.top, area);
  if (unknown !== undefined) return refused(unknown);
  const failed = writeFileBeside(out, content(evaluation, to, area), file);
  return failed === undefined ? done(`${out} is written.`, toMendFirst(evaluation.findings)) : refused(failed);
}

function content(evaluation: Evaluation, to: Options['to'], area: string | undefined): string {
  const list = () => drawTop(evaluation, { labels: true, ...(area === undefined ? {} : { area }) });
  switch (to) {
    case 'svg':
      return paintSvg(list(), { title: evaluation.plan.name });
    case 'dxf':
      return paintDxf(list());
    case 'json':
      return `${asJson(everythingJson(evaluation, area))}\n`;
  }
}

/** What `areas` and `lines` give, in one file. */
function everythingJson(whole: Evaluation, area: string | undefined) {
  const isWanted = (id: string) => area === undefined || id === area;
  const evaluation = { ...whole, lines: whole.lines.filter((line) => isWanted(line.area)) };
  const { plan, top } = evaluation;
  return {
    name: plan.name,
    width: top.width,
    height: top.height,
    areas: areasJson({ ...top, areas: top.areas.filter(({ id }) => isWanted(id)) }),
    lines: linesJson(evaluation),
    totalLength: totalLengthOf(evaluation),
  };
}
