// The passes of a placement, as they are read, changed and taken away on the slip.

import type { Draft } from 'immer';
import type { Pass, PassEnd } from '../../model/plan.ts';
import type { NeedleLine } from '../../needle/needle-line.ts';
import type { LaidPass } from '../../stitch/laid-placement.ts';
import { type LengthStyle, writeLength } from '../../num/inches.ts';
import { lettersOf } from '../../num/letters.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import { changePlan } from '../change-plan.ts';
import { laidHere } from '../lay/on-table.ts';
import { poseIn } from '../lay/placed.ts';
import { type Laying, layingOf } from '../lay/setting.ts';
import { type Stop, freePassId, stopsAlong } from '../lay/trace.ts';
import type { Session, SessionState } from '../store.ts';
import type { Spoken } from './spoken.ts';

export type PassWord = 'start' | 'stop' | 'way';

export interface ReadPass {
  readonly id: string;
  readonly pass: Pass;
  /** "A" and "B" of the first pass, "C" and "D" of the second. */
  readonly letters: readonly [start: string, stop: string];
  readonly spoken: Spoken<PassWord>;
  /** What was found of it; undefined when the placement is not laid. */
  readonly laid: LaidPass | undefined;
  /** The needle line it runs on, and what it can start and stop at there. */
  readonly line: NeedleLine | undefined;
  readonly stops: readonly Stop[];
}

/** The passes of a placement of the sheet on the table, as sentences with their words marked. */
export function readPasses(state: SessionState, laying: Laying, style: LengthStyle): readonly ReadPass[] {
  const laid = laidHere(state, laying.id);
  const pose = laid?.pose ?? poseIn(laying.placement);
  return Object.entries(laying.placement.passes).map(([id, pass], i) => {
    const line = lineOf(laying, pass);
    const stops = line ? stopsAlong(laying, pose, line) : [];
    const letters = [lettersOf(2 * i), lettersOf(2 * i + 1)] as const;
    return { id, pass, letters, spoken: sayPass(pass, letters, laying, style), laid: laid?.passes.find((one) => one.pass === id), line, stops };
  });
}

function lineOf({ setting }: Laying, pass: Pass): NeedleLine | undefined {
  return setting.needle.lines.find((line) => line.from === (pass.edge ?? 'outline') && line.loop === (pass.loop ?? 0));
}

/** "Sew from A, at the vertical centre line, to B, on the diagonal, clockwise." */
function sayPass(pass: Pass, [a, b]: readonly [string, string], laying: Laying, style: LengthStyle): Spoken<PassWord> {
  const start = { text: sayEnd(pass.start, laying, style), word: 'start' } as const;
  const way = { text: pass.way, word: 'way' } as const;
  if (pass.stop === 'all-round') return [{ text: 'Sew ' }, { text: 'all round', word: 'stop' }, { text: ` from ${a}, at ` }, start, { text: ', ' }, way, { text: '.' }];
  return [{ text: `Sew from ${a}, at ` }, start, { text: `, to ${b}, at ` }, { text: sayEnd(pass.stop, laying, style), word: 'stop' }, { text: ', ' }, way, { text: '.' }];
}

function sayEnd(end: PassEnd, { setting }: Laying, style: LengthStyle): string {
  if ('along' in end) return `${writeLength(end.along, style)} along the needle line`;
  const line = setting.lines.find(({ id }) => `line:${id}` === end.crosses);
  const name = line ? `the ${line.name}` : `a line that is not here`;
  return (end.nth ?? 1) === 1 ? name : `${ORDINALS[end.nth ?? 1] ?? `crossing ${end.nth} of`} ${name}`;
}

const ORDINALS: { readonly [nth: number]: string } = { 2: 'the second crossing of', 3: 'the third crossing of', 4: 'the fourth crossing of' };

/** What an end of a pass can be put at: every crossing of a reference line, ends of lines, etchings that point there. */
export interface EndChoice {
  readonly key: string;
  readonly name: string;
  readonly end: PassEnd;
}

