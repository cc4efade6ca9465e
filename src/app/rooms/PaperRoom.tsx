// Paper: full-size patterns. What to print and on which paper, how the pages fall on the quilt, and the file.

import { useDeferredValue, useId, useMemo, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { useStore } from 'zustand';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { Bounds } from '../../geometry/bounds.ts';
import { readLength } from '../../num/inches.ts';
import { planPrint } from '../../paper/pdf/paint-pdf.ts';
import type { PageMap } from '../../paper/pdf/pages.ts';
import { areaGroups } from '../../session/contents.ts';
import { fitTop, zoomToArea } from '../../session/look.ts';
import { choosePrint } from '../../session/choose.ts';
import { PAPER_SIZES, type PaperSize, type PrintChoice } from '../../session/print-choice.ts';
import { type ScreenPoint, onScreen } from '../../session/view.ts';
import { Switch } from '../frame/Switch.tsx';
import { beginPdf, cancelPdf, pdfJob } from '../paper/pdf-job.ts';
import { layersPrinted, printOf } from '../paper/print.ts';
import { download } from '../plans/save.ts';
import { Aside, Sentence, Slip, SlipPart } from '../slip/Slip.tsx';
import { Table } from '../table/Table.tsx';
import { type Fact, Tape } from '../table/Tape.tsx';
import { useSession, useTheSession } from '../use-session.ts';
import { Said } from '../words/Said.tsx';
import { useLengths } from '../words/lengths.ts';
import './paper.css';

const PAPER_NAMES: { readonly [paper in PaperSize]: readonly [name: string, size: string] } = {
  letter: ['Letter', '8 1/2 × 11 in'],
  a4: ['A4', '210 × 297 mm'],
  tabloid: ['Tabloid', '11 × 17 in'],
  a3: ['A3', '297 × 420 mm'],
  roll: ['Roll', 'any width'],
};

export function PaperRoom() {
  const session = useTheSession();
  const evaluation = useSession((state) => state.evaluation);
  const choice = useSession((state) => state.print);
  const settled = useDeferredValue(choice);
  const planned = useMemo(() => plannedFor(evaluation, settled), [evaluation, settled]);
  const layers = useMemo(() => new Set(layersPrinted(choice)), [choice]);
  const map = planned.ok ? planned.value.map : undefined;
  const pages = planned.ok ? planned.value.pages : 0;
  const areaName = evaluation.top.areas.find(({ id }) => id === choice.area)?.name;
  return (
    <main className="room">
      <Table label={`How the pages fall on ${evaluation.plan.name}`} layers={layers} over={map && <PageCells map={map} />}>
        {map && <PageNames map={map} />}
      </Table>
      <PaperTape map={map} pages={pages} />
      <Slip
        title="Full-size paper"
        about="One inch on the page is one inch on the quilt."
        foot={<PrintFoot ready={planned.ok} onMake={() => void beginPdf(evaluation.plan, choice, areaName)} />}
      >
        <SlipPart title="What to print">
          <AreaChoice />
          <Switch name="Templates and the lines to lay them by" on={choice.templates} onChange={(templates) => choosePrint(session, { templates })} />
        </SlipPart>
        <SlipPart title="Paper"><PaperChoice /></SlipPart>
        <SlipPart title="How it comes out">
          {map ? (
            <>
              <Sentence>{`${pages} pages: a cover, and ${map.printed} in ${map.rows === 1 ? '1 row' : `${map.rows} rows`} of ${map.columns}.`}</Sentence>
              <Sentence>Check the square on each page: it should measure exactly 1 in.</Sentence>
              <Aside>Print at 100 %, not fitted to the page. Lay the crosses in the overlaps on each other and tape.</Aside>
            </>
          ) : (
            <Sentence>{planned.ok ? '' : planned.problem.message}</Sentence>
          )}
        </SlipPart>
      </Slip>
    </main>
  );
}

function plannedFor(evaluation: Evaluation, choice: PrintChoice) {
  const { list, options } = printOf(evaluation, choice);
  return planPrint(list, options);
}

function AreaChoice() {
  const session = useTheSession();
  const top = useSession((state) => state.evaluation.top);
  const area = useSession((state) => state.print.area);
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>Area</label>
      <select
        id={id}
        value={area ?? ''}
        onChange={({ target }) => {
          choosePrint(session, { area: target.value === '' ? undefined : target.value });
          if (target.value === '') fitTop(session);
          else zoomToArea(session, target.value);
        }}
      >
        <option value="">The whole top</option>
        {areaGroups(top).map((group) => (
          <optgroup key={group.id} label={group.name}>
            {group.areas.map(({ id: areaId, name }) => <option key={areaId} value={areaId}>{name}</option>)}
          </optgroup>
        ))}
      </select>
    </div>
  );
}

