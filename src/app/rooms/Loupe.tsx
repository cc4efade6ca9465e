// The loupe: a finding enlarged where it is, beside the top.

import { type Ref, useMemo } from 'react';
import type { DisplayItem } from '../../drawing/display-list.ts';
import { LAYERS } from '../../drawing/display-list.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import { endOf, startOf } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { writePathData } from '../../geometry/svg/write.ts';
import { quiltPath } from '../../stitch/quilt-path.ts';
import { clothFor } from '../table/cloth.ts';
import { drawnForScreen } from '../table/drawn.ts';

export interface LoupeProps {
  readonly evaluation: Evaluation;
  readonly at: Point<'quilt'>;
  /** How much of the quilt is seen from side to side, in inches. */
  readonly across: number;
  /** Ids of the stitched lines concerned: drawn thicker, with their ends. */
  readonly lines: readonly string[];
  readonly glass?: Ref<HTMLDivElement>;
}

/** Layers seen in the loupe, whatever is shown on the table. */
const SEEN = LAYERS.filter((layer) => !['finding', 'label', 'needle-unsewn'].includes(layer));

export function Loupe({ evaluation, at, across, lines, glass }: LoupeProps) {
  const half = across / 2;
  const near = useMemo(() => itemsNear(evaluation, at, half), [evaluation, at, half]);
  const dress = useMemo(() => clothFor(evaluation.top), [evaluation.top]);
  const concerned = useMemo(() => {
    const ids = new Set(lines);
    return evaluation.lines.filter((line) => ids.has(line.id)).map(quiltPath);
  }, [evaluation, lines]);
  const ends = concerned.filter((path) => !path.closed).flatMap((path) => [startOf(path), endOf(path)]);
  return (
    <div className="loupe-glass" ref={glass}>
      <svg viewBox={`${at.x - half} ${at.y - half} ${across} ${across}`} aria-hidden="true">
        {SEEN.map((layer) => (
          <g key={layer} className={`layer ${layer}`}>
            {near.filter((item) => item.layer === layer).map((item, index) => item.kind === 'path' && <path key={index} className={`${dress(item)}${item.filled ? ' filled' : ''}`} d={writePathData(item.path)} />)}
          </g>
        ))}
        <g className="picked-line">
          {concerned.map((path, index) => <path key={index} d={writePathData(path)} />)}
        </g>
        {ends.map((end, index) => end && <circle key={index} className="line-end" cx={end.x} cy={end.y} r={across / 75} />)}
        <circle className="loupe-ring" cx={at.x} cy={at.y} r={across * 0.11} />
      </svg>
    </div>
  );
}

function itemsNear(evaluation: Evaluation, at: Point<'quilt'>, half: number): readonly DisplayItem<'quilt'>[] {
  return drawnForScreen(evaluation).items.filter((item) => {
    if (item.kind !== 'path') return false;
    const { minX, minY, maxX, maxY } = boundsOf(item.path);
    return minX <= at.x + half && maxX >= at.x - half && minY <= at.y + half && maxY >= at.y - half;
  });
}
