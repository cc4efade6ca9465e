// Keys that move: arrows by a sixteenth of an inch, with Shift a quarter, with Alt a sixty-fourth; comma and full stop turn by one
// degree, with Shift fifteen, with Alt a tenth.

import type { Held } from './node.ts';

/** A step of an arrow key in inches, right and down positive; undefined for any other key. */
export function stepOf(key: string, held: Held): { readonly dx: number; readonly dy: number } | undefined {
  const way = ARROWS[key];
  if (!way) return undefined;
  const step = held.alt ? 1 / 64 : held.shift ? 1 / 4 : 1 / 16;
  return { dx: way[0] * step, dy: way[1] * step };
}

/** A turn by a key in degrees, clockwise positive; undefined for any other key. */
export function turnOf(key: string, held: Held): number | undefined {
  const way = COUNTERCLOCKWISE.has(key) ? -1 : CLOCKWISE.has(key) ? 1 : undefined;
  return way && way * (held.alt ? 0.1 : held.shift ? 15 : 1);
}

const ARROWS: { readonly [key: string]: readonly [number, number] | undefined } = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

/** The two keys as different keyboards write them with Shift and with Alt. */
const COUNTERCLOCKWISE: ReadonlySet<string> = new Set([',', '<', ';', '≤', '«']);
const CLOCKWISE: ReadonlySet<string> = new Set(['.', '>', ':', '≥', '»']);

/** Every key that means something to the hand on the table in Audition, besides those of looking. */
export const HAND_KEYS: readonly string[] = [...COUNTERCLOCKWISE, ...CLOCKWISE, 'f', 'F', 'p', 'P', '[', ']', '{', '}', 'Delete', 'Backspace', 'PageUp', 'PageDown', 'Home', 'End'];
