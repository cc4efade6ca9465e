import { describe, expect, it } from 'vitest';
import type { PlanHead } from './records.ts';
import { writeKept, writeSize, writeWhen } from './said.ts';

const now = new Date(2026, 4, 12, 14, 5, 30).getTime();
const ago = (seconds: number) => now - seconds * 1000;

describe('when', () => {
  it('is said as one would say it', () => {
    expect(writeWhen(now, now)).toBe('a moment ago');
    expect(writeWhen(ago(59), now)).toBe('a moment ago');
    expect(writeWhen(ago(60), now)).toBe('1 minute ago');
    expect(writeWhen(ago(59 * 60 + 59), now)).toBe('59 minutes ago');
    expect(writeWhen(ago(3600), now)).toBe('at 13:05');
    expect(writeWhen(new Date(2026, 4, 11, 23, 59).getTime(), now)).toBe('yesterday at 23:59');
    expect(writeWhen(new Date(2026, 0, 3).getTime(), now)).toBe('on 3 January');
    expect(writeWhen(new Date(2025, 11, 31).getTime(), now)).toBe('on 31 December 2025');
  });
  it('knows yesterday at the turn of the year, and a clock that was set back', () => {
    const newYear = new Date(2026, 0, 1, 9, 0).getTime();
    expect(writeWhen(new Date(2025, 11, 31, 8, 7).getTime(), newYear)).toBe('yesterday at 08:07');
    expect(writeWhen(now + 5000, now)).toBe('a moment ago');
  });
});

describe('how it is kept', () => {
  const head: PlanHead = { id: 'a', name: 'A', made: ago(500), changed: ago(5), revision: 4, size: 10, steps: { kept: 0, done: 0 } };
  const own = { lying: { kind: 'own', id: 'a', head }, settled: true, problem: undefined, otherWindows: 0 } as const;
  it('is the truth: saved only when all of it is', () => {
    expect(writeKept(own, now)).toBe('Saved a moment ago');
    expect(writeKept({ ...own, settled: false }, now)).toBe('Saving');
    expect(writeKept({ ...own, lying: { kind: 'own', id: 'a', head: undefined } }, now)).toBe('Saving');
    expect(writeKept({ ...own, lying: { ...own.lying, head: { ...head, deleted: now } } }, now)).toBe('Deleted; a change brings it back');
    expect(writeKept({ ...own, problem: 'full' }, now)).toBe('Not saved');
    expect(writeKept({ ...own, lying: { kind: 'example', name: 'Tide' } }, now)).toBe('An example');
  });
  it('says when its file is behind it, and that other windows show it', () => {
    const file = { name: 'a.json', revision: 4 };
    expect(writeKept({ ...own, lying: { ...own.lying, head: { ...head, file } } }, now)).toBe('Saved a moment ago');
    expect(writeKept({ ...own, lying: { ...own.lying, head: { ...head, file: { ...file, revision: 3 } } }, otherWindows: 1 }, now)).toBe('Saved a moment ago, not yet in its file, open in 2 windows');
  });
});

describe('sizes', () => {
  it('are whole kilobytes, at least one, and megabytes to a tenth', () => {
    expect([1, 999, 1500, 24_400, 1_240_000].map(writeSize)).toEqual(['1 kB', '1 kB', '2 kB', '24 kB', '1.2 MB']);
  });
});
