// What the foot can reach of a template, in short sentences.

import type { Foot } from '../../model/plan.ts';
import type { MissedPlace, Reach } from '../../session/kit/reach.ts';
import type { WriteLength } from '../words/lengths.ts';

export interface SaidReach {
  /** Of the needle line. */
  readonly line: string;
  readonly lineAsides: readonly string[];
  /** Of the edge that is missed; undefined when nothing is. */
  readonly missed: string | undefined;
  readonly missedAsides: readonly string[];
}

/** More curves than this are told from the tightest to the widest. */
const MOST_CURVES = 4;
/** More places than this are told together when they are alike, and cut when they are not. */
const MOST_PLACES = 8;

/** `fine` writes lengths a sixteenth does not hold: of feet, and of what they do to a curve. */
export function sayReach(reach: Reach, { needleOffset }: Foot, fine: WriteLength): SaidReach {
  const away = fine(reach.away);
  const within = reach.windows.length === 0 ? '' : `, and ${away} inside ${reach.windows.length === 1 ? 'the window' : 'the windows'}`;
  const offset = sayOffset(needleOffset, fine);
  const { missed, closed } = reach;
  return {
    line: `The needle line runs ${away} outside the edge${within}.`,
    lineAsides: [...sayCurves(reach, fine), `All the way round: ${fine(rounded(reach.edgeLength))} of edge, ${fine(rounded(reach.needleLength))} of stitching.`, ...(offset === undefined ? [] : [`${offset} The line is drawn so for a template lying as it does here.`])],
    missed: missed.length > 0 ? `The foot cannot reach into ${missed.length === 1 ? 'one corner' : `${missed.length} corners`}.` : closed.length > 0 ? sayClosed(closed) : undefined,
    missedAsides: [...sayPlaces(missed, fine), ...(missed.length > 0 && closed.length > 0 ? [sayClosed(closed)] : []), ...(missed.length > 0 ? ['The needle line turns a sharp corner there.'] : [])],
  };
}

/** Where the needle is in the foot, when it is not in its middle. */
export function sayOffset([x, y]: Foot['needleOffset'], fine: WriteLength): string | undefined {
  const across = x === 0 ? undefined : `${fine(Math.abs(x))} to the ${x > 0 ? 'right' : 'left'}`;
  const along = y === 0 ? undefined : `${fine(Math.abs(y))} ${y > 0 ? 'towards you' : 'away from you'}`;
  const both = [across, along].filter((part) => part !== undefined);
  return both.length === 0 ? undefined : `The needle falls ${both.join(' and ')} of the foot’s middle.`;
}

function sayCurves({ curves }: Reach, fine: WriteLength): readonly string[] {
  if (curves.length === 0) return [];
  if (curves.length <= MOST_CURVES) return curves.map(({ radius, atNeedle }) => `${atNeedle > radius ? 'Full' : 'Hollow'} curve: radius ${fine(rounded(radius))} on the edge, ${fine(rounded(atNeedle))} at the needle.`);
  const ends = (values: readonly number[]) => `${fine(rounded(Math.min(...values)))} to ${fine(rounded(Math.max(...values)))}`;
  return [`Its curves have radii from ${ends(curves.map(({ radius }) => radius))} on the edge, ${ends(curves.map(({ atNeedle }) => atNeedle))} at the needle.`];
}

function sayPlaces(missed: readonly MissedPlace[], fine: WriteLength): readonly string[] {
  const lengths = missed.map(({ length }) => fine(rounded(length)));
  if (missed.length > 2 && new Set(lengths).size === 1) return [`Missed edge: ${lengths[0]!} at each of the ${missed.length} places.`];
  const told = missed.slice(0, MOST_PLACES).map(({ number, where }, i) => `${number}: ${lengths[i]!} of edge missed, ${where}.`);
  return missed.length > MOST_PLACES ? [...told, `And ${missed.length - MOST_PLACES} more.`] : told;
}

function sayClosed(closed: readonly string[]): string {
  return closed.length === 1 ? 'The foot does not fit into the window.' : `The foot does not fit into ${closed.length} of the windows.`;
}

/** To the nearest thirty-second, so that what the eye cannot tell apart reads alike. */
function rounded(inches: number): number {
  return Math.round(inches * 32) / 32;
}
