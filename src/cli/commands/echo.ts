// `needlefall echo`: the pose of a template whose needle line stays at a distance from a line.

import type { Command } from 'commander';
import { pathLength } from '../../geometry/measure.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import { EYE } from '../../num/tolerances.ts';
import { type LengthStyle } from '../../num/inches.ts';
import { type Echo, type EchoOptions, echo } from '../../place/echo/echo.ts';
import type { Following } from '../../place/follow/following.ts';
import { scoreOf } from '../../place/follow/score.ts';
import { type Answer, type Give, asJson, done, refused } from '../answer.ts';
import { chainJson, followingInWords, followingJson, lengthNamed, lineOf, off } from '../following.ts';
import { kitFor } from '../kit.ts';
import { counted, lengthBy } from '../say/words.ts';
import { type TemplateOptions, questionOf } from './needle.ts';

interface Options extends TemplateOptions {
  readonly line: string;
  readonly distance: string;
  readonly side: string;
  readonly tolerance: string;
  readonly chain?: boolean;
  readonly json?: boolean;
}

export function echoCommand(program: Command, give: Give): void {
  program
    .command('echo')
    .description('Lay a template so that the needle stays at a distance from a line that is sewn: the pose that is off by least, or that follows the longest stretch.')
    .requiredOption('--line <path>', 'the line, as SVG path data in inches')
    .requiredOption('--foot <length>', 'across the foot, such as 1/2, 9/16 or 12.7mm; or the id of a foot in the kit')
    .option('--distance <length>', 'how far from the line', '1/4')
    .option('--side <side>', 'left or right of the line as it runs, or either', 'either')
    .option('--tolerance <length>', 'how far off still counts as following', String(EYE))
    .option('--outline <path>', 'the outline of the template, as SVG path data in inches')
    .option('--window <path>', 'a window in it; may be given several times', (path: string, before: readonly string[] = []) => [...before, path])
    .option('--template <id>', 'a template of the kit, or a built-in family at its usual sizes')
    .option('--plan <file>', "take the template and the foot from this plan's kit")
    .option('--chain', 'where one placement cannot follow the whole line, look for several that do')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Give either an --outline or a --template.

Example:
  needlefall echo --line "M -2 0 A 4.25 4.25 0 0 1 2 0" --template circle-6 --foot 1/2 --distance 1/4`,
    )
    .action((options: Options) => give(echoed(options)));
}

function echoed(options: Options): Answer {
  const { side } = options;
  if (side !== 'left' && side !== 'right' && side !== 'either') return refused(`The side is left, right or either, not "${side}".`);
  const line = lineOf(options.line);
  if (!line.ok) return refused(line.problem);
  const distance = lengthNamed('distance', options.distance);
  if (!distance.ok) return refused(distance.problem);
  const tolerance = lengthNamed('tolerance', options.tolerance);
  if (!tolerance.ok) return refused(tolerance.problem);
  const question = questionOf(options);
  if (!question.ok) return refused(question.problem);
  const kit = kitFor(options.plan);
  if (!kit.ok) return refused(kit.problem);
  const foot = Object.hasOwn(kit.value.feet, options.foot) ? kit.value.feet[options.foot] : undefined;
  const needleOffset = { x: foot?.needleOffset[0] ?? 0, y: foot?.needleOffset[1] ?? 0 };
  const needle = needleLines(question.value.shape, question.value.diameter);
  const asked: EchoOptions<'quilt'> = { distance: distance.value, side, tolerance: tolerance.value, needleOffset, chain: options.chain ?? false };
  const found = echo(line.value, { needle }, asked);
  if (found.kind === 'unusable') return refused(found.detail);
  const length = pathLength(line.value);
  if (!options.json) return done(inWords(found, distance.value, tolerance.value));
  const told = (following: Following<'quilt'>) => followingJson(following, needle, needleOffset, scoreOf(following, length, tolerance.value));
  return done(
    asJson({
      kind: found.kind,
      distance: distance.value,
      tolerance: tolerance.value,
      length,
      exact: found.kind === 'whole' && found.exact,
      best: found.kind === 'none' ? null : told(found.best),
      whole: found.kind === 'whole' ? told(found.best) : found.whole ? told(found.whole) : null,
      chain: found.kind === 'part' && found.chain ? chainJson(found.chain, told) : null,
    }),
  );
}

const STYLE: LengthStyle = { unit: 'in', smallest: 32 };

function inWords(found: Exclude<Echo<'quilt'>, { kind: 'unusable' }>, distance: number, tolerance: number): string {
  const length = lengthBy(STYLE);
  if (found.kind === 'whole') {
    const exactly = found.exact ? `The template follows the whole line at ${length(distance)} exactly.` : `The template cannot keep ${length(distance)} from this line exactly. Along the whole line it is off by at most ${off(found.best.deviation.greatest)}.`;
    return `${exactly}\n\n  ${followingInWords(found.best, length)}`;
  }
  const whole = found.whole ? `Laid along the whole line it is off by at least ${off(found.whole.deviation.greatest)} somewhere.` : 'It is too short for the whole line.';
  if (found.kind === 'none') return `The template follows no stretch of this line within ${off(tolerance)}. ${whole}`;
  const { chain } = found;
  return [
    `One placement cannot follow the whole line at ${length(distance)} within ${off(tolerance)}. ${whole}`,
    `\nThe longest stretch:\n  ${followingInWords(found.best, length)}`,
    ...(chain ? [`\n${counted(chain.placements.length, 'placement')}, one after the other${chain.missed.length > 0 ? `; ${counted(chain.missed.length, 'stretch', 'stretches')} missed` : ''}:`, ...chain.placements.map((each) => `  ${followingInWords(each, length)}`)] : []),
  ].join('\n');
}
