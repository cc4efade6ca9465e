// Every code a check can report: its title in plain words, how grave it is, and why it matters at the table.

import type { Severity } from './finding.ts';

interface CodeMeaning {
  readonly title: string;
  readonly severity: Severity;
  readonly why: string;
}

/** The meanings of the codes. `measured` and `limit` of a finding are inches for all of them, but where `why` says otherwise. */
export const CODES = {
  'near-raw-edge': { title: 'Too near to the raw edge', severity: 'error', why: 'The seam allowance and the binding cover what is sewn there, or it is trimmed away.' },
  'near-seam': { title: 'Too near to a seam', severity: 'warning', why: 'At a seam the foot climbs over the seam allowance, and a line beside a seam shows every waver.' },
  'in-keep-out': { title: 'Enters a keep-out', severity: 'error', why: 'A line sewn over an applique cannot be taken out unseen. Measured is the length of line inside.' },
  'near-keep-out': { title: 'Too near to a keep-out', severity: 'error', why: 'The foot pushes an applique along before the needle reaches it.' },
  'ends-apart': { title: 'Two ends do not meet', severity: 'warning', why: 'Ends this near were meant to meet; the eye finds the gap at once.' },
  'over-missed-edge': { title: 'The foot cannot follow the edge', severity: 'warning', why: 'Where the foot does not fit the edge, the needle line turns sharply and the template shows a curve that is not sewn. Measured is the edge missed.' },
  'pass-off-line': { title: 'A start or stop is not on the needle line', severity: 'error', why: 'The pass cannot be sewn as it is told.' },
  'pass-no-crossing': { title: 'The needle line does not cross there', severity: 'error', why: 'The pass starts or stops at a crossing that is not there.' },
  'pass-no-line': { title: 'A pass names a line that is not there', severity: 'error', why: 'The pass starts or stops at a reference line this area does not have.' },
  'pass-no-edge': { title: 'No needle line along this edge', severity: 'error', why: 'The edge is not there, or the foot does not fit into it.' },
  'pass-no-length': { title: 'A pass of no length', severity: 'error', why: 'It starts and stops at one place.' },
  'flip-with-grips': { title: 'Face down on its bare face', severity: 'warning', why: 'The grips lie on top when the template is turned over, and nothing keeps it from slipping.' },
  'template-too-thin': { title: 'Template too thin for the foot', severity: 'warning', why: 'The foot can ride up on a template thinner than it is tall, and the needle can strike it.' },
  'template-too-thick': { title: 'Template too thick for the foot', severity: 'warning', why: 'The foot or the needle clamp can strike a template thicker than the shank has room for.' },
  'nothing-to-rest-on': { title: 'Nothing for the template to rest on', severity: 'warning', why: 'A template that balances beyond the edge of the top tips under the hand.' },
  'placement-impossible': { title: 'Registrations that cannot all be met', severity: 'error', why: 'The template cannot lie as told; it is shown where it last lay.' },
  'registration-unreadable': { title: 'A registration that cannot be read', severity: 'error', why: 'It names something that is not there, so the template is shown where it last lay.' },
  'repeat-left-out': { title: 'A step of a repeat is left out', severity: 'warning', why: 'Fewer passes are sewn than were asked for.' },
  'unknown-template': { title: 'A template that is not in the kit', severity: 'error', why: 'Nothing can be laid without it.' },
  'unknown-foot': { title: 'A foot that is not in the kit', severity: 'error', why: 'Without its size there is no needle line.' },
  'bad-template': { title: 'A template that cannot be drawn', severity: 'error', why: 'Its outline or its sizes give no shape.' },
  'unknown-area': { title: 'An area that is not there', severity: 'error', why: 'The sheet names an area this top does not have.' },
  'sheet-without-areas': { title: 'A sheet for nothing', severity: 'warning', why: 'No area of this top is of the kind the sheet is for.' },
  'empty-sheet': { title: 'An empty sheet', severity: 'warning', why: 'It is chosen, and nothing on it is sewn.' },
  'two-sheets-one-area': { title: 'Two chosen sheets for one area', severity: 'warning', why: 'Both are sewn, one over the other.' },
  'top-cannot-be': { title: 'Something of the top cannot be', severity: 'error', why: 'It is left out or laid otherwise, and all that is planned on it goes with it.' },
  'measure-doubtful': { title: 'A measure to take again', severity: 'warning', why: 'A slip of the tape here spoils the whole side.' },
} as const satisfies { readonly [code: string]: CodeMeaning };

export type FindingCode = keyof typeof CODES;
