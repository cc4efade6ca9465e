// `npm test`: everything from a fresh copy to the last test, stage after stage, stopping at the first that fails.
// `npm test -- source unit` runs only the stages named.

import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from './build.mjs';
import { ROOT, installPackages, installTestTools, run, runBeside, stop } from './set-up.mjs';

const REPORTS = join(ROOT, 'node_modules/.cache/needlefall-tests');

/** @type {{ name: string, about: string, work: () => boolean | Promise<boolean> }[]} */
const STAGES = [
  { name: 'set-up', about: 'packages, browser, PDF tools', work: () => (installPackages(), installTestTools(), true) },
  { name: 'source', about: 'eslint, who may import whom; types of the core without DOM or Node, of everything, of the scripts', work: () => sideBySide([['eslint', '.']], [['tsc', '-p', 'tsconfig.core.json'], ['tsc', '-p', 'tsconfig.json'], ['tsc', '-p', 'tsconfig.scripts.json'], ['depcruise', 'src']]) },
  { name: 'build', about: 'app and command line', work: () => (build(), true) },
  { name: 'unit', about: 'unit, property, golden and command line tests', work: () => vitest('unit', 'vitest.config.ts') },
  { name: 'browser', about: 'the app in a browser', work: () => vitest('browser', 'vitest.browser.config.ts') },
  { name: 'alone', about: 'speed of the app, and nothing lost when it is killed', work: () => vitest('alone', 'vitest.alone.config.ts') },
];

const chosen = process.argv.slice(2);
const unknown = chosen.filter((name) => !STAGES.some((stage) => stage.name === name));
if (unknown.length > 0) stop(`There is no stage ${unknown.join(', ')}. The stages are ${STAGES.map((stage) => stage.name).join(', ')}.`);

rmSync(REPORTS, { recursive: true, force: true });
mkdirSync(REPORTS, { recursive: true });
const stages = chosen.length === 0 ? STAGES : STAGES.filter((stage) => chosen.includes(stage.name));
/** @type {(typeof STAGES)[number] | undefined} */
let running;
// However it ends, also from within a stage, it ends with the totals.
process.on('exit', () => {
  const { passed, failed } = totals();
  if (running) console.log(`\nStopped: the stage "${running.name}" failed (${running.about}).`);
  console.log(`${passed} passed, ${running ? Math.max(1, failed) : failed} failed`);
});
for (const stage of stages) {
  running = stage;
  if (!(await timed(stage))) process.exit(1);
}
running = undefined;

/** @param {(typeof STAGES)[number]} stage */
async function timed(stage) {
  console.log(`\n== ${stage.name}: ${stage.about}`);
  const start = Date.now();
  const good = await stage.work();
  console.log(`== ${stage.name}: ${good ? 'good' : 'failed'}, ${((Date.now() - start) / 1000).toFixed(1)} s`);
  return good;
}

/** @param {string} tool @param {string[]} args */
function npx(tool, ...args) {
  return run('npx', ['--no', '--', tool, ...args]);
}

/**
 * Lanes of tools, each lane one tool after the other until one fails, the lanes at once: one core would otherwise look on.
 * @param {...string[][]} lanes
 */
async function sideBySide(...lanes) {
  const ends = await Promise.all(lanes.map(async (lane) => {
    for (const [tool = '', ...args] of lane) if (!(await runBeside('npx', ['--no', '--', tool, ...args]))) return false;
    return true;
  }));
  return ends.every(Boolean);
}

/**
 * Runs the tests of a vitest configuration. No tests at all is a failure.
 * @param {string} name
 * @param {string} config
 */
function vitest(name, config) {
  return npx('vitest', 'run', '--config', config, '--reporter=default', '--reporter=json', `--outputFile.json=${join(REPORTS, `${name}.json`)}`);
}

function totals() {
  const reports = existsSync(REPORTS) ? readdirSync(REPORTS).map((name) => JSON.parse(readFileSync(join(REPORTS, name), 'utf8'))) : [];
  const sum = (/** @type {string} */ field) => reports.reduce((all, report) => all + (report[field] ?? 0), 0);
  return { passed: sum('numPassedTests'), failed: sum('numFailedTests') };
}
