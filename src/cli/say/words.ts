// Small pieces of speech that several commands use.

import { type LengthStyle, writeLength } from '../../num/inches.ts';

/** A function that writes lengths in one style. */
export function lengthBy(style: LengthStyle): (inches: number) => string {
  return (inches) => writeLength(inches, style);
}

/** A long run of stitching: yards, or metres. */
export function runBy(style: LengthStyle): (inches: number) => string {
  return (inches) => {
    if (style.unit === 'cm') return inches < 40 ? writeLength(inches, style) : `${(inches * 0.0254).toFixed(1)} m`;
    return inches < 72 ? writeLength(inches, style) : `${(inches / 36).toFixed(1)} yd`;
  };
}

/** `1 line`, `3 lines`. */
export function counted(count: number, thing: string, things = `${thing}s`): string {
  return `${count} ${count === 1 ? thing : things}`;
}

/** Rows under headings, columns lined up. */
export function table(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [headings, ...rows];
  const widths = headings.map((_, column) => Math.max(...all.map((row) => row[column]?.length ?? 0)));
  return all.map((row) => row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ').trimEnd()).join('\n');
}
