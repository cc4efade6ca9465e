// Where a slip of the tour lies: beside what it points at and never on it, while the screen has room for both.

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Between the slip and what it points at, and between the slip and the edge of the screen, in CSS pixels. */
const GAP = 28;
const MARGIN = 12;
/** What is so many times wider than high has the slip below or above it rather than beside it. */
const WIDE = 2;

/**
 * The upper left corner of a slip of this size on a screen of this size, in CSS pixels. Beside, below or above the target,
 * whichever first has room for it (below and above first where the target is wide); where none has, in the corner that covers least of it. Without a target, low in the middle.
 */
export function placeSlip(target: Box | undefined, slip: Size, screen: Size): { readonly x: number; readonly y: number } {
  const [mostX, mostY] = [Math.max(MARGIN, screen.width - slip.width - MARGIN), Math.max(MARGIN, screen.height - slip.height - MARGIN)];
  const within = (x: number, y: number) => ({ x: Math.min(Math.max(x, MARGIN), mostX), y: Math.min(Math.max(y, MARGIN), mostY) });
  if (!target) return within((screen.width - slip.width) / 2, mostY);
  const [middleX, middleY] = [target.x + target.width / 2 - slip.width / 2, target.y + target.height / 2 - slip.height / 2];
  const sideways = [within(target.x + target.width + GAP, middleY), within(target.x - GAP - slip.width, middleY)];
  const upAndDown = [within(middleX, target.y + target.height + GAP), within(middleX, target.y - GAP - slip.height)];
  const places = [
    ...(target.width > WIDE * target.height ? [...upAndDown, ...sideways] : [...sideways, ...upAndDown]),
    within(MARGIN, MARGIN),
    within(mostX, MARGIN),
    within(MARGIN, mostY),
    within(mostX, mostY),
  ];
  const covers = places.map((at) => overlap({ ...at, ...slip }, target));
  return places[covers.indexOf(Math.min(...covers))]!;
}

/** The area two boxes share. */
export function overlap(a: Box, b: Box): number {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return Math.max(0, across) * Math.max(0, down);
}

/** Where the line from the middle of one box to the middle of another leaves the first; undefined when they overlap. */
export function leaving(from: Box, to: Box): { readonly x: number; readonly y: number } | undefined {
  if (overlap(from, to) > 0) return undefined;
  const [x, y] = [from.x + from.width / 2, from.y + from.height / 2];
  const [dx, dy] = [to.x + to.width / 2 - x, to.y + to.height / 2 - y];
  const part = Math.min(dx === 0 ? Infinity : from.width / 2 / Math.abs(dx), dy === 0 ? Infinity : from.height / 2 / Math.abs(dy));
  return { x: x + dx * part, y: y + dy * part };
}
