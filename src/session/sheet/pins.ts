// The registrations of a placement, as they are read, added, changed and taken out on the slip.

import type { Draft } from 'immer';
import type { LengthStyle } from '../../num/inches.ts';
import type { Placement, Registration } from '../../model/plan.ts';
import { directionOf, featureOf } from '../../place/feature.ts';
import { landmarks } from '../../place/landmarks.ts';
import { type PlaceSetting, place, requirementOf } from '../../place/place.ts';
import { canMeet } from '../../place/requirement.ts';
import { sayRegistration } from '../../place/say.ts';
import { targetOf } from '../../place/target.ts';
import { tipsOf } from '../../place/tips.ts';
import { changePlan } from '../change-plan.ts';
import { writePose } from '../lay/placed.ts';
import { type Laying, layingOf } from '../lay/setting.ts';
import type { Session } from '../store.ts';
import { type Spoken, marked } from './spoken.ts';

/** Something a registration can name, and what it is called. */
export interface Nameable {
  readonly id: string;
  readonly name: string;
}

/** What of a template can be put somewhere: its etchings, its tips, its needle lines. */
export function putsOf({ shape, needle }: Pick<PlaceSetting, 'shape' | 'needle'>): readonly Nameable[] {
  const ids = [
    ...shape.etchings.map(({ id }) => `etching:${id}`),
    ...tipsOf(shape.outline).map(({ id }) => id),
    ...new Set(needle.lines.map(({ from }) => (from === 'outline' ? 'needle-line' : `needle-line:${from}`))),
  ];
  return ids.flatMap((id) => {
    const feature = featureOf(id, shape, needle);
    return feature.ok ? [{ id, name: feature.value.name }] : [];
  });
}

/** How the list of what a thing can be put on is told. */
export interface OnsTold {
  /** What a placement of the sheet is called; its id when left out. */
  readonly nameOf?: (placement: string) => string;
  /** Stays in the list, though another name for the same line is there. */
  readonly chosen?: string;
}

/** Where a thing of the template can be put: reference lines, their crossings, the centre, stitched lines and their ends. */
export function onsOf({ lines, stitched }: Pick<PlaceSetting, 'lines' | 'stitched'>, { nameOf = (id) => id, chosen }: OnsTold = {}): readonly Nameable[] {
  const land = landmarks(lines, stitched);
  return [...land.lines, ...land.places].flatMap(({ on }) => {
    // The first image is the pass as it was traced, which is there by its own name.
    if (on !== chosen && FIRST_IMAGE.test(on)) return [];
    const target = targetOf(on, lines, stitched);
    return target.ok ? [{ id: on, name: `${target.value.name}${whose(on, nameOf)}` }] : [];
  });
}

const FIRST_IMAGE = /^(?:stitched|end):[^/]+\/[^/]+\/0(?:\/|$)/;

/** Which stitched line is meant, where several are there. */
function whose(on: string, nameOf: (placement: string) => string): string {
  const [, names] = /^(?:stitched|end):(.+?)(?:\/(?:start|stop))?$/.exec(on) ?? [];
  if (names === undefined) return '';
  const [placement = '', pass, image] = names.split('/');
  return ` of ${nameOf(placement)}, pass ${pass}${image === undefined ? '' : `, image ${Number(image) + 1}`}`;
}

/** The places and lines that this thing of the template can be put on. */
export function onsFor(put: string, setting: PlaceSetting, told: OnsTold = {}): readonly Nameable[] {
  const feature = featureOf(put, setting.shape, setting.needle);
  if (!feature.ok) return [];
  return onsOf(setting, told).filter(({ id }) => {
    const target = targetOf(id, setting.lines, setting.stitched);
    return target.ok && canMeet({ feature: feature.value, target: target.value }) === undefined;
  });
}

/** Whether an angle can be asked between the two: of an etched line or cross and a straight line. */
export function canAskAngle({ put, on }: Registration, { shape, lines, stitched }: PlaceSetting): boolean {
  const target = targetOf(on, lines, stitched);
  return directionOf(put, shape) !== undefined && target.ok && target.value.kind === 'line';
}

export type PinWord = 'put' | 'distance' | 'on';

export interface ReadPin {
  readonly registration: Registration;
  readonly index: number;
  /** Undefined when it cannot be read. */
  readonly spoken: Spoken<PinWord> | undefined;
  /** Why it cannot be read. */
  readonly problem: string | undefined;
}

/** The registrations of a placement as sentences with their words marked. */
export function readPins({ placement, setting }: Laying, style: LengthStyle): readonly ReadPin[] {
  return placement.registrations.map((registration, index): ReadPin => {
    const read = requirementOf(registration, setting);
    if (!read.ok) return { registration, index, spoken: undefined, problem: read.problem };
    const { feature, target } = read.value;
    const sentence = sayRegistration(registration, read.value, style);
    const [put, on] = [feature.name, target.name];
    const from = sentence.indexOf(put) + put.length;
    // What stands between the two names tells how far and how turned: "on the", "1 1/2 in above the".
    const between = sentence.slice(from, sentence.indexOf(` the ${on}`, from)).trim();
    return { registration, index, spoken: marked(sentence, [{ text: put, word: 'put' }, { text: between, word: 'distance' }, { text: on, word: 'on' }]), problem: undefined };
  });
}

/** Adds a registration to a placement of the sheet on the table; where all can be met, the template goes there. */
export function addPin(session: Session, placement: string, pin: Registration): void {
  changePins(session, placement, 'Add a pin', (pins) => [...pins, pin]);
}

/** Changes a registration; a distance or angle of `undefined` is no longer asked. */
export function changePin(session: Session, placement: string, index: number, change: { readonly [key in keyof Registration]?: Registration[key] | undefined }): void {
  changePins(session, placement, 'Change a pin', (pins) => pins.map((pin, i) => (i === index ? withoutEmpty({ ...pin, ...change }) : pin)));
}

/** Takes a registration out; the template stays where it lies. */
export function takePinOut(session: Session, placement: string, index: number): void {
  changePins(session, placement, 'Take a pin out', (pins) => pins.filter((_, i) => i !== index));
}

function withoutEmpty(pin: { readonly [key in keyof Registration]?: Registration[key] | undefined }): Registration {
  const { put = '', on = '', distance, angle, ...others } = pin;
  return { ...others, put, on, ...(distance !== undefined && distance !== 0 && { distance }), ...(distance === 0 && angle !== undefined && { distance }), ...(angle !== undefined && { angle }) };
}

function changePins(session: Session, id: string, label: string, change: (pins: readonly Registration[]) => readonly Registration[]): void {
  const laying = layingOf(session.getState(), id);
  if (!laying) return;
  const registrations = change(laying.placement.registrations);
  const { pose } = place({ ...laying.placement, registrations }, laying.setting);
  changePlan(session, label, (plan) => {
    const placement: Draft<Placement> = plan.sheets[laying.sheet]!.placements[id]!;
    placement.registrations = registrations.map((registration) => ({ ...registration }));
    writePose(placement, pose);
  });
}
