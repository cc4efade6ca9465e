// Lengths as people write and read them. Inside, every length is a number of inches; this is where words become numbers
// and numbers become words.
// Source: 1 inch is 25.4 mm exactly (NIST, "Refinement of values for the yard and the pound", 1 July 1959).
// Decisions: `3' 6"` is read, because borders and rolls are measured so; a comma is a decimal sign with centimetres and
// millimetres only, since among inches it also parts thousands; a fraction without a unit is never taken for
// centimetres, since a wrong guess is wrong by a factor of 2.54.

import { type Outcome, fail, ok } from './outcome.ts';

export const CM_PER_INCH = 2.54;
export const MM_PER_INCH = 25.4;

/** How a length is written: as a mixed fraction of an inch, as decimal inches, or as centimetres. */
export type LengthStyle =
  | { readonly unit: 'in'; readonly smallest: 8 | 16 | 32 }
  | { readonly unit: 'in'; readonly decimals: number }
  | { readonly unit: 'cm'; readonly decimals: number };

/** A length rounded to a fraction of an inch, in lowest terms; a whole number has the numerator 0 over 1. */
export interface MixedFraction {
  readonly negative: boolean;
  readonly whole: number;
  readonly numerator: number;
  readonly denominator: number;
}

export interface LengthProblem {
  /** Sentences that quote what was typed and say what can be typed. */
  readonly message: string;
}

/**
 * The length a person typed, in inches. Reads whole numbers, decimals, fractions and mixed fractions (`3 3/4`, `3-3/4`,
 * `3¾"`, `.5`), feet with inches (`3' 6"`), and `in`, `cm` or `mm`; a number without a unit is in the unit `bare`.
 * Anything else comes back as a problem whose message quotes it.
 */
export function readLength(text: string, bare: 'in' | 'cm' = 'in'): Outcome<number, LengthProblem> {
  const plain = plainly(text);
  if (plain === '') return fail({ message: `Nothing was typed. ${WHAT_CAN_BE_TYPED}` });
  const read = readPlain(plain, bare);
  return typeof read === 'number' ? ok(read) : fail({ message: `${quoted(text)} ${read.why}. ${WHAT_CAN_BE_TYPED}` });
}

/** The length with its unit, as a person writes it: `3 3/4 in`, `3.75 in`, `9.5 cm`. Decimals end where only zeros follow. */
export function writeLength(inches: number, style: LengthStyle): string {
  return `${writeLengthBare(inches, style)} ${style.unit}`;
}

/** The same without the unit, for columns and fields that name it: `3 3/4`. */
export function writeLengthBare(inches: number, style: LengthStyle): string {
  if ('smallest' in style) {
    const { negative, whole, numerator, denominator } = mixedFraction(inches, style.smallest);
    const parts = [whole > 0 || numerator === 0 ? `${whole}` : '', numerator > 0 ? `${numerator}/${denominator}` : ''];
    return (negative ? '-' : '') + parts.filter((part) => part !== '').join(' ');
  }
  const fixed = (style.unit === 'cm' ? inches * CM_PER_INCH : inches).toFixed(style.decimals);
  const short = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
  return short === '-0' ? '0' : short;
}

/** A length finer than a tape shows it, such as how far a line strays: thousandths of an inch unless it is a number of thirty-seconds, or tenths of a millimetre. */
export function writeFineLength(inches: number, unit: LengthStyle['unit']): string {
  if (unit === 'cm') return writeLength(inches, { unit, decimals: 2 });
  return writeLength(inches, Number.isInteger(inches * 32) ? { unit, smallest: 32 } : { unit, decimals: 3 });
}

/** The length, in inches, rounded to the nearest `smallest`-th of an inch (halves away from zero), for setting as a true fraction. */
export function mixedFraction(inches: number, smallest: 8 | 16 | 32): MixedFraction {
  const count = Math.round(Math.abs(inches) * smallest);
  const whole = Math.floor(count / smallest);
  const rest = count - whole * smallest;
  const common = rest === 0 ? smallest : commonDivisor(rest, smallest);
  return { negative: inches < 0 && count > 0, whole, numerator: rest / common, denominator: smallest / common };
}

const WHAT_CAN_BE_TYPED = 'Lengths are typed like 3 3/4, 3.75, 3 1/2 in, 9.5 cm or 95 mm.';

type Unit = 'in' | 'cm' | 'mm';
type Refusal = { readonly why: string };

