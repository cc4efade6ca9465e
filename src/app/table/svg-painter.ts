// Paints a display list on the screen: one group a layer, one path a thing drawn, arcs as arcs. Elements of things that
// stayed the same are kept, so a change costs what changed. Colours and line weights come from the stylesheet.

import { writePathData } from '../../geometry/svg/write.ts';
import { type DisplayItem, type DisplayList, LAYERS, type Layer } from '../../drawing/display-list.ts';
import type { ScreenSize, View } from '../../session/view.ts';

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
  let elements = new Map<DisplayItem<'quilt'>, SVGElement>();
  let lifted: SVGElement[] = [];

  return {
    paint: (list, dressOf) => {
      const next = new Map<DisplayItem<'quilt'>, SVGElement>();
      const inLayers = new Map<Layer, SVGElement[]>();
      for (const item of list.items) {
        const element = elements.get(item) ?? elementFor(item, dressOf(item));
        next.set(item, element);
        const layer = inLayers.get(item.layer);
        if (layer) layer.push(element);
        else inLayers.set(item.layer, [element]);
      }
      for (const [layer, group] of groups) bring(group, inLayers.get(layer) ?? []);
      elements = next;
    },
    lift: (placements) => {
      for (const element of lifted) element.classList.remove('away');
      lifted = [];
      if (placements.length === 0) return;
      const wanted = new Set(placements);
      for (const [item, element] of elements) {
        if (item.layer !== 'needle' || !wanted.has(placementOf(item.source))) continue;
        element.classList.add('away');
        lifted.push(element);
      }
    },
    show: (layers) => {
      for (const [layer, group] of groups) group.classList.toggle('away', !layers.has(layer));
    },
    look: (view, table, rim) => {
      svg.setAttribute('width', String(table.width + 2 * rim));
      svg.setAttribute('height', String(table.height + 2 * rim));
      root.setAttribute('transform', `translate(${rim - view.x * view.scale} ${rim - view.y * view.scale}) scale(${view.scale})`);
    },
  };
}

/** `sheet/placement` of a stitched line's id, which is `area/sheet/placement/pass/image`. */
function placementOf(line: string): string {
  const [, sheet, placement] = line.split('/');
  return `${sheet}/${placement}`;
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

function elementFor(item: DisplayItem<'quilt'>, dress: string): SVGElement {
  const element = document.createElementNS(SVG, item.kind === 'path' ? 'path' : 'text');
  if (item.kind === 'path') {
    element.setAttribute('d', [item.path, ...(item.holes ?? [])].map(writePathData).join(''));
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
