// The shelf along the near edge: templates stand in a rack, all at one scale. Pull one up onto the table, or press it to lay it on the
// middle of the area.

import { useMemo, useRef } from 'react';
import { boundsOf } from '../../../geometry/bounds.ts';
import type { TemplateShape } from '../../../model/kit/shape.ts';
import { shapeOf } from '../../../model/kit/shape-of.ts';
import { layTemplate } from '../../../session/lay/bring-in.ts';
import { onTable } from '../../../session/lay/on-table.ts';
import { pullingUp } from '../../../session/gesture/pulling-up.ts';
import { type Home, hasMoved } from '../../../session/gesture/looking.ts';
import { type GestureNode, type Gestures, type Hand, runGestures } from '../../../session/gesture/node.ts';
import { TemplatePicture } from '../../kit/TemplatePicture.tsx';
import { useSession, useTheSession } from '../../use-session.ts';
import './shelf.css';

/** The tallest template stands this high at most, and no inch is drawn larger than this; in CSS pixels. */
const TALLEST = 62;
const LARGEST_INCH = 14;

interface OnShelf {
  readonly id: string;
  readonly name: string;
  readonly shape: TemplateShape;
}

export function Shelf() {
  const templates = useSession((state) => state.evaluation.plan.kit.templates);
  const used = useSession((state) => Object.values(onTable(state)?.sheet?.sheet.placements ?? {}).map(({ template }) => template).join('\n'));
  const shelf = useMemo(() => Object.entries(templates).flatMap(([id, template]): readonly OnShelf[] => {
    const shape = shapeOf(template);
    return template.hidden || !shape.ok ? [] : [{ id, name: template.name, shape: shape.value }];
  }), [templates]);
  const inUse = new Set(used.split('\n'));
  const scale = Math.min(LARGEST_INCH, TALLEST / Math.max(1, ...shelf.map(({ shape }) => heightOf(shape))));
  return (
    <section className="shelf" aria-label="Shelf">
      <div className="shelf-words">
        <h2>Shelf</h2>
        <p>All drawn at one scale</p>
        <a href="#kit">Find a template</a>
      </div>
      <ul className="rack">
        {shelf.map((one) => <Standing key={one.id} one={one} scale={scale} isUsed={inUse.has(one.id)} />)}
        {shelf.length === 0 && <li className="rack-empty">The shelf is empty. Measure your own templates in Kit, or borrow plain shapes there.</li>}
      </ul>
    </section>
  );
}

function heightOf({ outline }: TemplateShape): number {
  const { minY, maxY } = boundsOf(outline);
  return maxY - minY;
}

/** One template in the rack; an empty dashed shape while it is in use. */
function Standing({ one, scale, isUsed }: { readonly one: OnShelf; readonly scale: number; readonly isUsed: boolean }) {
  const session = useTheSession();
  const pull = usePull(one.id);
  return (
    <li>
      <button
        type="button"
        className={isUsed ? 'on-shelf in-use' : 'on-shelf'}
        aria-label={`${one.name}${isUsed ? ', on the table' : ''}. Lay it on the middle of the area`}
        onClick={(event) => {
          if (pull.wasPulled()) return;
          layTemplate(session, one.id);
          // With the keyboard, the hands go on to the table.
          if (event.detail === 0) tableOf(event.currentTarget)?.focus();
        }}
        {...pull.listeners}
      >
        <TemplatePicture shape={one.shape} foot={undefined} scale={scale} />
        <span className="on-shelf-name">{one.name}</span>{' '}
        <span className="on-shelf-note">{isUsed ? 'on the table' : ''}</span>
      </button>
    </li>
  );
}

function tableOf(element: Element): HTMLElement | null {
  return element.closest('main')?.querySelector<HTMLElement>('.table') ?? null;
}

/** Pulling a template up: pressed, moved, and led on over the table by the same hand. */
function usePull(template: string) {
  const session = useTheSession();
  const pulled = useRef(false);
  const gestures = useRef<Gestures>(undefined);
  return useMemo(() => {
    const at = (event: React.PointerEvent) => {
      const table = tableOf(event.currentTarget)!;
      const { left, top } = table.getBoundingClientRect();
      return { x: event.clientX - left - table.clientLeft, y: event.clientY - top - table.clientTop };
    };
    const by = (event: React.PointerEvent): Hand => (event.pointerType === 'touch' || event.pointerType === 'pen' ? event.pointerType : 'mouse');
    const held = (event: React.PointerEvent) => ({ shift: event.shiftKey, control: event.ctrlKey, alt: event.altKey });
    const onKey = (event: KeyboardEvent) => gestures.current?.send({ kind: 'key', key: event.key, held: { shift: false, control: false, alt: false } });
    const end = () => {
      gestures.current = undefined;
      removeEventListener('keydown', onKey);
    };
    const idle: GestureNode = { name: 'idle', on: () => idle };
    const home: Home = { rest: () => idle, tapped: () => undefined, tappedTwice: () => undefined };
    return {
      wasPulled: () => {
        const was = pulled.current;
        pulled.current = false;
        return was;
      },
      listeners: {
        onPointerDown: (event: React.PointerEvent) => {
          if (event.button !== 0) return;
          pulled.current = false;
          const down = { kind: 'down', pointer: event.pointerId, at: at(event), by: by(event), time: event.timeStamp, held: held(event) } as const;
          const waiting: GestureNode = {
            name: 'pressed',
            on: (moved) => {
              if (moved.kind === 'up' || moved.kind === 'lost') return idle;
              if (moved.kind !== 'move' || !hasMoved(down, moved.at)) return waiting;
              pulled.current = true;
              return pullingUp(session, home, template, { ...down, at: moved.at }) ?? idle;
            },
          };
          event.currentTarget.setPointerCapture(event.pointerId);
          gestures.current = runGestures(waiting);
          addEventListener('keydown', onKey);
        },
        onPointerMove: (event: React.PointerEvent) =>
          gestures.current?.send({ kind: 'move', pointer: event.pointerId, at: at(event), by: by(event), time: event.timeStamp, held: held(event) }),
        onPointerUp: (event: React.PointerEvent) => {
          gestures.current?.send({ kind: 'up', pointer: event.pointerId, at: at(event), time: event.timeStamp });
          end();
        },
        onPointerCancel: (event: React.PointerEvent) => {
          gestures.current?.send({ kind: 'lost', pointer: event.pointerId });
          end();
        },
      },
    };
  }, [session, template]);
}
