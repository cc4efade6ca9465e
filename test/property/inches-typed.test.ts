// Whatever is typed, the answer is an exact length or a sentence; never a throw, never NaN. Seeds are in the names.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mixedFraction, readLength, writeLength } from '../../src/num/inches.ts';

const pieces = ['0', '1', '3', '12', '/', '-', '.', ',', ' ', '"', "'", '¾', '⅛', '⁄', '\u2212', '\u00a0', '\u2009', 'in', 'cm', 'mm', 'ft', 'e', 'x', '³', '₄'];

describe('typed lengths', () => {
  it('are read to a finite number or refused in a sentence (seed 20260)', () => {
    let read = 0;
    let refused = 0;
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...pieces), { maxLength: 9 }).map((p) => p.join('')), fc.constantFrom<'in' | 'cm'>('in', 'cm'), (text, bare) => {
        const outcome = readLength(text, bare);
        if (outcome.ok) {
          read++;
          expect(Number.isFinite(outcome.value)).toBe(true);
          expect(Object.is(outcome.value, -0)).toBe(false);
        } else {
          refused++;
          expect(outcome.problem.message).toMatch(/\.$/);
        }
      }),
      { seed: 20260, numRuns: 20_000 },
    );
    expect(read).toBeGreaterThan(1000);
    expect(refused).toBeGreaterThan(1000);
  });

  it('are refused when they are arbitrary text without a digit (seed 20261)', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }).filter((text) => !/\p{N}|\p{No}/u.test(text.normalize('NFKC'))), (text) => {
        expect(readLength(text).ok).toBe(false);
      }),
      { seed: 20261, numRuns: 5000 },
    );
  });

  it('come back within half the smallest fraction, in lowest terms (seed 20262)', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 500, noNaN: true }), fc.constantFrom<8 | 16 | 32>(8, 16, 32), (inches, smallest) => {
        const written = readLength(writeLength(inches, { unit: 'in', smallest }));
        if (!written.ok) throw new Error(written.problem.message);
        expect(Math.abs(written.value - inches)).toBeLessThanOrEqual(0.5 / smallest);
        const { whole, numerator, denominator, negative } = mixedFraction(inches, smallest);
        expect(numerator).toBeLessThan(denominator);
        expect(numerator === 0 ? denominator : numerator % 2).toBe(1);
        expect((negative ? -1 : 1) * (whole + numerator / denominator) + 0).toBe(written.value);
      }),
      { seed: 20262, numRuns: 5000 },
    );
  });
});
