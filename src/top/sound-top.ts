// What of a plan's top can be laid: sizes that cannot be are left out or replaced, and each time it is said what was
// done instead.

import { type LengthStyle, writeLength } from '../num/inches.ts';
import type { Blocks, Border, Place, Side, Top } from '../model/plan.ts';
import { SAME_POINT } from '../num/tolerances.ts';
import { SIDES, type TopProblem } from './area.ts';

/** More blocks than anyone pieces; a count above this is a slip of the finger. */
const MOST_BLOCKS = 20_000;
const MOST_BORDERS = 100;

/** A side this far off its layout, in inches or as a part of it, whichever is less, is worth measuring again. */
const DOUBTFUL_LENGTH = 1;
const DOUBTFUL_PART = 0.03;

export interface SoundTop {
  readonly centre: { readonly kind: 'blocks'; readonly blocks: Blocks } | { readonly kind: 'panel'; readonly size: Place } | { readonly kind: 'none' };
  /** Borders that can be laid, from the inside out, with their own numbers. */
  readonly borders: readonly { readonly border: Border; readonly number: number }[];
  readonly problems: readonly TopProblem[];
}

/** The part of the top that can be laid, and the problems found; lengths in the problems are written in `style`. */
export function soundTop(top: Top, style: LengthStyle): SoundTop {
  const problems: TopProblem[] = [];
  const cannot = (field: string, message: string) => problems.push({ field, kind: 'cannot-be', message });
  const centre = soundCentre(top, style, cannot);
  const borders = top.borders.slice(0, MOST_BORDERS).flatMap((border, i) => {
    if (isLength(border.width)) return [{ border: { ...border, measured: soundMeasures(border, i, style, cannot) }, number: i + 1 }];
    cannot(`top.borders[${i}].width`, `Border ${i + 1} is ${written(border.width, style)} wide. It is left out.`);
    return [];
  });
  if (top.borders.length > MOST_BORDERS) cannot('top.borders', `There are ${top.borders.length} borders. Only the first ${MOST_BORDERS} are laid.`);
  for (const name of ['rawEdge', 'seam'] as const) {
    const length = top.clearance[name];
    if (!(length >= 0 && Number.isFinite(length))) cannot(`top.clearance.${name}`, `The clearance is ${written(length, style)}. None is kept.`);
  }
  return { centre, borders, problems };
}

/**
 * What looks like a slip of the tape in a border's measured lengths: a side far off the layout, or opposite sides that
 * differ by as much. They are used as measured all the same.
 */
export function measureDoubts(border: Border, number: number, across: number, down: number, style: LengthStyle): readonly TopProblem[] {
  const problems: TopProblem[] = [];
  for (const side of SIDES) {
    const laid = side === 'top' || side === 'bottom' ? across : down;
    const measured = border.measured?.[side];
    if (measured === undefined || !isFarOff(measured, laid)) continue;
    problems.push({
      field: `top.borders[${number - 1}].measured.${side}`,
      kind: 'doubtful',
      message: `The ${side} of border ${number} measures ${writeLength(measured, style)}, the layout gives ${writeLength(laid, style)}. Measure again.`,
      measured,
      limit: laid,
    });
  }
  for (const [a, b] of OPPOSITE) {
    const [first, second] = [border.measured?.[a], border.measured?.[b]];
    if (first === undefined || second === undefined || !isFarOff(first, second)) continue;
    problems.push({
      field: `top.borders[${number - 1}].measured`,
      kind: 'doubtful',
      message: `The ${a} and the ${b} of border ${number} differ: ${writeLength(first, style)} and ${writeLength(second, style)}. Measure again, or ease the longer side in.`,
      measured: Math.abs(first - second),
      limit: farOff(Math.max(first, second)),
    });
  }
  return problems;
}

const OPPOSITE: readonly (readonly [Side, Side])[] = [['top', 'bottom'], ['left', 'right']];

function farOff(laid: number): number {
  return Math.min(DOUBTFUL_LENGTH, laid * DOUBTFUL_PART);
}

