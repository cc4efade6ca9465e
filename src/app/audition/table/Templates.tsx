// The acrylic on the table: each template lies in a picture of its own that the browser moves as a whole, so that a hand can slide
// and turn it without anything being drawn again.

import { type CSSProperties, memo, useLayoutEffect, useRef } from 'react';
import { boundsOf } from '../../../geometry/bounds.ts';
import { stretchOfPath } from '../../../geometry/change.ts';
import { pathLength, pointAlong } from '../../../geometry/measure.ts';
import { nearestOnPath } from '../../../geometry/nearest.ts';
import { between, moved, partWay, unit } from '../../../geometry/point.ts';
import { type Pose, after, carryVec } from '../../../geometry/pose.ts';
import { writePathData } from '../../../geometry/svg/write.ts';
import type { TemplateShape } from '../../../model/kit/shape.ts';
import type { NeedleLines } from '../../../needle/needle-line.ts';
import type { Standing } from '../../../place/place.ts';
import { edgeNamed } from '../../../session/kit/reach.ts';
import { axesOf, onTable } from '../../../session/lay/on-table.ts';
import { type ShownTemplate, shownTemplates } from '../../../session/lay/shown.ts';
import type { SessionState } from '../../../session/store.ts';
import type { View } from '../../../session/view.ts';
import { etchedData } from '../../kit/TemplatePicture.tsx';
import { useSession, useTheSession } from '../../use-session.ts';
import './templates.css';

/** Every template that is seen on the table; what is picked out lies on top. */
export function Templates({ view }: { readonly view: View }) {
  // Which templates there are changes seldom; where they lie is followed by each of them without drawing anything again.
  const ids = useSession((state) => shownTemplates(state).map(({ laid }) => laid.placement).reverse().join('\n'));
  if (ids === '') return null;
  return <>{ids.split('\n').map((id) => <TemplateOnTable key={id} id={id} view={view} />)}</>;
}

function TemplateOnTable({ id, view }: { readonly id: string; readonly view: View }) {
  const session = useTheSession();
  const template = useSession((state) => shownOf(state, id)?.laid.template);
  const needle = useSession((state) => shownOf(state, id)?.laid.needle);
  const state = useSession((now) => stateOf(now, id));
  const acrylic = useRef<SVGSVGElement>(null);
  const shadow = useRef<SVGSVGElement>(null);
  const dots = useRef<SVGSVGElement>(null);

  useLayoutEffect(() => {
    let wasFlipped: boolean | undefined;
    let wasDrawn = 0;
    const follow = () => {
      const now = session.getState();
      const on = onTable(now);
      const laid = shownOf(now, id)?.laid;
      if (!on || !laid || !acrylic.current || !shadow.current || !dots.current) return;
      const pose = after(laid.pose, axesOf(laid, on.area));
      const offset = carryVec(on.area.frame, laid.needleOffset);
      const drawn = now.inHand?.made.length ?? 0;
      const move = wasFlipped !== undefined && wasFlipped !== pose.flipped && !now.gesture ? 'flips' : drawn > wasDrawn ? 'drawn' : '';
      wasFlipped = pose.flipped;
      wasDrawn = drawn;
      for (const [element, by, down] of [[acrylic.current, NO_OFFSET, 0], [shadow.current, NO_OFFSET, now.inHand ? 9 : 2.5], [dots.current, offset, 0]] as const) {
        element.dataset.move = move;
        element.style.transform = transformOf({ ...pose, x: pose.x + by.x, y: pose.y + by.y }, view, laid.template, laid.needle, down);
      }
    };
    follow();
    return session.subscribe((now, before) => {
      if (now.evaluation !== before.evaluation || now.selection !== before.selection || now.working !== before.working || now.inHand !== before.inHand) follow();
    });
  }, [session, id, view, template, needle]);

  if (!template || !needle) return null;
  return (
    <>
      <Sheet ref={shadow} className={`acrylic-shadow ${state}`} shape={template} needle={needle} scale={view.scale} part="shadow" />
      <Sheet ref={acrylic} className={`laid-acrylic ${state}`} shape={template} needle={needle} scale={view.scale} part="acrylic" />
      <Sheet ref={dots} className={`needle-round ${state}`} shape={template} needle={needle} scale={view.scale} part="dots" />
    </>
  );
}

const NO_OFFSET = { x: 0, y: 0 };

function shownOf(state: SessionState, id: string): ShownTemplate | undefined {
  return shownTemplates(state).find(({ laid }) => laid.placement === id);
}

