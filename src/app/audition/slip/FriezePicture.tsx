// The arrangements along a border, each in a tiny picture: one small hook, carried by the same motions as the passes are.

import { carryPath } from '../../../geometry/change.ts';
import { openPath, straight } from '../../../geometry/path.ts';
import { writePathData } from '../../../geometry/svg/write.ts';
import type { Frieze } from '../../../model/plan.ts';
import { friezeMotions } from '../../../place/frieze.ts';

const COUNT = 4;
const WIDTH = 8;
const HALF = 0.95;

/** A hook that has no symmetry of its own, so that every motion is seen; in one quarter of its division, so that no two overlap. */
const HOOK = openPath<'area'>([
  { x: 0.14, y: -0.16, bulge: 0.35 },
  { x: 0.8, y: -0.62, bulge: 0.75 },
  { x: 0.62, y: -0.3, bulge: 0 },
]);

export function FriezePicture({ frieze }: { readonly frieze: Frieze }) {
  const lines = friezeMotions(frieze, COUNT, WIDTH).map((motion) => writePathData(carryPath(motion, HOOK)));
  const divisions = Array.from({ length: COUNT - 1 }, (_, i) => {
    const x = ((i + 1) * WIDTH) / COUNT - WIDTH / 2;
    return writePathData(straight<'area'>({ x, y: -HALF }, { x, y: HALF }));
  });
  return (
    <svg className="frieze-picture" viewBox={`${-WIDTH / 2} ${-HALF} ${WIDTH} ${2 * HALF}`} width="132" height="31" aria-hidden="true">
      <path className="frieze-divisions" d={divisions.join('')} />
      <path className="frieze-line" d={lines.join('')} />
    </svg>
  );
}