function PaperChoice() {
  const session = useTheSession();
  const { paper, rollWidth, overlap } = useSession((state) => state.print);
  return (
    <>
      <fieldset className="papers">
        <legend className="only-heard">Paper</legend>
        {PAPER_SIZES.map((size) => (
          <label key={size} className="paper-size">
            <input type="radio" name="paper" value={size} checked={paper === size} onChange={() => choosePrint(session, { paper: size })} />
            <span className={`paper-shape ${size}`} aria-hidden="true" />
            <span className="paper-name">{PAPER_NAMES[size][0]}</span>
            <span className="aside"><Said>{PAPER_NAMES[size][1]}</Said></span>
          </label>
        ))}
      </fieldset>
      {paper === 'roll' && <LengthField name="Width of the roll" value={rollWidth} onTyped={(inches) => choosePrint(session, { rollWidth: inches })} />}
      <LengthField name="Overlap of the pages" value={overlap} onTyped={(inches) => choosePrint(session, { overlap: inches })} />
    </>
  );
}

/** A length typed as a quilter writes it; what cannot be read is said below and changes nothing. */
function LengthField({ name, value, onTyped }: { readonly name: string; readonly value: number; readonly onTyped: (inches: number) => void }) {
  const unit = useSession((state) => state.evaluation.plan.shownIn);
  const length = useLengths();
  const [typed, setTyped] = useState<string>();
  const [problem, setProblem] = useState<string>();
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{name}</label>
      <input
        id={id}
        type="text"
        inputMode="text"
        autoComplete="off"
        value={typed ?? length(value)}
        aria-invalid={problem !== undefined}
        aria-describedby={problem === undefined ? undefined : `${id}-problem`}
        onChange={({ target }) => {
          setTyped(target.value);
          const read = readLength(target.value, unit);
          setProblem(read.ok ? undefined : read.problem.message);
          if (read.ok) onTyped(read.value);
        }}
        onBlur={() => {
          setTyped(undefined);
          setProblem(undefined);
        }}
      />
      {problem !== undefined && <p id={`${id}-problem`} className="aside" role="alert">{problem}</p>}
    </div>
  );
}

function PrintFoot({ ready, onMake }: { readonly ready: boolean; readonly onMake: () => void }) {
  const job = useStore(pdfJob);
  switch (job.kind) {
    case 'making': {
      const part = job.of === undefined ? 0 : job.done / job.of;
      const said = job.of === undefined ? 'Setting out the pages' : `Page ${job.done} of ${job.of}`;
      return (
        <div className="printing">
          <div className="progress" role="progressbar" aria-label="Making the PDF" aria-valuemin={0} aria-valuemax={100} aria-valuenow={Math.round(part * 100)} aria-valuetext={said}>
            <div className="progress-done" style={{ width: `${part * 100}%` }} />
          </div>
          <p className="aside">{said}</p>
          <Button className="button" onPress={cancelPdf}>Cancel</Button>
        </div>
      );
    }
    case 'made':
      return (
        <div className="printed">
          <p className="aside" role="status">{`${job.name} is made: ${job.pages} pages, ${sizeOf(job.file)}. It lies among your downloads.`}</p>
          <div className="printed-buttons">
            <Button className="button" onPress={() => download(job.file, job.name)}>Keep it again</Button>
            <Button className="button main" isDisabled={!ready} onPress={onMake}>Make the PDF</Button>
          </div>
        </div>
      );
    case 'none':
    case 'failed':
      return (
        <div className="printed">
          {job.kind === 'failed' && <p role="alert" className="aside">{job.message}</p>}
          <Button className="button main" isDisabled={!ready} onPress={onMake}>Make the PDF</Button>
        </div>
      );
  }
}

