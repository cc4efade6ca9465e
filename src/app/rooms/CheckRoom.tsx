// Check: what is found, in words on the slip, numbered on the quilt, and the one looked at enlarged in the loupe.

import { type Ref, useLayoutEffect, useRef } from 'react';
import { Button } from 'react-aria-components/Button';
import type { Severity } from '../../check/finding.ts';
import { type FindingGroup, countBySeverity, groupFindings, placeOf } from '../../session/finding-groups.ts';
import { select, zoomToPlace } from '../../session/look.ts';
import type { Session } from '../../session/store.ts';
import { onScreen } from '../../session/view.ts';
import { Slip } from '../slip/Slip.tsx';
import { Signs } from '../table/Signs.tsx';
import { Table } from '../table/Table.tsx';
import { Tape } from '../table/Tape.tsx';
import { useSession, useTheSession } from '../use-session.ts';
import { Said } from '../words/Said.tsx';
import { ASKS, FindingSign } from '../words/signs.tsx';
import { Loupe } from './Loupe.tsx';
import './check.css';

/** A finding is shown on the table with so much quilt round it, in inches, and in the loupe with a quarter of that. */
const SHOWN_ACROSS = 10;

export function CheckRoom() {
  const session = useTheSession();
  const plan = useSession((state) => state.evaluation.plan);
  const groups = useSession((state) => groupFindings(state.evaluation.findings));
  const selection = useSession((state) => state.selection);
  const index = selection.kind === 'finding' ? groups.findIndex(({ key }) => key === selection.group) : -1;
  const picked = groups[index];
  const place = selection.kind === 'finding' ? Math.min(selection.place, (picked?.findings.length ?? 1) - 1) : 0;
  const room = useRef<HTMLElement>(null);
  const glass = useRef<HTMLDivElement>(null);
  const next = groups[picked ? index + 1 : 0];

  return (
    <main className="room with-loupe" ref={room}>
      <Table label={`The quilt ${plan.name}, with what was found on it`}>
        <Signs onPick={(group, at) => pick(session, group, at)} />
      </Table>
      <CheckTape groups={groups} />
      <LoupePlace picked={picked} place={place} glass={glass} />
      <Slip
        title={titleOf(groups)}
        about={groups.length === 0 ? 'The top is ready to sew.' : 'Press one to see it on the quilt.'}
        foot={next && <Button className="button main" onPress={() => showGroup(session, next, 0)}>{picked ? 'Show the next one' : 'Show the first one'}</Button>}
      >
        <ol className="findings">
          {groups.map((group) => (
            <FindingRow key={group.key} group={group} picked={group === picked} place={place} />
          ))}
        </ol>
      </Slip>
      {picked && <Leader room={room} glass={glass} group={picked} place={place} />}
    </main>
  );
}

function FindingRow({ group, picked, place }: { readonly group: FindingGroup; readonly picked: boolean; readonly place: number }) {
  const session = useTheSession();
  const evaluation = useSession((state) => state.evaluation);
  const count = group.findings.length;
  const finding = picked ? (group.findings[place] ?? group.worst) : group.worst;
  const area = evaluation.top.areas.find(({ id }) => id === finding.where.area);
  const aside = [
    area && sentenceCase(area.name),
    count > 1 && `in ${count} places`,
  ].filter((part) => typeof part === 'string');
  return (
    <li className={`finding${picked ? ' picked' : ''}`}>
      <button type="button" className="finding-press" aria-pressed={picked} onClick={() => showGroup(session, group, picked ? place : 0)}>
        <FindingSign severity={group.severity} />
        <span className="finding-words">
          <span className="sentence">
            <b className="finding-number">{group.number}</b> <span className="only-heard">{ASKS[group.severity]}: </span>
            <Said>{finding.message}</Said>
          </span>
          {aside.length > 0 && <span className="aside"><Said>{aside.join(', ')}</Said></span>}
        </span>
      </button>
      {picked && count > 1 && (
        <div className="finding-steps">
          <Button className="button" onPress={() => showGroup(session, group, (place + count - 1) % count)}>Place before</Button>
          <span aria-live="polite">{place + 1} of {count}</span>
          <Button className="button" onPress={() => showGroup(session, group, (place + 1) % count)}>Next place</Button>
        </div>
      )}
    </li>
  );
}

