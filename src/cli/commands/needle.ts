// `needlefall needle`: where the needle falls when a foot runs round a template.

import type { Command } from 'commander';
import { signedArea, pathLength } from '../../geometry/measure.ts';
import { reversedPath } from '../../geometry/change.ts';
import type { Path } from '../../geometry/path.ts';
import { readPathData } from '../../geometry/svg/read.ts';
import { writePathData } from '../../geometry/svg/write.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import type { ShapeProblem, TemplateShape } from '../../model/kit/shape.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import type { EdgeName, NeedleLine, NeedleLines } from '../../needle/needle-line.ts';
import { type LengthStyle, readLength } from '../../num/inches.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import type { Foot, Template } from '../../model/plan.ts';
import { type Answer, type Give, asJson, done, refused } from '../answer.ts';
import { kitFor, templateIn } from '../kit.ts';
import { lengthBy } from '../say/words.ts';

/** How a template and a foot are asked for. */
export interface TemplateOptions {
  readonly outline?: string;
  readonly window?: readonly string[];
  readonly template?: string;
  readonly plan?: string;
  readonly foot: string;
}

interface Options extends TemplateOptions {
  readonly json?: boolean;
}

export function needleCommand(program: Command, give: Give): void {
  program
    .command('needle')
    .description('Show where the needle falls when a round foot runs along a template: the needle line, and what the foot cannot reach.')
    .requiredOption('--foot <length>', 'across the foot, such as 1/2, 9/16 or 12.7mm; or the id of a foot in the kit')
    .option('--outline <path>', 'the outline of the template, as SVG path data in inches')
    .option('--window <path>', 'a window in it; may be given several times', (path: string, before: readonly string[] = []) => [...before, path])
    .option('--template <id>', 'a template of the kit, or a built-in family at its usual sizes')
    .option('--plan <file>', "take the template and the foot from this plan's kit")
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Give either an --outline or a --template.

Examples:
  needlefall needle --template leaf --foot 1/2
  needlefall needle --outline "M 0 0 H 4 V 4 H 0 Z" --foot 1/2
  needlefall needle --outline "M 0 0 H 6 V 6 H 0 Z" --window "M 2 2 H 4 V 4 H 2 Z" --foot 9/16 --json`,
    )
    .action((options: Options) => give(needle(options)));
}

export interface Question {
  readonly shape: TemplateShape;
  readonly diameter: number;
  /** Edges that were drawn counterclockwise; their needle lines are told the way they were drawn. */
  readonly counterclockwise: ReadonlySet<EdgeName>;
}

function needle(options: Options): Answer {
  const question = questionOf(options);
  if (!question.ok) return refused(question.problem);
  const { shape, diameter, counterclockwise } = question.value;
  const found = needleLines(shape, diameter);
  return done(options.json ? asJson(needleJson(found, shape, counterclockwise)) : inWords(found, diameter));
}

/** The shape and the foot that were asked for, or what to say about it. */
export function questionOf(options: TemplateOptions): Outcome<Question, string> {
  if ((options.outline === undefined) === (options.template === undefined)) return fail('Give either an --outline or a --template.');
  if (options.template !== undefined && options.window !== undefined) return fail('A --window goes with an --outline; a template has its own windows.');
  const kit = kitFor(options.plan);
  if (!kit.ok) return kit;
  const diameter = diameterOf(options.foot, kit.value.feet);
  if (!diameter.ok) return diameter;
  const template = options.template === undefined ? ok(drawnTemplate(options)) : templateIn(kit.value, options.template);
  if (!template.ok) return template;
  const shape = shapeOf(template.value);
  if (!shape.ok) return fail(saidWithPlace(shape.problem));
  return ok({ shape: shape.value, diameter: diameter.value, counterclockwise: drawnCounterclockwise(template.value) });
}

/** Some messages name the place themselves. */
function saidWithPlace({ message, at }: ShapeProblem): string {
  if (!at || /\bat -?\d/.test(message)) return message;
  return `${message} The place is ${at.x.toFixed(3)}, ${at.y.toFixed(3)} in.`;
}

export function diameterOf(text: string, feet: { readonly [id: string]: Foot }): Outcome<number, string> {
  const foot = Object.hasOwn(feet, text) ? feet[text] : undefined;
  const read = foot ? ok(foot.diameter) : readLength(text);
  if (!read.ok) return fail(`The foot could not be understood. ${read.problem.message}`);
  return read.value > 0 && read.value <= WIDEST_FOOT ? read : fail(`A foot is more than 0 and at most ${WIDEST_FOOT} in across; this one is ${text}.`);
}

const WIDEST_FOOT = 4;

function drawnTemplate({ outline = '', window = [] }: TemplateOptions): Template {
  return {
    name: 'as drawn',
    outline,
    windows: Object.fromEntries(window.map((path, i) => [String(i), path])),
    thickness: 0.25,
    grips: 'none',
  };
}

function drawnCounterclockwise(template: Template): ReadonlySet<EdgeName> {
  if ('family' in template) return new Set();
  const edges: [EdgeName, string][] = [['outline', template.outline], ...Object.entries(template.windows ?? {}).map(([id, path]): [EdgeName, string] => [`window:${id}`, path])];
  return new Set(edges.filter(([, data]) => isCounterclockwise(data)).map(([name]) => name));
}

function isCounterclockwise(data: string): boolean {
  const paths = readPathData<'template'>(data);
  const path = paths.ok ? paths.value[0] : undefined;
  return path !== undefined && signedArea({ ...path, closed: true }) < 0;
}

/** The documented JSON: everything told along each edge the way it was drawn. */
function needleJson(found: NeedleLines, shape: TemplateShape, counterclockwise: ReadonlySet<EdgeName>) {
  return {
    needleLines: found.lines.map((line) => {
      const edge = edgeNamed(shape, line.from);
      const turned = counterclockwise.has(line.from);
      const { path, pieces } = turned && edge ? asDrawn(line, edge) : asRun(line);
      return { from: line.from, d: writePathData(path), length: line.length, area: line.area, pieces };
    }),
    missed: found.missed.map(({ from, start, end, length }) => {
      const edge = edgeNamed(shape, from);
      if (!counterclockwise.has(from) || !edge) return { from, start, end, length };
      const whole = pathLength(edge);
      return { from, start: whole - end, end: whole - start, length };
    }),
  };
}

function edgeNamed(shape: TemplateShape, name: EdgeName): Path<'template'> | undefined {
  return name === 'outline' ? shape.outline : shape.windows.find(({ id }) => `window:${id}` === name)?.path;
}

function asRun(line: NeedleLine) {
  const pieces = line.contacts.map(({ kind, edge, edgeStart, edgeEnd, start, end }) => ({ kind, edge, start: edgeStart, end: edgeEnd, length: end - start }));
  return { path: line.path, pieces };
}

/** Inside, every edge is clockwise; turned about, it keeps its first vertex. */
function asDrawn(line: NeedleLine, edge: Path<'template'>) {
  const whole = pathLength(edge);
  const count = edge.vertices.length;
  const pieces = line.contacts.map((contact) => ({
    kind: contact.kind,
    edge: contact.kind === 'corner' ? (count - contact.edge) % count : count - 1 - contact.edge,
    start: whole - contact.edgeEnd,
    end: whole - contact.edgeStart,
    length: contact.end - contact.start,
  }));
  return { path: reversedPath(line.path), pieces: pieces.reverse() };
}

const STYLE: LengthStyle = { unit: 'in', smallest: 32 };

function inWords(found: NeedleLines, diameter: number): string {
  const length = lengthBy(STYLE);
  const lines = found.lines.map((line) => {
    const which = line.loop > 0 ? `, loop ${line.loop + 1}` : '';
    const round = line.path.closed ? `${length(line.length)} round, ${line.area.toFixed(2)} sq in inside` : `${length(line.length)} to and fro, just wide enough for the foot`;
    return `  ${spoken(line.from)}${which}: ${round}`;
  });
  const missed = found.missed.filter(({ from }) => !found.collapsed.includes(from)).map(({ from, start, end, length: gap }) => `  ${spoken(from)}: ${length(gap)}, from ${length(start)} to ${length(end)} along the edge`);
  return [
    `The needle falls ${length(diameter / 2)} from the edge.`,
    ...(lines.length > 0 ? ['', 'Needle line', ...lines] : []),
    ...(missed.length > 0 ? ['', 'The foot cannot reach', ...missed] : []),
    ...found.collapsed.map((from) => `\nThe foot does not fit: ${spoken(from)}.`),
  ].join('\n');
}

function spoken(edge: EdgeName): string {
  return edge === 'outline' ? 'outline' : `window ${edge.slice('window:'.length)}`;
}
