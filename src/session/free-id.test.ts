import { describe, expect, it } from 'vitest';
import { freeId, idFrom } from './free-id.ts';

describe('ids for new things', () => {
  it('take the name while it is free, and count on from there', () => {
    expect(freeId({}, 'leaf-8')).toBe('leaf-8');
    expect(freeId({ 'leaf-8': 1, 'leaf-8-2': 1 }, 'leaf-8')).toBe('leaf-8-3');
  });

  it('are never names the language keeps for itself', () => {
    expect(freeId({}, 'constructor')).toBe('constructor-2');
    expect(freeId({}, '__proto__')).toBe('__proto__-2');
  });

  it('are made of any name', () => {
    expect(idFrom('Leaf 8, another', 'template')).toBe('leaf-8-another');
    expect(idFrom('Grüne Wölbung 3½', 'template')).toBe('gru-ne-wo-lbung-31-2');
    expect(idFrom('葉', 'template')).toBe('template');
    expect(idFrom('', 'template')).toBe('template');
  });
});
