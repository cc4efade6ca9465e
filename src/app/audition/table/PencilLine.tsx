// The line a hand is drawing, on the quilt.

import { openPath } from '../../../geometry/path.ts';
import { writePathData } from '../../../geometry/svg/write.ts';
import { useSession } from '../../use-session.ts';

export function PencilLine() {
  const pencil = useSession((state) => state.pencil);
  if (!pencil || pencil.length < 2) return null;
  return <path className="pencil-line" d={writePathData(openPath(pencil.map(({ x, y }) => ({ x, y, bulge: 0 }))))} />;
}
