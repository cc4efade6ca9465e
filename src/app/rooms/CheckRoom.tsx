// Check: what is found, in words on the slip, numbered on the quilt, and the one looked at enlarged in the loupe.

import { type RefObject, useMemo, useRef } from 'react';
import { Button } from 'react-aria-components/Button';
import { CODES } from '../../check/codes.ts';
import type { Finding, Severity } from '../../check/finding.ts';
import { type NumberedFinding, type Spot, countBySeverity, numberedFindings, spotsOf } from '../../session/numbered-findings.ts';
import { select, zoomToPlace, zoomToStretch } from '../../session/look.ts';
import type { Session } from '../../session/store.ts';
import { Aside, Sentence, Slip, SlipPart } from '../slip/Slip.tsx';
import { Signs } from '../table/Signs.tsx';
import { Table } from '../table/Table.tsx';
import { Tape } from '../table/Tape.tsx';
import { useSession, useTheSession } from '../use-session.ts';
import { Cautions } from '../words/Cautions.tsx';
import { Said } from '../words/Said.tsx';
import { useLengths } from '../words/lengths.ts';
import { ASKS, FindingSign } from '../words/signs.tsx';
import { Leader } from './Leader.tsx';
import { Loupe } from './Loupe.tsx';
import './check.css';

/** A finding is shown on the table with so much quilt round it, in inches. */
const SHOWN_ACROSS = 10;

export function CheckRoom() {
  const session = useTheSession();
  const evaluation = useSession((state) => state.evaluation);
  const { findings, plan } = evaluation;
  const numbered = numberedFindings(findings);
  const selection = useSession((state) => state.selection);
  const index = selection.kind === 'finding' ? numbered.findIndex(({ key }) => key === selection.finding) : -1;
  const picked = numbered[index];
  const spots = useMemo(() => (picked ? spotsOf(evaluation, picked.finding) : []), [evaluation, picked]);
  const at = selection.kind === 'finding' ? Math.min(selection.spot, Math.max(0, spots.length - 1)) : 0;
  const next = numbered[index + 1];
  const room = useRef<HTMLElement>(null);
  const glass = useRef<HTMLDivElement>(null);
  return (
    <main className={numbered.length === 0 ? 'room' : 'room with-loupe'} ref={room}>
      <Table label={`The quilt ${plan.name}, with what was found on it`}>
        <Signs onPick={({ key }) => select(session, { kind: 'finding', finding: key, spot: 0 })} />
      </Table>
      <CheckTape findings={findings} />
      {numbered.length > 0 && (
        <aside className="loupe" aria-label="Loupe">
          {picked && <LoupeOn numbered={picked} spot={spots[at]} glass={glass} />}
          <Key />
        </aside>
      )}
      <Slip
        title={titleOf(findings)}
        about={numbered.length === 0 ? 'The top is ready to sew.' : 'Press one to see it on the quilt.'}
        foot={next && <Button className="button main" onPress={() => showSpot(session, next, 0)}>{picked ? 'Show the next one' : 'Show the first one'}</Button>}
      >
        {numbered.length === 0 ? (
          <NothingFound />
        ) : (
          <ol className="findings">
            {numbered.map((one) => <FindingRow key={one.key} numbered={one} spots={one === picked ? spots : undefined} at={at} />)}
          </ol>
        )}
        <SlipPart title="Before you sew"><Cautions /></SlipPart>
      </Slip>
      {picked && <Leader room={room} glass={glass} spot={spots[at]} />}
    </main>
  );
}

interface FindingRowProps {
  readonly numbered: NumberedFinding;
  /** The spots it can be led through; undefined when it is not the one looked at. */
  readonly spots: readonly Spot[] | undefined;
  readonly at: number;
}

function FindingRow({ numbered, spots, at }: FindingRowProps) {
  const session = useTheSession();
  const { number, finding } = numbered;
  const count = spots?.length ?? 0;
  const go = (to: number) => showSpot(session, numbered, (to + count) % count);
  return (
    <li className={`finding${spots ? ' picked' : ''}`}>
      <button type="button" className="finding-press" aria-pressed={spots !== undefined} onClick={() => showSpot(session, numbered, spots ? at : 0)}>
        <FindingSign severity={finding.severity} />
        <span className="finding-words">
          <span className="sentence">
            <b className="finding-number">{number}</b> <span className="only-heard">{ASKS[finding.severity]}: </span>
            <Said>{finding.message}</Said>
          </span>
          {spots && <span className="aside"><Said>{whyOf(finding)}</Said></span>}
          {finding.accepted !== undefined && <span className="aside"><Said>{`Left so: ${finding.accepted}`}</Said></span>}
        </span>
      </button>
      {count > 1 && (
        <div className="finding-steps">
          <Button className="button" onPress={() => go(at - 1)}>Place before</Button>
          <span role="status">{at + 1} of {count}</span>
          <Button className="button" onPress={() => go(at + 1)}>Next place</Button>
        </div>
      )}
    </li>
  );
}