/** How a template lies, as class names. */
function stateOf(state: SessionState, id: string): string {
  const shown = shownOf(state, id);
  if (!shown) return '';
  const held = shown.laid.standing.kind;
  const names = [
    shown.isPicked ? 'picked' : 'resting',
    state.inHand?.placements.includes(id) && state.inHand.does !== 'trace' ? 'in-hand' : '',
    isHeld(held) ? 'held' : held === 'impossible' || held === 'unreadable' ? 'impossible' : '',
    shown.laid.pose.flipped ? 'face-down' : '',
  ];
  return names.filter((name) => name !== '').join(' ');
}

function isHeld(standing: Standing['kind']): boolean {
  return standing === 'free' || standing === 'fixed' || standing === 'overfixed';
}

interface SheetProps {
  readonly ref: React.Ref<SVGSVGElement>;
  readonly className: string;
  readonly shape: TemplateShape;
  readonly needle: NeedleLines;
  readonly scale: number;
  readonly part: 'shadow' | 'acrylic' | 'dots';
}

/** One layer of a template, in template inches, with the upper left of its box in its own corner. */
const Sheet = memo(function Sheet({ ref, className, shape, needle, scale, part }: SheetProps) {
  const box = boxOf(shape, needle);
  const edges = [shape.outline, ...shape.windows.map(({ path }) => path)].map(writePathData).join('');
  return (
    <svg
      ref={ref}
      className={className}
      style={{ '--scale': scale } as CSSProperties}
      width={box.width * scale}
      height={box.height * scale}
      viewBox={`${box.x} ${box.y} ${box.width} ${box.height}`}
      aria-hidden="true"
    >
      {part === 'shadow' && <path className="shade" fillRule="evenodd" d={edges} />}
      {part === 'acrylic' && (
        <>
          <path className="sheet" fillRule="evenodd" d={edges} />
          <path className="thickness" d={edges} />
          <g className="etchings">
            {shape.etchings.map((etching) => <path key={etching.id} d={etchedData(etching)} />)}
          </g>
          <path className="edge" d={edges} />
          <path className="shine" d={edges} />
          <path className="missed" d={needle.missed.map(({ from, start, end }) => writePathData(stretchOfPath(edgeNamed(shape, from), start, end))).join('')} />
          <path className="turned-corner" d={turnedCorner(shape)} />
        </>
      )}
      {part === 'dots' && <path className="dots" d={needle.lines.map(({ path }) => writePathData(path)).join('')} />}
    </svg>
  );
});

/** The sign of a template that lies face down: a small corner turned in, where the outline comes nearest to the upper left of its extent. */
function turnedCorner({ outline }: TemplateShape): string {
  const { minX, minY, maxX, maxY } = boundsOf(outline);
  const { along } = nearestOnPath(outline, { x: minX, y: minY });
  const reach = Math.min(TURNED, pathLength(outline) / 16);
  const [from, to] = [pointAlong(outline, along - reach).point, pointAlong(outline, along + reach).point];
  const middle = partWay(from, to, 0.5);
  const tip = moved(middle, unit(between(middle, { x: (minX + maxX) / 2, y: (minY + maxY) / 2 })), reach * 0.8);
  return `M${from.x} ${from.y}L${tip.x} ${tip.y}L${to.x} ${to.y}Z`;
}

/** A turned corner takes so much of the edge either way, in inches. */
const TURNED = 0.4;

/** The template with its needle line round it, and a little room for shadows and strokes; in inches. */
function boxOf(shape: TemplateShape, needle: NeedleLines) {
  const all = [boundsOf(shape.outline), ...needle.lines.map(({ path }) => boundsOf(path))];
  const [minX, minY] = [Math.min(...all.map((b) => b.minX)) - ROOM, Math.min(...all.map((b) => b.minY)) - ROOM];
  const [maxX, maxY] = [Math.max(...all.map((b) => b.maxX)) + ROOM, Math.max(...all.map((b) => b.maxY)) + ROOM];
  return { x: minX, y: minY, width: maxX - minX, height: maxY - minY };
}

const ROOM = 1 / 4;

function transformOf(pose: Pose<'template', 'quilt'>, { x, y, scale }: View, shape: TemplateShape, needle: NeedleLines, down: number): string {
  const across = carryVec<'template', 'quilt'>(pose, { x: 1, y: 0 });
  const along = carryVec<'template', 'quilt'>(pose, { x: 0, y: 1 });
  const box = boxOf(shape, needle);
  return `translate(0, ${down}px) matrix(${across.x}, ${across.y}, ${along.x}, ${along.y}, ${(pose.x - x) * scale}, ${(pose.y - y) * scale}) translate(${box.x * scale}px, ${box.y * scale}px)`;
}
