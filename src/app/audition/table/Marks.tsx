// Signs that keep their size on the screen: pins, the ends of passes, the foot, the handle, and the rings round what is near.

import { memo, useMemo } from 'react';
import { after } from '../../../geometry/pose.ts';
import type { Point } from '../../../geometry/point.ts';
import { writePathData } from '../../../geometry/svg/write.ts';
import { carryPath } from '../../../geometry/change.ts';
import { poseOf } from '../../../geometry/pose.ts';
import { axesOf, laidOn, onTable, pickedOn } from '../../../session/lay/on-table.ts';
import { type EndMark, type FootMark, type Pin, type WayMark, marksOn } from '../../../session/lay/marks.ts';
import { handleOf } from '../../../session/lay/shown.ts';
import { type ScreenPoint, type View, onScreen } from '../../../session/view.ts';
import { useSession } from '../../use-session.ts';
import { useLengths } from '../../words/lengths.ts';
import { OverhangSign } from './OverhangSign.tsx';
import './marks.css';

export function Marks() {
  const evaluation = useSession((state) => state.evaluation);
  const selection = useSession((state) => state.selection);
  const working = useSession((state) => state.working);
  const inHand = useSession((state) => state.inHand);
  const foot = useSession((state) => state.foot);
  const gathering = useSession((state) => state.gathering);
  const view = useSession((state) => state.view);
  const table = useSession((state) => state.table);
  const state = useSession((now) => now);
  const marks = useMemo(() => marksOn(state), [evaluation, selection, working, inHand, foot]);
  const handle = inHand && inHand.does !== 'turn' ? undefined : handleOf(state);
  const see = (p: Point<'quilt'>) => onScreen(view, p);
  return (
    <svg className="table-marks" width={table.width} height={table.height} aria-hidden="true">
      {marks && <OverhangSign view={view} />}
      {marks && <TracedInk view={view} />}
      {handle && (
        <g className="turn-handle">
          <line x1={handle.middle.x} y1={handle.middle.y} x2={handle.at.x} y2={handle.at.y} />
          <circle cx={handle.at.x} cy={handle.at.y} r="17" />
          <path transform={`translate(${handle.at.x} ${handle.at.y})`} d="M-7.5 3A8 8 0 1 1 7.5 3M7.5 3L9.5 -2.5M7.5 3L2 1.5" />
        </g>
      )}
      {marks?.ends.map((end) => <End key={`${end.pass}${end.end}`} end={end} see={see} />)}
      {marks?.ways.map((way) => <Way key={way.pass} way={way} see={see} />)}
      {marks?.foot && <Foot foot={marks.foot} view={view} />}
      {marks?.near && <NearRings near={marks.near} see={see} />}
      {marks?.pins.map((pin) => <PinSign key={pin.key} pin={pin} see={see} />)}
      {gathering && <Gathering corners={gathering} />}
    </svg>
  );
}

/** The passes of the template picked out, thickest of all lines. */
function TracedInk({ view }: { readonly view: View }) {
  const laid = useSession((state) => {
    const on = onTable(state);
    const [picked] = pickedOn(state.selection, on?.sheet?.id);
    return on && picked !== undefined ? laidOn(state, on, picked) : undefined;
  });
  const area = useSession((state) => onTable(state)?.area);
  const data = useMemo(() => {
    if (!laid || !area) return '';
    const { x, y } = laid.needleOffset;
    const pose = after(poseOf<'area', 'area'>(x, y), axesOf(laid, area));
    return laid.passes.map((pass) => (pass.kind === 'found' ? writePathData(carryPath(pose, pass.path)) : '')).join('');
  }, [laid, area]);
  return <path className="traced" transform={`scale(${view.scale}) translate(${-view.x} ${-view.y})`} d={data} />;
}

type See = (p: Point<'quilt'>) => ScreenPoint;

/** The letter stands so far off its end, in CSS pixels. */
const OFF = 24;

function End({ end, see }: { readonly end: EndMark; readonly see: See }) {
  const at = see(end.at);
  const [from, to] = end.mark.map(see) as [ScreenPoint, ScreenPoint];
  const letter = { x: at.x + end.outward.x * OFF, y: at.y + end.outward.y * OFF };
  return (
    <g className={`pass-end${end.isPicked ? ' picked' : ''}`}>
      <line className="template-mark" x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
      <circle className="needle-down" cx={at.x} cy={at.y} r="3.6" />
      <circle className="letter-paper" cx={letter.x} cy={letter.y} r="13" />
      <text x={letter.x} y={letter.y + 5}>{end.letter}</text>
    </g>
  );
}

function Way({ way, see }: { readonly way: WayMark; readonly see: See }) {
  const at = see(way.at);
  const angle = (Math.atan2(way.way.y, way.way.x) * 180) / Math.PI;
  return <path className="pass-way" transform={`translate(${at.x} ${at.y}) rotate(${angle})`} d="M-6 -6.5L7 0L-6 6.5Z" />;
}

const Foot = memo(function Foot({ foot, view }: { readonly foot: FootMark; readonly view: View }) {
  const at = onScreen(view, foot.centre);
  const needle = onScreen(view, foot.needle);
  return (
    <g className="foot-ring">
      <circle className="ring" cx={at.x} cy={at.y} r={Math.max(5, (foot.diameter / 2) * view.scale)} />
      <circle className="needle" cx={needle.x} cy={needle.y} r="2.2" />
    </g>
  );
});

function NearRings({ near, see }: { readonly near: readonly [Point<'quilt'>, Point<'quilt'>]; readonly see: See }) {
  const [feature, landmark] = near.map(see) as [ScreenPoint, ScreenPoint];
  return (
    <g className="near-rings">
      <circle cx={feature.x} cy={feature.y} r="9" />
      <circle className="dashed" cx={landmark.x} cy={landmark.y} r="15" />
    </g>
  );
}

function PinSign({ pin, see }: { readonly pin: Pin; readonly see: See }) {
  const length = useLengths();
  const at = see(pin.at);
  const to = pin.to && see(pin.to);
  return (
    <g className={`pin ${pin.kind}`}>
      {to && pin.gap !== undefined && (
        <g className="gap">
          <line x1={at.x} y1={at.y} x2={to.x} y2={to.y} />
          <line className="rungs" x1={at.x} y1={at.y} x2={to.x} y2={to.y} />
          <circle cx={to.x} cy={to.y} r="5" />
          <text x={(at.x + to.x) / 2 + 12} y={(at.y + to.y) / 2 + 5}>{length(pin.gap)}</text>
        </g>
      )}
      <g transform={`translate(${at.x} ${at.y})`}>
        <g className="drop">
          {pin.kind === 'asked' && <circle className="met" r="9" />}
          <line x1="0" y1="0" x2="11" y2="-15" />
          {pin.kind === 'in-the-way' ? <path className="head" d="M13 -27L21 -13H5Z" /> : <circle className="head" cx="13" cy="-18" r="5.6" />}
        </g>
      </g>
    </g>
  );
}

function Gathering({ corners: [a, b] }: { readonly corners: readonly [ScreenPoint, ScreenPoint] }) {
  return <rect className="gathering" x={Math.min(a.x, b.x)} y={Math.min(a.y, b.y)} width={Math.abs(b.x - a.x)} height={Math.abs(b.y - a.y)} />;
}
