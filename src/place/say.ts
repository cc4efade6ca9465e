// Registrations and freedom in words, as a teacher would say them at the table.

import { type LengthStyle, writeLength } from '../num/inches.ts';
import type { Registration } from '../model/plan.ts';
import type { Standing } from './place.ts';
import type { Requirement } from './requirement.ts';

/** "Put the cross on the vertical centre line." with lengths in the style asked for. */
export function sayRegistration(registration: Registration, { feature, target }: Requirement, style: LengthStyle): string {
  const put = `Put ${isNumbered(feature.name) ? '' : 'the '}${feature.name}`;
  const onto = `the ${target.name}`;
  if (registration.angle !== undefined && registration.distance === undefined && feature.kind === 'line') {
    return registration.angle === 0 ? `Lay the ${feature.name} the way of ${onto}.` : `Turn the ${feature.name} ${trimmed(registration.angle)} degrees from ${onto}.`;
  }
  const angle = registration.angle === undefined ? '' : `, turned ${trimmed(registration.angle)} degrees from it`;
  const distance = registration.distance ?? 0;
  if (distance === 0) return `${put} on ${onto}${angle}.`;
  const length = writeLength(Math.abs(distance), style);
  if (target.kind === 'point') return `${put} ${length} from ${onto}${angle}.`;
  return `${put} ${length} ${sideOf(distance, target)} ${onto}${angle}.`;
}

/** "tip 2" needs no article. */
function isNumbered(name: string): boolean {
  return /^tip \d+$/.test(name);
}

/** Which side of a line, seen with the area upright: above, below, left of, right of; of a curve, outside or inside. */
function sideOf(distance: number, target: Requirement['target']): string {
  if (target.kind !== 'line') return 'from';
  // The right of a line as it runs is its direction turned a quarter clockwise.
  const x = -target.way.y * Math.sign(distance);
  const y = target.way.x * Math.sign(distance);
  if (Math.abs(y) >= Math.abs(x)) return y < 0 ? 'above' : 'below';
  return x < 0 ? 'left of' : 'right of';
}

/** "Held by 2 pins, it cannot slide or turn." */
export function sayStanding(standing: Standing, registrations: number, style: LengthStyle): string {
  const held = `Held by ${registrations} ${registrations === 1 ? 'pin' : 'pins'}`;
  switch (standing.kind) {
    case 'by-eye':
      return 'Laid by eye. It can slide and turn.';
    case 'fixed':
      return `${held}, it cannot slide or turn.`;
    case 'overfixed':
      return `${held}, more than it needs; they agree.`;
    case 'unreadable':
      return standing.detail;
    case 'impossible':
      return standing.against.length === 1
        ? `Cannot be: one pin misses by ${writeLength(standing.gap, style)}. Take it out.`
        : `Cannot be: ${standing.against.length} pins quarrel by ${writeLength(standing.gap, style)}. Take one out.`;
    case 'free':
      return `${held}. ${sayFreedom(standing.freedom)}`;
  }
}

/** "It can still slide left and right." */
export function sayFreedom(freedom: Extract<Standing, { kind: 'free' }>['freedom']): string {
  switch (freedom.kind) {
    case 'anywhere':
      return 'It can slide and turn.';
    case 'slide':
      return `It can still slide ${wayOf(freedom.along)}.`;
    case 'turn':
      return 'It can still turn about one place.';
    case 'slide-and-turn':
      return 'It can still slide and turn at once.';
    case 'slide-or-turn':
      return `It can still slide ${wayOf(freedom.along)}, and turn.`;
    case 'slide-anyhow':
      return 'It can still slide any way, but not turn.';
  }
}

function wayOf({ x, y }: { readonly x: number; readonly y: number }): string {
  const slope = Math.abs(Math.atan2(y, x));
  const lean = Math.min(slope, Math.PI - slope);
  if (lean < Math.PI / 16) return 'left and right';
  if (lean > (7 * Math.PI) / 16) return 'up and down';
  return x * y > 0 ? 'down to the right' : 'up to the right';
}

function trimmed(degrees: number): string {
  return String(Math.round(degrees * 100) / 100);
}
