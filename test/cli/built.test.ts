import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildCommand } from '../../scripts/build.mjs';
import { needleContract } from './contracts.ts';
import { example, newFolder } from './run.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
let folder: string;

beforeAll(() => {
  buildCommand();
  folder = newFolder();
}, 300_000);

afterAll(() => rmSync(folder, { recursive: true }));

function run(program: string, args: readonly string[], options: { readonly cwd?: string; readonly input?: string } = {}) {
  const { status, stdout, stderr } = spawnSync(program, args, { cwd: root, encoding: 'utf8', maxBuffer: 1e8, ...options });
  return { status, stdout, stderr };
}

describe('the built command', () => {
  it('runs as npx needlefall in the project folder', () => {
    const { status, stdout, stderr } = run('npx', ['--no', 'needlefall', 'needle', '--outline', 'M 0 0 H 4 V 4 H 0 Z', '--foot', '1/2', '--json']);
    expect([status, stderr]).toEqual([0, '']);
    expect(needleContract.parse(JSON.parse(stdout)).needleLines).toHaveLength(1);
  });

  it('reads a plan from standard input, and prints with its own typefaces from any folder', () => {
    const command = join(root, 'dist/cli/needlefall.js');
    const input = readFileSync(example('practice-block'), 'utf8');
    expect(run(command, ['check', '-'], { input })).toEqual({ status: 0, stdout: 'Practice block: nothing to mend.\n', stderr: '' });
    expect(run(command, ['print', '-', '--out', 'block.pdf', '--area', 'block:r1c1'], { cwd: folder, input })).toMatchObject({ status: 0, stderr: '' });
    const fonts = run('pdffonts', [join(folder, 'block.pdf')]).stdout;
    expect(fonts).toMatch(/SourceSans3/);
  });

  it.each([
    [['needle', '--template', 'leaf'], "Required option '--foot <length>' not specified.\n"],
    [['check', 'missing.json'], 'missing.json could not be read: there is no such file or folder.\n'],
  ])('%j: one sentence, exit 2, no stack trace', (args, stderr) => {
    expect(run(process.execPath, [join(root, 'dist/cli/needlefall.js'), ...args], { cwd: folder })).toEqual({ status: 2, stdout: '', stderr });
  });

  it('does not mind when its reader has had enough', () => {
    const command = `${process.execPath} ${join(root, 'dist/cli/needlefall.js')} areas ${example('king-size')} --json | head -c 10; exit \${PIPESTATUS[0]}`;
    const { status, stdout, stderr } = run('bash', ['-c', command]);
    expect([status, stdout, stderr]).toEqual([0, '{\n  "areas', '']);
  });

  it('takes its packages from where it lies, not from where it is called', () => {
    // A copy elsewhere with a link to the packages, as another checkout would have.
    mkdirSync(join(folder, 'other/dist/cli'), { recursive: true });
    symlinkSync(join(root, 'node_modules'), join(folder, 'other/node_modules'));
    copyFileSync(join(root, 'dist/cli/needlefall.js'), join(folder, 'other/dist/cli/needlefall.mjs'));
    const { status, stdout } = run(process.execPath, [join(folder, 'other/dist/cli/needlefall.mjs'), '--version'], { cwd: dirname(folder) });
    expect([status, stdout]).toEqual([0, `${(JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }).version}\n`]);
  });
});
