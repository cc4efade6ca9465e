// The signs of findings on the quilt: numbered as on the slip, fixed in size, pressed to be shown.

import { useMemo } from 'react';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { Point } from '../../geometry/point.ts';
import { type FindingGroup, groupFindings, placeOf } from '../../session/finding-groups.ts';
import { onScreen } from '../../session/view.ts';
import { useSession } from '../use-session.ts';
import './signs.css';

/** How far the sign stands from its place, up and to the right, in CSS pixels. */
const STAND_OFF = 17;
/** Of a picked group, at most so many further places are ringed. */
const MOST_PLACES = 200;

interface Placed {
  readonly group: FindingGroup;
  readonly place: number;
  readonly at: Point<'quilt'>;
}

export interface SignsProps {
  readonly onPick: (group: FindingGroup, place: number) => void;
}

export function Signs({ onPick }: SignsProps) {
  const evaluation = useSession((state) => state.evaluation);
  const selection = useSession((state) => state.selection);
  const view = useSession((state) => state.view);
  const table = useSession((state) => state.table);
  const shown = useSession((state) => state.shown.has('findings'));
  const picked = selection.kind === 'finding' ? selection : undefined;
  const { signs, rings } = useMemo(() => placed(evaluation, picked?.group, picked?.place ?? 0), [evaluation, picked?.group, picked?.place]);
  if (!shown) return null;
  const seen = ({ at }: Placed) => {
    const { x, y } = onScreen(view, at);
    return x > -40 && y > -40 && x < table.width + 40 && y < table.height + 40 ? { x, y } : undefined;
  };
  return (
    <div className="signs">
      {rings.map((ring) => {
        const place = seen(ring);
        return place && <div key={`${ring.group.key}:${ring.place}`} className="finding-ring" style={{ transform: `translate(${place.x}px, ${place.y}px)` }} />;
      })}
      {signs.map((sign) => {
        const place = seen(sign);
        const { group } = sign;
        const isPicked = group.key === picked?.group;
        return (
          place && (
            <button
              key={group.key}
              type="button"
              className={`finding-mark ${group.severity}${isPicked ? ' picked' : ''}`}
              style={{ transform: `translate(${place.x + STAND_OFF - 22}px, ${place.y - STAND_OFF - 22}px)` }}
              aria-label={`Finding ${group.number}: ${group.worst.message}`}
              aria-pressed={isPicked}
              onClick={() => onPick(group, sign.place)}
            >
              <svg viewBox="0 0 44 44" width="44" height="44" aria-hidden="true">
                <SignShape severity={group.severity} />
                <text x="22" y={group.severity === 'warning' ? 30.5 : 27}>{group.number}</text>
              </svg>
            </button>
          )
        );
      })}
    </div>
  );
}

function SignShape({ severity }: Pick<FindingGroup, 'severity'>) {
  switch (severity) {
    case 'error':
      return <path d="M22 5 39 22 22 39 5 22Z" />;
    case 'warning':
      return <path d="M22 6 40 36H4Z" />;
    case 'note':
      return <circle cx="22" cy="22" r="14" />;
  }
}

/** One sign for each group, at the place looked at or the worst one; of the picked group, rings at all places. */
function placed(evaluation: Evaluation, picked: string | undefined, pickedPlace: number): { readonly signs: readonly Placed[]; readonly rings: readonly Placed[] } {
  const signs: Placed[] = [];
  const rings: Placed[] = [];
  for (const group of groupFindings(evaluation.findings)) {
    const isPicked = group.key === picked;
    const place = isPicked ? pickedPlace : 0;
    const at = group.findings[place] && placeOf(evaluation, group.findings[place]);
    if (at) signs.push({ group, place, at });
    if (!isPicked) continue;
    group.findings.slice(0, MOST_PLACES).forEach((finding, index) => {
      const there = placeOf(evaluation, finding);
      if (there) rings.push({ group, place: index, at: there });
    });
  }
  // Number 1 lies on top of the others.
  return { signs: signs.reverse(), rings };
}
