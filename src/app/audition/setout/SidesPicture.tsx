// A border with the measured length of each side beside it: all four count.

import type { Area } from '../../../top/area.ts';
import { useSession } from '../../use-session.ts';
import { useLengths } from '../../words/lengths.ts';
import { Said } from '../../words/Said.tsx';

const HIGHEST = 150;
const WIDEST = 190;

export function SidesPicture({ sides }: { readonly sides: readonly Area[] }) {
  const { width, height } = useSession((state) => state.evaluation.top);
  const length = useLengths();
  const scale = Math.min(WIDEST / width, HIGHEST / height);
  const of = (wanted: string) => sides.find(({ side }) => side === wanted);
  const border = (of('top')?.height ?? 0) * scale;
  return (
    <div className="sides-picture">
      {(['top', 'left', 'right', 'bottom'] as const).map((side) => {
        const area = of(side);
        return area && <p key={side} className={`side-length ${side}`}><span className="only-heard">{side}: </span><Said>{length(area.width)}</Said></p>;
      })}
      <svg width={width * scale} height={height * scale} aria-hidden="true">
        <rect className="side-cloth" x="0.5" y="0.5" width={width * scale - 1} height={height * scale - 1} />
        <rect className="side-middle" x={border} y={border} width={width * scale - 2 * border} height={height * scale - 2 * border} />
      </svg>
    </div>
  );
}
