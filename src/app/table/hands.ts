// What hands, wheels and keys do to the table, told to the gestures of the session in the table's own pixels.

import { type GestureNode, type Hand, runGestures } from '../../session/gesture/node.ts';
import type { ScreenPoint } from '../../session/view.ts';

/** Keys that push the quilt and bring it nearer. */
export const LOOKING_KEYS: ReadonlySet<string> = new Set(['+', '=', '-', '_', '0', 'ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Enter', 'Escape']);
/** Pixels to a line and to a page, for wheels that count in them. */
const PIXELS_IN = [1, 40, 800];

/** Listens, to these keys among others, until the answer is called. */
export function listenToHands(table: HTMLElement, rest: GestureNode, keys = LOOKING_KEYS): () => void {
  const gestures = runGestures(rest, (name) => {
    table.dataset.gesture = name;
  });
  table.dataset.gesture = rest.name;
  const at = (event: MouseEvent): ScreenPoint => {
    const { left, top } = table.getBoundingClientRect();
    return { x: event.clientX - left - table.clientLeft, y: event.clientY - top - table.clientTop };
  };
  const held = (event: MouseEvent | KeyboardEvent) => ({ shift: event.shiftKey, control: event.ctrlKey || event.metaKey, alt: event.altKey });
  const hand = (event: PointerEvent): Hand => (event.pointerType === 'touch' || event.pointerType === 'pen' ? event.pointerType : 'mouse');

  const stop = new AbortController();
  const listen = <Kind extends keyof HTMLElementEventMap>(kind: Kind, on: (event: HTMLElementEventMap[Kind]) => void, passive = true) => {
    table.addEventListener(kind, on, { signal: stop.signal, passive });
  };
  listen('pointerdown', (event) => {
    if (event.button > 1 || isControl(event.target, table)) return;
    table.setPointerCapture(event.pointerId);
    gestures.send({ kind: 'down', pointer: event.pointerId, at: at(event), by: hand(event), time: event.timeStamp, held: held(event) });
  });
  listen('pointermove', (event) => gestures.send({ kind: 'move', pointer: event.pointerId, at: at(event), by: hand(event), time: event.timeStamp, held: held(event) }));
  listen('pointerup', (event) => gestures.send({ kind: 'up', pointer: event.pointerId, at: at(event), time: event.timeStamp }));
  listen('pointercancel', (event) => gestures.send({ kind: 'lost', pointer: event.pointerId }));
  listen('pointerleave', (event) => {
    if (!table.hasPointerCapture(event.pointerId)) gestures.send({ kind: 'lost', pointer: event.pointerId });
  });
  listen(
    'wheel',
    (event) => {
      event.preventDefault();
      const pixels = PIXELS_IN[event.deltaMode] ?? 1;
      gestures.send({ kind: 'wheel', at: at(event), dx: event.deltaX * pixels, dy: event.deltaY * pixels, held: held(event), time: event.timeStamp });
    },
    false,
  );
  listen(
    'keydown',
    (event) => {
      if (event.target !== table || event.ctrlKey || event.metaKey || !keys.has(event.key)) return;
      event.preventDefault();
      gestures.send({ kind: 'key', key: event.key, held: held(event) });
    },
    false,
  );
  listen('keyup', (event) => {
    if (event.target === table && keys.has(event.key)) gestures.send({ kind: 'keys-up' });
  });
  listen('blur', () => gestures.send({ kind: 'keys-up' }));
  return () => stop.abort();
}

/** True for a press on something of its own on the table, such as the sign of a finding. */
function isControl(target: EventTarget | null, table: HTMLElement): boolean {
  return target instanceof Element && target !== table && target.closest('button, a') !== null;
}
