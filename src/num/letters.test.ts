import { describe, expect, it } from 'vitest';
import { lettersOf } from './letters.ts';

describe('letters in a row', () => {
  it('go on after Z as the columns of a spreadsheet do, where XFD is the 16,384th', () => {
    expect([0, 25, 26, 51, 52, 701, 702, 16_383].map(lettersOf)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA', 'XFD']);
  });
});
