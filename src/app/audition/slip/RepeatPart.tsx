// How it repeats: the steps as sentences, the usual repeats to begin from, and over which areas.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import type { Frieze, RepeatStep, Side } from '../../../model/plan.ts';
import { laidOn } from '../../../session/lay/on-table.ts';
import type { OnTable } from '../../../session/lay/on-table.ts';
import { oneArea } from '../../../session/sheet/area-words.ts';
import { FRIEZES, FRIEZE_ORDER, type RepeatOf, type RepeatWord, mirrorLines, sayStep, setRepeat, setStep, usualRepeats } from '../../../session/sheet/repeats.ts';
import { spokenText } from '../../../session/sheet/spoken.ts';
import { SlipPart } from '../../slip/Slip.tsx';
import { useSession, useTheSession } from '../../use-session.ts';
import { Said } from '../../words/Said.tsx';
import { NumberField } from '../../words/NumberField.tsx';
import { AreasOf } from './AreasOf.tsx';
import { FriezePicture } from './FriezePicture.tsx';
import { MoreMenu } from './MoreMenu.tsx';
import { SpokenLine } from './SpokenLine.tsx';
import { WordChoice } from './WordChoice.tsx';
import { WordForm } from './WordForm.tsx';

export interface RepeatPartProps {
  readonly on: OnTable;
  /** The placement the slip is about; undefined when it is about the sheet. */
  readonly placement?: string;
}

export function RepeatPart({ on, placement }: RepeatPartProps) {
  const session = useTheSession();
  if (!on.sheet) return null;
  const { id: sheet, sheet: { repeat, placements } } = on.sheet;
  const own = placement === undefined ? undefined : placements[placement]?.repeat;
  const of: RepeatOf = own && placement !== undefined ? { sheet, placement } : { sheet };
  const steps = own ?? repeat;
  const usual = usualRepeats(on.area);
  const more = Object.keys(placements).length > 1;
  return (
    <SlipPart title={own ? 'How it repeats, by itself' : 'How it repeats'}>
      {steps.length === 0 && <p className="sentence">Sewn once.</p>}
      {steps.map((step, i) => <StepRow key={i} on={on} of={of} steps={steps} index={i} step={step} />)}
      <Total on={on} placement={placement} />
      <div className="slip-buttons">
        <MoreMenu as="button" word="Repeat it" about="How it repeats" commands={usual.map(({ name, steps: begin }) => ({ name, onDo: () => setRepeat(session, of, begin) }))} />
        {steps.length > 0 && <MoreMenu as="button" word="Then also" about="One more step of the repeat" commands={usual.filter(({ id }) => id !== 'none' && (id !== 'along' || !steps.some((step) => 'along' in step))).map(({ name, steps: further }) => ({ name, onDo: () => setRepeat(session, of, [...steps, ...further]) }))} />}
        {placement !== undefined && own && <Button className="button" onPress={() => setRepeat(session, of, undefined)}>As its sheet does</Button>}
        {placement !== undefined && !own && more && <Button className="button" onPress={() => setRepeat(session, { sheet, placement }, repeat)}>This template by itself</Button>}
      </div>
      <p className="sentence spoken">Then over <AreasOf on={on} />.</p>
    </SlipPart>
  );
}

/** "8 passes in a block." */
function Total({ on, placement }: RepeatPartProps) {
  const evaluation = useSession((state) => state.evaluation);
  const session = useTheSession();
  const ids = placement === undefined ? Object.keys(on.sheet?.sheet.placements ?? {}) : [placement];
  let count = 0;
  const problems: string[] = [];
  for (const id of ids) {
    const laid = laidOn({ ...session.getState(), evaluation }, on, id);
    count += (laid?.images.length ?? 0) * (laid?.passes.filter(({ kind }) => kind === 'found').length ?? 0);
    for (const { detail } of laid?.repeatProblems ?? []) if (!problems.includes(detail)) problems.push(detail);
  }
  return (
    <>
      <p className="aside">{`${count === 1 ? '1 pass' : `${count} passes`} in a ${oneArea(on.area)}.`}</p>
      {problems.map((problem) => <p key={problem} className="aside found"><Said>{problem}</Said></p>)}
    </>
  );
}

interface StepRowProps {
  readonly on: OnTable;
  readonly of: RepeatOf;
  readonly steps: readonly RepeatStep[];
  readonly index: number;
  readonly step: RepeatStep;
}