function NothingFound() {
  const { rawEdge, seam } = useSession((state) => state.evaluation.plan.top.clearance);
  const lines = useSession((state) => state.evaluation.lines.length);
  const length = useLengths();
  if (lines === 0) return <SlipPart title="What was looked at"><Sentence>Nothing is sewn yet, so there is nothing to check.</Sentence></SlipPart>;
  return (
    <SlipPart title="What was looked at">
      <Sentence>{`${lines === 1 ? 'The one line keeps' : `All ${lines.toLocaleString('en')} lines keep`} ${length(rawEdge)} from the raw edge and ${length(seam)} from the seams of ${lines === 1 ? 'its area' : 'their areas'}.`}</Sentence>
      <Sentence>Ends that should meet do meet, and the foot reaches every edge it is to follow.</Sentence>
      <Aside>Thickness, grips and registrations were looked at too.</Aside>
    </SlipPart>
  );
}

/** The loupe over the spot looked at, and where that is. */
function LoupeOn({ numbered, spot, glass }: { readonly numbered: NumberedFinding; readonly spot: Spot | undefined; readonly glass: RefObject<HTMLDivElement | null> }) {
  const evaluation = useSession((state) => state.evaluation);
  if (!spot) return null;
  const { finding, number } = numbered;
  const areaId = spot.kind === 'line' ? spot.line.area : spot.area;
  const area = evaluation.top.areas.find(({ id }) => id === areaId);
  return (
    <figure>
      <Loupe
        evaluation={evaluation}
        at={middleOf(spot)}
        across={spot.kind === 'line' ? Math.max(spot.stretch.width, spot.stretch.height) * 1.25 : acrossFor(finding.measured)}
        ringed={spot.kind === 'place'}
        lines={finding.where.lines ?? NO_LINES}
        glass={glass}
      />
      <figcaption>
        <b>{area ? sentenceCase(area.name) : `Finding ${number}`}</b>
        <span>{titleOfCode(finding)}</span>
      </figcaption>
    </figure>
  );
}

const NO_LINES: readonly string[] = [];

function Key() {
  return (
    <ul className="key">
      {(['error', 'warning', 'note'] as const).map((severity) => (
        <li key={severity}><FindingSign severity={severity} />{ASKS[severity]}</li>
      ))}
    </ul>
  );
}

function CheckTape({ findings }: { readonly findings: readonly Finding[] }) {
  const count = countBySeverity(findings);
  return (
    <Tape
      facts={[
        { name: 'To mend', value: `${count.error}` },
        { name: 'To look at', value: `${count.warning}` },
        { name: 'Good to know', value: `${count.note}` },
      ]}
    />
  );
}

/** Picks a finding and brings one of its spots up on the table. */
function showSpot(session: Session, { key, finding }: NumberedFinding, at: number): void {
  select(session, { kind: 'finding', finding: key, spot: at });
  const spot = spotsOf(session.getState().evaluation, finding)[at];
  if (spot?.kind === 'place') zoomToPlace(session, spot.at, SHOWN_ACROSS);
  else if (spot) zoomToStretch(session, spot.stretch);
}

/** The place in the middle of a spot. */
function middleOf(spot: Spot) {
  if (spot.kind === 'place') return spot.at;
  const { x, y, width, height } = spot.stretch;
  return { x: x + width / 2, y: y + height / 2 };
}

/** How much the loupe shows, in inches: enough to see what was measured in its surroundings. */
function acrossFor(measured: number | undefined): number {
  return Math.min(6, Math.max(1.5, 6 * Math.abs(measured ?? 0.25)));
}

function titleOfCode({ code, message }: Finding): string {
  return code in CODES ? CODES[code as keyof typeof CODES].title : message;
}

function whyOf({ code }: Finding): string {
  return code in CODES ? CODES[code as keyof typeof CODES].why : '';
}

function titleOf(findings: readonly Finding[]): string {
  const count = countBySeverity(findings);
  if (findings.length === 0) return 'Nothing to mend';
  return ASKED.filter(([severity]) => count[severity] > 0).map(([severity, what]) => `${count[severity]} ${what}`).join(', ');
}

const ASKED = [['error', 'to mend'], ['warning', 'to look at'], ['note', 'good to know']] as const satisfies readonly (readonly [Severity, string])[];

function sentenceCase(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
