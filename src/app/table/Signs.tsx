// The signs of findings on the quilt: numbered as on the slip, fixed in size, pressed to be shown.

import { useMemo } from 'react';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { Point } from '../../geometry/point.ts';
import type { Severity } from '../../check/finding.ts';
import { type NumberedFinding, numberedFindings, placeOf } from '../../session/numbered-findings.ts';
import { onScreen } from '../../session/view.ts';
import { useSession } from '../use-session.ts';
import './signs.css';

/** How far the sign stands from its place, up and to the right, in CSS pixels. */
const STAND_OFF = 17;

interface Placed extends NumberedFinding {
  readonly at: Point<'quilt'>;
}

export interface SignsProps {
  readonly onPick: (finding: NumberedFinding) => void;
}

export function Signs({ onPick }: SignsProps) {
  const evaluation = useSession((state) => state.evaluation);
  const picked = useSession((state) => (state.selection.kind === 'finding' ? state.selection : undefined));
  const view = useSession((state) => state.view);
  const table = useSession((state) => state.table);
  const shown = useSession((state) => state.shown.has('findings'));
  const placed = useMemo(() => placedFindings(evaluation), [evaluation]);
  if (!shown) return null;
  const inSight = placed.flatMap((one) => {
    const { x, y } = onScreen(view, one.at);
    const out = x < -40 || y < -40 || x > table.width + 40 || y > table.height + 40;
    const isPicked = one.key === picked?.finding;
    // What is left so bears a sign only while it is looked at.
    return out || (one.finding.accepted !== undefined && !isPicked) ? [] : [{ ...one, x, y, isPicked }];
  });
  return (
    <div className="signs">
      {inSight.map(({ key, x, y, isPicked }) => isPicked && <div key={key} className="finding-ring" style={{ transform: `translate(${x}px, ${y}px)` }} />)}
      {inSight.map((sign) => (
        <button
          key={sign.key}
          type="button"
          className={`finding-mark ${sign.finding.severity}${sign.isPicked ? ' picked' : ''}`}
          // Number 1 lies on top of the others, and is reached first.
          style={{ transform: `translate(${sign.x + STAND_OFF - 22}px, ${sign.y - STAND_OFF - 22}px)`, zIndex: evaluation.findings.length - sign.number }}
          aria-label={`Finding ${sign.number}: ${sign.finding.message}`}
          aria-pressed={sign.isPicked}
          onClick={() => onPick(sign)}
        >
          <svg viewBox="0 0 44 44" width="44" height="44" aria-hidden="true">
            <SignShape severity={sign.finding.severity} />
            <text x="22" y={sign.finding.severity === 'warning' ? 30.5 : 27}>{sign.number}</text>
          </svg>
        </button>
      ))}
    </div>
  );
}

function SignShape({ severity }: { readonly severity: Severity }) {
  switch (severity) {
    case 'error':
      return <path d="M22 5 39 22 22 39 5 22Z" />;
    case 'warning':
      return <path d="M22 6 40 36H4Z" />;
    case 'note':
      return <circle cx="22" cy="22" r="14" />;
  }
}

/** The findings that have a place on the quilt. */
function placedFindings(evaluation: Evaluation): readonly Placed[] {
  return numberedFindings(evaluation.findings).flatMap((numbered) => {
    const at = placeOf(evaluation, numbered.finding);
    return at ? [{ ...numbered, at }] : [];
  });
}
