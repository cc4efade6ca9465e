// The moving layer: what is picked out, drawn over the settled drawing in the quilt's inches.

import { useMemo } from 'react';
import { carryPath } from '../../geometry/change.ts';
import { writePathData } from '../../geometry/svg/write.ts';
import type { Path } from '../../geometry/path.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { linesOf, numberedFindings, spotsOf } from '../../session/numbered-findings.ts';
import type { Room } from '../../session/rooms.ts';
import type { Selection } from '../../session/selection.ts';
import { quiltPath } from '../../stitch/quilt-path.ts';
import { useSession } from '../use-session.ts';

export function Picked() {
  const evaluation = useSession((state) => state.evaluation);
  const selection = useSession((state) => state.selection);
  const room = useSession((state) => state.room);
  const { areas, references, concerned, lines } = useMemo(() => (isSeenIn(room, selection) ? pickedPaths(evaluation, selection) : NO_PATHS), [evaluation, room, selection]);
  return (
    <>
      {references !== '' && <g className="layer reference"><path d={references} /></g>}
      {concerned !== '' && (
        <g className="concerned">
          <path className="casing" d={concerned} />
          <path d={concerned} />
        </g>
      )}
      {areas.map((d) => (
        <g key={d} className="picked-area">
          <path className="casing" d={d} />
          <path d={d} />
        </g>
      ))}
      {lines !== '' && (
        <g className="picked-line">
          <path className="casing" d={lines} />
          <path d={lines} />
        </g>
      )}
    </>
  );
}

/** Findings are seen in Check; on paper nothing that is picked out is printed, so nothing is shown; templates are marked in Audition by the hands themselves. */
function isSeenIn(room: Room, selection: Selection): boolean {
  return room !== 'paper' && (selection.kind !== 'finding' || room === 'check') && (selection.kind !== 'placement' || room !== 'audition');
}

interface PickedPaths {
  readonly areas: readonly string[];
  readonly references: string;
  /** Lines a finding is about. */
  readonly concerned: string;
  readonly lines: string;
}

const NO_PATHS: PickedPaths = { areas: [], references: '', concerned: '', lines: '' };

/** More lines than this are not thickened: they would be a blot. */
const MOST_LINES = 2000;

function pickedPaths(evaluation: Evaluation, selection: Selection): PickedPaths {
  const lineData = (wanted: (line: Evaluation['lines'][number]) => boolean) =>
    evaluation.lines.filter(wanted).slice(0, MOST_LINES).map((line) => writePathData(quiltPath(line))).join('');
  switch (selection.kind) {
    case 'nothing':
      return NO_PATHS;
    case 'area': {
      const area = evaluation.top.areas.find(({ id }) => id === selection.area);
      if (!area) return NO_PATHS;
      const onQuilt = (path: Path<'area'>) => writePathData(carryPath(area.frame, path));
      return { ...NO_PATHS, areas: [onQuilt(area.boundary)], references: area.referenceLines.filter(({ kind }) => kind !== 'edge').map(({ path }) => onQuilt(path)).join('') };
    }
    case 'sheet':
      return { ...NO_PATHS, lines: lineData((line) => line.sheet === selection.sheet) };
    case 'placement':
      return { ...NO_PATHS, lines: lineData((line) => line.sheet === selection.sheet && line.placement === selection.placement) };
    case 'line':
      return { ...NO_PATHS, lines: lineData((line) => line.id === selection.line) };
    case 'finding': {
      const finding = numberedFindings(evaluation.findings).find(({ key }) => key === selection.finding)?.finding;
      if (!finding) return NO_PATHS;
      const spot = spotsOf(evaluation, finding)[selection.spot];
      const concerned = linesOf(evaluation, finding).slice(0, MOST_LINES).map((line) => writePathData(quiltPath(line)));
      return { ...NO_PATHS, concerned: concerned.join(''), lines: spot?.kind === 'line' ? writePathData(quiltPath(spot.line)) : '' };
    }
  }
}
