// `needlefall marks`: what to draw on the templates and on the top, and how much the needle line may stray.

import type { Command } from 'commander';
import { type ForgivingLaying, type MarksOfPlan, marksOf } from '../../engine/marks.ts';
import { setOut } from '../../engine/evaluate.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { writePathData } from '../../geometry/svg/write.ts';
import { toDegrees } from '../../num/angle.ts';
import { FOOT_SLACK, MARK_SLACK } from '../../num/tolerances.ts';
import type { Plan } from '../../model/plan.ts';
import { styleOf } from '../../model/length-style.ts';
import type { DrawnMark, Hold } from '../../place/marks/hold.ts';
import { type Answer, type Give, asJson, done, refused } from '../answer.ts';
import { readPlanFile } from '../files.ts';
import { counted, lengthBy } from '../say/words.ts';
import { type LengthStyle, writeLength } from '../../num/inches.ts';

export function marksCommand(program: Command, give: Give): void {
  program
    .command('marks')
    .description('What to draw on the templates and on the top so that every placement of the chosen sheets can be laid again without measuring, and how far the needle line may stray.')
    .argument('<plan>', 'a plan file, or - for standard input')
    .option('--json', 'as JSON, marks in template coordinates')
    .addHelpText('after', '\nExample:\n  needlefall marks my-quilt.needlefall.json')
    .action((plan: string, options: { json?: boolean }) => give(marks(plan, options.json ?? false)));
}

function marks(file: string, json: boolean): Answer {
  const plan = readPlanFile(file);
  if (!plan.ok) return refused(plan.problem);
  const laid = setOut(plan.value);
  const found = marksOf(laid);
  return done(json ? asJson(marksJson(found, laid)) : marksText(found, laid));
}

// ---- JSON ----

/** The marks as the documented JSON holds them: inches and degrees. */
export function marksJson({ templates, tops }: MarksOfPlan, { placements }: Pick<Evaluation, 'placements'>) {
  return {
    slack: { mark: MARK_SLACK, foot: FOOT_SLACK },
    templates: templates.map((template) => {
      const letters = lettersOf(template);
      return {
        template: template.id,
        fewest: template.fewest,
        marks: template.marks.map(({ letter, mark }) => ({ letter, ...markJson(mark) })),
        placements: template.layings.map((each) => placementJson(each, letters)),
      };
    }),
    tops: tops.map((top) => ({
      areas: placements.find((laid) => laid.shape === top.top)?.areas ?? [],
      fewest: top.fewest,
      lines: top.lines.map(({ name }) => name),
      dots: top.dots.map((dot) => ({ number: dot.number, at: [dot.at.x, dot.at.y], under: dot.under, say: dot.say, images: dot.images })),
      ends: top.ends.map((end) => ({ what: end.what, placement: end.laying, at: [end.at.x, end.at.y], say: end.say, images: end.images })),
    })),
  };
}

function markJson(mark: DrawnMark) {
  if (mark.kind === 'line') return { kind: mark.kind, from: [mark.from.x, mark.from.y], to: [mark.to.x, mark.to.y], d: mark.pieces.map(writePathData) };
  return { kind: mark.kind, at: [mark.at.x, mark.at.y] };
}

function placementJson({ laying, holding, sentences, wander, byRegistrations, meetings, steadier }: ForgivingLaying, letters: ReadonlyMap<DrawnMark, string>) {
  return {
    sheet: laying.laid.sheet,
    placement: laying.laid.placement,
    areas: laying.laid.areas,
    foot: laying.foot,
    pose: { x: laying.pose.x, y: laying.pose.y, angle: toDegrees(laying.pose.angle), flipped: laying.pose.flipped },
    held: holding !== undefined,
    by: holding?.holds.map((hold) => ({ put: putOf(hold, letters), on: onOf(hold) })) ?? [],
    say: sentences.map(({ images, faceDown, say }) => ({ images, faceDown, say })),
    wander:
      wander.kind === 'held'
        ? { worst: wander.worst, bands: wander.bands.map((band) => band.map(({ at, away, along, wide }) => ({ at: [at.x, at.y], away: [away.x, away.y], along, wide }))) }
        : null,
    byRegistrations: byRegistrations?.worst ?? null,
    ends: meetings.map(({ pass, end, at, gap, stillMeets }) => ({ pass, end, at: [at.x, at.y], gap, stillMeets })),
    steadier: steadier ? { mark: markJson(steadier.mark), say: steadier.say, worst: steadier.worst } : null,
  };
}

function putOf({ by }: Hold, letters: ReadonlyMap<DrawnMark, string>): string {
  return by.kind === 'drawn' ? `mark:${letters.get(by.mark) ?? '?'}` : by.put;
}

function onOf({ on }: Hold): string {
  switch (on.kind) {
    case 'line':
      return `line:${on.rule.line.id}`;
    case 'crossing':
      return on.crossing.on;
    case 'dot':
      return `point:${on.dot.at.x},${on.dot.at.y}`;
  }
}

function lettersOf({ marks: all }: MarksOfPlan['templates'][number]): ReadonlyMap<DrawnMark, string> {
  return new Map(all.map(({ letter, mark }) => [mark, letter]));
}

