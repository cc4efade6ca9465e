// The loupe: a finding enlarged where it is, beside the top.

import { type Ref, useMemo } from 'react';
import type { DisplayItem } from '../../drawing/display-list.ts';
import { LAYERS, type Layer } from '../../drawing/display-list.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import { endOf, startOf } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { writePathData } from '../../geometry/svg/write.ts';
import { layersOf } from '../../session/shown.ts';
import { quiltPath } from '../../stitch/quilt-path.ts';
import { clothFor } from '../table/cloth.ts';
import { drawnForScreen } from '../table/drawn.ts';
import { useSession } from '../use-session.ts';

export interface LoupeProps {
  readonly evaluation: Evaluation;
  readonly at: Point<'quilt'>;
  /** How much of the quilt is seen from side to side, in inches. */
  readonly across: number;
  /** A ring stands at the place. */
  readonly ringed: boolean;
  /** Ids of the stitched lines concerned: drawn thicker, with their ends. */
  readonly lines: readonly string[];
  readonly glass?: Ref<HTMLDivElement>;
  /** At the end of a row rather than beside the top. */
  readonly small?: boolean;
}

/** Layers seen in the loupe besides those shown on the table. */
const ALWAYS: readonly Layer[] = ['ground', 'seam', 'raw-edge', 'allowance', 'keep-out', 'needle'];
const NEVER: readonly Layer[] = ['finding', 'label'];

export function Loupe({ evaluation, at, across, ringed, lines, glass, small = false }: LoupeProps) {
  const shown = useSession((state) => state.shown);
  const seen = useMemo(() => {
    const onTable = layersOf(shown);
    return LAYERS.filter((layer) => !NEVER.includes(layer) && (ALWAYS.includes(layer) || onTable.has(layer)));
  }, [shown]);
  const half = across / 2;
  const near = useMemo(() => itemsNear(evaluation, at, half), [evaluation, at, half]);
  const dress = useMemo(() => clothFor(evaluation), [evaluation]);
  const concerned = useMemo(() => {
    const ids = new Set(lines);
    return evaluation.lines.filter((line) => ids.has(line.id)).map(quiltPath);
  }, [evaluation, lines]);
  const ends = concerned.filter((path) => !path.closed).flatMap((path) => [startOf(path), endOf(path)]);
  return (
    <div className={small ? 'loupe-small' : 'loupe-glass'} ref={glass}>
      <svg viewBox={`${at.x - half} ${at.y - half} ${across} ${across}`} aria-hidden="true">
        {seen.map((layer) => (
          <g key={layer} className={`layer ${layer}`}>
            {near.filter((item) => item.layer === layer).map((item, index) => item.kind === 'path' && <path key={index} className={`${dress(item)}${item.filled ? ' filled' : ''}`} d={writePathData(item.path)} />)}
          </g>
        ))}
        <g className="picked-line">
          {concerned.map((path, index) => <path key={index} d={writePathData(path)} />)}
        </g>
        {ends.map((end, index) => end && <circle key={index} className="line-end" cx={end.x} cy={end.y} r={across / 75} />)}
        {ringed && <circle className="loupe-ring" cx={at.x} cy={at.y} r={across * 0.11} />}
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
