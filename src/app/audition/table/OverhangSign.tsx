// The part of the needle line that hangs over a seam or the raw edge, or comes too near it: hatched, its length beside it.

import { useMemo } from 'react';
import { carryPath } from '../../../geometry/change.ts';
import { pathLength, pointAlong } from '../../../geometry/measure.ts';
import { between, dot } from '../../../geometry/point.ts';
import { carry } from '../../../geometry/pose.ts';
import { writePathData } from '../../../geometry/svg/write.ts';
import { onTable } from '../../../session/lay/on-table.ts';
import { overhangPicked } from '../../../session/lay/overhang.ts';
import { type View, onScreen } from '../../../session/view.ts';
import { useSession } from '../../use-session.ts';
import { useLengths } from '../../words/lengths.ts';

/** Distance between the strokes of the hatch, and how far its length stands off, in CSS pixels. */
const HATCH = 5;
const OFF = 20;

export function OverhangSign({ view }: { readonly view: View }) {
  const over = useSession(overhangPicked);
  const area = useSession((state) => onTable(state)?.area);
  const length = useLengths();
  const drawn = useMemo(() => {
    if (!over || !area) return undefined;
    const [longest] = [...over.stretches].sort((a, b) => pathLength(b) - pathLength(a));
    if (!longest) return undefined;
    const { point, tangent } = pointAlong(longest, pathLength(longest) / 2);
    const side = dot({ x: tangent.y, y: -tangent.x }, between(over.middle, point)) < 0 ? -1 : 1;
    return {
      data: over.stretches.map((stretch) => writePathData(carryPath(area.frame, stretch))).join(''),
      at: carry(area.frame, point),
      // Away from the template, so that its length does not lie on it.
      beside: carry(area.frame, { x: point.x + side * tangent.y, y: point.y - side * tangent.x }),
    };
  }, [over, area]);
  if (!over || !drawn) return null;
  const [at, beside] = [onScreen(view, drawn.at), onScreen(view, drawn.beside)];
  const away = Math.hypot(beside.x - at.x, beside.y - at.y);
  const [x, y] = [at.x + ((beside.x - at.x) / away) * OFF, at.y + ((beside.y - at.y) / away) * OFF];
  return (
    <g className="overhang">
      <defs>
        <pattern id="overhang-hatch" patternUnits="userSpaceOnUse" width={HATCH} height={HATCH} patternTransform={`scale(${1 / view.scale}) rotate(45)`}>
          <rect className="ground" width={HATCH} height={HATCH} />
          <line y2={HATCH} />
        </pattern>
      </defs>
      <g transform={`scale(${view.scale}) translate(${-view.x} ${-view.y})`}>
        <path className="band" d={drawn.data} />
        <path stroke="url(#overhang-hatch)" d={drawn.data} />
      </g>
      <text x={x} y={y + 5} textAnchor={x >= at.x + 6 ? 'start' : x <= at.x - 6 ? 'end' : 'middle'}>{length(over.length)}</text>
    </g>
  );
}
