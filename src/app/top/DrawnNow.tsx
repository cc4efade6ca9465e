// The shape under way, on the quilt.

import { writePathData } from '../../geometry/svg/write.ts';
import { openPath } from '../../geometry/path.ts';
import { outlineData } from '../../session/top/outlines.ts';
import { useSession } from '../use-session.ts';
import './top.css';

export function DrawnNow() {
  const drawing = useSession((state) => state.drawing);
  if (!drawing) return null;
  const corners = drawing.corners.length > 0 ? writePathData(openPath(drawing.corners.map(({ x, y }) => ({ x, y, bulge: 0 })))) : undefined;
  const d = drawing.outline ? outlineData(drawing.outline) : corners;
  return (
    <g className="drawn-now">
      {d && <path d={d} />}
      {drawing.corners.map(({ x, y }, i) => <circle key={i} cx={x} cy={y} r={i === 0 ? 0.3 : 0.15} />)}
    </g>
  );
}
