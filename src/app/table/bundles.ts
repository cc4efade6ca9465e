// Things drawn alike and one after the other share one element of the screen: a large top has ten thousand lines, and a browser
// that must dress each of them by itself is slow. Bundles are small, so that what is out of sight is still left out quickly.

import type { DisplayItem, Drawn, Layer } from '../../drawing/display-list.ts';

/** Of lines only: where areas are filled, each is an element of its own with its own dress. */
const LINES: ReadonlySet<Layer> = new Set<Layer>(['seam', 'reference', 'division', 'etching', 'missed-edge', 'template-edge', 'needle-unsewn', 'needle']);

/** So many lines share an element at most. */
const MOST = 48;

type Item = DisplayItem<'quilt'>;

export interface Bundle {
  readonly items: readonly [Item, ...Item[]];
  /** For stitched lines the placement they follow, `sheet/placement`; all of a bundle follow the same. */
  readonly placement: string | undefined;
}

/** The items of one layer in their order, those that may share an element together. */
export function bundled(items: readonly Item[]): readonly Bundle[] {
  const bundles: { items: [Item, ...Item[]]; placement: string | undefined }[] = [];
  for (const item of items) {
    const placement = item.layer === 'needle' ? placementOf(item.source) : undefined;
    const last = bundles.at(-1);
    if (last && mayShare(item) && mayShare(last.items[0]) && last.placement === placement && last.items.length < MOST) last.items.push(item);
    else bundles.push({ items: [item], placement });
  }
  return bundles;
}

/** True when both hold the same items, so that one looks like the other. */
export function areSame(a: Bundle, b: Bundle): boolean {
  return a.items.length === b.items.length && a.items.every((item, i) => item === b.items[i]);
}

function mayShare(item: Item): item is Drawn<'quilt'> {
  return item.kind === 'path' && LINES.has(item.layer) && !item.filled && !item.holes;
}

/** `sheet/placement` of a stitched line's id, which is `area/sheet/placement/pass/image`. */
function placementOf(line: string): string {
  const [, sheet, placement] = line.split('/');
  return `${sheet}/${placement}`;
}
