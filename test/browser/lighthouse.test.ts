// The built app, served by its own server, looked over by Lighthouse (the version in package.json): an outside judge of how soon a page
// is there, whether everybody can use it, and whether it keeps to good practice.
//
// Whether everybody can use it and good practice do not hang on how fast the machine is: both must reach 95 of 100 in every run, and
// nothing may move under the eye. Speed does: Lighthouse times what the page does on this machine, and on one that is busy with something
// else it times that too. It measures the machine as well (its "benchmark index") and warns below 1000 that its times are not to be
// trusted. So with the desktop preset:
// - always: the time for which the page would not have listened, taken from the processor time of its tasks instead of the clock, must be
//   no longer than 150 ms, which Lighthouse's own curve for desktops calls good (90 of 100);
// - on a machine that is free by Lighthouse's own measure: speed must reach 95 in one of up to three runs.
// The mobile preset counts every millisecond of the processor four times; its speed is printed, for looking at.

import { launch } from 'chrome-launcher';
import lighthouse, { type Config, desktopConfig } from 'lighthouse';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { serveApp } from '../support/browser.ts';

const TRIES = 3;
const ENOUGH = 95;
/** Lighthouse's benchmark index below which it says that the machine is too slow for its times to be trusted. */
const FREE_MACHINE = 1000;
/** In milliseconds; see above. */
const GOOD_DEAF = 150;
/** A task longer than this keeps the page from listening, in milliseconds (W3C, Long Tasks API). */
const LONG_TASK = 50;
const FLAGS = ['--headless=new', '--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'];
/** In the order in which Lighthouse weighs them. */
const MEASURES = ['total-blocking-time', 'largest-contentful-paint', 'cumulative-layout-shift', 'first-contentful-paint', 'speed-index'] as const;

interface Looked {
  /** Of 100. */
  readonly performance: number;
  readonly accessibility: number;
  readonly practices: number;
  /** Lighthouse's measure of the machine during the run. */
  readonly machine: number;
  /** For so long the page would not have listened had it had a processor of its own, in milliseconds. */
  readonly deaf: number;
  /** What Lighthouse finds wrong with use by everybody and with practice, in words. */
  readonly complaints: readonly string[];
  readonly measures: { readonly [measure in (typeof MEASURES)[number]]: { readonly score: number; readonly value: string } };
}

let server: Awaited<ReturnType<typeof serveApp>>;
beforeAll(async () => {
  server = await serveApp();
});
afterAll(() => server?.close());

it(`the desktop preset gives ${ENOUGH} or more for everybody's use and for good practice, and for speed where it can be timed`, { timeout: 240_000 }, async () => {
  const runs: Looked[] = [];
  while (runs.length < TRIES && !runs.some(({ performance }) => performance >= ENOUGH)) {
    const looked = await lookOver(server.address, desktopConfig);
    runs.push(looked);
    expectGood(looked);
  }
  expect(Math.min(...runs.map(({ deaf }) => deaf))).toBeLessThanOrEqual(GOOD_DEAF);
  const timed = runs.filter(({ machine }) => machine >= FREE_MACHINE);
  if (timed.length > 0) expect(Math.max(...runs.map(({ performance }) => performance))).toBeGreaterThanOrEqual(ENOUGH);
});

it('the mobile preset finds it usable by everybody, of good practice, and lying still', { timeout: 120_000 }, async () => {
  expectGood(await lookOver(server.address, undefined));
});

function expectGood({ complaints, accessibility, practices, measures }: Looked): void {
  expect(complaints).toEqual([]);
  expect(accessibility).toBeGreaterThanOrEqual(ENOUGH);
  expect(practices).toBeGreaterThanOrEqual(ENOUGH);
  expect(measures['cumulative-layout-shift'].score).toBeGreaterThanOrEqual(0.9);
}

/** One run in a browser of its own. */
async function lookOver(address: string, preset: Config | undefined): Promise<Looked> {
  const chrome = await launch({ chromePath: process.env['CHROMIUM'] ?? '/usr/bin/chromium', chromeFlags: FLAGS, logLevel: 'silent' });
  try {
    const result = await lighthouse(address, { port: chrome.port, output: 'json', logLevel: 'error' }, preset);
    if (!result) throw new Error('Lighthouse gave no answer');
    const { categories, audits } = result.lhr;
    const of100 = (category: string) => Math.round((categories[category]?.score ?? 0) * 100);
    const complaints = ['accessibility', 'best-practices'].flatMap((category) => categories[category]!.auditRefs)
      .filter(({ id, weight }) => weight > 0 && audits[id]!.score !== null && audits[id]!.score < 1)
      .map(({ id }) => audits[id]!.title);
    const measures = Object.fromEntries(MEASURES.map((id) => [id, { score: audits[id]?.score ?? 0, value: audits[id]?.displayValue ?? 'not measured' }])) as Looked['measures'];
    const looked = { performance: of100('performance'), accessibility: of100('accessibility'), practices: of100('best-practices'), complaints, measures, machine: result.lhr.environment.benchmarkIndex, deaf: deafFor(result.artifacts.Trace.traceEvents) };
    console.log(`${preset ? 'desktop' : 'mobile'}, machine ${looked.machine}, would not listen for ${looked.deaf.toFixed(0)} ms: speed ${looked.performance}, for everybody ${looked.accessibility}, good practice ${looked.practices}; ${MEASURES.map((id) => `${id} ${measures[id].value}`).join(', ')}`);
    return looked;
  } finally {
    chrome.kill();
  }
}

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  /** Processor time, in microseconds. */
  readonly tdur?: number;
  readonly args: { readonly frame?: string };
}

/** The part over LONG_TASK of every task of the page's main thread since the address was opened, by processor time, in milliseconds. */
function deafFor(events: readonly TraceEvent[]): number {
  // As Lighthouse itself finds it: the last navigation of the frame that painted. Its address is not always in the trace.
  const painted = events.findLast(({ name }) => name === 'firstContentfulPaint');
  const opened = events.findLast(({ name, args, ts }) => name === 'navigationStart' && painted !== undefined && args.frame === painted.args.frame && ts <= painted.ts);
  if (!opened) throw new Error('The page was not opened');
  const tasks = events.filter(({ name, pid, tid, ts }) => name === 'RunTask' && pid === opened.pid && tid === opened.tid && ts >= opened.ts);
  if (!tasks.some(({ tdur }) => tdur !== undefined)) throw new Error('There are no processor times');
  return tasks.reduce((sum, { tdur = 0 }) => sum + Math.max(0, tdur / 1000 - LONG_TASK), 0);
}
