// Drawing a shape on the top: a rectangle pulled from corner to corner, a round from its middle, a shape of straight sides tapped
// corner by corner and closed on the first. Escape gives it up; otherwise hands look as they always do.

import { polygon } from '../../geometry/path.ts';
import { type Point, distance } from '../../geometry/point.ts';
import { placeUnder } from '../look.ts';
import type { Session } from '../store.ts';
import type { Drawing } from '../top/drawing.ts';
import { addShape } from '../top/shapes.ts';
import { type Outline, pulled } from '../top/outlines.ts';
import { looking } from './looking.ts';
import type { GestureNode, TableEvent } from './node.ts';

/** Corners are drawn to the nearest eighth of an inch. */
const STEP = 1 / 8;
/** A tap this near to the first corner, in CSS pixels, closes the shape. */
const CLOSES = 16;
/** Nothing smaller than this was meant, in inches. */
const LEAST = 1 / 4;

/** Looks, until something is to be drawn; then draws. */
export function drawing(session: Session): GestureNode {
  let look = looking(session);
  let from: { readonly pointer: number; readonly at: Point<'quilt'> } | undefined;
  const stop = () => {
    from = undefined;
    session.setState({ drawing: undefined });
  };
  const keep = (drawn: Drawing, outline: Outline) => {
    stop();
    if (isMeant(outline)) addShape(session, drawn.use, outline);
  };
  const draw = (drawn: Drawing, event: TableEvent): boolean => {
    if (event.kind === 'key' && event.key === 'Escape') {
      stop();
      return true;
    }
    if (!('at' in event) || event.kind === 'wheel') return false;
    const at = toStep(placeUnder(session, event.at));
    if (drawn.kind === 'shape') {
      if (event.kind !== 'up') return event.kind === 'down';
      const first = drawn.corners[0];
      const closes = first && drawn.corners.length > 2 && distance(first, at) * session.getState().view.scale < CLOSES;
      if (closes) keep(drawn, { kind: 'shape', path: polygon(drawn.corners) });
      else session.setState({ drawing: { ...drawn, corners: [...drawn.corners, at] } });
      return true;
    }
    if (event.kind === 'down') from = { pointer: event.pointer, at };
    if (!from || event.pointer !== from.pointer) return true;
    const outline = pulled(drawn.kind, from.at, at);
    if (event.kind === 'up') keep(drawn, outline);
    else session.setState({ drawing: { ...drawn, outline } });
    return true;
  };
  const node: GestureNode = {
    get name() {
      return session.getState().drawing ? 'drawing' : look.name;
    },
    on: (event) => {
      const drawn = session.getState().drawing;
      if (!drawn || !draw(drawn, event)) look = look.on(event);
      return node;
    },
  };
  return node;
}

function toStep({ x, y }: Point<'quilt'>): Point<'quilt'> {
  return { x: Math.round(x / STEP) * STEP, y: Math.round(y / STEP) * STEP };
}

function isMeant(outline: Outline): boolean {
  switch (outline.kind) {
    case 'rectangle':
      return outline.width >= LEAST && outline.height >= LEAST;
    case 'round':
      return outline.across >= LEAST;
    case 'shape':
      return true;
  }
}
