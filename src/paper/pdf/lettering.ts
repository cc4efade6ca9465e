// Setting words: fractions as true fractions, lines broken to a width, text fitted to a space.

import type { Face, Lettering, PaperCanvas } from './canvas.ts';

export interface Words {
  readonly face: Face;
  /** In inches. */
  readonly size: number;
  readonly grey?: number;
  readonly anchor?: 'start' | 'middle' | 'end';
}

/** One point of type, in inches. */
export const POINT = 1 / 72;

const TEXT_GREY = 0.2;
const THIN_SPACE = '\u2009';
const FRACTION_SLASH = '\u2044';

interface Piece {
  readonly text: string;
  readonly fraction: boolean;
}

/** The text cut into plain pieces and fractions; a space between a whole number and its fraction becomes a thin one. */
export function piecesOf(text: string): readonly Piece[] {
  const pieces: Piece[] = [];
  let at = 0;
  for (const match of text.matchAll(/(?<![\d/])(\d{1,3})\/(\d{1,3})(?![\d/])/g)) {
    const before = text.slice(at, match.index).replace(/(\d) $/, `$1${THIN_SPACE}`);
    if (before !== '') pieces.push({ text: before, fraction: false });
    pieces.push({ text: `${match[1]}${FRACTION_SLASH}${match[2]}`, fraction: true });
    at = match.index + match[0].length;
  }
  if (at < text.length) pieces.push({ text: text.slice(at), fraction: false });
  return pieces;
}

/** Letters a line of text that stands on y, and gives its width in inches. */
export function write(canvas: PaperCanvas, x: number, y: number, text: string, words: Words): number {
  const width = widthOf(canvas, text, words);
  let at = x - { start: 0, middle: width / 2, end: width }[words.anchor ?? 'start'];
  for (const piece of piecesOf(text)) {
    const lettering = letteringOf(words, piece);
    canvas.letter(at, y, piece.text, lettering);
    at += canvas.widthOf(piece.text, lettering);
  }
  return width;
}

export function widthOf(canvas: PaperCanvas, text: string, words: Words): number {
  return piecesOf(text).reduce((sum, piece) => sum + canvas.widthOf(piece.text, letteringOf(words, piece)), 0);
}

/** Letters text in lines no wider than a width, a leading apart; gives the y below the last. A word too long stands out. */
export function writeLines(canvas: PaperCanvas, x: number, y: number, width: number, leading: number, text: string, words: Words): number {
  let down = y;
  for (const line of linesOf(canvas, text, width, words)) {
    write(canvas, x, down, line, words);
    down += leading;
  }
  return down;
}

export function linesOf(canvas: PaperCanvas, text: string, width: number, words: Words): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && widthOf(canvas, longer, words) > width) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  return line === '' ? lines : [...lines, line];
}

/** The text, cut short with an ellipsis when it is wider than a width. */
export function fitted(canvas: PaperCanvas, text: string, width: number, words: Words): string {
  if (widthOf(canvas, text, words) <= width) return text;
  const letters = [...text];
  let low = 0;
  let high = letters.length;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (widthOf(canvas, `${letters.slice(0, middle).join('').trimEnd()}…`, words) <= width) low = middle;
    else high = middle - 1;
  }
  return `${letters.slice(0, low).join('').trimEnd()}…`;
}

function letteringOf({ face, size, grey = TEXT_GREY }: Words, { fraction }: Piece): Lettering {
  return { face, size, grey, fraction };
}
