// A field a plain number is typed into: degrees, a count, a weight.

import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { TypedField, type TypedFieldProps } from './TypedField.tsx';

export interface NumberFieldProps extends Omit<TypedFieldProps, 'beside'> {
  /** What stands behind the number: "°", "yd". */
  readonly unit?: string;
  readonly least?: number;
  readonly most?: number;
  /** Only whole numbers are taken. */
  readonly whole?: boolean;
  /** Decimals shown; the value may have more. */
  readonly decimals?: number;
}

export function NumberField({ unit, least = -Infinity, most = Infinity, whole = false, decimals = 3, ...field }: NumberFieldProps) {
  const read = (text: string): Outcome<number, { readonly message: string }> => {
    const value = readNumber(text);
    if (value === undefined) return fail({ message: text.trim() === '' ? 'Nothing was typed.' : `“${text.trim().slice(0, 40)}” is not a number.` });
    if (whole && !Number.isInteger(value)) return fail({ message: 'This must be a whole number.' });
    if (value < least) return fail({ message: `This must be at least ${least}.` });
    if (value > most) return fail({ message: `This must be at most ${most}.` });
    return ok(value);
  };
  const beside = unit === undefined ? undefined : <span className="typed-unit" aria-hidden="true">{unit}</span>;
  return <TypedField {...field} inputMode={whole ? 'numeric' : 'decimal'} read={read} write={(value) => `${Number(value.toFixed(decimals))}`} {...(beside && { beside })} />;
}

/** Decimal point or comma, a minus of any kind, and nothing else; undefined for what is not a number. */
function readNumber(text: string): number | undefined {
  const plain = text.trim().replace(/[−–]/g, '-').replace(/°$/, '').trim().replace(',', '.');
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : undefined;
}
