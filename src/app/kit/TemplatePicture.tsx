// A template as it lies with its etched face up: tint, etchings, edge, the edge the foot misses, and the needle line of a foot.

import type { ReactNode } from 'react';
import { type Bounds, boundsOf, carryBounds, grownBounds, sizeOfBounds, unionBounds } from '../../geometry/bounds.ts';
import { carryPath, stretchOfPath } from '../../geometry/change.ts';
import type { Path } from '../../geometry/path.ts';
import { poseOf } from '../../geometry/pose.ts';
import { writePathData } from '../../geometry/svg/write.ts';
import type { EtchedShape, TemplateShape } from '../../model/kit/shape.ts';
import type { Foot } from '../../model/plan.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import { edgeNamed } from '../../session/kit/reach.ts';

/** Left round the needle line, in inches, so that its dots are not cut. */
const ROUND = 1 / 16;
/** How long the arms of an etched cross are drawn, and how large a point, in inches. */
const ARM = 3 / 16;
const DOT = 1 / 24;

export type PictureFoot = Pick<Foot, 'diameter' | 'needleOffset'>;

export interface TemplatePictureProps {
  readonly shape: TemplateShape;
  readonly foot: PictureFoot | undefined;
  /** What of the template's plane is shown; all of template and needle line when left out. */
  readonly box?: Bounds;
  /** CSS pixels to the inch; without it, the picture takes the size its place gives it. */
  readonly scale?: number;
  /** The etching drawn thicker. */
  readonly picked?: string | undefined;
  /** Drawn over the template, in its inches. */
  readonly children?: ReactNode;
}

export function TemplatePicture({ shape, foot, box = pictureBox(shape, foot), scale, picked, children }: TemplatePictureProps) {
  const { width, height } = sizeOfBounds(box);
  const edges = [shape.outline, ...shape.windows.map(({ path }) => path)];
  const found = foot && needleLines(shape, foot.diameter);
  return (
    <svg
      className="template-picture"
      viewBox={`${box.minX} ${box.minY} ${width} ${height}`}
      {...(scale !== undefined && { width: width * scale, height: height * scale })}
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true"
    >
      <path className="acrylic" d={edges.map(writePathData).join('')} />
      {shape.etchings.map((etching) => <path key={etching.id} className={etching.id === picked ? 'etched picked' : 'etched'} d={etchedData(etching)} />)}
      <path className="edge" d={edges.map(writePathData).join('')} />
      {found && <path className="missed" d={found.missed.map(({ from, start, end }) => writePathData(stretchOfPath(edgeNamed(shape, from), start, end))).join('')} />}
      {foot && found && <path className="needle-dots" d={found.lines.map(({ path }) => writePathData(carried(path, foot))).join('')} />}
      {children}
    </svg>
  );
}

/** All that a picture of the template has to show, in template coordinates. */
export function pictureBox(shape: TemplateShape, foot: PictureFoot | undefined): Bounds {
  const edge = boundsOf(shape.outline);
  if (!foot) return grownBounds(edge, ROUND);
  const lines = needleLines(shape, foot.diameter).lines.map(({ path }) => boundsOf(path));
  return grownBounds(unionBounds([edge, carryBounds(shift(foot), unionBounds(lines))]), ROUND);
}

/** The needle is where the foot's middle is, and from there by its own offset: the template lies as it is drawn. */
function shift({ needleOffset: [x, y] }: PictureFoot) {
  return poseOf<'template', 'template'>(x, y);
}

function carried(path: Path<'template'>, foot: PictureFoot): Path<'template'> {
  const [x, y] = foot.needleOffset;
  return x === 0 && y === 0 ? path : carryPath(shift(foot), path);
}

/** An etching as path data; points and crosses by their signs. */
export function etchedData(etching: EtchedShape): string {
  switch (etching.kind) {
    case 'line':
    case 'curve':
      return writePathData(etching.path);
    case 'point': {
      const { x, y } = etching.at;
      return `M ${x - DOT} ${y} a ${DOT} ${DOT} 0 1 1 ${2 * DOT} 0 a ${DOT} ${DOT} 0 1 1 ${-2 * DOT} 0 Z`;
    }
    case 'cross': {
      const { x, y } = etching.at;
      const [cos, sin] = [ARM * Math.cos(etching.angle), ARM * Math.sin(etching.angle)];
      return `M ${x - cos} ${y - sin} L ${x + cos} ${y + sin} M ${x + sin} ${y - cos} L ${x - sin} ${y + cos}`;
    }
  }
}
