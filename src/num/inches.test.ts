import { describe, expect, it } from 'vitest';
import { CM_PER_INCH, type LengthStyle, mixedFraction, readLength, writeLength, writeLengthBare } from './inches.ts';

const read = (text: string, bare?: 'in' | 'cm') => {
  const outcome = readLength(text, bare);
  return outcome.ok ? outcome.value : outcome.problem.message;
};

describe('reading a length', () => {
  it.each([
    ['3 3/4', 3.75], ['3-3/4', 3.75], ['3¾"', 3.75], ['3 ¾', 3.75], ['¾', 0.75], ['.5', 0.5], ['1/2', 0.5], ['5/4', 1.25],
    ['2 in', 2], ['2"', 2], ['2in.', 2], ['2 inches', 2], ['1 inch', 1], ["2''", 2], ['2”', 2], ['2″', 2], ['2 IN', 2],
    ['  3   3 / 4  ', 3.75], ['3 - 3/4 in', 3.75], ['3\u2009\u00a03/4', 3.75], ['3\u202f3\u20444', 3.75], ['3\u20643\u20444', 3.75],
    ['3³⁄₄', 3.75], ['3\u20133/4', 3.75], ['12.', 12], ['0', 0], ['007', 7], ['15 31/32', 15.96875],
    ['-3 3/4', -3.75], ['\u22123¾', -3.75], ['- 1/2 in', -0.5], ['-3-3/4', -3.75],
    ["3' 6\"", 42], ["3'", 36], ["3' 6", 42], ["3'-6 1/2\"", 42.5], ['3 ft 6 in', 42], ['1.5 ft', 18], ["2′ ½″", 24.5], ["-1' 6\"", -18],
  ])('reads %j', (text, inches) => {
    expect(read(text)).toBe(inches);
  });

  // NIST: 1 inch = 25.4 mm exactly.
  it.each([
    ['9.5 cm', 950 / 254], ['95mm', 950 / 254], ['9,5 cm', 950 / 254], ['2.54cm', 1], ['25.4 mm', 1], ['25,4 mm', 1], [',5 cm', 50 / 254],
    ['1/2 cm', 50 / 254], ['10 centimetres', 1000 / 254], ['10 centimeters', 1000 / 254], ['304.8 mm', 12], ['30.48 cm', 12], ['-2.54 cm', -1],
  ])('reads %j by the exact inch', (text, inches) => {
    expect(read(text)).toBe(inches);
  });

  it('takes a number without a unit for the unit asked for', () => {
    expect(read('2.54', 'cm')).toBe(1);
    expect(read('2,54', 'cm')).toBe(1);
    expect(read('2 1/2"', 'cm')).toBe(2.5);
    expect(read("1' 2", 'cm')).toBe(14);
    expect(read('2 1/2', 'cm')).toMatch(/fraction without a unit/);
  });

  it.each([
    ['1/0', /divides by zero/], ['3 3/', /not a length/], ['abc', /not a length/], ['1 2 3', /not a length/], ['3 5/4', /not less than one/],
    ['3.5 1/2', /not a length/], ['1//2', /not a length/], ['1/2/3', /not a length/], ['.', /not a length/], ['-', /not a length/],
    ['1e3', /not a length/], ['--1', /not a length/], ['1,250', /comma/], ["1,5' 2", /comma/], ['3 in 4', /not a length/], ['NaN', /not a length/],
    ['Infinity', /not a length/], ['9.5 yd', /unit “yd”/], ['9 m', /unit “m”/], ["3' 6 cm", /mixes feet with cm/], ['½ ½', /not a length/],
    ['3/ -4', /not a length/], ["'", /not a length/], ['"', /not a length/], ['3 3/4 in in', /not a length/], ['1..2', /not a length/],
    [`1${'0'.repeat(400)}`, /too large/], ['<b>3</b>', /not a length/],
  ])('refuses %j and says why, what was typed and what can be', (text, why) => {
    const said = read(text);
    expect(said).toMatch(why);
    expect(said).toContain(`“${text.slice(0, 40)}`);
    expect(said).toContain('3 3/4');
  });

  it('refuses nothing at all', () => {
    expect(read('')).toMatch(/^Nothing was typed\./);
    expect(read(' \u00a0\t')).toMatch(/^Nothing was typed\./);
  });
});

