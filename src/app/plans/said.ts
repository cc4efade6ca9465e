// What is said of plans: when, how large, why not.

import type { KeepProblem, KeeperState } from './keeper.ts';
import type { PlanHead, Version } from './records.ts';

const MINUTE = 60_000;

/** When something was: "a moment ago", "3 minutes ago", "at 14:05", "yesterday at 14:05", "on 3 May", "on 3 May 2025". */
export function writeWhen(at: number, now: number): string {
  const minutes = Math.floor((now - at) / MINUTE);
  if (minutes < 1) return 'a moment ago';
  if (minutes < 60) return minutes === 1 ? '1 minute ago' : `${minutes} minutes ago`;
  const [then, today] = [new Date(at), new Date(now)];
  const time = `${pad(then.getHours())}:${pad(then.getMinutes())}`;
  if (isSameDay(then, today)) return `at ${time}`;
  if (isSameDay(then, new Date(today.getFullYear(), today.getMonth(), today.getDate() - 1))) return `yesterday at ${time}`;
  const day = `on ${then.getDate()} ${MONTHS[then.getMonth()]!}`;
  return then.getFullYear() === today.getFullYear() ? day : `${day} ${then.getFullYear()}`;
}

/** A size: "24 kB", "1.2 MB". */
export function writeSize(bytes: number): string {
  return bytes < 1000 * 1000 ? `${Math.max(1, Math.round(bytes / 1000))} kB` : `${(bytes / 1000 / 1000).toFixed(1)} MB`;
}

/** How the plan on the table is kept, for the line under its name. */
export function writeKept({ lying, settled, problem, otherWindows }: Omit<KeeperState, 'news'>, now: number): string {
  if (problem) return 'Not saved';
  if (lying.kind === 'example') return 'An example';
  if (!settled || !lying.head) return 'Saving';
  const { file, changed, revision, deleted } = lying.head;
  if (deleted !== undefined) return 'Deleted; a change brings it back';
  const windows = otherWindows === 0 ? '' : `, open in ${otherWindows + 1} windows`;
  return `Saved ${writeWhen(changed, now)}${file && file.revision !== revision ? ', not yet in its file' : ''}${windows}`;
}

/** Why nothing is kept, and what to do. */
export const PROBLEMS: { readonly [problem in KeepProblem]: string } = {
  'no-database': 'This browser keeps nothing for this page. Your plan stays until the window is closed: save it to a file.',
  full: 'There is no room left on this device to keep your plan. Save it to a file, or delete plans and versions you no longer need.',
  failed: 'Your last changes could not be kept. It is tried again by itself; save the plan to a file to be sure.',
};

/** What a version is called when she has not named it. */
export function nameOfVersion({ name, reason }: Version): string {
  return name ?? REASONS[reason];
}

const REASONS: { readonly [reason in Version['reason']]: string } = {
  named: 'Kept',
  automatic: 'Kept by itself',
  'before-return': 'Before going back',
  'other-window': 'From the other window',
  'from-file': 'From its file',
  unreadable: 'Could not be read',
};

/** Where a plan stands in the list: when it was changed, and how large it is. */
export function writeAbout({ changed, size, fromExample }: PlanHead, now: number): string {
  const from = fromExample === undefined ? '' : `, from the example ${fromExample}`;
  return `Changed ${writeWhen(changed, now)}, ${writeSize(size).replace(' ', '\u00a0')}${from}`;
}

const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

function isSameDay(a: Date, b: Date): boolean {
  return a.getFullYear() === b.getFullYear() && a.getMonth() === b.getMonth() && a.getDate() === b.getDate();
}

function pad(part: number): string {
  return String(part).padStart(2, '0');
}
