import { describe, expect, it } from 'vitest';
import { random } from '../../num/random.ts';
import { leaving, overlap, placeSlip } from './place-slip.ts';

const SCREENS = [{ width: 1440, height: 900 }, { width: 1180, height: 820 }, { width: 400, height: 860 }];

describe('a slip of the tour', () => {
  it('lies whole on the screen, and not on its target where a side has room (1000 targets, seed 7)', () => {
    const { next } = random(7);
    for (let i = 0; i < 1000; i++) {
      const screen = SCREENS[i % SCREENS.length]!;
      const slip = { width: Math.min(340, screen.width - 24), height: 150 + next() * 120 };
      const [width, height] = [20 + next() * 300, 20 + next() * 200];
      const target = { x: next() * (screen.width - Math.min(width, screen.width)), y: next() * (screen.height - height), width: Math.min(width, screen.width), height };
      const at = placeSlip(target, slip, screen);
      expect(at.x).toBeGreaterThanOrEqual(12);
      expect(at.y).toBeGreaterThanOrEqual(12);
      expect(at.x + slip.width).toBeLessThanOrEqual(screen.width - 12);
      expect(at.y + slip.height).toBeLessThanOrEqual(screen.height - 12);
      const room = Math.max(target.x - slip.width, screen.width - target.x - target.width - slip.width, target.y - slip.height, screen.height - target.y - target.height - slip.height);
      if (room >= 40) expect(overlap({ ...at, ...slip }, target)).toBe(0);
    }
  });

  it('lies low in the middle when it points at nothing', () => {
    expect(placeSlip(undefined, { width: 300, height: 200 }, { width: 1000, height: 800 })).toEqual({ x: 350, y: 588 });
  });

  it('is joined to its target from edge to edge', () => {
    const [a, b] = [{ x: 0, y: 0, width: 10, height: 10 }, { x: 30, y: 0, width: 10, height: 10 }];
    expect(leaving(a, b)).toEqual({ x: 10, y: 5 });
    expect(leaving(b, a)).toEqual({ x: 30, y: 5 });
    expect(leaving(a, a)).toBeUndefined();
  });
});
