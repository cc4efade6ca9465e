// What every script needs before it starts: the packages the lock file names, and, for the tests, a browser and the
// tools that look at PDF files. Plain Node, since nothing else is there yet.

import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The folder of the project. */
export const ROOT = fileURLToPath(new URL('../', import.meta.url));

/** Where the browser for the tests is looked for. */
export const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';

/** Installs the packages when they are missing or not the ones in the lock file. Ends the process when that fails. */
export function installPackages() {
  if (Number(process.versions.node.split('.')[0]) < 20) stop(`Needlefall needs Node 20 or later; this is ${process.version}.`);
  if (packagesAreThere()) return;
  console.log('Installing the packages in package-lock.json ...');
  if (run('npm', ['ci', '--no-audit', '--no-fund'])) return;
  console.log('npm ci would not install from package-lock.json, so npm install is tried. It may choose newer packages than the tested ones.');
  if (!run('npm', ['install', '--no-audit', '--no-fund'])) stop('The packages could not be installed. The reason stands above; often it is the network.');
}

/** Installs the browser and the PDF tools the tests need. Ends the process, saying what is missing, when that cannot be done. */
export function installTestTools() {
  const missing = [
    ...(existsSync(CHROMIUM) ? [] : ['chromium']),
    ...(onPath('pdftoppm') && onPath('pdftotext') ? [] : ['poppler-utils']),
  ];
  if (missing.length === 0) return;
  const isRoot = process.getuid?.() === 0;
  if (!isRoot || !onPath('apt-get')) {
    stop(`The tests need ${missing.join(' and ')}. Please install: ${missing.join(' ')}. (A browser elsewhere can be named in the environment variable CHROMIUM.)`);
  }
  console.log(`Installing ${missing.join(' and ')} for the tests ...`);
  run('apt-get', ['update', '-qq']);
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  if (!run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...missing], environment)) stop(`apt-get could not install ${missing.join(' and ')}. The reason stands above.`);
}

/** Every package of the lock file is installed in the version it names; those for other machines may be missing. */
function packagesAreThere() {
  try {
    const wanted = packagesIn('package-lock.json');
    const installed = packagesIn('node_modules/.package-lock.json');
    return Object.entries(wanted).every(([path, { version, optional, peer }]) => path === '' || installed[path]?.version === version || optional || peer);
  } catch {
    return false;
  }
}

/**
 * @param {string} file
 * @returns {Record<string, { version?: string, optional?: boolean, peer?: boolean }>}
 */
function packagesIn(file) {
  return JSON.parse(readFileSync(`${ROOT}${file}`, 'utf8')).packages;
}

/** @param {string} program */
function onPath(program) {
  return (process.env.PATH ?? '').split(':').some((folder) => existsSync(`${folder}/${program}`));
}

/**
 * Runs a program in the project's folder, its output shown; true when it succeeds.
 * @param {string} program
 * @param {string[]} args
 * @param {NodeJS.ProcessEnv} [environment]
 */
export function run(program, args, environment = process.env) {
  const { status, error } = spawnSync(program, args, { cwd: ROOT, stdio: 'inherit', env: environment, shell: process.platform === 'win32' });
  if (error) console.error(`${program} could not be started: ${error.message}`);
  return status === 0;
}

/**
 * Like `run`, without waiting for it before going on; what it says comes in one piece when it has ended.
 * @param {string} program @param {string[]} args
 * @returns {Promise<boolean>}
 */
export function runBeside(program, args) {
  return new Promise((done) => {
    const child = spawn(program, args, { cwd: ROOT, stdio: ['ignore', 'pipe', 'pipe'], shell: process.platform === 'win32' });
    let said = '';
    for (const voice of [child.stdout, child.stderr]) voice.setEncoding('utf8').on('data', (piece) => void (said += piece));
    child.on('error', (error) => (console.error(`${program} could not be started: ${error.message}`), done(false)));
    child.on('close', (status) => (process.stdout.write(said), done(status === 0)));
  });
}

/**
 * Says why and ends the process.
 * @param {string} reason
 * @returns {never}
 */
export function stop(reason) {
  console.error(reason);
  process.exit(1);
}
