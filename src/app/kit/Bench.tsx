// The template enlarged, to etch on: a pen for lines, points and crosses, and a line inside the edge at a distance.

import { useId, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { sizeOfBounds } from '../../geometry/bounds.ts';
import type { Point } from '../../geometry/point.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import type { Template } from '../../model/plan.ts';
import { PEN_STEP, centreOf, penPlace, reachedOnAcrylic } from '../../session/kit/etch-place.ts';
import { etch, etchInnerLine } from '../../session/kit/etchings.ts';
import { PEN_UP, type PenEvent, type PenTool, penAfter } from '../../session/kit/etching-pen.ts';
import { useTheSession } from '../use-session.ts';
import { LengthField } from '../words/LengthField.tsx';
import { Said } from '../words/Said.tsx';
import { useFineLengths } from '../words/lengths.ts';
import { Choices } from './Choices.tsx';
import { TemplatePicture, pictureBox } from './TemplatePicture.tsx';
import { sayPlace } from './say-place.ts';
import { useSize } from './use-size.ts';

/** How near a thing draws the pen: on the screen in CSS pixels, and on the template in inches, whichever is less. */
const REACH_PIXELS = 14;
const REACH_INCHES = 1 / 8;
/** What the pen is drawn to when it is moved by keys, in inches: only what it stands on. */
const KEY_REACH = 1 / 64;
/** Left round the picture, and the most an inch is enlarged to, in CSS pixels. */
const MARGIN = 40;
const LARGEST_INCH = 220;

const TOOLS: readonly { readonly value: PenTool; readonly name: string }[] = [
  { value: 'line', name: 'A line' },
  { value: 'point', name: 'A point' },
  { value: 'cross', name: 'A cross' },
];

export interface BenchProps {
  readonly id: string;
  readonly template: Template;
  readonly shape: TemplateShape;
  readonly picked: string | undefined;
}

export function Bench({ id, template, shape, picked }: BenchProps) {
  const session = useTheSession();
  const fine = useFineLengths();
  const [place, size] = useSize<HTMLDivElement>();
  const surface = useRef<HTMLDivElement>(null);
  const [pen, setPen] = useState(PEN_UP);
  const help = useId();
  const centre = centreOf(template, shape);
  const box = pictureBox(shape, undefined);
  const { width, height } = sizeOfBounds(box);
  const scale = size ? Math.max(8, Math.min(LARGEST_INCH, (size.width - MARGIN) / width, (size.height - MARGIN) / height)) : 0;
  const reach = Math.min(REACH_INCHES, REACH_PIXELS / Math.max(scale, 1));

  const send = (event: PenEvent) => {
    const { pen: next, made } = penAfter(pen, event);
    setPen(next);
    if (made) etch(session, id, made);
  };
  const under = (event: { readonly clientX: number; readonly clientY: number }) => {
    const { left, top } = surface.current!.getBoundingClientRect();
    return penPlace(shape, centre, { x: box.minX + (event.clientX - left) / scale, y: box.minY + (event.clientY - top) / scale }, reach, pen.start);
  };
  const nudge = (dx: number, dy: number) => {
    const from = pen.place?.at ?? centre;
    const to = pen.place ? { x: from.x + dx, y: from.y + dy } : centre;
    const reached = reachedOnAcrylic(shape, from, to);
    send({ kind: 'move', place: reached === to ? penPlace(shape, centre, to, KEY_REACH) : { at: reached, to: 'the edge' } });
  };
  const said = pen.place && `${sayPlace(pen.place.at, centre, fine)}${pen.place.to === undefined ? '' : `: ${pen.place.to}`}`;

  return (
    <section className="board bench" aria-label={`Etch on ${template.name}`}>
      <div className="board-head">
        <div>
          <h2>Etch on {template.name}</h2>
          <p className="aside" id={help}>Press and drag to draw; or arrow keys to move the pen and Enter to set it down. Escape takes it up.</p>
        </div>
      </div>
      <Choices label="Draw" choices={TOOLS} value={pen.tool} onChoose={(tool) => send({ kind: 'tool', tool })} />
      <div className="bench-place" ref={place}>
        {size && (
          <div
            ref={(element) => {
              surface.current = element;
              element?.style.setProperty('width', `${width * scale}px`);
              element?.style.setProperty('height', `${height * scale}px`);
            }}
            className="bench-surface"
            role="application"
            aria-label={`${template.name}, enlarged`}
            aria-describedby={help}
            tabIndex={0}
            onPointerDown={(event) => {
              if (event.button !== 0) return;
              event.currentTarget.setPointerCapture(event.pointerId);
              send({ kind: 'down', place: under(event) });
            }}
            onPointerMove={(event) => send({ kind: 'move', place: under(event) })}
            onPointerUp={(event) => send({ kind: 'up', place: under(event) })}
            onPointerLeave={() => send({ kind: 'leave' })}
            onPointerCancel={() => send({ kind: 'escape' })}
            onKeyDown={(event) => {
              const step = event.shiftKey ? 4 * PEN_STEP : PEN_STEP;
              if (event.key === 'ArrowLeft') nudge(-step, 0);
              else if (event.key === 'ArrowRight') nudge(step, 0);
              else if (event.key === 'ArrowUp') nudge(0, -step);
              else if (event.key === 'ArrowDown') nudge(0, step);
              else if (event.key === 'Enter') send({ kind: 'set' });
              else if (event.key === 'Escape' && pen.start) send({ kind: 'escape' });
              else return;
              event.preventDefault();
            }}
          >
            <TemplatePicture shape={shape} foot={undefined} box={box} scale={scale} picked={picked}>
              <CentreLines centre={centre} box={box} />
              <PenMarks at={pen.place?.at} start={pen.start} drawn={pen.place?.to !== undefined} inch={1 / Math.max(scale, 1)} />
            </TemplatePicture>
          </div>
        )}
      </div>
      <p className="pen-says" role="status"><Said>{said ?? (pen.start ? 'Now the other end.' : 'The pen is up.')}</Said></p>
      <InnerLine id={id} />
    </section>
  );
}

function CentreLines({ centre, box }: { readonly centre: Point<'template'>; readonly box: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number } }) {
  return <path className="centre-lines" d={`M ${box.minX} ${centre.y} H ${box.maxX} M ${centre.x} ${box.minY} V ${box.maxY}`} />;
}

