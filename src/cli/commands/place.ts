// `needlefall place`: how every placement lies, what holds it, what it can still do, how else it could lie.

import type { Command } from 'commander';
import { evaluate } from '../../engine/evaluate.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { Pose } from '../../geometry/pose.ts';
import { type LengthStyle, writeLength } from '../../num/inches.ts';
import { toDegrees } from '../../num/angle.ts';
import { styleOf } from '../../model/length-style.ts';
import type { Registration } from '../../model/plan.ts';
import { type PlaceSetting, type Standing, requirementOf } from '../../place/place.ts';
import { sayFreedom, sayRegistration } from '../../place/say.ts';
import { otherPoses } from '../../place/solutions.ts';
import { settingOf } from '../../stitch/setting-of.ts';
import type { LaidPlacement } from '../../stitch/laid-placement.ts';
import { type Answer, type Give, asJson, done, refused } from '../answer.ts';
import { readPlanFile } from '../files.ts';
import { counted } from '../say/words.ts';

export function placeCommand(program: Command, give: Give): void {
  program
    .command('place')
    .description('Say how every template lies: its pose, what holds it, what it can still do, how else it could lie, and which registrations contradict each other.')
    .argument('<plan>', 'a plan file, or - for standard input')
    .option('--json', 'as JSON, poses in the axes each placement is laid in')
    .addHelpText('after', '\nExample:\n  needlefall place my-quilt.needlefall.json')
    .action((plan: string, options: { json?: boolean }) => give(placed(plan, options.json ?? false)));
}

interface PlacedJson {
  readonly sheet: string;
  readonly placement: string;
  readonly areas: readonly string[];
  readonly pose: PoseJson;
  readonly state: 'free' | 'fixed' | 'overfixed' | 'impossible';
  readonly registrations: readonly { readonly put: string; readonly on: string; readonly says: string }[];
  readonly free: string | null;
  readonly otherPoses: readonly PoseJson[];
  readonly contradicts: { readonly registrations: readonly number[]; readonly gap: number | null; readonly says: string } | null;
}

interface PoseJson {
  readonly x: number;
  readonly y: number;
  readonly angle: number;
  readonly flipped: boolean;
}

function placed(file: string, json: boolean): Answer {
  const plan = readPlanFile(file);
  if (!plan.ok) return refused(plan.problem);
  const evaluation = evaluate(plan.value);
  const style = styleOf(plan.value);
  const placements = evaluation.placements.flatMap((laid) => placedJson(evaluation, laid, style) ?? []);
  if (json) return done(asJson({ placements }));
  if (placements.length === 0) return done(`${plan.value.name}: no template is laid.`);
  const lines = placements.map((one) => inWords(one, evaluation));
  return done(`${plan.value.name}: ${counted(placements.length, 'placement')}.\n\n${lines.join('\n\n')}`);
}

/** A placement as the documented JSON holds it. */
function placedJson({ plan, top, placements }: Evaluation, laid: LaidPlacement, style: LengthStyle): PlacedJson | undefined {
  const sheet = plan.sheets[laid.sheet];
  const placement = sheet?.placements[laid.placement];
  const area = top.areas.find(({ id }) => id === laid.areas[0]);
  if (!sheet || !placement || !area) return undefined;
  const before = placements.slice(0, placements.indexOf(laid)).filter((other) => other.sheet === laid.sheet);
  const setting = settingOf(laid, placement.repeat ?? sheet.repeat, area, before);
  const { standing, pose } = laid;
  return {
    sheet: laid.sheet,
    placement: laid.placement,
    areas: laid.areas,
    pose: poseJson(pose),
    state: stateOf(standing),
    registrations: placement.registrations.map((registration) => ({ put: registration.put, on: registration.on, says: saidOf(registration, setting, style) })),
    free: standing.kind === 'by-eye' ? sayFreedom({ kind: 'anywhere' }) : standing.kind === 'free' ? sayFreedom(standing.freedom) : null,
    otherPoses: otherPoses(placement.registrations, setting, pose).map(poseJson),
    contradicts: contradictionOf(standing, style),
  };
}

function stateOf(standing: Standing): PlacedJson['state'] {
  if (standing.kind === 'by-eye') return 'free';
  return standing.kind === 'unreadable' ? 'impossible' : standing.kind;
}

function saidOf(registration: Registration, setting: PlaceSetting, style: LengthStyle): string {
  const read = requirementOf(registration, setting);
  return read.ok ? sayRegistration(registration, read.value, style) : read.problem;
}

function contradictionOf(standing: Standing, style: LengthStyle): PlacedJson['contradicts'] {
  if (standing.kind === 'unreadable') return { registrations: [standing.registration], gap: null, says: standing.detail };
  if (standing.kind !== 'impossible') return null;
  const { against, gap } = standing;
  const numbers = against.map((index) => String(index + 1));
  const which = numbers.length === 1 ? `Registration ${numbers[0]} cannot be met` : `Registrations ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)} contradict each other`;
  return { registrations: against, gap, says: `${which}: the best try misses by ${writeLength(gap, style)}. The template is left where it last lay.` };
}

/** Angles as people and plans write them: in degrees. */
function poseJson({ x, y, angle, flipped }: Pose<'template', 'area'>): PoseJson {
  return { x, y, angle: toDegrees(angle), flipped };
}

function inWords({ sheet, placement, areas, state, registrations, free, otherPoses: others, contradicts }: PlacedJson, { plan }: Evaluation): string {
  const where = areas.length === 1 ? areas[0]! : `${areas[0]!} and ${counted(areas.length - 1, 'area')} like it`;
  const holds = registrations.length === 0 ? 'Laid by eye.' : undefined;
  const how = { free, fixed: 'It cannot slide or turn.', overfixed: 'It is held by more than it needs; all agree.', impossible: contradicts?.says ?? null }[state];
  const also = others.length === 0 ? undefined : `It could also lie in ${counted(others.length, 'other way')}.`;
  const lines = [...registrations.map(({ says }) => says), [holds, how, also].filter((text) => text !== null && text !== undefined).join(' ')];
  return [`${plan.sheets[sheet]?.name ?? sheet}, ${placement}, on ${where}`, ...lines.map((line) => `  ${line}`)].join('\n');
}
