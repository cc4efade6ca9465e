// Needle lines of real outlines: the closed shapes of a general icon set, one unit of the icon taken for half an inch or so. The set is a
// development package; without it the test fails.

import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { offsetClosed } from '../../src/geometry/offset/offset-closed.ts';
import type { Path } from '../../src/geometry/path.ts';
import { checkSimple } from '../../src/geometry/simple.ts';
import { readPathData } from '../../src/geometry/svg/read.ts';
import { judge } from './needle-judge.ts';

const folder = iconFolder();
const EVERY = Number(process.env['NEEDLE_ICONS_EVERY'] ?? 6);

describe('needle lines of an icon set (package lucide-static)', () => {
  const outlines = folder === undefined ? [] : outlinesIn(folder).filter((_, i) => i % EVERY === 0);

  it('are nowhere nearer than the foot, touch where the contact map says, and leave nothing out', () => {
    const wrong: string[] = [];
    for (const { name, path } of outlines) {
      for (const where of ['outside', 'inside'] as const) {
        for (const radius of [0.25, 1]) {
          const { faults } = judge(path, radius, where, offsetClosed(path, radius, where), { samplesAPiece: 4, samplesOfEdge: 80 });
          if (faults.length > 0) wrong.push(`${name} ${where} ${radius}: ${faults[0]}`);
        }
      }
    }
    expect(wrong).toEqual([]);
  });

  it('were many', () => {
    expect(outlines.length).toBeGreaterThan(400 / EVERY);
  });
});

function iconFolder(): string | undefined {
  try {
    const icons = join(dirname(createRequire(import.meta.url).resolve('lucide-static/package.json')), 'icons');
    return existsSync(icons) ? icons : undefined;
  } catch {
    return undefined;
  }
}

function outlinesIn(icons: string): readonly { readonly name: string; readonly path: Path<'template'> }[] {
  return readdirSync(icons)
    .filter((name) => name.endsWith('.svg'))
    .flatMap((name) => {
      const data = [...readFileSync(join(icons, name), 'utf8').matchAll(/ d="([^"]+)"/g)].map((match) => match[1]!);
      return data.flatMap((d) => {
        const read = readPathData<'template'>(d);
        if (!read.ok) return [];
        return read.value.flatMap((path) => {
          const simple = path.closed ? checkSimple(path) : undefined;
          return simple?.ok ? [{ name, path: simple.value }] : [];
        });
      });
    });
}