function StepRow({ on, of, steps, index, step }: StepRowProps) {
  const session = useTheSession();
  const set = (to: RepeatStep) => setStep(session, of, index, to);
  const word = (which: RepeatWord, text: string) => {
    switch (which) {
      case 'line':
        return <WordChoice label="Mirrored across" text={text} options={() => mirrorLines(on.area, steps, index).map(({ id, name }) => ({ id: `line:${id}`, name }))} chosen={'mirror' in step ? step.mirror : 'mirrorAndTurn' in step ? (step.across ?? 'line:vertical-centre') : undefined} onChoose={(line) => set('mirrorAndTurn' in step ? { ...step, across: line } : { mirror: line })} />;
      case 'times':
        return <WordForm label="How many times" text={text}>{(close) => <Times step={step} onDone={(to) => { set(to); close(); }} />}</WordForm>;
      case 'frieze':
        return 'along' in step ? <WordForm label="Arrangement" text={text}>{(close) => <Arrangements chosen={step.along} onChoose={(along) => { set({ ...step, along }); close(); }} />}</WordForm> : text;
      case 'count':
        return 'along' in step ? <WordForm label="How many along" text={text}>{(close) => <Counts on={on} count={step.count} onDone={(count) => { set({ ...step, count }); close(); }} />}</WordForm> : text;
    }
  };
  return (
    <div className="step-row">
      <SpokenLine parts={sayStep(step, on.area, steps.slice(0, index))} word={word} />
      <Button className="word" aria-label={`Take out: ${spokenText(sayStep(step, on.area, steps.slice(0, index)))}`} onPress={() => setStep(session, of, index, undefined)}><span>Take out</span></Button>
    </div>
  );
}

const MOST = 1000;

function Times({ step, onDone }: { readonly step: RepeatStep; readonly onDone: (step: RepeatStep) => void }) {
  const [times, setTimes] = useState('turn' in step ? step.turn : 'mirrorAndTurn' in step ? step.mirrorAndTurn : 1);
  const with_ = (count: number): RepeatStep => ('mirrorAndTurn' in step ? { ...step, mirrorAndTurn: count } : { turn: count });
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onDone(with_(times));
      }}
    >
      <NumberField label="Times round the centre" value={times} onValue={setTimes} whole least={1} most={MOST} />
      <div className="form-foot wide">
        {[2, 3, 4, 6, 8].map((count) => <Button key={count} className="button" onPress={() => onDone(with_(count))}>{count}</Button>)}
        <Button className="button main" type="submit">Done</Button>
      </div>
    </form>
  );
}

function Arrangements({ chosen, onChoose }: { readonly chosen: Frieze; readonly onChoose: (frieze: Frieze) => void }) {
  return (
    <ul className="arrangements">
      {FRIEZE_ORDER.map((frieze) => (
        <li key={frieze}>
          <button type="button" className="arrangement" aria-pressed={frieze === chosen} autoFocus={frieze === chosen} onClick={() => onChoose(frieze)}>
            <FriezePicture frieze={frieze} />
            <span><b>{FRIEZES[frieze].name}</b><span className="aside">{FRIEZES[frieze].how}</span></span>
          </button>
        </li>
      ))}
    </ul>
  );
}

type Count = Extract<RepeatStep, { along: Frieze }>['count'];

const SIDES: readonly Side[] = ['top', 'bottom', 'left', 'right'];

/** One count for all, or one for each side of a border. */
function Counts({ on, count, onDone }: { readonly on: OnTable; readonly count: Count; readonly onDone: (count: Count) => void }) {
  const hasSides = on.areas.some(({ side }) => side !== undefined);
  const [bySide, setBySide] = useState(typeof count !== 'number' && hasSides);
  const [all, setAll] = useState(typeof count === 'number' ? count : (Object.values(count)[0] ?? 1));
  const [each, setEach] = useState<{ readonly [side in Side]?: number }>(() => (typeof count === 'number' ? { top: count, right: count, bottom: count, left: count } : count));
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onDone(bySide ? each : all);
      }}
    >
      {hasSides && (
        <label className="tick"><input type="checkbox" checked={bySide} onChange={({ target }) => setBySide(target.checked)} /> Each side by itself</label>
      )}
      {bySide ? (
        <div className="two-by-two">
          {SIDES.map((side) => <NumberField key={side} label={side} value={each[side]} onValue={(to) => setEach({ ...each, [side]: to })} whole least={1} most={MOST} />)}
        </div>
      ) : (
        <NumberField label={hasSides ? 'On every side' : 'Along each'} value={all} onValue={setAll} whole least={1} most={MOST} />
      )}
      <div className="form-foot"><Button className="button main" type="submit">Done</Button></div>
    </form>
  );
}
