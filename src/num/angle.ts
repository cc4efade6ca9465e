// Angles are radians inside and turn clockwise on the screen (y points down), so the usual formulas hold unchanged.

export const TURN = 2 * Math.PI;

/** Degrees, as people and files write them, to radians. */
export function fromDegrees(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

/** Radians to degrees. */
export function toDegrees(radians: number): number {
  return (radians * 180) / Math.PI;
}

/** The same direction in [0, 2 pi). */
export function normalised(radians: number): number {
  const rest = radians % TURN;
  return rest < 0 ? rest + TURN : rest;
}

/** The same direction in (-pi, pi]: the shortest way to turn. */
export function shortestTurn(radians: number): number {
  const rest = normalised(radians);
  return rest > Math.PI ? rest - TURN : rest;
}
