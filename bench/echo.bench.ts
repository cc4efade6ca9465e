// Echoes of lines by every template of the built-in kit, and by a kit of forty made of it in two sizes of foot; then a line matched by the kit. Milliseconds of
// processor time.

import { readPathData } from '../src/geometry/svg/read.ts';
import { BUILT_IN_KIT } from '../src/model/kit/built-in.ts';
import { shapeOf } from '../src/model/kit/shape-of.ts';
import { needleLines } from '../src/needle/needle-lines.ts';
import { type Candidate, echo } from '../src/place/echo/echo.ts';
import { echoKit } from '../src/place/echo/echo-kit.ts';
import { match } from '../src/place/match/match.ts';

const LINES = {
  'arc of 4 in': 'M -2 0 A 4.25 4.25 0 0 1 2 0',
  'straight 6 in': 'M 0 0 H 6',
  'S of 9 in': 'M 0 0 C 3 -3 6 3 9 0',
  'circle of 6 in': 'M 3 0 A 3 3 0 0 1 -3 0 A 3 3 0 0 1 3 0 Z',
  'a corner': 'M 0 0 L 4 4 L 8 0',
};

const kitFor = (foot: number): [string, Candidate][] =>
  Object.entries(BUILT_IN_KIT.templates).flatMap(([id, template]) => {
    const shape = shapeOf(template);
    return shape.ok ? [[`${id}/${foot}`, { needle: needleLines(shape.value, foot) }] satisfies [string, Candidate]] : [];
  });

const kit = kitFor(1 / 2);
const forty = Object.fromEntries([...kit, ...kitFor(9 / 16), ...kitFor(5 / 8)].slice(0, 40));

function timed(run: () => unknown): number {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

for (const [name, data] of Object.entries(LINES)) {
  const read = readPathData<'quilt'>(data);
  const line = read.ok ? read.value[0] : undefined;
  if (!line) continue;
  const each = kit.map(([, candidate]) => timed(() => echo(line, candidate))).sort((a, b) => a - b);
  const all = timed(() => echoKit(line, forty));
  const matched = timed(() => match(line, Object.fromEntries(kit)));
  console.log(
    `${name.padEnd(16)} one template: median ${each[each.length >> 1]!.toFixed(0)}, most ${each[each.length - 1]!.toFixed(0)}; kit of ${Object.keys(forty).length}: ${all.toFixed(0)}; matched by ${kit.length}: ${matched.toFixed(0)}`,
  );
}
