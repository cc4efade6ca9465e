// What a wheel means. A mouse wheel clicks along in large steps and goes nearer or farther; two fingers on a pad give many
// small steps and push the quilt; a pinch on a pad arrives as a wheel with Control held. What a burst of steps began as,
// it stays until the hand rests.

import type { Held } from './node.ts';

export interface Burst {
  readonly means: 'zoom' | 'push';
  readonly time: number;
}

/** A pause longer than this, in milliseconds, ends a burst. */
const PAUSE = 180;
/** The least step of a mouse wheel, in CSS pixels. */
const CLICK = 50;

/** The burst a wheel step belongs to or begins. */
export function burstOf(before: Burst | undefined, step: { readonly dx: number; readonly dy: number; readonly held: Held; readonly time: number }): Burst {
  if (step.held.control) return { means: 'zoom', time: step.time };
  if (step.held.shift) return { means: 'push', time: step.time };
  if (before && step.time - before.time < PAUSE) return { means: before.means, time: step.time };
  return { means: step.dx === 0 && Math.abs(step.dy) >= CLICK ? 'zoom' : 'push', time: step.time };
}

/** The factor a step of so many pixels zooms by; a pad's pinch comes in far smaller steps than a wheel's click. */
export function factorOf(dy: number, pinched: boolean): number {
  const step = Math.max(-240, Math.min(240, dy));
  return Math.exp(-step * (pinched ? 0.01 : 0.0018));
}