/** The choices for an end of a pass, in the order in which they come along the needle line. */
export function endChoices({ stops }: ReadPass, laying: Laying, style: LengthStyle): readonly EndChoice[] {
  return stops.map(({ end, name, along }) => ({
    key: keyOfEnd(end),
    name: 'crosses' in end ? `${sayEnd(end, laying, style)}, ${writeLength(along, style)} along` : `${name}, ${writeLength(along, style)} along`,
    end,
  }));
}

/** The same for the same place, however the plan says that it is the first crossing. */
export function keyOfEnd(end: PassEnd): string {
  return 'crosses' in end ? `${end.crosses} ${end.nth ?? 1}` : `along ${end.along}`;
}

/**
 * Adds a pass along an edge of a placement: between the first two places a reference line crosses its needle line or, where there
 * are none, all round it. Answers with its id.
 */
export function addPass(session: Session, placement: string, edge = 'outline'): string | undefined {
  const state = session.getState();
  const laying = layingOf(state, placement);
  const line = laying?.setting.needle.lines.find((one) => one.from === edge && one.loop === 0);
  if (!laying || !line) return undefined;
  const pose = laidHere(state, placement)?.pose ?? poseIn(laying.placement);
  const [first, second] = stopsAlong(laying, pose, line).filter(({ end }) => 'crosses' in end);
  const onEdge = edge === 'outline' ? {} : { edge };
  const pass: Pass =
    first && second && second.along - first.along > SAME_POINT
      ? { ...onEdge, start: first.end, stop: second.end, way: 'clockwise' }
      : { ...onEdge, start: first?.end ?? { along: 0 }, stop: 'all-round', way: 'clockwise' };
  const id = freePassId(laying.placement.passes);
  changePlan(session, 'Add a pass', (plan) => {
    plan.sheets[laying.sheet]!.placements[placement]!.passes[id] = pass;
  }, { kind: 'placement', sheet: laying.sheet, placement, pass: id });
  return id;
}

/** Puts the start or the stop of a pass somewhere else; a start stays an end of its own. */
export function putEnd(session: Session, placement: string, pass: string, which: 'start' | 'stop', end: PassEnd | 'all-round'): void {
  changePass(session, placement, pass, which === 'start' ? 'Start elsewhere' : 'Stop elsewhere', (draft) => {
    if (which === 'stop') draft.stop = end;
    else if (end !== 'all-round') draft.start = end;
  });
}

/** Sews a pass the other way along the same stretch. */
export function turnPassRound(session: Session, placement: string, pass: string): void {
  changePass(session, placement, pass, 'Sew it the other way', (draft) => {
    draft.way = draft.way === 'clockwise' ? 'counterclockwise' : 'clockwise';
    if (draft.stop === 'all-round') return;
    const { start, stop } = draft;
    draft.start = stop;
    draft.stop = start;
  });
}

/** Sews the rest of the needle line: the other stretch between the same two ends. */
export function sewTheRest(session: Session, placement: string, pass: string): void {
  changePass(session, placement, pass, 'Sew the other stretch', (draft) => {
    draft.way = draft.way === 'clockwise' ? 'counterclockwise' : 'clockwise';
  });
}

/** Names a pass; a name of nothing but spaces takes its name away. */
export function renamePass(session: Session, placement: string, pass: string, name: string): void {
  changePass(session, placement, pass, 'Name a pass', (draft) => {
    if (name.trim() === '') delete draft.name;
    else draft.name = name.trim();
  });
}

/** Takes a pass away. */
export function takePassAway(session: Session, placement: string, pass: string): void {
  const laying = layingOf(session.getState(), placement);
  if (!laying?.placement.passes[pass]) return;
  changePlan(session, 'Take a pass away', (plan) => {
    delete plan.sheets[laying.sheet]!.placements[placement]!.passes[pass];
  }, { kind: 'placement', sheet: laying.sheet, placement });
}

function changePass(session: Session, placement: string, pass: string, label: string, change: (draft: Draft<Pass>) => void): void {
  const laying = layingOf(session.getState(), placement);
  if (!laying?.placement.passes[pass]) return;
  changePlan(session, label, (plan) => change(plan.sheets[laying.sheet]!.placements[placement]!.passes[pass]!));
}
