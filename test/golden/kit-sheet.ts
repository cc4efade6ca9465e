// One sheet with every family at its usual sizes, all at one scale, with the needle line of a half-inch foot.

import { boundsOf, unionBounds } from '../../src/geometry/bounds.ts';
import { carryPath } from '../../src/geometry/change.ts';
import type { Path } from '../../src/geometry/path.ts';
import { type Pose, poseOf } from '../../src/geometry/pose.ts';
import { writePathData } from '../../src/geometry/svg/write.ts';
import { FAMILIES, type Family } from '../../src/model/kit/families.ts';
import type { EtchedShape, TemplateShape } from '../../src/model/kit/shape.ts';
import { needleLines } from '../../src/needle/needle-lines.ts';

const FOOT = 1 / 2;
const SHEET_WIDTH = 62;
const GAP = 1;
const LABEL = 1;

/** The sheet as SVG, in inches at 24 pixels to the inch. */
export function kitSheet(): string {
  let [x, y, rowHeight] = [GAP, GAP, 0];
  const drawn = FAMILIES.map((family) => {
    const shape = usualShape(family);
    const lines = needleLines(shape, FOOT).lines.map((line) => line.path);
    const box = unionBounds([shape.outline, ...lines].map(boundsOf));
    const [width, height] = [box.maxX - box.minX, box.maxY - box.minY];
    if (x + width + GAP > SHEET_WIDTH) [x, y, rowHeight] = [GAP, y + rowHeight + GAP, 0];
    const pose = poseOf<'template', 'page'>(x - box.minX, y - box.minY);
    const label = `<text x="${shown(x + width / 2)}" y="${shown(y + height + 0.6)}">${family.name}</text>`;
    x += width + GAP;
    rowHeight = Math.max(rowHeight, height + LABEL);
    return [`<g id="${family.id}">`, ...marksOf(shape, lines, pose), label, '</g>'].join('\n');
  });
  const height = y + rowHeight + GAP;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${SHEET_WIDTH * 24}" height="${shown(height * 24)}" viewBox="0 0 ${SHEET_WIDTH} ${shown(height)}">`,
    '<style>path,circle{fill:none;stroke-linejoin:round}rect{fill:#faf6ec}.edge{fill:#b9d2d1;stroke:#1c7d87;stroke-width:.05;fill-rule:evenodd}.etching{stroke:#1c7d87;stroke-width:.02}.needle{stroke:#111;stroke-width:.05}text{font:.45px sans-serif;text-anchor:middle}</style>',
    '<rect width="100%" height="100%"/>',
    ...drawn,
    '</svg>\n',
  ].join('\n');
}

function usualShape(family: Family): TemplateShape {
  const shape = family.draw({});
  if (!shape.ok) throw new Error(`${family.id}: ${shape.problem.message}`);
  return shape.value;
}

function marksOf(shape: TemplateShape, lines: readonly Path<'template'>[], pose: Pose<'template', 'page'>): readonly string[] {
  const data = (path: Path<'template'>) => writePathData(carryPath(pose, path)).replace(/-?\d+(\.\d+)?(e-?\d+)?/g, (number) => shown(Number(number)));
  const edges = [shape.outline, ...shape.windows.map((window) => window.path)].map(data).join(' ');
  return [
    `<path class="edge" d="${edges}"/>`,
    ...shape.etchings.map((etching) => `<path class="etching" data-id="${etching.id}" d="${etchingData(etching, pose, data)}"/>`),
    ...lines.map((line) => `<path class="needle" d="${data(line)}"/>`),
  ];
}

function etchingData(etching: EtchedShape, pose: Pose<'template', 'page'>, data: (path: Path<'template'>) => string): string {
  if (etching.kind === 'line' || etching.kind === 'curve') return data(etching.path);
  const x = etching.at.x + pose.x;
  const y = etching.at.y + pose.y;
  const arm = etching.kind === 'cross' ? 0.2 : 0.06;
  return `M ${shown(x - arm)} ${shown(y)} H ${shown(x + arm)} M ${shown(x)} ${shown(y - arm)} V ${shown(y + arm)}`;
}

/** Rounded well below what can be seen, so that the sheet is the same on every machine. */
function shown(value: number): string {
  return String(Number(value.toFixed(4)) + 0);
}
