// Check: what is found, in words on the slip, numbered on the quilt, and the one looked at enlarged in the loupe.

import { type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { CODES } from '../../check/codes.ts';
import type { Finding, Severity } from '../../check/finding.ts';
import { leftoverReasons } from '../../session/accept.ts';
import { type NumberedFinding, type Spot, countBySeverity, numberedFindings, spotsOf } from '../../session/numbered-findings.ts';
import { select } from '../../session/look.ts';
import { FindingRow } from '../check/FindingRow.tsx';
import { Leftovers } from '../check/Leftovers.tsx';
import { acrossFor, middleOf, showSpot } from '../check/show-spot.ts';
import { Aside, Sentence, Slip, SlipPart } from '../slip/Slip.tsx';
import { Signs } from '../table/Signs.tsx';
import { Table } from '../table/Table.tsx';
import { Tape } from '../table/Tape.tsx';
import { useSession, useTheSession } from '../use-session.ts';
import { grouped } from '../words/grouped.ts';
import { Cautions } from '../words/Cautions.tsx';
import { useLengths } from '../words/lengths.ts';
import { ASKS, FindingSign } from '../words/signs.tsx';
import { Leader } from './Leader.tsx';
import { Loupe } from './Loupe.tsx';
import './check.css';

export function CheckRoom() {
  const session = useTheSession();
  const evaluation = useSession((state) => state.evaluation);
  const { findings, plan } = evaluation;
  const numbered = numberedFindings(findings);
  const standing = numbered.filter(({ finding }) => finding.accepted === undefined);
  const left = numbered.filter(({ finding }) => finding.accepted !== undefined);
  const leftovers = useMemo(() => leftoverReasons(plan, findings), [plan, findings]);
  const selection = useSession((state) => state.selection);
  const picked = selection.kind === 'finding' ? numbered.find(({ key }) => key === selection.finding) : undefined;
  const spots = useMemo(() => (picked ? spotsOf(evaluation, picked.finding) : []), [evaluation, picked]);
  const at = selection.kind === 'finding' ? Math.min(selection.spot, Math.max(0, spots.length - 1)) : 0;
  const next = picked?.finding.accepted === undefined ? standing.find(({ number }) => number > (picked?.number ?? 0)) : standing[0];
  const room = useRef<HTMLElement>(null);
  const glass = useRef<HTMLDivElement>(null);
  const { said, tell } = useMoved(room);
  const rows = (those: readonly NumberedFinding[]) => (
    <ol className="findings">
      {those.map((one) => <FindingRow key={one.key} numbered={one} spots={one === picked ? spots : undefined} at={at} onMoved={tell} />)}
    </ol>
  );
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
        about={aboutOf(standing.length, left.length)}
        foot={next && <Button className="button main" onPress={() => showSpot(session, next, 0)}>{next === standing[0] ? 'Show the first one' : 'Show the next one'}</Button>}
      >
        {standing.length === 0 && <NothingFound leftSo={left.length > 0} />}
        {ASKED.map(([severity]) => {
          const those = standing.filter(({ finding }) => finding.severity === severity);
          return those.length > 0 && <SlipPart key={severity} title={ASKS[severity]}>{rows(those)}</SlipPart>;
        })}
        {left.length > 0 && <SlipPart title="Left so">{rows(left)}</SlipPart>}
        {leftovers.length > 0 && <Leftovers reasons={leftovers} onForgotten={(words) => tell(undefined, words)} />}
        <SlipPart title="Before you sew"><Cautions /></SlipPart>
      </Slip>
      <p role="status" className="only-heard">{said}</p>
      {picked && <Leader room={room} glass={glass} spot={spots[at]} />}
    </main>
  );
}

/** What is said when a finding has gone to another list; the hand stays on it, or goes to the slip when it is gone. */
function useMoved(room: RefObject<HTMLElement | null>) {
  const [moved, setMoved] = useState<{ readonly key: string | undefined; readonly said: string }>();
  useEffect(() => {
    if (!moved) return;
    const row = moved.key === undefined ? undefined : [...(room.current?.querySelectorAll<HTMLElement>('.finding-press') ?? [])].find(({ dataset }) => dataset['finding'] === moved.key);
    (row ?? room.current?.querySelector<HTMLElement>('.slip-text'))?.focus();
  }, [moved, room]);
  return { said: moved?.said ?? '', tell: (key: string | undefined, said: string) => setMoved({ key, said }) };
}

function NothingFound({ leftSo }: { readonly leftSo: boolean }) {
  const { rawEdge, seam } = useSession((state) => state.evaluation.plan.top.clearance);
  const lines = useSession((state) => state.evaluation.lines.length);
  const length = useLengths();
  if (leftSo) return null;
  if (lines === 0) return <SlipPart title="What was looked at"><Sentence>Nothing is sewn yet, so there is nothing to check.</Sentence></SlipPart>;
  return (
    <SlipPart title="What was looked at">
      <Sentence>{`${lines === 1 ? 'The one line keeps' : `All ${grouped(lines)} lines keep`} ${length(rawEdge)} from the raw edge and ${length(seam)} from the seams of ${lines === 1 ? 'its area' : 'their areas'}.`}</Sentence>
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
        across={acrossFor(spot, finding.measured)}
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

function titleOfCode({ code, message }: Finding): string {
  return code in CODES ? CODES[code as keyof typeof CODES].title : message;
}

function titleOf(findings: readonly Finding[]): string {
  const count = countBySeverity(findings);
  if (findings.every(({ accepted }) => accepted !== undefined)) return 'Nothing to mend';
  return ASKED.filter(([severity]) => count[severity] > 0).map(([severity, what]) => `${count[severity]} ${what}`).join(', ');
}

function aboutOf(standing: number, left: number): string {
  const leftSo = left === 0 ? '' : left === 1 ? '1 is left so.' : `${left} are left so.`;
  return standing === 0 ? ['The top is ready to sew.', leftSo].join(' ').trim() : ['Press one to see it on the quilt.', leftSo].join(' ').trim();
}

const ASKED = [['error', 'to mend'], ['warning', 'to look at'], ['note', 'good to know']] as const satisfies readonly (readonly [Severity, string])[];

function sentenceCase(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
