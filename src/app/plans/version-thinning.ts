// Which automatic versions stay as they grow old, and when a new one is due. Pure: times come in, decisions go out.
// Of the last hour every one stays, of the last day the newest of each hour, of all time the newest of each day.

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** A pause this long ends a burst of changes. */
export const PAUSE = MINUTE;
/** A burst that goes on gets a version this often. */
export const LONGEST_BURST = 10 * MINUTE;

export interface DatedVersion {
  readonly id: string;
  /** Milliseconds since 1970. */
  readonly at: number;
  /** Only automatic versions are ever thinned. */
  readonly automatic: boolean;
}

/**
 * The versions to let go, now. `zone` is what must be added to universal time to get the quilter's (milliseconds): her days
 * end at her midnight. Times that lie ahead (a clock was set back) count as now.
 */
export function versionsToThin(versions: readonly DatedVersion[], now: number, zone: number): readonly string[] {
  const newest = new Map<string, DatedVersion>();
  const aged = versions.filter((version) => version.automatic && now - version.at > HOUR);
  for (const version of versions) {
    if (!version.automatic) continue;
    for (const bucket of bucketsOf(version, zone)) {
      const best = newest.get(bucket);
      if (!best || version.at > best.at) newest.set(bucket, version);
    }
  }
  return aged.filter((version) => !staysFor(version, now, zone, newest)).map(({ id }) => id);
}

export interface BurstTimes {
  /** When the plan was made, last changed, and last kept as a version (milliseconds since 1970). */
  readonly made: number;
  readonly changed: number;
  readonly lastVersion: number | undefined;
}

/** Whether the state before a change should be kept as a version: the change begins a burst, or the burst has lasted long. */
export function isVersionDue({ made, changed, lastVersion }: BurstTimes, now: number): boolean {
  if (lastVersion !== undefined && lastVersion >= changed) return false;
  return now - changed > PAUSE || now - (lastVersion ?? made) > LONGEST_BURST;
}

function staysFor(version: DatedVersion, now: number, zone: number, newest: ReadonlyMap<string, DatedVersion>): boolean {
  const [hour, day] = bucketsOf(version, zone);
  if (newest.get(day) === version) return true;
  return now - version.at <= DAY && newest.get(hour) === version;
}

function bucketsOf({ at }: DatedVersion, zone: number): readonly [hour: string, day: string] {
  return [`hour ${Math.floor((at + zone) / HOUR)}`, `day ${Math.floor((at + zone) / DAY)}`];
}
