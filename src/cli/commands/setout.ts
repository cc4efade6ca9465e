// `needlefall setout`: a border divided so that the repeat comes out even, with one template or the whole kit.

import type { Command } from 'commander';
import { type BorderAnswer, setOutBorderOf } from '../../engine/border-set-out.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import { footOnTheMachine } from '../../model/kit/on-the-machine.ts';
import type { Foot, Frieze, Plan, Template } from '../../model/plan.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import { toDegrees } from '../../num/angle.ts';
import { type LengthStyle, readLength } from '../../num/inches.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { divisionsFromCentre } from '../../place/setout/from-the-centre.ts';
import { type CountRefused, type SideProblem, setOutSide } from '../../place/setout/set-out-side.ts';
import type { SetOutResult } from '../../place/setout/result.ts';
import type { CornerTurn } from '../../place/setout/turn-corners.ts';
import type { BorderSide, SetOutWish } from '../../place/setout/wish.ts';
import { type Answer, type Give, asJson, done, refused } from '../answer.ts';
import { readPlanFile } from '../files.ts';
import { kitFor, templateIn } from '../kit.ts';
import { lengthBy, table } from '../say/words.ts';

interface Options {
  readonly border?: string;
  readonly length?: string;
  readonly width?: string;
  readonly clearance?: string;
  readonly template?: string;
  readonly outline?: string;
  readonly foot?: string;
  readonly pattern?: string;
  readonly spacing?: string;
  readonly height?: string;
  readonly from?: string;
  readonly to?: string;
  readonly most: string;
  readonly json?: boolean;
}

const PATTERNS: readonly Frieze[] = ['run', 'step', 'scallop', 'spin', 'wave', 'twin', 'lantern'];
const STYLE: LengthStyle = { unit: 'in', smallest: 16 };

