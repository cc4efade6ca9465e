// A foot from above: its ring, its middle, and the needle where it truly falls.

import type { Foot } from '../../model/plan.ts';

/** `scale` in CSS pixels to the inch: feet that stand beside each other are drawn at one. */
export function FootPicture({ foot, scale }: { readonly foot: Pick<Foot, 'diameter' | 'needleOffset'>; readonly scale: number }) {
  const radius = foot.diameter / 2;
  const [x, y] = foot.needleOffset;
  const half = Math.max(radius, Math.abs(x), Math.abs(y)) + 1.5 / scale;
  return (
    <svg className="foot-picture" viewBox={`${-half} ${-half} ${2 * half} ${2 * half}`} width={2 * half * scale} height={2 * half * scale} aria-hidden="true">
      <circle className="ring-line" r={radius} />
      <path className="middle" d={`M ${-radius / 4} 0 H ${radius / 4} M 0 ${-radius / 4} V ${radius / 4}`} />
      <circle className="needle-point" cx={x} cy={y} r={4 / scale} />
    </svg>
  );
}
