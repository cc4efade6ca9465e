import { describe, expect, it } from 'vitest';
import { drawTop } from '../../drawing/draw.ts';
import { setOut } from '../../engine/evaluate.ts';
import { LAYERS } from '../../drawing/display-list.ts';
import { EXAMPLES } from '../plans/examples.ts';
import { planOfExample } from '../plans/open.ts';
import { areSame, bundled } from './bundles.ts';

const read = await planOfExample(EXAMPLES[0]);
if (!read.ok) throw new Error('The example cannot be read');
const drawn = drawTop(setOut(read.value), { labels: true }).items;
const itemsOf = (layer: (typeof LAYERS)[number]) => drawn.filter((item) => item.layer === layer);

describe('bundles', () => {
  it.each(LAYERS)('hold everything on the layer %s once and in its order', (layer) => {
    const items = itemsOf(layer);
    expect(bundled(items).flatMap((bundle) => [...bundle.items])).toEqual(items);
  });

  it('of stitched lines follow one placement each', () => {
    const items = itemsOf('needle');
    const bundles = bundled(items);
    expect(bundles.length).toBeLessThan(items.length / 4);
    for (const { items: mine, placement } of bundles) {
      for (const { source } of mine) expect(source.split('/').slice(1, 3).join('/')).toBe(placement);
    }
  });

  it('leave what is filled to itself, so that each piece of cloth wears its own colour', () => {
    for (const { items } of bundled(itemsOf('ground'))) expect(items).toHaveLength(1);
  });

  it('are the same when their items are the same objects', () => {
    const items = itemsOf('needle');
    const [first] = bundled(items);
    const [again] = bundled(items);
    expect(areSame(first!, again!)).toBe(true);
    expect(areSame(first!, bundled(items.map((item, i) => (i === 1 ? { ...item } : item)))[0]!)).toBe(false);
  });
});
