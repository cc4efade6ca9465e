// From an evaluation to the one display list that every painter draws from.

import { type Bounds, boundsOf, unionBounds } from '../geometry/bounds.ts';
import { whereIs } from '../geometry/inside.ts';
import type { Evaluation } from '../engine/evaluation.ts';
import type { LaidPlacement } from '../stitch/laid-placement.ts';
import type { Area } from '../top/area.ts';
import { type DisplayItem, type DisplayList, LAYERS, type Layer } from './display-list.ts';
import { boundaryOf, clothOf, clothOfArea } from './layers/cloth.ts';
import { drawnSign, signsOf } from './layers/findings.ts';
import { areaLabel, templateLabel } from './layers/labels.ts';
import { referenceLinesOf } from './layers/reference.ts';
import { grownToHold, stitchesOf } from './layers/stitches.ts';
import { templateOf } from './layers/template.ts';

export interface DrawOptions {
  /** The layers wanted; all of them when left out. */
  readonly layers?: readonly Layer[];
  /** Only what belongs to this area: its cloth, its reference lines, its own stitched lines, the templates laid on it. */
  readonly area?: string;
  /** The sheets whose templates are shown; those that are sewn when left out. */
  readonly sheets?: readonly string[];
  /** The areas whose reference lines are shown; when left out, those on which a template is shown. */
  readonly referenceLinesOf?: 'all' | readonly string[];
  /** Names of areas and templates. */
  readonly labels?: boolean;
}

/** What a drawing needs to know; findings may be missing while a hand is moving. */
export type Drawable = Omit<Evaluation, 'findings'> & Partial<Pick<Evaluation, 'findings'>>;

type Item = DisplayItem<'quilt'>;

/**
 * The picture of a top, in inches and quilt coordinates, in painting order. Its bounds hold the top (or the one area) and
 * every stitched line, but not templates that reach beyond. An area that is not there gives an empty list.
 */
export function drawTop(evaluation: Drawable, options: DrawOptions = {}): DisplayList<'quilt'> {
  const area = evaluation.top.areas.find((candidate) => candidate.id === options.area);
  if (options.area !== undefined && !area) return { bounds: { x: 0, y: 0, width: 0, height: 0 }, items: [] };
  const wanted = new Set<Layer>(options.layers ?? LAYERS);
  const lines = area ? evaluation.lines.filter((line) => line.area === area.id) : evaluation.lines;
  const extent = area ? boundsOf(boundaryOf(area)) : unionBounds([boundsOf(evaluation.top.rawEdge), ...evaluation.top.areas.filter(isDrawn).map((a) => boundsOf(boundaryOf(a)))]);
  const items = gather(evaluation, options, area, wanted, () => lines.map(stitchesOf));
  return { bounds: rectangle(grownToHold(extent, lines)), items: inPaintingOrder(items, wanted) };
}

function gather(evaluation: Drawable, options: DrawOptions, area: Area | undefined, wanted: ReadonlySet<Layer>, stitches: () => readonly Item[]): readonly (readonly Item[])[] {
  const { plan, top } = evaluation;
  const any = (...layers: readonly Layer[]) => layers.some((layer) => wanted.has(layer));
  const shown = shownTemplates(evaluation, options, area);
  const groups: (readonly Item[])[] = [];

  if (any('ground', 'seam', 'raw-edge', 'allowance', 'keep-out')) {
    groups.push(area ? clothOfArea(area, top, plan.top.clearance) : clothOf(top, plan.top.clearance));
  }
  if (any('reference', 'division')) {
    const onlyThese = options.referenceLinesOf ?? shown.map((template) => template.area.id);
    const lined = area ? [area] : onlyThese === 'all' ? top.areas : top.areas.filter((candidate) => isDrawn(candidate) || onlyThese.includes(candidate.id));
    groups.push(...lined.map(referenceLinesOf));
  }
  if (any('template', 'etching', 'missed-edge', 'template-edge', 'needle-unsewn')) {
    groups.push(...shown.map((template) => templateOf(template.laid, template.area)));
  }
  if (any('needle')) groups.push(stitches());
  if (any('finding')) {
    const signs = signsOf(evaluation.findings ?? [], top.areas);
    const here = area ? signs.filter((sign) => sign.finding.where.area === area.id || (sign.finding.where.area === undefined && whereIs(boundaryOf(area), sign.at) !== 'outside')) : signs;
    groups.push(here.flatMap(drawnSign));
  }
  if (options.labels && any('label')) {
    groups.push((area ? [area] : top.areas.filter((candidate) => candidate.kind !== 'top')).map(areaLabel));
    groups.push(shown.flatMap((template) => templateLabel(nameOf(evaluation, template.laid), templateOf(template.laid, template.area))));
  }
  return groups;
}

interface ShownTemplate {
  readonly laid: LaidPlacement;
  readonly area: Area;
}

/** Each placement once for every different shape of area it is laid on, on the first of them, or on the one area asked for. */
function shownTemplates({ plan, top, placements }: Drawable, { sheets }: DrawOptions, only: Area | undefined): readonly ShownTemplate[] {
  const areaById = new Map(top.areas.map((area) => [area.id, area] as const));
  return placements.flatMap((laid) => {
    const shown = sheets ? sheets.includes(laid.sheet) : plan.sheets[laid.sheet]?.chosen;
    const first = laid.areas[0];
    const area = only ? (laid.areas.includes(only.id) ? only : undefined) : first === undefined ? undefined : areaById.get(first);
    return shown && area ? [{ laid, area }] : [];
  });
}

function nameOf({ plan }: Drawable, laid: LaidPlacement): string {
  const placement = plan.sheets[laid.sheet]?.placements[laid.placement];
  return placement?.name ?? plan.kit.templates[placement?.template ?? '']?.name ?? laid.placement;
}

function isDrawn(area: Area): boolean {
  return area.kind === 'drawn';
}

/** Layer upon layer, and within a layer in the order they came. */
function inPaintingOrder(groups: readonly (readonly Item[])[], wanted: ReadonlySet<Layer>): readonly Item[] {
  const byLayer = new Map<Layer, Item[]>(LAYERS.map((layer) => [layer, []]));
  for (const group of groups) for (const item of group) if (wanted.has(item.layer)) byLayer.get(item.layer)!.push(item);
  return [...byLayer.values()].flat();
}

function rectangle({ minX, minY, maxX, maxY }: Bounds): DisplayList<'quilt'>['bounds'] {
  return minX > maxX ? { x: 0, y: 0, width: 0, height: 0 } : { x: minX, y: minY, width: maxX - minX, height: maxY - minY };
}
