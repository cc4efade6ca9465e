// A template with its marks, from the same display list the paper is made from.

import type { DisplayList } from '../../../drawing/display-list.ts';
import { writePathData } from '../../../geometry/svg/write.ts';

export function MarkedPicture({ list }: { readonly list: DisplayList<'template'> }) {
  const { x, y, width, height } = list.bounds;
  return (
    <svg className="marked-picture" viewBox={`${x} ${y} ${width} ${height}`} preserveAspectRatio="xMidYMid meet" aria-hidden="true">
      {list.items.map((item, i) =>
        item.kind === 'path' ? (
          <path key={i} className={`marked ${item.layer}${item.filled ? ' filled' : ''}`} d={[item.path, ...(item.holes ?? [])].map((path) => writePathData(path)).join('')} />
        ) : (
          <text key={i} className={`marked ${item.layer}`} x={item.at.x} y={item.at.y} fontSize={item.height / CAPITALS} textAnchor={item.anchor}>{item.text}</text>
        ),
      )}
    </svg>
  );
}

/** Height of the capitals as a part of the size of the face, of the face for labels. */
const CAPITALS = 0.66;
