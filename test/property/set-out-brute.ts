// Set-outs by trying everything: a needle line as thousands of points, every pair of them a division apart, and the pairs among which the
// line's angles at both ends pass through being mirror images (or its height through the wished one). Shares no code with the solver: points
// come straight from vertices and bulges (tan of a quarter of the sweep, DXF reference), directions from neighbouring points.

export interface Vertex {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}

/** What a pose sews: how high it stands over its ends, and how long it is. */
export interface Sewn {
  readonly height: number;
  readonly length: number;
}

interface Sampled {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Direction of the line, and inches along it. */
  readonly way: Float64Array;
  readonly along: Float64Array;
  readonly total: number;
}

/** So many points, evenly by length, of a closed chain of lines and arcs. */
export function sampled(vertices: readonly Vertex[], count: number): Sampled {
  const pieces = vertices.map((a, i) => {
    const b = vertices[(i + 1) % vertices.length]!;
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    const sweep = 4 * Math.atan(a.bulge);
    const length = sweep === 0 ? chord : (chord * Math.abs(sweep)) / (2 * Math.sin(Math.abs(sweep) / 2));
    return { a, b, sweep, length };
  });
  const total = pieces.reduce((sum, { length }) => sum + length, 0);
  const x = new Float64Array(count);
  const y = new Float64Array(count);
  const way = new Float64Array(count);
  const along = new Float64Array(count);
  let piece = 0;
  let before = 0;
  for (let i = 0; i < count; i++) {
    const at = (i / count) * total;
    while (piece < pieces.length - 1 && before + pieces[piece]!.length <= at) before += pieces[piece++]!.length;
    const { a, b, sweep, length } = pieces[piece]!;
    const part = (at - before) / length;
    const heading = Math.atan2(b.y - a.y, b.x - a.x);
    // The chord from the start of an arc to a part of it leaves at half the sweep still to come before the whole chord.
    const reach = sweep === 0 ? length * part : (2 * (length / Math.abs(sweep)) * Math.sin((Math.abs(sweep) * part) / 2));
    const out = heading - sweep / 2 + (sweep * part) / 2;
    x[i] = a.x + reach * Math.cos(out);
    y[i] = a.y + reach * Math.sin(out);
    way[i] = heading - sweep / 2 + sweep * part;
    along[i] = at;
  }
  return { x, y, way, along, total };
}

const turn = (angle: number) => Math.atan2(Math.sin(angle), Math.cos(angle));

/** From division to division: all that is sewn by symmetric poses that stay within their division. */
export function symmetricByTrying(line: Sampled, width: number): readonly Sewn[] {
  const n = line.x.length;
  const found: Sewn[] = [];
  let before: readonly (readonly [b: number, off: number])[] = [];
  for (let i = 0; i <= n; i++) {
    const a = i % n;
    const here: [number, number][] = [];
    let last = Math.hypot(line.x[(a + 1) % n]! - line.x[a]!, line.y[(a + 1) % n]! - line.y[a]!) - width;
    for (let k = 2; k < n; k++) {
      const b = (a + k) % n;
      const off = Math.hypot(line.x[b]! - line.x[a]!, line.y[b]! - line.y[a]!) - width;
      if (last < 0 !== off < 0) here.push([k - off / (off - last), angleSum(line, a, k - off / (off - last))]);
      last = off;
    }
    for (const [k, sum] of here) {
      const same = before.find(([other]) => Math.abs(other - k) < 6);
      if (same && same[1] < 0 !== sum < 0 && Math.abs(sum - same[1]) < 0.2) add(found, sewn(line, a, Math.round(k), width));
      else if (Math.abs(sum) < 2e-5) add(found, sewn(line, a, Math.round(k), width));
    }
    before = here;
  }
  return found;
}

