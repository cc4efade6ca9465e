// Where the marks of an edge ruler fall and what is written at them.

import { CM_PER_INCH, mixedFraction } from '../../num/inches.ts';

export interface RulerMarks {
  /** CSS pixels from the start of the ruler; each with the length of its stroke, 0 to 1. */
  readonly ticks: readonly { readonly at: number; readonly reach: number }[];
  readonly labels: readonly { readonly at: number; readonly text: string }[];
}

/** In units: a label every `label`, a long stroke every `half`, a short one every `tick`. */
interface Grain {
  readonly label: number;
  readonly half: number;
  readonly tick: number;
}

const INCH_GRAINS: readonly Grain[] = [
  { label: 1 / 8, half: 1 / 16, tick: 1 / 32 },
  { label: 1 / 4, half: 1 / 8, tick: 1 / 16 },
  { label: 1 / 2, half: 1 / 4, tick: 1 / 16 },
  { label: 1, half: 1 / 2, tick: 1 / 8 },
  { label: 2, half: 1, tick: 1 / 2 },
  { label: 6, half: 3, tick: 1 },
  { label: 12, half: 6, tick: 1 },
  { label: 24, half: 12, tick: 6 },
  { label: 48, half: 24, tick: 12 },
];

const CENTIMETRE_GRAINS: readonly Grain[] = [
  { label: 0.1, half: 0.05, tick: 0.01 },
  { label: 0.5, half: 0.1, tick: 0.05 },
  { label: 1, half: 0.5, tick: 0.1 },
  { label: 2, half: 1, tick: 0.5 },
  { label: 5, half: 1, tick: 1 },
  { label: 10, half: 5, tick: 1 },
  { label: 20, half: 10, tick: 5 },
  { label: 50, half: 10, tick: 10 },
  { label: 100, half: 50, tick: 10 },
];

/** Labels no nearer to each other, and strokes no nearer, in CSS pixels. */
const LEAST_LABEL_GAP = 44;
const LEAST_TICK_GAP = 4;

/**
 * The marks of a ruler that starts at `from` inches, is `length` CSS pixels long and shows `scale` CSS pixels to the
 * inch. Nothing is marked beyond `whole` inches or before 0: the ruler is as long as the quilt.
 */
export function rulerMarks(from: number, length: number, scale: number, whole: number, unit: 'in' | 'cm'): RulerMarks {
  const perInch = unit === 'cm' ? CM_PER_INCH : 1;
  const pixels = scale / perInch;
  const grains = unit === 'cm' ? CENTIMETRE_GRAINS : INCH_GRAINS;
  const grain = grains.find(({ label, tick }) => label * pixels >= LEAST_LABEL_GAP && tick * pixels >= LEAST_TICK_GAP) ?? grains[grains.length - 1]!;
  const first = Math.max(0, Math.ceil((from * perInch) / grain.tick));
  const last = Math.floor(Math.min(whole * perInch, from * perInch + length / pixels) / grain.tick);
  const perLabel = Math.round(grain.label / grain.tick);
  const perHalf = Math.round(grain.half / grain.tick);
  const ticks: { at: number; reach: number }[] = [];
  const labels: { at: number; text: string }[] = [];
  for (let i = first; i <= last; i++) {
    const value = i * grain.tick;
    const at = (value - from * perInch) * pixels;
    const labelled = i % perLabel === 0;
    ticks.push({ at, reach: labelled ? 1 : i % perHalf === 0 ? 0.6 : 0.35 });
    if (labelled) labels.push({ at, text: unit === 'cm' ? String(Math.round(value * 100) / 100) : inchLabel(value) });
  }
  return { ticks, labels };
}

function inchLabel(inches: number): string {
  const { whole, numerator, denominator } = mixedFraction(inches, 32);
  if (numerator === 0) return `${whole}`;
  return whole === 0 ? `${numerator}/${denominator}` : `${whole} ${numerator}/${denominator}`;
}
