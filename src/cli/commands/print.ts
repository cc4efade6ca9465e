// `needlefall print`: full-size patterns on paper.

import { type Command, Option } from 'commander';
import { drawTop } from '../../drawing/draw.ts';
import { evaluate } from '../../engine/evaluate.ts';
import { readLength } from '../../num/inches.ts';
import { readPaperFonts } from '../../paper/fonts/read-fonts.edge.ts';
import type { Orientation } from '../../paper/pdf/options.ts';
import { makePdf } from '../../paper/pdf/pdf.edge.ts';
import { type Answer, type Give, done, refused } from '../answer.ts';
import { areaProblem } from '../area-named.ts';
import { readPlanFile, writeFileBeside } from '../files.ts';
import { readPaper } from '../paper.ts';
import { toMendFirst } from '../say/to-mend.ts';
import { counted } from '../say/words.ts';

interface Options {
  readonly out: string;
  readonly paper: string;
  readonly area?: string;
  readonly overlap: string;
  readonly orientation?: Orientation;
  readonly cover: boolean;
}

export function printCommand(program: Command, give: Give): void {
  program
    .command('print')
    .description('Make a full-size PDF of the whole top or of one area, on as many pages as it needs.')
    .argument('<plan>', 'a plan file, or - for standard input')
    .requiredOption('--out <file>', 'the PDF file to write')
    .option('--paper <paper>', 'letter, a4, tabloid, a3, or roll:WIDTH such as roll:36', 'letter')
    .option('--area <id>', 'only this area; `needlefall areas` lists them')
    .option('--overlap <length>', 'how far neighbouring pages show the same', '1/2')
    .addOption(new Option('--orientation <way>', 'which way the pages lie (default: whichever needs fewer)').choices(['portrait', 'landscape']))
    .option('--no-cover', 'leave out the first page, with the page map and the legend')
    .addHelpText(
      'after',
      `
Print it at 100 %, and check the square on each page: it should measure exactly 1 in.

Examples:
  needlefall print my-quilt.needlefall.json --out quilt.pdf --paper tabloid
  needlefall print my-quilt.needlefall.json --out border.pdf --paper roll:36 --area border:1:top`,
    )
    .action((plan: string, options: Options) => give(printed(plan, options)));
}

async function printed(file: string, options: Options): Promise<Answer> {
  const paper = readPaper(options.paper);
  if (!paper.ok) return refused(paper.problem);
  const overlap = readLength(options.overlap);
  if (!overlap.ok) return refused(`The overlap could not be understood. ${overlap.problem.message}`);
  if (overlap.value < 0) return refused('The overlap cannot be less than nothing.');
  const plan = readPlanFile(file);
  if (!plan.ok) return refused(plan.problem);
  const evaluation = evaluate(plan.value);
  const unknown = areaProblem(evaluation.top, options.area);
  if (unknown !== undefined) return refused(unknown);

  const area = evaluation.top.areas.find(({ id }) => id === options.area);
  const list = drawTop(evaluation, { labels: true, ...(area && { area: area.id }) });
  let pages = 0;
  const pdf = await makePdf(
    list,
    {
      paper: paper.value,
      overlap: overlap.value,
      title: plan.value.name,
      shownIn: plan.value.shownIn,
      cover: options.cover,
      ...(area && { area: area.name }),
      ...(options.orientation && { orientation: options.orientation }),
    },
    await readPaperFonts(),
    { onProgress: ({ of }) => (pages = of) },
  );
  if (!pdf.ok) return refused(pdf.problem.message);
  const failed = writeFileBeside(options.out, pdf.value, file);
  if (failed !== undefined) return refused(failed);
  return done(`${options.out} is written: ${counted(pages, 'page')}. Print it at 100 %; the square on each page should measure exactly 1 in.`, toMendFirst(evaluation.findings));
}
