// What is kept of a plan in the browser's own database, record by record.
// A plan's text lies in two places by turns: the new one is written where the one before the last was, so that the last
// good one is never touched. Texts are plan files, read and checked as such when they are opened.

import type { HistoryStep } from '../../session/history.ts';
import type { PlanPicture } from './picture.ts';

/** What the list of plans needs to know of one. Times are milliseconds since 1970. */
export interface PlanHead {
  readonly id: string;
  readonly name: string;
  readonly made: number;
  readonly changed: number;
  /** Counts the writes; its last bit says in which of the two places the text lies. */
  readonly revision: number;
  /** Of the text, in bytes. */
  readonly size: number;
  /** How many steps of undo are kept with it, and how many of them are done. */
  readonly steps: { readonly kept: number; readonly done: number };
  /** The example it was made from. */
  readonly fromExample?: string;
  readonly file?: PlanFile;
  /** When the newest version was kept. */
  readonly lastVersion?: number;
  /** When it was laid on a table last. */
  readonly laid?: number;
  /** When it was deleted; it is gone for good some time after that. */
  readonly deleted?: number;
}

/** The file of the quilter's own in which a plan lies. */
export interface PlanFile {
  readonly name: string;
  /** With it, Save writes back; browsers without file access have none. */
  readonly handle?: FileSystemFileHandle;
  /** The revision that lies in the file. */
  readonly revision: number;
  /** The file as it was left: when something else has changed it since, that is not written over unkept. */
  readonly modified?: number;
}

export interface PlanText {
  readonly plan: string;
  readonly place: 0 | 1;
  readonly revision: number;
  readonly text: string;
}

export interface KeptStep {
  readonly plan: string;
  readonly at: number;
  readonly step: HistoryStep;
}

/** Why a version was kept. */
export type VersionReason =
  | 'named'
  | 'automatic'
  /** The state a return to an earlier version took the place of. */
  | 'before-return'
  /** What another window had made of the plan at the same moment. */
  | 'other-window'
  /** What something else had written into the plan's file. */
  | 'from-file'
  /** A text that could not be read as a plan. */
  | 'unreadable';

export interface Version {
  readonly id: string;
  readonly plan: string;
  readonly at: number;
  readonly reason: VersionReason;
  /** The quilter's name for it. */
  readonly name?: string;
  readonly size: number;
}

export interface VersionText {
  readonly id: string;
  readonly text: string;
}

/** A true picture of a plan (`of` is its id) or of a version, and of which revision. */
export interface KeptPicture {
  readonly of: string;
  readonly revision: number;
  readonly picture: PlanPicture;
}

/** An id nobody else has. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return Array.from(bytes, (byte) => byte.toString(36).padStart(2, '0')).join('');
}

/** In bytes, as it would be in a file. */
export function sizeOfText(text: string): number {
  return new TextEncoder().encode(text).length;
}
