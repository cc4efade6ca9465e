// A line from the spot on the quilt to the loupe that enlarges it, while both are in sight.

import { type RefObject, useLayoutEffect, useRef } from 'react';
import type { Spot } from '../../session/numbered-findings.ts';
import { onScreen } from '../../session/view.ts';
import { useSession } from '../use-session.ts';

export interface LeaderProps {
  readonly room: RefObject<HTMLElement | null>;
  readonly glass: RefObject<HTMLDivElement | null>;
  readonly spot: Spot | undefined;
}

/** The line begins so far from the spot, in CSS pixels: outside its ring. */
const RING = 14;

export function Leader({ room, glass, spot }: LeaderProps) {
  const line = useRef<SVGPathElement>(null);
  const view = useSession((state) => state.view);
  const size = useSession((state) => state.table);
  const shown = useSession((state) => state.shown.has('findings'));
  useLayoutEffect(() => {
    line.current!.setAttribute('d', (shown && lead()) || '');
    function lead(): string | undefined {
      const table = room.current?.querySelector('.table')?.getBoundingClientRect();
      const within = room.current?.getBoundingClientRect();
      const lens = glass.current?.getBoundingClientRect();
      if (spot?.kind !== 'place' || !table || !within || !lens || lens.left < table.right) return undefined;
      const seen = onScreen(view, spot.at);
      if (seen.x < 0 || seen.y < 0 || seen.x > size.width || seen.y > size.height) return undefined;
      const from = { x: table.left + seen.x - within.left, y: table.top + seen.y - within.top };
      const to = { x: lens.left + lens.width / 2 - within.left, y: lens.top + lens.height / 2 - within.top };
      const far = Math.hypot(to.x - from.x, to.y - from.y);
      const at = (part: number) => `${from.x + (to.x - from.x) * part} ${from.y + (to.y - from.y) * part}`;
      return `M${at(RING / far)}L${at(1 - lens.width / 2 / far)}`;
    }
  });
  return (
    <svg className="leader" aria-hidden="true"><path ref={line} /></svg>
  );
}
