import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readPlan } from './codec.ts';
import { MIGRATIONS, type Migration, migrate, migrationGaps } from './migrate.ts';
import { PLAN_VERSION } from './plan.ts';

const folder = new URL('../../test/corpus/plans/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.needlefall.json'));
const texts = files.map((name) => readFileSync(new URL(name, folder), 'utf8'));
const versions = texts.map((text) => (JSON.parse(text) as { version: number }).version);

const rename: Migration = {
  from: 1,
  about: 'title became name',
  change: ({ title, ...rest }) => ({ ...rest, name: title }),
};
const drop: Migration = { from: 2, about: 'colour went', change: ({ colour: _colour, ...rest }) => rest };

describe('plan files of older versions', () => {
  it('every version has a migration from the one before and a file to try it on', () => {
    expect(files.length).toBeGreaterThan(0);
    expect(migrationGaps(PLAN_VERSION, MIGRATIONS, versions)).toEqual([]);
  });

  it('the gate closes when the version grows and nothing else does', () => {
    expect(migrationGaps(PLAN_VERSION + 1, MIGRATIONS, versions)).toEqual([`exactly one migration from version ${PLAN_VERSION}`, `a plan file of version ${PLAN_VERSION + 1}`]);
    expect(migrationGaps(2, [rename, rename], [1, 2])).toEqual(['exactly one migration from version 1']);
    expect(migrationGaps(3, [rename, drop], [1, 2, 3])).toEqual([]);
  });

  it.each(files)('%s can still be read', (name) => {
    const plan = readPlan(readFileSync(new URL(name, folder), 'utf8'));
    expect(plan.ok ? [] : plan.problem).toEqual([]);
  });

  it('runs the steps in order and keeps what it does not know', () => {
    expect(migrate({ version: 1, title: 'Tidewater', colour: 'grey', mine: [1] }, 1, 3, [drop, rename])).toEqual({ version: 3, name: 'Tidewater', mine: [1] });
    expect(migrate({ version: 2, title: 'Tidewater', colour: 'grey' }, 2, 3, [drop, rename])).toEqual({ version: 3, title: 'Tidewater' });
  });
});