function PaperTape({ map, pages }: { readonly map: PageMap | undefined; readonly pages: number }) {
  const length = useLengths();
  const facts: readonly Fact[] = map
    ? [
        { name: 'Pages', value: `${pages}` },
        { name: 'Overlap', value: length(map.overlap) },
        { name: 'Each page shows', value: `${length(map.liveWidth)} by ${length(map.liveHeight)}` },
      ]
    : [{ name: 'Pages', value: 'none' }];
  return <Tape facts={facts} />;
}

/** The cells of the pages over the quilt; those that are not printed are crossed through. */
function PageCells({ map }: { readonly map: PageMap }) {
  return (
    <g className="pages">
      {map.tiles.map(({ name, cell, number }) => (
        <g key={name} className={number === undefined ? 'blank' : undefined}>
          <path d={number === undefined ? `${rectangle(cell)}M${cell.minX} ${cell.minY}L${cell.maxX} ${cell.maxY}M${cell.maxX} ${cell.minY}L${cell.minX} ${cell.maxY}` : rectangle(cell)} />
        </g>
      ))}
    </g>
  );
}

/** From this size of a page on the screen (CSS pixels), its whole name stands in its corner; below it, letters and numbers stand at the edges. */
const ROOM_FOR_NAME = 130;

/** The names of the pages, fixed in size: rows by letters at the left, columns by numbers along the top, as on the page map. */
function PageNames({ map }: { readonly map: PageMap }) {
  const view = useSession((state) => state.view);
  const table = useSession((state) => state.table);
  const small = Math.min(map.liveWidth, map.liveHeight) * view.scale;
  const seen = (x: number, y: number) => onScreen(view, { x, y });
  const inSight = ({ x, y }: ScreenPoint) => x > -20 && y > -20 && x < table.width + 20 && y < table.height + 20;
  const names = map.tiles.flatMap(({ name, cell, row, column, number }) => {
    const middle = seen((cell.minX + cell.maxX) / 2, (cell.minY + cell.maxY) / 2);
    const corner = seen(cell.minX, cell.minY);
    if (small >= ROOM_FOR_NAME) return number === undefined ? [] : [{ text: name, at: { x: corner.x + 18, y: corner.y + 14 } }];
    const across = column === 0 ? [{ text: name.replace(/\d+$/, ''), at: { x: Math.max(12, corner.x - 12), y: middle.y } }] : [];
    const down = row === 0 ? [{ text: `${column + 1}`, at: { x: middle.x, y: Math.max(11, corner.y - 12) } }] : [];
    return [...across, ...down];
  });
  if (small < 14) return null;
  return (
    <div className="page-names" aria-hidden="true">
      {names.map(({ text, at }) => inSight(at) && <span key={text} style={{ transform: `translate(${at.x}px, ${at.y}px) translate(-50%, -50%)` }}>{text}</span>)}
    </div>
  );
}

function rectangle({ minX, minY, maxX, maxY }: Bounds): string {
  return `M${minX} ${minY}H${maxX}V${maxY}H${minX}Z`;
}

function sizeOf(file: Blob): string {
  return file.size < 1024 * 1024 ? `${Math.ceil(file.size / 1024)} kB` : `${(file.size / 1024 / 1024).toFixed(1)} MB`;
}
