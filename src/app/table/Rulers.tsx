// Edge rulers: along the top and the left of the table, counting from the quilt's raw corner.

import { useSession } from '../use-session.ts';
import { rulerMarks } from './ruler-marks.ts';

/** Width of a ruler, in CSS pixels; the stylesheet says the same. */
const WIDTH = 26;

export function Rulers() {
  const view = useSession((state) => state.view);
  const table = useSession((state) => state.table);
  const top = useSession((state) => state.evaluation.top);
  const unit = useSession((state) => state.evaluation.plan.shownIn);
  const pointer = useSession((state) => state.pointer);
  return (
    <>
      <Ruler lies="along" from={view.x} length={table.width} scale={view.scale} whole={top.width} unit={unit} pointer={pointer?.x} />
      <Ruler lies="down" from={view.y} length={table.height} scale={view.scale} whole={top.height} unit={unit} pointer={pointer?.y} />
      <div className="ruler-corner" aria-hidden="true">{unit}</div>
    </>
  );
}

interface RulerProps {
  readonly lies: 'along' | 'down';
  readonly from: number;
  readonly length: number;
  readonly scale: number;
  readonly whole: number;
  readonly unit: 'in' | 'cm';
  readonly pointer: number | undefined;
}

function Ruler({ lies, from, length, scale, whole, unit, pointer }: RulerProps) {
  const { ticks, labels } = rulerMarks(from, length, scale, whole, unit);
  const along = lies === 'along';
  const stroke = (at: number, reach: number) => {
    const place = Math.round(at) + 0.5;
    const start = WIDTH - reach * 11;
    return along ? `M${place} ${start}V${WIDTH}` : `M${start} ${place}H${WIDTH}`;
  };
  return (
    <svg className={`ruler ${lies}`} width={along ? length : WIDTH} height={along ? WIDTH : length} aria-hidden="true">
      <path className="ticks" d={ticks.map(({ at, reach }) => stroke(at, reach)).join('')} />
      {pointer !== undefined && <path className="pointer" d={stroke(pointer, 2.4)} />}
      {labels.map(({ at, text }) => (
        <text key={text} className={text.includes('/') ? 'fraction' : undefined} x={along ? at + 4 : 0} y={along ? 12 : 0} transform={along ? undefined : `translate(12 ${at - 4}) rotate(-90)`}>
          {text}
        </text>
      ))}
    </svg>
  );
}
