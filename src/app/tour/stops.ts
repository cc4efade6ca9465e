// What the slips of the tour say and point at: all of it true of the plan on the table.

import { pointAlong } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/point.ts';
import { EYE } from '../../num/tolerances.ts';
import { numberedFindings } from '../../session/numbered-findings.ts';
import { workOn } from '../../session/lay/on-table.ts';
import { fitTop, select, selectNothing, show, zoomToPlace } from '../../session/look.ts';
import { OPEN_ROOMS, type Room } from '../../session/rooms.ts';
import { type Session, type SessionState, planOf } from '../../session/store.ts';
import { onScreen } from '../../session/view.ts';
import { quiltPath } from '../../stitch/quilt-path.ts';
import type { StitchedLine } from '../../stitch/stitched-line.ts';
import { grouped } from '../words/grouped.ts';
import type { Box } from './place-slip.ts';
import { goToRoom } from './tour.ts';

export interface Stop {
  readonly title: string;
  /** Sentences, lengths written as the plan writes them. */
  readonly says: (state: SessionState, length: (inches: number) => string) => readonly string[];
  /** Brings up what it points at. */
  readonly prepare: (session: Session) => void;
  /** Whether it points at a place rather than at a part of the page. */
  readonly isPlace?: true;
  /** What it points at, on the screen; undefined until it is there. */
  readonly target: (state: SessionState) => Box | undefined;
}

/** So much quilt is seen round a needle line, in inches, and so much of it is ringed, in CSS pixels. */
const NEEDLE_ACROSS = 9;
const RINGED = 64;

const welcome: Stop = {
  title: 'A short tour',
  says: ({ evaluation: { plan, lines }, source }) => [
    `This is ${plan.name}${lines.length === 0 ? '' : `: a top with ${counted(lines.length, 'stitched line')}, planned for the needle`}.`,
    source.kind === 'example' ? 'It is an example. Whatever you change becomes a plan of your own; the example stays as it is.' : 'A few slips show how a plan is made and used.',
  ],
  // The first slip lies in whatever room one came to.
  prepare: () => undefined,
  target: () => boxOf('.plan-name'),
};

const needleLine: Stop = {
  title: 'The needle line is not the edge',
  isPlace: true,
  says: (state, length) => {
    const line = lineToShow(state);
    const placement = line && planOf(state).sheets[line.sheet]?.placements[line.placement];
    const foot = placement && planOf(state).kit.feet[placement.foot];
    if (!foot) return ['The strongest line is where the needle falls. The foot keeps it half a foot’s width from the template’s edge.'];
    const isCentred = Math.hypot(...foot.needleOffset) < EYE;
    return [
      `The strongest line is where the needle falls. The foot, ${length(foot.diameter)} across, runs along the template’s edge, so the stitches lie ${isCentred ? '' : 'about '}${length(foot.diameter / 2)} away from it.`,
      'All that is drawn, checked and printed is this line.',
    ];
  },
  prepare: (session) => {
    goToRoom(session, 'top');
    show(session, 'templates', true);
    show(session, 'lines', true);
    const line = lineToShow(session.getState());
    if (line) zoomToPlace(session, middleOf(line), NEEDLE_ACROSS);
  },
  target: (state) => {
    const line = lineToShow(state);
    return line && state.room === 'top' ? boxAt(state, middleOf(line)) : undefined;
  },
};

const ROOM_DOES: { readonly [room in Room]: string } = {
  top: 'Top is measured',
  kit: 'Kit holds feet and templates',
  audition: 'in Audition templates are tried on the top',
  check: 'Check says what to mend',
  sew: 'Sew gives the order of work',
  paper: 'Paper prints it full size',
};

const rooms: Stop = {
  title: 'Rooms in the order of the job',
  says: () => [`${inARow(OPEN_ROOMS.map((room) => ROOM_DOES[room]))}.`, 'Walk from one to the next as you like; nothing has to be finished first.'],
  prepare: (session) => {
    goToRoom(session, 'top');
    fitTop(session);
  },
  target: () => boxOf('.rooms'),
};

