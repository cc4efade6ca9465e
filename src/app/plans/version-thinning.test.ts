import { describe, expect, it } from 'vitest';
import { random } from '../../num/random.ts';
import { type DatedVersion, LONGEST_BURST, PAUSE, isVersionDue, versionsToThin } from './version-thinning.ts';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
// Noon of a day, universal time.
const NOON = 20_000 * DAY + 12 * HOUR;

const automatic = (at: number): DatedVersion => ({ id: `v${at}`, at, automatic: true });
const staying = (versions: readonly DatedVersion[], now: number, zone = 0) => {
  const gone = new Set(versionsToThin(versions, now, zone));
  return versions.filter(({ id }) => !gone.has(id));
};

describe('thinning versions', () => {
  it('keeps every one of the last hour', () => {
    const versions = Array.from({ length: 60 }, (_, minute) => automatic(NOON - minute * 60_000));
    expect(staying(versions, NOON)).toHaveLength(60);
  });

  it('keeps the newest of each hour of the last day, and of each day before', () => {
    const versions = [NOON - 2 * HOUR + 1, NOON - 2 * HOUR + 2, NOON - 2 * HOUR + 3, NOON - 3 * DAY, NOON - 3 * DAY - HOUR, NOON - 40 * DAY].map(automatic);
    expect(staying(versions, NOON).map(({ at }) => at)).toEqual([NOON - 2 * HOUR + 3, NOON - 3 * DAY, NOON - 40 * DAY]);
  });

  it('never lets a named one go', () => {
    const versions = Array.from({ length: 20 }, (_, i) => ({ ...automatic(NOON - 5 * DAY + i), automatic: false }));
    expect(staying(versions, NOON)).toHaveLength(20);
  });

  it('ends a day at her own midnight', () => {
    const late = automatic(NOON - 5 * DAY + 11 * HOUR);
    const early = automatic(NOON - 5 * DAY + 13 * HOUR);
    expect(staying([late, early], NOON)).toHaveLength(2);
    expect(staying([late, early], NOON, 2 * HOUR)).toEqual([early]);
  });

  it('leaves versions from a clock that ran ahead alone', () => {
    expect(staying([automatic(NOON + DAY), automatic(NOON + DAY + 1)], NOON)).toHaveLength(2);
  });

  it('over weeks of work leaves no day and no recent hour empty that had one, seed 11', () => {
    const { next } = random(11);
    let kept: readonly DatedVersion[] = [];
    const all: DatedVersion[] = [];
    let now = NOON;
    for (let i = 0; i < 1500; i++) {
      now += next() < 0.1 ? next() * 9 * HOUR : next() * HOUR * 0.3;
      const version = automatic(Math.round(now));
      all.push(version);
      kept = staying([...kept, version], Math.round(now));
    }
    now = Math.round(now);
    const days = (versions: readonly DatedVersion[]) => new Set(versions.map(({ at }) => Math.floor(at / DAY)));
    const hours = (versions: readonly DatedVersion[]) => new Set(versions.filter(({ at }) => now - at <= DAY).map(({ at }) => Math.floor(at / HOUR)));
    expect(days(kept)).toEqual(days(all));
    expect(hours(kept)).toEqual(hours(all));
    expect(all.filter(({ at }) => now - at <= HOUR).every((version) => kept.includes(version))).toBe(true);
    // Hourly at most for a day, daily before that, and what one hour can hold.
    const lastHour = all.filter(({ at }) => now - at <= HOUR).length;
    expect(kept.length).toBeLessThanOrEqual(days(all).size + 25 + lastHour);
  });
});

describe('when a version is due', () => {
  const times = { made: NOON, changed: NOON, lastVersion: undefined };
  it('when a pause has gone by since the last change', () => {
    expect(isVersionDue(times, NOON + PAUSE)).toBe(false);
    expect(isVersionDue(times, NOON + PAUSE + 1)).toBe(true);
  });
  it('when a burst goes on for long, with or without a version before', () => {
    const later = NOON + LONGEST_BURST + 1;
    expect(isVersionDue({ ...times, changed: later - 500 }, later)).toBe(true);
    expect(isVersionDue({ ...times, changed: later - 500, lastVersion: NOON + 60_000 }, later)).toBe(false);
  });
  it('never twice for the same state', () => {
    expect(isVersionDue({ ...times, lastVersion: NOON }, NOON + DAY)).toBe(false);
  });
});