/** Of a text in plain characters: optional minus, optional feet, optional amount with optional unit. */
function readPlain(plain: string, bare: 'in' | 'cm'): number | Refusal {
  const parts = /^(?<minus>- ?)?(?:(?<feet>[\d., /-]*\d\.?) ?(?:'|(?:ft|foot|feet)\b\.?)(?: ?- ?| )?)?(?:(?<amount>[\d., /-]*[\d.]) ?(?<unit>"|[a-z]+)?\.?)?$/.exec(plain)?.groups;
  if (!parts) return { why: 'is not a length' };
  const { minus, feet, amount, unit } = parts;
  if (feet === undefined && amount === undefined) return { why: 'is not a length' };
  const named = unit === undefined ? undefined : UNITS.get(unit);
  if (unit !== undefined && named === undefined) return { why: `has the unit ${quoted(unit)}, which is not read here` };
  if (feet !== undefined && named !== undefined && named !== 'in') return { why: `mixes feet with ${named}` };
  if (amount?.includes('/') && named === undefined && feet === undefined && bare === 'cm') {
    return { why: 'is a fraction without a unit: put in or cm after it' };
  }

  const unitOfAmount = named ?? (feet === undefined ? bare : 'in');
  const inFeet = feet === undefined ? 0 : amountOf(feet, 'in');
  const inUnit = amount === undefined ? 0 : amountOf(amount, unitOfAmount);
  if (typeof inFeet !== 'number') return inFeet;
  if (typeof inUnit !== 'number') return inUnit;
  const inches = inFeet * 12 + inchesOf(inUnit, unitOfAmount);
  if (!Number.isFinite(inches)) return { why: 'is too large a number' };
  return minus === undefined || inches === 0 ? inches : -inches;
}

function inchesOf(amount: number, unit: Unit): number {
  switch (unit) {
    case 'in': return amount;
    // By whole tenths of a millimetre, 254 to the inch, so that 30.48 cm and 304.8 mm are 12 to the last bit.
    case 'cm': return (amount * 100) / 254;
    case 'mm': return (amount * 10) / 254;
  }
}

/** A decimal, a fraction or a mixed fraction. */
function amountOf(written: string, unit: Unit): number | Refusal {
  if (/^(\d+[.,]?\d*|[.,]\d+)$/.test(written)) {
    if (unit === 'in' && written.includes(',')) return { why: 'has a comma, which is a decimal sign with cm and mm only' };
    return Number(written.replace(',', '.'));
  }
  const parts = /^(?:(?<whole>\d+)(?: ?- ?| ))?(?<over>\d+) ?\/ ?(?<under>\d+)$/.exec(written)?.groups;
  if (!parts) return { why: 'is not a length' };
  const over = Number(parts['over']);
  const under = Number(parts['under']);
  if (under === 0) return { why: 'divides by zero' };
  if (parts['whole'] === undefined) return over / under;
  if (over >= under) return { why: 'has a fraction that is not less than one after its whole number' };
  return Number(parts['whole']) + over / under;
}

const UNITS: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ['"', 'in'], ['in', 'in'], ['inch', 'in'], ['inches', 'in'],
  ['cm', 'cm'], ['centimetre', 'cm'], ['centimetres', 'cm'], ['centimeter', 'cm'], ['centimeters', 'cm'],
  ['mm', 'mm'], ['millimetre', 'mm'], ['millimetres', 'mm'], ['millimeter', 'mm'], ['millimeters', 'mm'],
]);

/** The text with every way of typing a fraction, a minus, a space and an inch or foot mark brought to one. */
function plainly(text: string): string {
  return text
    .replace(/[¼-¾⅐-⅞↉]/g, (sign) => ` ${sign.normalize('NFKC')} `)
    .replace(/[⁰¹²³⁴-⁹]+/g, (raised) => ` ${raised}`)
    .normalize('NFKC')
    .replace(/[⁄∕]/g, '/')
    .replace(/[‐-―−]/g, '-')
    .replace(/[’‘′]/g, "'")
    .replace(/[”“″]|''/g, '"')
    .replace(/[\s\u200B\u2060\u2064]+/g, ' ')
    .trim()
    .toLowerCase();
}

function quoted(text: string): string {
  const shown = text.trim().replace(/\s+/g, ' ');
  return `“${shown.length > 40 ? `${shown.slice(0, 40)}…` : shown}”`;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