interface PenMarksProps {
  readonly at: Point<'template'> | undefined;
  readonly start: Point<'template'> | undefined;
  readonly drawn: boolean;
  /** Inches in a CSS pixel. */
  readonly inch: number;
}

function PenMarks({ at, start, drawn, inch }: PenMarksProps) {
  return (
    <>
      {at && start && <path className="pen-line" d={`M ${start.x} ${start.y} L ${at.x} ${at.y}`} />}
      {start && <circle className="pen-start" cx={start.x} cy={start.y} r={5 * inch} />}
      {at && <circle className={drawn ? 'pen-at drawn' : 'pen-at'} cx={at.x} cy={at.y} r={(drawn ? 9 : 5) * inch} />}
    </>
  );
}

function InnerLine({ id }: { readonly id: string }) {
  const session = useTheSession();
  const fine = useFineLengths();
  const [distance, setDistance] = useState(1 / 4);
  const [problem, setProblem] = useState<string>();
  return (
    <div className="inner-line">
      <LengthField
        label="A line inside the edge, at"
        value={distance}
        least={1 / 64}
        problem={problem}
        onValue={(value) => {
          setDistance(value);
          setProblem(undefined);
        }}
      />
      <Button
        className="button"
        onPress={() => {
          const etched = etchInnerLine(session, id, distance, `line ${fine(distance)} inside the edge`);
          setProblem(etched.ok ? undefined : `The template is nowhere wide enough for a line ${fine(distance)} inside its edge.`);
        }}
      >
        Draw it
      </Button>
    </div>
  );
}