/** The sum of the angles at which the line leaves the chord and arrives at its end; at a place between two points, by their mean. */
function angleSum(line: Sampled, a: number, k: number): number {
  const n = line.x.length;
  const low = (a + Math.floor(k)) % n;
  const high = (low + 1) % n;
  const part = k - Math.floor(k);
  const x = line.x[low]! + part * (line.x[high]! - line.x[low]!);
  const y = line.y[low]! + part * (line.y[high]! - line.y[low]!);
  const way = line.way[low]! + part * turn(line.way[high]! - line.way[low]!);
  const chord = Math.atan2(y - line.y[a]!, x - line.x[a]!);
  return turn(turn(line.way[a]! - chord) + turn(way - chord));
}

/** The height and length from one point through the next `k`, or undefined where it leaves its division. */
function sewn(line: Sampled, a: number, k: number, width: number): Sewn | undefined {
  const n = line.x.length;
  const b = (a + k) % n;
  const chord = Math.atan2(line.y[b]! - line.y[a]!, line.x[b]! - line.x[a]!);
  let height = 0;
  const slack = (3 * line.total) / n;
  for (let i = 0; i <= k; i++) {
    const dx = line.x[(a + i) % n]! - line.x[a]!;
    const dy = line.y[(a + i) % n]! - line.y[a]!;
    const u = dx * Math.cos(chord) + dy * Math.sin(chord);
    if (u < -slack || u > width + slack) return undefined;
    height = Math.max(height, Math.abs(dy * Math.cos(chord) - dx * Math.sin(chord)));
  }
  return { height, length: (k / n) * line.total };
}

function add(found: Sewn[], one: Sewn | undefined): void {
  if (one && !found.some((other) => Math.abs(other.height - one.height) < 0.02 && Math.abs(other.length - one.length) < 0.04)) found.push(one);
}

/** From a division to a crest of one height, half a division on: all that is sewn without leaving the half division or crossing the line it starts on. */
export function crestsByTrying(line: Sampled, half: number, height: number): readonly Sewn[] {
  const n = line.x.length;
  const found: Sewn[] = [];
  const slack = (3 * line.total) / n;
  for (const sense of [1, -1]) {
    let before: readonly (readonly [k: number, off: number])[] = [];
    for (let i = 0; i <= n; i++) {
      const b = i % n;
      const cos = Math.cos(line.way[b]!);
      const sin = Math.sin(line.way[b]!);
      const back = (k: number) => {
        const p = (b - sense * k + 2 * n) % n;
        const dx = line.x[b]! - line.x[p]!;
        const dy = line.y[b]! - line.y[p]!;
        return [sense * (dx * cos + dy * sin), Math.abs(dx * sin - dy * cos)] as const;
      };
      const here: [number, number][] = [];
      let [last, lastHigh] = back(0);
      for (let k = 1; k < n; k++) {
        const [reach, high] = back(k);
        if (last < half !== reach < half) {
          const part = (half - last) / (reach - last);
          here.push([k - 1 + part, lastHigh + part * (high - lastHigh) - height]);
        }
        last = reach;
        lastHigh = high;
      }
      for (const [k, off] of here) {
        const same = before.find(([other]) => Math.abs(other - k) < 8);
        if (!same || same[1] < 0 === off < 0 || Math.abs(off - same[1]) > 0.2) continue;
        const all = Array.from({ length: Math.ceil(k) + 1 }, (_, j) => back(j));
        const stays = all.every(([reach, high]) => reach > -slack && reach < half + slack && high < height + slack);
        const signed = Array.from({ length: Math.ceil(k) }, (_, j) => {
          const p = (b - sense * j + 2 * n) % n;
          return (line.x[b]! - line.x[p]!) * sin - (line.y[b]! - line.y[p]!) * cos;
        });
        const oneSided = signed.every((h) => h > -slack) || signed.every((h) => h < slack);
        if (stays && oneSided) add(found, { height, length: (k / n) * line.total });
      }
      before = here;
    }
  }
  return found;
}
