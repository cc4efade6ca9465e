// The layout of a top: from what was measured and decided to areas, seams and reference lines.

import { polygon } from '../geometry/path.ts';
import { poseOf } from '../geometry/pose.ts';
import { carryPath } from '../geometry/change.ts';
import type { Top } from '../model/plan.ts';
import type { LengthStyle } from '../num/inches.ts';
import type { Area, LaidTop, TopProblem } from './area.ts';
import { areasOf } from './areas-of.ts';
import { type Inner, borderPieces, withBorder } from './borders.ts';
import { drawnOnTop } from './drawn.ts';
import { onPointBlocks } from './on-point-blocks.ts';
import { type Laid, type Piece, innerSeamsOf, rectangleCorners, rectangleEdges } from './piece.ts';
import { mergedSeams } from './seams.ts';
import { type SoundTop, measureDoubts, soundTop } from './sound-top.ts';
import { straightBlocks } from './straight-blocks.ts';

/** Lengths in problems when nobody says otherwise: inches to the sixteenth. */
const SIXTEENTHS: LengthStyle = { unit: 'in', smallest: 16 };

/**
 * The top laid out, in inches; quilt coordinates have their origin at its upper left raw corner. Blocks or a panel lie in
 * the middle, borders round them; finished sizes reach to the raw edge. Never fails: what cannot be is left out or
 * replaced, and `problems` says so, with lengths written in `style`.
 */
export function layTop(top: Top, style: LengthStyle = SIXTEENTHS): LaidTop {
  const sound = soundTop(top, style);
  const rim = sound.borders.reduce((sum, { border }) => sum + border.width, 0);
  const centre = layCentre(sound.centre, rim, sound.borders.length > 0 ? 'seam' : 'raw');
  if (!centre) return nothingLaid(sound.problems);

  const problems: TopProblem[] = [...sound.problems];
  const pieces: Piece[] = [...centre.pieces];
  let inner: Inner = { left: rim, top: rim, width: centre.width, height: centre.height };
  sound.borders.forEach(({ border, number }, i) => {
    pieces.push(...borderPieces(border, number, inner, i === sound.borders.length - 1 ? 'raw' : 'seam'));
    problems.push(...measureDoubts(border, number, inner.width, inner.height, style));
    inner = withBorder(inner, border.width);
  });

  const { width, height } = inner;
  const whole = areasOf([wholeTop(width, height)])[0]!;
  const drawn = drawnOnTop(top.drawnAreas, top.keepOuts, width, height, style);
  return {
    width,
    height,
    areas: [...areasOf(pieces), ...drawn.areas, whole],
    rawEdge: carryPath(whole.frame, whole.boundary),
    seams: mergedSeams(pieces.flatMap(innerSeamsOf)),
    keepOuts: drawn.keepOuts,
    problems: [...problems, ...drawn.problems],
  };
}

/** The areas that tile the top: all but the drawn ones and the whole top itself. */
export function piecedAreas(top: LaidTop): readonly Area[] {
  return top.areas.filter((area) => area.kind !== 'drawn' && area.kind !== 'top');
}

function layCentre(centre: SoundTop['centre'], rim: number, outside: 'seam' | 'raw'): Laid | undefined {
  if (centre.kind === 'none') return undefined;
  if (centre.kind === 'panel') return panel(centre.size[0], centre.size[1], rim, outside);
  return centre.blocks.setting === 'straight' ? straightBlocks(centre.blocks, rim, rim, outside) : onPointBlocks(centre.blocks, rim, rim, outside);
}

function panel(width: number, height: number, rim: number, outside: 'seam' | 'raw'): Laid {
  const piece: Piece = {
    id: 'panel',
    kind: 'panel',
    name: 'panel',
    frame: poseOf(rim + width / 2, rim + height / 2),
    corners: rectangleCorners(width, height),
    edges: rectangleEdges(outside, outside, outside, outside),
  };
  return { width, height, pieces: [piece] };
}

function wholeTop(width: number, height: number): Piece {
  return {
    id: 'top',
    kind: 'top',
    name: 'whole top',
    frame: poseOf(width / 2, height / 2),
    corners: rectangleCorners(width, height),
    edges: rectangleEdges('raw', 'raw', 'raw', 'raw'),
  };
}

function nothingLaid(problems: readonly TopProblem[]): LaidTop {
  return { width: 0, height: 0, areas: [], rawEdge: polygon([]), seams: [], keepOuts: [], problems };
}
