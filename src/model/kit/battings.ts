// How far apart quilting may be on the common kinds of batting, for somebody whose label does not say: makers' data in general terms.
// The label on her own batting always wins.

export interface BattingKind {
  readonly id: string;
  readonly name: string;
  /** What labels of this kind say at the least and at the most, in inches. */
  readonly from: number;
  readonly to: number;
}

export const BATTINGS: readonly BattingKind[] = [
  { id: 'eighty-twenty', name: '80/20 cotton and polyester', from: 2, to: 4 },
  { id: 'cotton', name: 'Cotton without scrim', from: 1.5, to: 2 },
  { id: 'needled-cotton', name: 'Needled cotton', from: 8, to: 8 },
  { id: 'scrim-cotton', name: 'Needled cotton with scrim', from: 8, to: 10 },
  { id: 'polyester', name: 'Polyester', from: 2, to: 4 },
  { id: 'wool', name: 'Wool', from: 3, to: 4 },
  { id: 'bamboo', name: 'Bamboo blend', from: 8, to: 8 },
  { id: 'carded', name: 'Carded, unbonded', from: 0.25, to: 0.5 },
  { id: 'no-label', name: 'No label', from: 1, to: 2 },
];