function isFarOff(measured: number, other: number): boolean {
  return Math.abs(measured - other) > farOff(Math.max(measured, other)) + SAME_POINT;
}

type Report = (field: string, message: string) => void;

function soundMeasures(border: Border, index: number, style: LengthStyle, cannot: Report): Border['measured'] {
  const kept: { [side in Side]?: number } = {};
  for (const side of SIDES) {
    const length = border.measured?.[side];
    if (length === undefined) continue;
    if (isLength(length)) kept[side] = length;
    else cannot(`top.borders[${index}].measured.${side}`, `The ${side} of border ${index + 1} cannot measure ${written(length, style)}. The layout's length is used.`);
  }
  return kept;
}

function soundCentre(top: Top, style: LengthStyle, cannot: Report): SoundTop['centre'] {
  if (top.blocks) {
    if (top.panel) cannot('top.panel', 'There are blocks and a panel. The panel is left out.');
    const blocks = soundBlocks(top.blocks, style, cannot);
    return blocks ? { kind: 'blocks', blocks } : { kind: 'none' };
  }
  if (!top.panel) {
    cannot('top', 'The top has neither blocks nor a panel. Nothing is laid.');
    return { kind: 'none' };
  }
  const [width, height] = top.panel.size;
  if (isLength(width) && isLength(height)) return { kind: 'panel', size: top.panel.size };
  cannot('top.panel.size', `The panel is ${written(width, style)} by ${written(height, style)}. Nothing is laid.`);
  return { kind: 'none' };
}

function soundBlocks(blocks: Blocks, style: LengthStyle, cannot: Report): Blocks | undefined {
  const { rows, columns } = blocks;
  const [width, height] = blocks.size;
  for (const [name, count] of [['rows', rows], ['columns', columns]] as const) {
    if (Number.isInteger(count) && count >= 1) continue;
    cannot(`top.blocks.${name}`, `There cannot be ${count} ${name} of blocks. No blocks are laid.`);
    return undefined;
  }
  if (rows * columns > MOST_BLOCKS) {
    cannot('top.blocks', `${rows} rows of ${columns} blocks are more than ${MOST_BLOCKS} blocks. No blocks are laid.`);
    return undefined;
  }
  if (!isLength(width) || !isLength(height)) {
    cannot('top.blocks.size', `A block is ${written(width, style)} by ${written(height, style)}. No blocks are laid.`);
    return undefined;
  }
  return soundOnPoint(soundSashing(blocks, style, cannot), style, cannot);
}

function soundSashing(blocks: Blocks, style: LengthStyle, cannot: Report): Blocks {
  if (blocks.sashing === 0 || isLength(blocks.sashing)) return blocks;
  cannot('top.blocks.sashing', `The sashing is ${written(blocks.sashing, style)} wide. It is left out.`);
  return { ...blocks, sashing: 0 };
}

function soundOnPoint(blocks: Blocks, style: LengthStyle, cannot: Report): Blocks {
  if (blocks.setting !== 'on-point') return blocks;
  const [width, height] = blocks.size;
  let sound = blocks;
  if (Math.abs(width - height) > SAME_POINT) {
    cannot('top.blocks.size', `Blocks on point are square; these are ${writeLength(width, style)} by ${writeLength(height, style)}. They are laid ${writeLength(width, style)} square.`);
    sound = { ...sound, size: [width, width] };
  }
  if (sound.cornerstones && sound.sashedRound !== true && sound.sashing >= sound.size[0]) {
    cannot('top.blocks.cornerstones', 'The sashing is as wide as the blocks, so its outer strips have no room beside cornerstones. It is laid without cornerstones.');
    sound = { ...sound, cornerstones: false };
  }
  return sound;
}

/** Longer than nothing, and shorter than any quilt: two hundred yards. */
function isLength(length: number): boolean {
  return Number.isFinite(length) && length > SAME_POINT && length <= 7200;
}

/** A length that may not be a number at all. */
function written(length: number, style: LengthStyle): string {
  return Number.isFinite(length) ? writeLength(length, style) : String(length);
}
