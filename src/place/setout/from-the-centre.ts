// Where each division falls, measured from the middle of the side and each by itself, so that roundings do not add up.

export interface DivisionMark {
  /** Exact, in inches from the middle of the side; negative to the left as one looks at the border from outside the quilt. */
  readonly at: number;
  /** The same to the nearest fraction. */
  readonly rounded: number;
  /** Rounded less exact. */
  readonly off: number;
}

/** The lines between `count` divisions of a side, ends included, to the nearest `fraction` of an inch (16 for sixteenths); no mark is off by more than half of one. */
export function divisionsFromCentre(length: number, count: number, fraction: 8 | 16 | 32 = 16): readonly DivisionMark[] {
  return Array.from({ length: count + 1 }, (_, i) => {
    const at = (i / count - 0.5) * length;
    // Rounded by size, so that left and right come out alike.
    const rounded = (Math.sign(at) * Math.round(Math.abs(at) * fraction)) / fraction;
    return { at, rounded: rounded === 0 ? 0 : rounded, off: rounded - at };
  });
}
