// How closely hands line things up: the error of every equation a registration asks.
// Every figure is the half-width of the stretch that holds 95 of 100 tries, errors being independent and normal, so that half-widths
// add up as the root of the sum of their squares, and what comes out is a half-width of the same kind.

import { FOOT_SLACK, MARK_SLACK } from '../../num/tolerances.ts';
import type { Requirement } from '../requirement.ts';

export interface Slack {
  /** Of a mark lined up by eye on a line or place, in inches, each way. */
  readonly mark: number;
  /** Of the way from the edge to the needle, in inches: how well the foot is known and held against the template. */
  readonly foot: number;
}

/** A thirty-second for each mark, a sixty-fourth for the foot. */
export const USUAL_SLACK: Slack = { mark: MARK_SLACK, foot: FOOT_SLACK };

/**
 * The slack of each equation of a requirement, in the order `equationsOf` gives them and in the unit of its value, inches. A straight
 * etching along a line is lined up at both its ends: its middle is off by e / sqrt 2, and so is its angle times half its length.
 * An angle asked of a cross is read off arms an inch long.
 */
export function slackOf({ feature, target, angle, distance }: Requirement, { mark }: Slack): readonly number[] {
  const along = feature.kind === 'line' && target.kind === 'line';
  const turning = target.kind === 'line' && (angle !== undefined || along);
  const atEnds = mark / Math.SQRT2;
  const turned = turning ? [feature.kind === 'line' ? (atEnds * Math.max(1, feature.lever)) / feature.lever : mark] : [];
  if (angle !== undefined && distance === undefined && feature.kind === 'line') return turned;
  if (along) return [...turned, atEnds];
  if (target.kind === 'point' && feature.kind === 'point' && (distance ?? 0) === 0) return [...turned, mark, mark];
  if (target.kind === 'curve' && feature.kind === 'curve') return [mark, mark, mark];
  return [...turned, mark];
}