/** Where the loupe stands: the finding looked at, or what the signs ask for. */
function LoupePlace({ picked, place, glass }: { readonly picked: FindingGroup | undefined; readonly place: number; readonly glass: Ref<HTMLDivElement> }) {
  const evaluation = useSession((state) => state.evaluation);
  const finding = picked && (picked.findings[place] ?? picked.worst);
  const at = finding && placeOf(evaluation, finding);
  const area = evaluation.top.areas.find(({ id }) => id === finding?.where.area);
  return (
    <aside className="loupe" aria-label="Loupe">
      {finding && at && (
        <figure>
          <Loupe evaluation={evaluation} at={at} across={acrossFor(finding.measured)} lines={finding.where.lines ?? NO_LINES} glass={glass} />
          <figcaption>
            <b>{area ? sentenceCase(area.name) : `Finding ${picked.number}`}</b>
            <span><Said>{finding.message}</Said></span>
          </figcaption>
        </figure>
      )}
      <Key />
    </aside>
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

function CheckTape({ groups }: { readonly groups: readonly FindingGroup[] }) {
  const count = countBySeverity(groups);
  const places = groups.reduce((sum, group) => sum + group.findings.length, 0);
  return (
    <Tape
      facts={[
        { name: 'To mend', value: `${count.error}` },
        { name: 'To look at', value: `${count.warning}` },
        { name: 'Good to know', value: `${count.note}` },
        { name: 'Places in all', value: `${places}` },
      ]}
    />
  );
}

/** A line from the sign on the quilt to the loupe, while both are in sight. */
function Leader({ room, glass, group, place }: { readonly room: Ref<HTMLElement> & { current: HTMLElement | null }; readonly glass: { current: HTMLDivElement | null }; readonly group: FindingGroup; readonly place: number }) {
  const line = useRef<SVGPathElement>(null);
  const view = useSession((state) => state.view);
  const size = useSession((state) => state.table);
  const evaluation = useSession((state) => state.evaluation);
  const shown = useSession((state) => state.shown.has('findings'));
  useLayoutEffect(() => {
    const finding = group.findings[place] ?? group.worst;
    const at = placeOf(evaluation, finding);
    const table = room.current?.querySelector('.table')?.getBoundingClientRect();
    const within = room.current?.getBoundingClientRect();
    const lens = glass.current?.getBoundingClientRect();
    let d = '';
    if (at && table && within && lens && lens.width > 0 && lens.left > table.right) {
      const seen = onScreen(view, at);
      if (seen.x > 0 && seen.y > 0 && seen.x < size.width && seen.y < size.height) {
        const from = { x: table.left + seen.x - within.left, y: table.top + seen.y - within.top };
        const middle = { x: lens.left + lens.width / 2 - within.left, y: lens.top + lens.height / 2 - within.top };
        const far = Math.hypot(middle.x - from.x, middle.y - from.y);
        const part = 1 - lens.width / 2 / far;
        d = `M${from.x} ${from.y}L${from.x + (middle.x - from.x) * part} ${from.y + (middle.y - from.y) * part}`;
      }
    }
    line.current!.setAttribute('d', shown ? d : '');
  });
  return (
    <svg className="leader" aria-hidden="true"><path ref={line} /></svg>
  );
}

function pick(session: Session, group: FindingGroup, place: number): void {
  select(session, { kind: 'finding', group: group.key, place });
}

/** Picks a finding and brings it up on the table. */
function showGroup(session: Session, group: FindingGroup, place: number): void {
  pick(session, group, place);
  const { evaluation } = session.getState();
  const finding = group.findings[place] ?? group.worst;
  const at = placeOf(evaluation, finding);
  if (at) zoomToPlace(session, at, SHOWN_ACROSS);
}

/** How much the loupe shows, in inches: enough to see what was measured in its surroundings. */
function acrossFor(measured: number | undefined): number {
  return Math.min(6, Math.max(1.5, 6 * (measured ?? 0.25)));
}

function titleOf(groups: readonly FindingGroup[]): string {
  const count = countBySeverity(groups);
  if (groups.length === 0) return 'Nothing to mend';
  const said = ([['error', 'to mend'], ['warning', 'to look at'], ['note', 'good to know']] as const satisfies readonly (readonly [Severity, string])[])
    .filter(([severity]) => count[severity] > 0)
    .map(([severity, what]) => `${count[severity]} ${what}`);
  return said.join(', ');
}

function sentenceCase(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
