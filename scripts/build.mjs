// Builds the app and the command line into dist/.

import { chmodSync, cpSync, mkdirSync, readdirSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ROOT, installPackages, run, stop } from './set-up.mjs';

const STAMP = join(ROOT, 'dist/.built');
const COMMAND = join(ROOT, 'dist/cli/needlefall.js');
const SOURCES = ['src', 'examples', 'vite.config.ts', 'vite.cli.config.ts', 'package.json', 'package-lock.json', 'tsconfig.base.json', 'tsconfig.json'];

/** Builds everything. Ends the process when that fails. */
export function build() {
  rmSync(STAMP, { force: true });
  if (!run('npx', ['--no', '--', 'vite', 'build', '--logLevel', 'warn'])) stop('The app could not be built. The reason stands above.');
  buildCommand();
  writeFileSync(STAMP, `${new Date().toISOString()}\n`);
}

/** Builds the command line alone. Ends the process when that fails. */
export function buildCommand() {
  if (!run('npx', ['--no', '--', 'vite', 'build', '--logLevel', 'warn', '--config', 'vite.cli.config.ts'])) stop('The command line could not be built. The reason stands above.');
  chmodSync(COMMAND, 0o755);
  // The print reads its typefaces from beside itself.
  cpSync(join(ROOT, 'src/paper/fonts'), join(ROOT, 'dist/cli'), { recursive: true, filter: (path) => !path.endsWith('.ts') });
  linkCommand();
}

/** Builds when a source is newer than what was built last. */
export function buildWhenNeeded() {
  if (builtAt() >= Math.max(...SOURCES.map((name) => newest(join(ROOT, name))))) return linkCommand();
  console.log('Building ...');
  build();
}

/** So that `npx needlefall` finds the command of this folder. */
function linkCommand() {
  if (process.platform === 'win32') return;
  const link = join(ROOT, 'node_modules/.bin/needlefall');
  mkdirSync(join(ROOT, 'node_modules/.bin'), { recursive: true });
  rmSync(link, { force: true });
  symlinkSync('../../dist/cli/needlefall.js', link);
}

function builtAt() {
  return timeOf(STAMP);
}

/**
 * When the newest file in a folder was changed.
 * @param {string} path
 * @returns {number}
 */
function newest(path) {
  const entry = statSync(path, { throwIfNoEntry: false });
  if (!entry?.isDirectory()) return entry?.mtimeMs ?? 0;
  return Math.max(entry.mtimeMs, ...readdirSync(path).filter((name) => !/\.test\.tsx?$/.test(name)).map((name) => newest(join(path, name))));
}

/** @param {string} path */
function timeOf(path) {
  return statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  installPackages();
  build();
}