const sheet: Stop = {
  title: 'Laid once, sewn in every place',
  says: (state) => {
    const line = lineToShow(state);
    const of = line && planOf(state).sheets[line.sheet];
    if (!line || !of) return ['A tracing sheet holds what is tried for one kind of area.'];
    const mine = state.evaluation.lines.filter((one) => one.sheet === line.sheet);
    const areas = new Set(mine.map(({ area }) => area)).size;
    return [
      `${of.name} is a tracing sheet. What lies on it was laid in one area and gives ${counted(mine.length, 'line')} in ${counted(areas, 'area')}.`,
      'Several sheets may be tried for the same areas; the chosen one is sewn.',
    ];
  },
  prepare: (session) => {
    goToRoom(session, 'audition');
    const line = lineToShow(session.getState());
    if (line) workOn(session, { sheet: line.sheet, area: line.area });
  },
  target: ({ room }) => (room === 'audition' ? (boxOf('.sheet-card.on-table') ?? boxOf('.tab.on-table') ?? boxOf('.sheet-stack')) : undefined),
};

const checked: Stop = {
  title: 'Looked over before you sew',
  says: ({ evaluation: { findings } }) => {
    const standing = findings.filter(({ accepted }) => accepted === undefined).length;
    if (standing === 0) return ['Nothing is to be mended here. Seams, raw edges, ends that should meet and what the foot can reach were looked at.'];
    return [`${standing === 1 ? 'One thing is' : `${standing} things are`} found here, with a picture of the place and what was measured.`, 'Mend it, or leave it so and say why: the reason is kept with the plan.'];
  },
  prepare: (session) => {
    goToRoom(session, 'check');
    const [first] = numberedFindings(session.getState().evaluation.findings);
    if (first && first.finding.accepted === undefined) select(session, { kind: 'finding', finding: first.key, spot: 0 });
    fitTop(session);
  },
  target: ({ room }) => (room === 'check' ? (boxOf('.findings .finding-press') ?? boxOf('.slip h1')) : undefined),
};

const printed: Stop = {
  title: 'On paper, one inch is one inch',
  says: () => ['Patterns are printed at full size on the paper you have. Each page bears a square to measure, so that you know the printer kept true.', 'That is all. The tour can be taken again from Settings.'],
  prepare: (session) => {
    goToRoom(session, 'paper');
    selectNothing(session);
  },
  target: ({ room }) => (room === 'paper' ? boxOf('.slip-foot .button.main') : undefined),
};

/** The slips in their order; only of rooms that can be walked into. */
export const STOPS: readonly Stop[] = [
  welcome,
  needleLine,
  rooms,
  ...(OPEN_ROOMS.includes('audition') ? [sheet] : []),
  ...(OPEN_ROOMS.includes('check') ? [checked] : []),
  ...(OPEN_ROOMS.includes('paper') ? [printed] : []),
];

/**
 * The stitched line that is shown beside the template it was traced along: the longest of the first area of the sheet that
 * sews most; a template is drawn where it was laid.
 */
function lineToShow({ evaluation: { lines } }: SessionState): StitchedLine | undefined {
  const counts = new Map<string, number>();
  for (const { sheet: id } of lines) counts.set(id, (counts.get(id) ?? 0) + 1);
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  const first = lines.find((line) => line.sheet === most?.[0]);
  return lines.filter((line) => line.sheet === first?.sheet && line.area === first.area && line.image === 0).sort((a, b) => b.length - a.length)[0];
}

function middleOf(line: StitchedLine): Point<'quilt'> {
  return pointAlong(quiltPath(line), line.length / 2).point;
}

function boxAt({ view }: SessionState, at: Point<'quilt'>): Box | undefined {
  const table = boxOf('.table');
  const { x, y } = onScreen(view, at);
  return table && { x: table.x + x - RINGED / 2, y: table.y + y - RINGED / 2, width: RINGED, height: RINGED };
}

/** Of the first such element that is laid out. */
function boxOf(selector: string): Box | undefined {
  return [...document.querySelectorAll(selector)].map((element) => element.getBoundingClientRect()).find(({ width }) => width > 0);
}

function counted(count: number, what: string): string {
  return `${grouped(count)} ${what}${count === 1 ? '' : 's'}`;
}

function inARow(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')}, and ${parts.at(-1)!}`;
}
