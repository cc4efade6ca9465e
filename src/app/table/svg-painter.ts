// Paints a display list on the screen: one group a layer, in it one path for each bundle of things drawn, arcs as arcs. Elements of
// things that stayed the same are kept, so a change costs what changed; layers that are not shown are painted once they are.
// Colours and line weights come from the stylesheet.

import { type DisplayItem, type DisplayList, type Drawn, LAYERS, type Layer } from '../../drawing/display-list.ts';
import { remembered } from '../../drawing/remember.ts';
import type { ScreenSize, View } from '../../session/view.ts';
import { type Bundle, areSame, bundled } from './bundles.ts';
import { screenData } from './screen-data.ts';

type Item = DisplayItem<'quilt'>;

const SVG = 'http://www.w3.org/2000/svg';

/** Capitals of the label face are about this part of its size. */
const CAPITALS = 0.66;
const ANCHORS = { start: 'start', middle: 'middle', end: 'end' } as const;

export interface ScreenPainter {
  /** Brings the elements in line with a list. `dressOf` gives further class names for a thing, such as its cloth. */
  readonly paint: (list: DisplayList<'quilt'>, dressOf: (item: DisplayItem<'quilt'>) => string) => void;
  /** Leaves out the lines of these placements (`sheet/placement`), which are drawn elsewhere while the hand moves them. */
  readonly lift: (placements: readonly string[]) => void;
  /** Shows these layers only. */
  readonly show: (layers: ReadonlySet<Layer>) => void;
  /** Draws for a view of a table, with a rim of so many CSS pixels beyond it on each side. */
  readonly look: (view: View, table: ScreenSize, rim: number) => void;
}

interface Painted {
  readonly bundle: Bundle;
  readonly element: SVGElement;
}

/** A painter that owns what is inside this svg element. */
export function screenPainter(svg: SVGSVGElement): ScreenPainter {
  svg.replaceChildren();
  const root = svg.appendChild(document.createElementNS(SVG, 'g'));
  const groups = new Map<Layer, SVGGElement>();
  for (const layer of LAYERS) {
    const group = root.appendChild(document.createElementNS(SVG, 'g'));
    group.setAttribute('class', `layer ${layer}`);
    groups.set(layer, group);
  }
  let list: DisplayList<'quilt'> | undefined;
  let dressOf: (item: Item) => string = () => '';
  let lifted: ReadonlySet<string> = new Set();
  let shown: ReadonlySet<Layer> = new Set();
  const painted = new Map<Layer, ReadonlyMap<Item, Painted>>();
  /** Layers whose elements are not those of the list yet. */
  const behind = new Set<Layer>();

  const catchUp = () => {
    const layers = new Set([...behind].filter((layer) => shown.has(layer)));
    if (!list || layers.size === 0) return;
    const items = new Map<Layer, Item[]>([...layers].map((layer) => [layer, []]));
    for (const item of list.items) items.get(item.layer)?.push(item);
    for (const [layer, mine] of items) {
      const before = painted.get(layer);
      const next = bundled(mine).map((bundle): Painted => {
        const known = before?.get(bundle.items[0]);
        return known && areSame(known.bundle, bundle) ? known : { bundle, element: elementFor(bundle, dressOf(bundle.items[0])) };
      });
      bring(groups.get(layer)!, next.map(({ element }) => element));
      painted.set(layer, new Map(next.map((one) => [one.bundle.items[0], one])));
      behind.delete(layer);
    }
    if (layers.has('needle')) liftNow();
  };
  const liftNow = () => {
    for (const { bundle, element } of painted.get('needle')?.values() ?? []) element.classList.toggle('away', bundle.placement !== undefined && lifted.has(bundle.placement));
  };

  return {
    paint: (next, dress) => {
      list = next;
      dressOf = dress;
      for (const layer of LAYERS) behind.add(layer);
      catchUp();
    },
    lift: (placements) => {
      if (placements.length === 0 && lifted.size === 0) return;
      lifted = new Set(placements);
      liftNow();
    },
    show: (layers) => {
      shown = layers;
      for (const [layer, group] of groups) group.classList.toggle('away', !layers.has(layer));
      catchUp();
    },
    look: (view, table, rim) => {
      svg.setAttribute('width', String(table.width + 2 * rim));
      svg.setAttribute('height', String(table.height + 2 * rim));
      root.setAttribute('transform', `translate(${rim - view.x * view.scale} ${rim - view.y * view.scale}) scale(${view.scale})`);
    },
  };
}

/** Makes the group's children exactly these, in this order, moving as few as it can. */
function bring(group: SVGGElement, wanted: readonly SVGElement[]): void {
  const wantedSet = new Set<Element>(wanted);
  for (const child of [...group.children]) if (!wantedSet.has(child)) child.remove();
  let at = group.firstElementChild;
  for (const element of wanted) {
    if (element === at) at = at.nextElementSibling;
    else group.insertBefore(element, at);
  }
}

function elementFor({ items }: Bundle, dress: string): SVGElement {
  const [item] = items;
  const element = document.createElementNS(SVG, item.kind === 'path' ? 'path' : 'text');
  if (item.kind === 'path') {
    element.setAttribute('d', items.map((one) => (one.kind === 'path' ? dataOf(one) : '')).join(''));
    if (item.holes) element.setAttribute('fill-rule', 'evenodd');
    if (item.filled) element.classList.add('filled');
  } else {
    element.setAttribute('x', String(item.at.x));
    element.setAttribute('y', String(item.at.y));
    element.setAttribute('font-size', String(item.height / CAPITALS));
    element.setAttribute('text-anchor', ANCHORS[item.anchor]);
    element.textContent = item.text;
  }
  for (const name of dress.split(' ')) if (name !== '') element.classList.add(name);
  return element;
}

const dataOf = remembered(({ path, holes = [] }: Drawn<'quilt'>) => [path, ...holes].map(screenData).join(''));
