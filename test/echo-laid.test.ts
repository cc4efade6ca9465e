// An echo kept as a placement, laid as the plan lays it.

import { expect, it } from 'vitest';
import { type Path, circle, openPath } from '../src/geometry/path.ts';
import type { Pose } from '../src/geometry/pose.ts';
import { needleLines } from '../src/needle/needle-lines.ts';
import { echo } from '../src/place/echo/echo.ts';
import { asPlacement } from '../src/place/follow/as-placement.ts';
import { findPass } from '../src/stitch/pass.ts';

it('a placement made of it sews the same line when the plan lays it', () => {
  // Radius 4.25 over a chord of 4 on the x axis, and the disc whose needle line has that radius with a half-inch foot.
  const bulge = Math.tan(Math.asin(2 / 4.25) / 2);
  const line: Path<'area'> = openPath([{ x: -2, y: 0, bulge }, { x: 2, y: 0, bulge: 0 }]);
  const template = { needle: needleLines({ outline: circle<'template'>({ x: 0, y: 0 }, 4), windows: [], etchings: [] }, 1 / 2) };
  const found = echo(line, template);
  if (found.kind !== 'whole') throw new Error(found.kind);
  const placement = asPlacement(found.best, 'mine', 'half-round');
  const pose: Pose<'template', 'area'> = { x: placement.pose.x, y: placement.pose.y, angle: (placement.pose.angle * Math.PI) / 180, flipped: placement.flipped };
  const laid = findPass('a', placement.passes['a']!, { needle: template.needle, pose, needleOffset: { x: 0, y: 0 }, lines: [] });
  expect(laid.kind).toBe('found');
  if (laid.kind !== 'found') return;
  expect(laid.length).toBeCloseTo(found.best.pass.length, 9);
  // By true distance to the circle the line was drawn on, centre (0, 3.75): from 4 in away to within the deviation (at the ends seen from the
  // sewn line, which is a trifle more than seen from the line it echoes).
  for (const { x, y } of laid.path.vertices) expect(Math.abs(Math.hypot(x, y - 3.75) - 4)).toBeLessThan(0.015);
});