// ---- for reading ----

function marksText({ templates, tops }: MarksOfPlan, { plan, top, placements }: Pick<Evaluation, 'plan' | 'top' | 'placements'>): string {
  const length = lengthBy(styleOf(plan));
  if (templates.length === 0) return `${plan.name}: nothing to mark. No chosen sheet lays a template.`;
  const named = (id: string) => top.areas.find((area) => area.id === id)?.name ?? id;
  const onTemplates = templates.map((template) => {
    const drawn = template.marks.map(({ letter, mark }) => `  draw ${letter}: ${sayMark(mark, length)}`);
    const none = drawn.length === 0 ? ['  nothing to draw'] : template.fewest ? [] : ['  There were too many choices to try them all; fewer might do.'];
    return [plan.kit.templates[template.id]?.name ?? template.id, ...drawn, ...none, ...layingsText(template.layings, plan)].join('\n');
  });
  const onTop = tops.flatMap((marked) => {
    const areas = placements.find((laid) => laid.shape === marked.top)?.areas ?? [];
    const things = [
      ...marked.lines.map(({ name }) => `  ${name}`),
      ...marked.dots.map((dot) => `  dot ${dot.number}: ${dot.say}${dot.images > 1 ? `, and its images: ${dot.images} in all` : ''}`),
      ...marked.ends.map((end) => `  dot for the ${end.what} of ${end.laying}: ${end.say}${end.images > 1 ? `, and its images: ${end.images} in all` : ''}`),
    ];
    if (things.length === 0) return [];
    return [[`${named(areas[0] ?? '')}${areas.length > 1 ? ` and ${counted(areas.length - 1, 'area')} like it` : ''}`, ...things].join('\n')];
  });
  const slack = `Straying is told for marks lined up to ${tiny(MARK_SLACK, plan)} and a foot true to ${tiny(FOOT_SLACK, plan)}: in 95 of 100 cases it is no more.`;
  return [`${plan.name}: marks`, slack, '', 'ON THE TEMPLATES', '', onTemplates.join('\n\n'), '', 'ON THE TOP', '', onTop.length > 0 ? onTop.join('\n\n') : 'nothing to draw'].join('\n');
}

/** How far something strays: to a thirty-second, or to a tenth of a millimetre. */
function strayBy(plan: Plan): (inches: number) => string {
  const style: LengthStyle = styleOf(plan).unit === 'cm' ? { unit: 'cm', decimals: 2 } : { unit: 'in', smallest: 32 };
  return (inches) => writeLength(inches, style);
}

/** A part of an inch as it is spoken: one over something. */
function tiny(inches: number, plan: Plan): string {
  return styleOf(plan).unit === 'cm' ? writeLength(inches, { unit: 'cm', decimals: 2 }) : `1/${1 / inches} in`;
}

function sayMark(mark: DrawnMark, length: (inches: number) => string): string {
  const place = ({ x, y }: { readonly x: number; readonly y: number }) => `${length(Math.abs(x))} ${x < 0 ? 'left' : 'right'}, ${length(Math.abs(y))} ${y < 0 ? 'up' : 'down'}`;
  if (mark.kind === 'line') return `a line across the face, from ${place(mark.from)} to ${place(mark.to)}`;
  return `a ${mark.kind === 'tick' ? 'tick at the edge' : 'dot on the face'}, ${place(mark.at)}`;
}

/** Like areas whose placement reads alike are told once. */
function layingsText(layings: readonly ForgivingLaying[], plan: Plan): readonly string[] {
  const told = new Map<string, string[]>();
  for (const each of layings) {
    const { laid } = each.laying;
    const placement = plan.sheets[laid.sheet]?.placements[laid.placement];
    const heading = `  ${plan.sheets[laid.sheet]?.name ?? laid.sheet}: ${placement?.name ?? laid.placement}`;
    const sentences = each.sentences.map(({ images, say }) => `    ${say}${images.length > 1 ? ` (${counted(images.length, 'time')})` : ''}`);
    const text = [heading, ...(sentences.length > 0 ? sentences : ['    Nothing could be found that holds it.']), ...forgivenessText(each, strayBy(plan))].join('\n');
    told.set(text, [...(told.get(text) ?? []), ...laid.areas]);
  }
  return [...told.keys()];
}

function forgivenessText({ wander, byRegistrations, meetings, steadier }: ForgivingLaying, length: (inches: number) => string): readonly string[] {
  const lines: string[] = [];
  if (wander.kind === 'held') lines.push(`    The needle line may stray ${length(wander.worst)}${byRegistrations && length(byRegistrations.worst) !== length(wander.worst) ? `; measured as the plan has it, ${length(byRegistrations.worst)}` : ''}.`);
  const worst = Math.max(0, ...meetings.map(({ gap }) => gap));
  if (meetings.length > 0) lines.push(meetings.every(({ stillMeets }) => stillMeets) ? '    Its ends still meet.' : `    Its ends may part by ${length(worst)}: start from the end that is sewn.`);
  if (steadier) lines.push(`    ${steadier.say} It would stray ${length(steadier.worst)}.`);
  return lines;
}