describe('writing a length', () => {
  it.each<[number, 8 | 16 | 32, string]>([
    [3.75, 8, '3 3/4 in'], [0.5, 16, '1/2 in'], [0, 32, '0 in'], [12, 8, '12 in'], [15.96875, 32, '15 31/32 in'], [15.96875, 16, '16 in'],
    [15.96875, 8, '16 in'], [-3.75, 8, '-3 3/4 in'], [-0.01, 8, '0 in'], [-0.25, 16, '-1/4 in'], [60.125, 16, '60 1/8 in'], [0.0625, 8, '1/8 in'],
    // Setting triangles of 12-inch blocks on point, before rounding up: 12 / sqrt 2 + 7/8 (four trade charts give 9 3/8).
    [12 / Math.SQRT2 + 0.875, 8, '9 3/8 in'],
  ])('writes %d to 1/%d as %j', (inches, smallest, written) => {
    expect(writeLength(inches, { unit: 'in', smallest })).toBe(written);
  });

  it.each<[number, LengthStyle, string]>([
    [3.75, { unit: 'in', decimals: 3 }, '3.75 in'], [1 / 3, { unit: 'in', decimals: 3 }, '0.333 in'], [10, { unit: 'in', decimals: 0 }, '10 in'],
    [1, { unit: 'cm', decimals: 2 }, '2.54 cm'], [9.5 / 2.54, { unit: 'cm', decimals: 1 }, '9.5 cm'], [100 / 2.54, { unit: 'cm', decimals: 1 }, '100 cm'],
    [-0.0001, { unit: 'in', decimals: 2 }, '0 in'], [-1, { unit: 'cm', decimals: 1 }, '-2.5 cm'], [0, { unit: 'cm', decimals: 1 }, '0 cm'],
  ])('writes %d in %j as %j', (inches, style, written) => {
    expect(writeLength(inches, style)).toBe(written);
  });

  it('leaves the unit out when asked', () => {
    expect(writeLengthBare(3.75, { unit: 'in', smallest: 8 })).toBe('3 3/4');
    expect(writeLengthBare(1, { unit: 'cm', decimals: 1 })).toBe('2.5');
  });

  it('gives the parts of a fraction in lowest terms for typesetting', () => {
    expect(mixedFraction(3.75, 32)).toEqual({ negative: false, whole: 3, numerator: 3, denominator: 4 });
    expect(mixedFraction(-0.5, 8)).toEqual({ negative: true, whole: 0, numerator: 1, denominator: 2 });
    expect(mixedFraction(2, 16)).toEqual({ negative: false, whole: 2, numerator: 0, denominator: 1 });
    expect(mixedFraction(0.99, 16)).toEqual({ negative: false, whole: 1, numerator: 0, denominator: 1 });
  });
});

describe('reading what was written', () => {
  it('gives every 1/32 from -20 to 20 back exactly', () => {
    for (let count = -640; count <= 640; count++) {
      const inches = count / 32;
      expect(read(writeLength(inches, { unit: 'in', smallest: 32 })), `${count}/32`).toBe(inches === 0 ? 0 : inches);
      expect(read(writeLength(inches, { unit: 'in', decimals: 5 })), `${count}/32`).toBe(inches === 0 ? 0 : inches);
    }
  });

  it('gives every millimetre up to 3 m back through centimetres', () => {
    for (let mm = 0; mm <= 3000; mm++) {
      const back = read(writeLength(mm / 25.4, { unit: 'cm', decimals: 1 }));
      expect(typeof back === 'number' ? Math.round(back * CM_PER_INCH * 1000) : back).toBe(mm * 100);
    }
  });
});
