import { describe, expect, it } from 'vitest';
import type { PaperCanvas } from './canvas.ts';
import { fitted, linesOf, piecesOf } from './lettering.ts';

const setAs = (text: string) => piecesOf(text).map((piece) => (piece.fraction ? `[${piece.text}]` : piece.text)).join('');

describe('piecesOf', () => {
  it('sets a fraction as one, with a thin space after its whole number', () => {
    expect(setAs('3 3/4 in')).toBe('3\u2009[3\u20444] in');
    expect(setAs('neighbours share 1/2 in.')).toBe('neighbours share [1\u20442] in.');
    expect(setAs('50 15/16 in and 5 in')).toBe('50\u2009[15\u204416] in and 5 in');
  });

  it('leaves everything else as it is', () => {
    for (const text of ['', '60 in', '11/25/2026', 'a/b', 'sheet 1 / 2']) expect(setAs(text)).toBe(text);
  });
});

/** Every letter half an inch wide at a size of one inch. */
const canvas = { widthOf: (text: string, { size }: { size: number }) => [...text].length * size * 0.5 } as unknown as PaperCanvas;
const words = { face: 'label', size: 0.2 } as const;

describe('linesOf and fitted', () => {
  it('breaks between words', () => {
    expect(linesOf(canvas, 'aaa bbb ccc', 0.75, words)).toEqual(['aaa bbb', 'ccc']);
    expect(linesOf(canvas, 'muchtoolong b', 0.3, words)).toEqual(['muchtoolong', 'b']);
  });

  it('cuts short what does not fit', () => {
    expect(fitted(canvas, 'abcdef', 0.65, words)).toBe('abcdef');
    expect(fitted(canvas, 'abcdefg', 0.65, words)).toBe('abcde…');
  });
});
