// A finding as it truly is, small, at the end of its row; drawn when the row comes into sight.

import { useEffect, useMemo, useRef, useState } from 'react';
import type { Finding } from '../../check/finding.ts';
import { spotsOf } from '../../session/numbered-findings.ts';
import { Loupe } from '../rooms/Loupe.tsx';
import { useSession } from '../use-session.ts';
import { acrossFor, middleOf } from './show-spot.ts';

/** So far out of sight a picture is drawn already. */
const AHEAD = '120px';
const NO_LINES: readonly string[] = [];

export function FindingPicture({ finding }: { readonly finding: Finding }) {
  const place = useRef<HTMLDivElement>(null);
  const [seen, setSeen] = useState(false);
  const evaluation = useSession((state) => state.gesture?.settled ?? state.evaluation);
  const spot = useMemo(() => spotsOf(evaluation, finding)[0], [evaluation, finding]);
  useEffect(() => {
    if (seen || !place.current) return;
    const observer = new IntersectionObserver(([entry]) => entry?.isIntersecting && setSeen(true), { rootMargin: AHEAD });
    observer.observe(place.current);
    return () => observer.disconnect();
  }, [seen]);
  if (!spot) return null;
  return (
    <div ref={place} className="finding-picture" aria-hidden="true">
      {seen && (
        <Loupe evaluation={evaluation} at={middleOf(spot)} across={acrossFor(spot, finding.measured)} ringed={spot.kind === 'place'} lines={finding.where.lines ?? NO_LINES} small />
      )}
    </div>
  );
}
