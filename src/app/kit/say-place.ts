// A place on a template in words, measured from its centre.

import type { Point } from '../../geometry/point.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import type { WriteLength } from '../words/lengths.ts';

/** "1 1/2 in right of the centre, 3/4 in above it". */
export function sayPlace(at: Point<'template'>, centre: Point<'template'>, fine: WriteLength): string {
  const x = at.x - centre.x;
  const y = at.y - centre.y;
  const across = Math.abs(x) <= SAME_POINT ? undefined : `${fine(Math.abs(x))} ${x > 0 ? 'right' : 'left'} of the centre`;
  const down = Math.abs(y) <= SAME_POINT ? undefined : `${fine(Math.abs(y))} ${y > 0 ? 'below' : 'above'} ${across === undefined ? 'the centre' : 'it'}`;
  const both = [across, down].filter((part) => part !== undefined);
  return both.length === 0 ? 'On the centre' : both.join(', ');
}
