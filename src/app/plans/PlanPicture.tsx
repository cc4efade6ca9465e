// The small picture of a plan or a version: cloth below, stitched lines above, dressed like the table.

import { useEffect, useRef, useState } from 'react';
import type { PlanPicture as Picture } from './picture.ts';

/** `paint` gives the picture; it is asked only when the place for it comes into sight, and again when `key` changes. */
export function PlanPicture({ paint }: { readonly paint: () => Promise<Picture | undefined> }) {
  const [picture, setPicture] = useState<Picture>();
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    let wanted = true;
    const observer = new IntersectionObserver(([entry]) => {
      if (!entry?.isIntersecting) return;
      observer.disconnect();
      paint().then((painted) => wanted && painted && setPicture(painted), () => undefined);
    });
    observer.observe(place.current!);
    return () => {
      wanted = false;
      observer.disconnect();
    };
  }, [paint]);
  return (
    <div ref={place} className="plan-picture" aria-hidden="true">
      {picture && picture.width > 0 && (
        <svg viewBox={`0 0 ${picture.width} ${picture.height}`} preserveAspectRatio="xMidYMid meet">
          {picture.parts.map(({ dress, d }) => (
            <g key={dress} className={dress === 'needle' ? 'layer needle' : 'layer ground'}>
              <path className={dress} d={d} />
            </g>
          ))}
        </svg>
      )}
    </div>
  );
}
