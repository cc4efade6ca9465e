import { copyFileSync, existsSync, readFileSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { findingKey } from '../../src/check/finding-key.ts';
import type { Finding } from '../../src/check/finding.ts';
import { areasContract, checkContract, exportContract, linesContract } from './contracts.ts';
import { example, json, newFolder, say } from './run.ts';

let folder: string;
beforeAll(() => {
  folder = newFolder();
});

/** A copy of an example with one piece of its text changed. */
function changed(name: string, from: string | RegExp, to: string): string {
  const text = readFileSync(example(name), 'utf8');
  const after = text.replace(from, to);
  expect(after).not.toBe(text);
  const file = join(folder, `${name}-${Math.random().toString(36).slice(2)}.needlefall.json`);
  writeFileSync(file, after);
  return file;
}

describe('needlefall areas', () => {
  it('gives every area, in quilt coordinates', async () => {
    const { exit, value } = await json(areasContract, 'areas', example('practice-block'));
    expect(exit).toBe(0);
    const block = value.areas.find(({ id }) => id === 'block:r1c1')!;
    expect([block.kind, block.width, block.height]).toEqual(['block', 12, 12]);
    // The block lies within a 2-inch border, so its upper left corner is at 2, 2.
    expect(block.boundary).toBe('M 2 2 L 14 2 L 14 14 L 2 14 Z');
    expect(block.referenceLines).toContainEqual({ id: 'diagonal-down', d: 'M 2 2 L 14 14' });
  });

  it('counts setting triangles as the trade does: 2 (r + c - 2)', async () => {
    // Source: trade charts for blocks on point; side triangles needed round r rows by c columns.
    const { value } = await json(areasContract, 'areas', example('tidewater'));
    const { blocks } = (JSON.parse(readFileSync(example('tidewater'), 'utf8')) as { top: { blocks: { rows: number; columns: number } } }).top;
    const count = (kind: string) => value.areas.filter((area) => area.kind === kind).length;
    expect(count('setting-triangle')).toBe(2 * (blocks.rows + blocks.columns - 2));
    expect(count('corner-triangle')).toBe(4);
  });
});

describe('needlefall lines', () => {
  it('gives every stitched line, and their length together', async () => {
    const { exit, value } = await json(linesContract, 'lines', example('practice-block'));
    expect(exit).toBe(0);
    expect(value.lines.length).toBeGreaterThan(0);
    expect(new Set(value.lines.map(({ id }) => id)).size).toBe(value.lines.length);
    expect(value.totalLength).toBeCloseTo(value.lines.reduce((sum, line) => sum + line.length, 0), 9);
    for (const { id, area, sheet, placement, pass } of value.lines) expect(id.startsWith(`${area}/${sheet}/${placement}/${pass}/`)).toBe(true);
  });
});

describe('needlefall check', () => {
  it.each(['practice-block', 'tidewater', 'medallion', 'king-size'])('%s has nothing to mend', async (name) => {
    const { exit, value } = await json(checkContract, 'check', example(name));
    expect(value.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(exit).toBe(0);
  });

  it('ends with 1 when something is to be mended', async () => {
    const file = changed('practice-block', /"foot": "[^"]+"/, '"foot": "lost"');
    const { exit, value } = await json(checkContract, 'check', file);
    expect(exit).toBe(1);
    expect(value.findings.some(({ severity, message }) => severity === 'error' && message.includes('lost'))).toBe(true);
    const said = await say('check', file);
    expect(said.exit).toBe(1);
    expect(said.text).toContain('Mend before sewing');
  });

  it('does not count what the quilter leaves so', async () => {
    const file = changed('practice-block', /"foot": "[^"]+"/g, '"foot": "lost"');
    const plan = JSON.parse(readFileSync(file, 'utf8')) as object;
    const { value } = await json(checkContract, 'check', file);
    const accepted = Object.fromEntries(value.findings.map((finding) => [findingKey(finding as unknown as Finding), { reason: 'I will borrow one.' }]));
    writeFileSync(file, JSON.stringify({ ...plan, accepted }));
    const after = await json(checkContract, 'check', file);
    expect(after.exit).toBe(0);
    expect(after.value.findings).toEqual(value.findings.map((finding) => ({ ...finding, accepted: 'I will borrow one.' })));
    expect((await say('check', file)).text).toContain('Left so: I will borrow one.');
  });
});

describe('needlefall print and export', () => {
  it('prints a PDF', async () => {
    const out = join(folder, 'block.pdf');
    const { exit, text } = await say('print', example('practice-block'), '--out', out, '--paper', 'roll:60cm', '--area', 'block:r1c1', '--no-cover');
    expect(exit).toBe(0);
    expect(text).toContain('1 page.');
    expect(readFileSync(out).subarray(0, 8).toString('latin1')).toBe('%PDF-1.7');
  });

  it('writes SVG, DXF and JSON', async () => {
    for (const to of ['svg', 'dxf', 'json']) {
      expect(await say('export', example('practice-block'), '--to', to, '--out', join(folder, `block.${to}`))).toMatchObject({ exit: 0, complaint: '' });
    }
    expect(readFileSync(join(folder, 'block.svg'), 'utf8')).toMatch(/<svg [^>]*width="16[.\d]*in"/);
    expect(readFileSync(join(folder, 'block.dxf'), 'utf8')).toContain('$INSUNITS');
    const everything = exportContract.parse(JSON.parse(readFileSync(join(folder, 'block.json'), 'utf8')));
    const { value } = await json(linesContract, 'lines', example('practice-block'));
    expect([everything.name, everything.width, everything.totalLength]).toEqual(['Practice block', 16, value.totalLength]);
  });

  it('never writes over the plan, by whatever name', async () => {
    const plan = join(folder, 'mine.needlefall.json');
    copyFileSync(example('practice-block'), plan);
    symlinkSync(plan, join(folder, 'other-name'));
    const before = readFileSync(plan, 'utf8');
    for (const out of [plan, join(folder, '.', 'mine.needlefall.json'), join(folder, 'other-name')]) {
      const { exit, complaint } = await say('export', plan, '--to', 'json', '--out', out);
      expect(exit).toBe(2);
      expect(complaint).toContain('is not written over');
      expect((await say('print', plan, '--out', out)).exit).toBe(2);
    }
    expect(readFileSync(plan, 'utf8')).toBe(before);
  });

  it.each([
    [['print', '--paper', 'postcard'], 'There is no paper "postcard".'],
    [['print', '--paper', 'roll:wide'], 'The width of the roll could not be understood.'],
    [['print', '--paper', 'roll:2'], 'A roll must be'],
    [['print', '--overlap', 'much'], 'The overlap could not be understood.'],
    [['print', '--area', 'block:r9c9'], 'There is no area "block:r9c9"'],
    [['export', '--to', 'svg', '--area', 'nowhere'], 'There is no area "nowhere"'],
    [['export', '--to', 'dwg'], 'svg, dxf, json'],
  ])('%j is refused, and nothing is written', async ([command = '', ...args], words) => {
    const out = join(newFolder(), 'out');
    const { exit, complaint } = await say(command, example('practice-block'), '--out', out, ...args);
    expect(exit).toBe(2);
    expect(complaint).toContain(words);
    expect(existsSync(out)).toBe(false);
    expect(readdirSync(join(out, '..'))).toEqual([]);
  });

  it('says why a file could not be written', async () => {
    expect((await say('export', example('practice-block'), '--to', 'svg', '--out', join(folder, 'no', 'such', 'folder.svg'))).complaint).toMatch(/could not be written: there is no such file or folder\.$/);
    expect((await say('export', example('practice-block'), '--to', 'svg', '--out', folder)).complaint).toContain('is a folder');
  });
});

describe('plans that cannot be read', () => {
  const commands = [['areas'], ['lines'], ['check'], ['print', '--out', '/nowhere/a.pdf'], ['export', '--to', 'svg', '--out', '/nowhere/a.svg']];

  it.each(commands)('%s says where and why, and ends with 2', async (command = '', ...args) => {
    const file = changed('practice-block', '"rows": 1', '"rows": "one"');
    const { exit, text, complaint } = await say(command, file, ...args);
    expect([exit, text]).toEqual([2, '']);
    expect(complaint).toMatch(/top\.blocks\.rows \(line \d+\): expected a whole number from 1 to 200; found "one"\.$/);
    expect((await say(command, join(folder, 'missing'), ...args)).complaint).toMatch(/could not be read: there is no such file or folder\.$/);
  });

  it('tells everything that is wrong, a line for each', async () => {
    const file = changed('practice-block', /"rows": 1,(\s*)"columns": 1/, '"rows": 0,$1"columns": -1');
    const { exit, complaint } = await say('check', file);
    expect(exit).toBe(2);
    expect(complaint.split('\n').map((line) => line.trim().split(' ')[0])).toEqual([file, 'top.blocks.rows', 'top.blocks.columns']);
  });
});

describe('the command line as a whole', () => {
  it('has a page of help for everything', async () => {
    for (const args of [['--help'], ['needle', '--help'], ['areas', '--help'], ['lines', '--help'], ['check', '--help'], ['print', '--help'], ['export', '--help']]) {
      const { exit, text, complaint } = await say(...args);
      expect([exit, complaint]).toEqual([0, '']);
      expect(text).toContain('Example');
    }
  });

  it.each([[[], 'Usage'], [['nedle'], 'Did you mean needle?'], [['check'], 'plan'], [['check', 'a', 'b'], 'too many']])('%j is a wrong use', async (args, words) => {
    const { exit, complaint } = await say(...args);
    expect(exit).toBe(2);
    expect(complaint.toLowerCase()).toContain(words.toLowerCase());
  });
});