export function setoutCommand(program: Command, give: Give): void {
  program
    .command('setout')
    .description('Set a border out so that the repeat comes out even: every count and pose with which the ends of neighbouring images meet.')
    .argument('[plan]', 'a plan file, or - for standard input; leave out to set out one side by itself')
    .option('--border <number>', 'which border of the plan, 1 for the innermost; or the id of one of its sides')
    .option('--length <length>', 'length of a side that is set out by itself')
    .option('--width <length>', 'width of that border')
    .option('--clearance <length>', 'how far stitching stays from both seams (1/4)')
    .option('--template <id>', 'a template of the kit, or a built-in family at its usual sizes; in a plan all are tried when left out')
    .option('--outline <path>', 'the outline of a template, as SVG path data in inches')
    .option('--foot <length>', 'across the foot, such as 1/2; in a plan it is the foot on the machine')
    .option('--pattern <name>', `${PATTERNS.join(', ')}; in a plan all are tried when left out`)
    .option('--spacing <length>', 'about how long a division should be')
    .option('--height <length>', 'how high the crest should stand; all the room there is when left out')
    .option('--from <count>', 'the least count to try')
    .option('--to <count>', 'the greatest count to try')
    .option('--most <count>', 'how many results at most', '12')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Examples:
  needlefall setout my-quilt.needlefall.json --border 1 --pattern scallop
  needlefall setout --length 60 --width 6 --clearance 1/4 --template circle --foot 1/2 --pattern lantern --from 8 --to 20`,
    )
    .action((plan: string | undefined, options: Options) => give(plan === undefined ? sideAlone(options) : borderOfPlan(plan, options)));
}

// ---- a border of a plan ----

function borderOfPlan(file: string, options: Options): Answer {
  const stray = (['length', 'width', 'clearance', 'outline', 'foot'] as const).find((name) => options[name] !== undefined);
  if (stray) return refused(`A plan has its own ${stray === 'outline' ? 'templates' : stray === 'foot' ? 'feet' : 'measures'}; leave out --${stray}.`);
  const plan = readPlanFile(file);
  if (!plan.ok) return refused(plan.problem);
  const border = options.border === undefined ? ok(1) : countOf('--border', /^border:(\d+)/.exec(options.border)?.[1] ?? options.border);
  if (!border.ok) return refused(border.problem);
  const wish = wishOf(options);
  if (!wish.ok) return refused(wish.problem);
  const { pattern, most, ...rest } = wish.value;
  const answers = setOutBorderOf(plan.value, { border: border.value, most, wish: rest, ...(pattern && { pattern }), ...(options.template !== undefined && { template: options.template }) });
  if (!answers.ok) return options.json && answers.problem.kind === 'nothing-works' ? done(asJson({ borders: [], why: triedJson(answers.problem.tried) })) : refused(borderProblem(answers.problem.kind, plan.value, border.value, options));
  return done(options.json ? asJson({ borders: answers.value.map(borderJson) }) : bordersInWords(answers.value, plan.value));
}

function borderProblem(kind: string, plan: Plan, border: number, { template }: Options): string {
  switch (kind) {
    case 'no-such-border': return `There is no border ${border} on this top; it has ${plan.top.borders.length}.`;
    case 'no-foot': return 'The kit has no foot.';
    case 'no-template': return template === undefined ? 'The kit has no template that can be used.' : `There is no template "${template}" in this kit that can be used.`;
    default: return 'Nothing works: no template goes from division to division with these counts. Try more counts, another pattern or another spacing.';
  }
}

function triedJson(tried: readonly { readonly template: string; readonly pattern: Frieze; readonly setOut: { readonly across: { readonly refused: readonly CountRefused[] }; readonly down: { readonly refused: readonly CountRefused[] } } }[]) {
  return tried.map(({ template, pattern, setOut }) => ({ template, pattern, across: setOut.across.refused, down: setOut.down.refused }));
}

function borderJson({ template, foot, result, corner, sheets }: BorderAnswer) {
  const { across, down, counts, spacings, pair, onePose, corners, fits, score } = result;
  return {
    template,
    foot,
    pattern: across.pattern,
    counts,
    spacings,
    difference: { inches: pair.difference, sixteenths: pair.sixteenths, percent: pair.percent, seen: pair.seen },
    onePose,
    fits,
    score,
    across: resultJson(across),
    down: resultJson(down),
    corners: corners.map(cornerJson),
    ...(corner && { corner: { template: corner.template, strays: corner.greatest } }),
    sheets,
  };
}

function cornerJson(turn: CornerTurn) {
  return turn.how === 'corner-motif' ? turn : { ...turn, kink: toDegrees(turn.kink) };
}

function bordersInWords(answers: readonly BorderAnswer[], plan: Plan): string {
  const length = lengthBy(STYLE);
  const rows = answers.map(({ template, result: { across, down, pair, corners, fits } }) => [
    plan.kit.templates[template]?.name ?? template,
    across.pattern,
    `${across.count} at ${length(across.spacing)}`,
    `${down.count} at ${length(down.spacing)}`,
    pair.seen ? `${length(pair.difference)}, ${pair.percent.toFixed(1)} %` : 'none an eye sees',
    length(across.height),
    corners.filter((turn) => turn.fits).map((turn) => turn.how.replaceAll('-', ' ')).join(', ') || '-',
    fits ? '' : 'goes into a clearance',
  ]);
  return table(['template', 'pattern', 'top and bottom', 'left and right', 'difference', 'crest', 'corners that fit', ''], rows);
}

// ---- one side by itself ----

function sideAlone(options: Options): Answer {
  const asked = askedOf(options);
  if (!asked.ok) return refused(asked.problem);
  const { side, template, diameter, wish, most } = asked.value;
  const shape = shapeOf(template);
  if (!shape.ok) return refused(shape.problem.message);
  const found = setOutSide(side, { shape: shape.value, needle: needleLines(shape.value, diameter) }, wish);
  if (found.kind === 'impossible') {
    if (options.json && found.why.kind === 'no-count-works') return done(asJson({ results: [], refused: found.refused, widest: found.why.widest, leastCount: found.why.leastCount }));
    return refused(sideProblem(found.why));
  }
  const results = found.results.slice(0, most);
  return done(options.json ? asJson({ results: results.map(resultJson), refused: found.refused }) : sideInWords(results, found.refused));
}

interface AskedSide {
  readonly side: BorderSide;
  readonly template: Template;
  readonly diameter: number;
  readonly wish: SetOutWish;
  readonly most: number;
}

function askedOf(options: Options): Outcome<AskedSide, string> {
  if (options.border !== undefined) return fail('A --border is one of a plan; name the plan file first.');
  if (options.length === undefined || options.width === undefined) return fail('Give a plan with --border, or the --length and --width of a side.');
  if ((options.outline === undefined) === (options.template === undefined)) return fail('Give either an --outline or a --template.');
  const length = lengthOf('--length', options.length);
  if (!length.ok) return length;
  const width = lengthOf('--width', options.width);
  if (!width.ok) return width;
  const clearance = lengthOf('--clearance', options.clearance ?? '1/4');
  if (!clearance.ok) return clearance;
  const wish = wishOf(options);
  if (!wish.ok) return wish;
  const { pattern, most, ...rest } = wish.value;
  if (!pattern) return fail(`Give a --pattern: ${PATTERNS.join(', ')}.`);
  const kit = kitFor(undefined);
  if (!kit.ok) return kit;
  const template = options.template === undefined ? ok<Template>({ name: 'as drawn', outline: options.outline ?? '', thickness: 0.25, grips: 'none' }) : templateIn(kit.value, options.template);
  if (!template.ok) return template;
  const diameter = footOf(options.foot, kit.value.feet, footOnTheMachine(kit.value)?.foot);
  if (!diameter.ok) return diameter;
  const side = { length: length.value, width: width.value, outerClearance: clearance.value, innerClearance: clearance.value };
  return ok({ side, template: template.value, diameter: diameter.value, wish: { ...rest, pattern }, most });
}

function footOf(text: string | undefined, feet: { readonly [id: string]: Foot }, usual: Foot | undefined): Outcome<number, string> {
  if (text === undefined) return usual ? ok(usual.diameter) : fail('Give a --foot.');
  const foot = Object.hasOwn(feet, text) ? feet[text] : undefined;
  const read = foot ? ok(foot.diameter) : readLength(text);
  if (!read.ok) return fail(`The foot could not be understood. ${read.problem.message}`);
  return read.value > 0 && read.value <= WIDEST_FOOT ? read : fail(`A foot is more than 0 and at most ${WIDEST_FOOT} in across; this one is ${text}.`);
}

const WIDEST_FOOT = 4;

type Wished = Omit<SetOutWish, 'pattern'> & { readonly pattern?: Frieze; readonly most: number };

function wishOf({ pattern: name, spacing, height, from, to, most }: Options): Outcome<Wished, string> {
  const pattern = PATTERNS.find((each) => each === name);
  if (name !== undefined && !pattern) return fail(`There is no pattern "${name}". There are ${PATTERNS.join(', ')}.`);
  if ((from === undefined) !== (to === undefined)) return fail('Give --from and --to together.');
  const limit = countOf('--most', most);
  if (!limit.ok) return limit;
  let wish: Wished = { most: limit.value, ...(pattern && { pattern }) };
  if (spacing !== undefined) {
    const read = lengthOf('--spacing', spacing);
    if (!read.ok) return read;
    wish = { ...wish, spacing: read.value };
  }
  if (height !== undefined) {
    const read = lengthOf('--height', height);
    if (!read.ok) return read;
    wish = { ...wish, height: read.value };
  }
  if (from !== undefined && to !== undefined) {
    const least = countOf('--from', from);
    if (!least.ok) return least;
    const greatest = countOf('--to', to);
    if (!greatest.ok) return greatest;
    if (least.value > greatest.value) return fail(`The counts go from ${from} to ${to}; the first must not be the greater.`);
    wish = { ...wish, counts: { from: least.value, to: greatest.value } };
  }
  return ok(wish);
}

function lengthOf(option: string, text: string): Outcome<number, string> {
  const read = readLength(text);
  if (!read.ok) return fail(`${option} could not be understood. ${read.problem.message}`);
  return read.value > 0 || (option === '--clearance' && read.value === 0) ? read : fail(`${option} must be more than 0; it is ${text}.`);
}

function countOf(option: string, text: string): Outcome<number, string> {
  const count = Number(text);
  return Number.isInteger(count) && count >= 1 && count <= MOST ? ok(count) : fail(`${option} must be a whole number from 1 to ${MOST}; it is "${text}".`);
}

const MOST = 1000;

/** One result as the documented JSON holds it: inches, degrees, in the axes of one division. */
function resultJson({ pattern, count, spacing, edge, loop, found, unit, slide, base, height, clearance, fits, kinks, overhang, corners, depth, withinReach, forgiveness, terms, score }: SetOutResult) {
  const end = ({ along, at, angle }: SetOutResult['unit']['start']) => ({ along, at: [at.x, at.y], angle: toDegrees(angle) });
  return {
    pattern,
    count,
    spacing,
    found,
    pose: { x: unit.pose.x, y: unit.pose.y, angle: toDegrees(unit.pose.angle), flipped: unit.pose.flipped },
    edge,
    loop,
    start: end(unit.start),
    stop: end(unit.stop),
    way: unit.way,
    length: unit.length,
    slide,
    base,
    height,
    clearance,
    fits,
    kinks: { start: toDegrees(kinks.start), stop: toDegrees(kinks.stop), crest: toDegrees(kinks.crest) },
    overhang,
    corners,
    depth,
    withinReach,
    forgiveness: { heightPerSpacing: Number.isFinite(forgiveness.heightPerSpacing) ? forgiveness.heightPerSpacing : null, heightPerSixteenth: Number.isFinite(forgiveness.heightPerSixteenth) ? forgiveness.heightPerSixteenth : null },
    divisions: divisionsFromCentre(spacing * count, count),
    terms,
    score,
  };
}

function sideProblem(why: SideProblem): string {
  switch (why.kind) {
    case 'bad-measure': return why.what === 'clearance' ? 'The clearances leave no room in this border.' : `The ${why.what} must be more than 0.`;
    case 'no-counts': return 'There is no count to try. Give another --spacing, or --from and --to.';
    case 'no-needle-line': return 'The foot finds no needle line on this template.';
    case 'starts-on-the-centre-line': return `In the pattern ${why.pattern} every unit starts on the centre line.`;
    case 'no-count-works': return `No count works: the needle line spans at most ${lengthBy(STYLE)(why.widest)} a division. From ${why.leastCount} divisions on it would span one.`;
  }
}

function sideInWords(results: readonly SetOutResult[], refusals: readonly CountRefused[]): string {
  const length = lengthBy(STYLE);
  const degrees = (radians: number) => `${toDegrees(radians).toFixed(0)}°`;
  const rows = results.map(({ count, spacing, height, clearance, kinks, forgiveness, fits }) => [
    `${count}`,
    length(spacing),
    length(height),
    `${length(clearance.outer)}, ${length(clearance.inner)}`,
    Math.max(kinks.start, kinks.stop, kinks.crest) < 0.01 ? 'smooth' : degrees(Math.max(kinks.start, kinks.stop, kinks.crest)),
    forgiveness.heightPerSixteenth < 1 / 64 ? 'less than 1/64 in' : `${forgiveness.heightPerSixteenth.toFixed(3)} in`,
    fits ? '' : 'goes into a clearance',
  ]);
  const said = refusals.map(({ count, spacing, why, by }) => `  ${count} at ${length(spacing)}: ${REASONS[why]}${by === undefined ? '' : ` by ${length(by)}`}`);
  return [
    table(['count', 'spacing', 'crest', 'clear of both seams', 'joints', 'crest moves with 1/16 in of side', ''], rows),
    ...(said.length > 0 ? ['', 'Does not work', ...said] : []),
  ].join('\n');
}

const REASONS: { readonly [why in CountRefused['why']]: string } = {
  'wider-than-the-needle-line': 'the spacing exceeds what the needle line spans',
  'no-such-stretch': 'no stretch of the needle line goes from line to line so',
  'crosses-the-centre-line': 'it crosses the centre line, and so its own image,',
  'hangs-over': 'it hangs over into its neighbour',
};
