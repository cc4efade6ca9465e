// `needlefall match`: which templates, in which poses, sew a line.

import type { Command } from 'commander';
import { pathLength } from '../../geometry/measure.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import { type LengthStyle } from '../../num/inches.ts';
import { EYE } from '../../num/tolerances.ts';
import type { Following } from '../../place/follow/following.ts';
import { scoreOf } from '../../place/follow/score.ts';
import { match } from '../../place/match/match.ts';
import { type Answer, type Give, asJson, done, refused } from '../answer.ts';
import { chainJson, followingInWords, followingJson, lengthNamed, lineOf } from '../following.ts';
import { kitFor } from '../kit.ts';
import { counted, lengthBy } from '../say/words.ts';
import { diameterOf } from './needle.ts';

interface Options {
  readonly line: string;
  readonly kit?: string;
  readonly foot?: string;
  readonly tolerance: string;
  readonly alone?: boolean;
  readonly json?: boolean;
}

export function matchCommand(program: Command, give: Give): void {
  program
    .command('match')
    .description('Find the templates, and how they lie, that sew a line in few placements.')
    .requiredOption('--line <path>', 'the line, as SVG path data in inches')
    .option('--kit <file>', 'a plan file, for its kit; the built-in kit when left out')
    .option('--foot <length>', 'across the foot, or the id of a foot in the kit; the foot on the machine when left out')
    .option('--tolerance <length>', 'how far off still counts as following', String(EYE))
    .option('--alone', 'also how far each template follows the line by itself')
    .option('--json', 'as JSON')
    .addHelpText('after', '\nExample:\n  needlefall match --line "M 0 0 C 3 -3 6 3 9 0" --kit my-quilt.needlefall.json')
    .action((options: Options) => give(matched(options)));
}

function matched(options: Options): Answer {
  const line = lineOf(options.line);
  if (!line.ok) return refused(line.problem);
  const tolerance = lengthNamed('tolerance', options.tolerance);
  if (!tolerance.ok) return refused(tolerance.problem);
  const kit = kitFor(options.kit);
  if (!kit.ok) return refused(kit.problem);
  const { feet, templates, onTheMachine } = kit.value;
  const footName = options.foot ?? onTheMachine ?? Object.keys(feet)[0];
  if (footName === undefined) return refused('The kit has no foot; give one with --foot.');
  const diameter = diameterOf(footName, feet);
  if (!diameter.ok) return refused(diameter.problem);
  const foot = Object.hasOwn(feet, footName) ? feet[footName] : undefined;
  const needleOffset = { x: foot?.needleOffset[0] ?? 0, y: foot?.needleOffset[1] ?? 0 };
  const shapes = Object.entries(templates).flatMap(([id, template]) => {
    const shape = shapeOf(template);
    return shape.ok && !template.hidden ? [[id, { needle: needleLines(shape.value, diameter.value) }] as const] : [];
  });
  if (shapes.length === 0) return refused('The kit has no template that can be laid.');
  const found = match(line.value, Object.fromEntries(shapes), { tolerance: tolerance.value, needleOffset, alone: options.alone ?? false });
  if (found.kind === 'unusable') return refused(found.detail);
  const length = pathLength(line.value);
  const candidates = Object.fromEntries(shapes);
  const told = (following: Following<'quilt'>, id: string) => ({ template: id, ...followingJson(following, candidates[id]!.needle, needleOffset, scoreOf(following, length, tolerance.value)) });
  if (!options.json) return done(inWords(found, (id) => templates[id]!.name));
  return done(
    asJson({
      kind: found.kind,
      tolerance: tolerance.value,
      length,
      chain: found.kind === 'none' ? null : chainJson(found.chain, (each) => told(each, found.ids[each.template]!)),
      alone: found.alone.flatMap(({ id, echo }) => (echo.kind === 'whole' || echo.kind === 'part' ? [told(echo.best, id)] : [])),
    }),
  );
}

const STYLE: LengthStyle = { unit: 'in', smallest: 32 };

function inWords(found: Exclude<ReturnType<typeof match<'quilt'>>, { kind: 'unusable' }>, nameOf: (id: string) => string): string {
  const length = lengthBy(STYLE);
  const alone = found.alone.flatMap(({ id, echo }) => (echo.kind === 'whole' || echo.kind === 'part' ? [`  ${nameOf(id)}, ${followingInWords(echo.best, length)}`] : []));
  const byThemselves = alone.length > 0 ? ['\nEach by itself:', ...alone] : [];
  if (found.kind === 'none') return ['Nothing in the kit follows this line.', ...byThemselves].join('\n');
  const { placements, missed } = found.chain;
  return [
    found.kind === 'whole' ? `The whole line in ${counted(placements.length, 'placement')}:` : `Parts of the line, in ${counted(placements.length, 'placement')}:`,
    ...placements.map((each) => `  ${nameOf(found.ids[each.template]!)}, ${followingInWords(each, length)}`),
    ...missed.map(({ from, to }) => `  missed: ${length(from)} to ${length(to)}`),
    ...byThemselves,
  ].join('\n');
}
