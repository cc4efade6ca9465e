// Offers, and what becomes of the plan when one is taken. What they say is held against closed forms named beside each check.

import { describe, expect, it } from 'vitest';
import { borderPlan } from '../../engine/border-set-out.fixture.ts';
import { evaluate } from '../../engine/evaluate.ts';
import type { Plan, Sheet } from '../../model/plan.ts';
import { undo } from '../change-plan.ts';
import { createSession, planOf } from '../store.ts';
import { marksTold } from '../marks/marks-told.ts';
import { offersFor } from './offers.ts';
import type { Offer, Offers } from './offer.ts';
import { ask, leaveSettingOut, takeOffer } from './setting-out.ts';

function offersOf(offers: Offers): readonly Offer[] {
  if (offers.kind === 'none') throw new Error(offers.why.join(' '));
  return offers.offers;
}

/** One arc of needle radius 4 1/4, sewn over a chord of 4 in about its middle. */
function arcPlan(): Plan {
  const plan = borderPlan();
  const half = Math.asin(2 / 4.25);
  const arcSheet: Sheet = {
    name: 'Arc',
    for: { kind: 'panel' },
    chosen: true,
    placements: {
      arc: {
        template: 'round', foot: 'round', flipped: false, pose: { x: 0, y: 0, angle: 0 }, registrations: [],
        passes: { a: { start: { along: 0 }, stop: { along: 4.25 * 2 * half }, way: 'clockwise' } },
      },
    },
    repeat: [],
    fills: {},
  };
  return {
    ...plan,
    kit: { ...plan.kit, templates: { round: { name: 'Circle 8', family: 'circle', sizes: { diameter: 8 }, thickness: 0.25, grips: 'none' } } },
    sheets: { arc: arcSheet },
  };
}

describe('a border', () => {
  it('is offered with counts that fit its sides, told in words, with sheets to be sewn', () => {
    const offers = offersOf(offersFor(borderPlan(), { kind: 'border', border: 1, template: 'arc', pattern: 'scallop', spacing: 6, crest: 1 }));
    // (motif + spacing) x n = length: 60 and 72 share a spacing of 6, 10 and 12 times (trade instructions for border repeats).
    expect(offers[0]!.title).toBe('10 repeats on top and bottom, 12 on the sides');
    expect(offers[0]!.about.join(' ')).toContain('Arc 5, scallop. 6 in each on all sides.');
    expect(offers[0]!.sheets.every(({ chosen }) => chosen)).toBe(true);
    expect(new Set(offers.map(({ id }) => id)).size).toBe(offers.length);
  });

  it('says what stands in the way', () => {
    const none = (plan: Plan, asked: Parameters<typeof offersFor>[1]) => {
      const offers = offersFor(plan, asked);
      return offers.kind === 'none' ? offers.why.join(' ') : offers.offers.length;
    };
    const plan = borderPlan();
    expect(none(plan, { kind: 'border', border: 4 })).toBe('This top has no such border. Give it one in Top.');
    expect(none({ ...plan, kit: { ...plan.kit, feet: {} } }, { kind: 'border', border: 1 })).toContain('no foot');
    // A circle of 1 in sews 1 1/2 in across with a half-inch foot.
    expect(none(plan, { kind: 'border', border: 1, template: 'small', pattern: 'scallop', spacing: 12 })).toContain('1 1/2 in');
  });

  it('is laid in one step of undo; another takes the place of the first', () => {
    const session = createSession(borderPlan(), { kind: 'new' });
    ask(session, { kind: 'border', border: 1, template: 'oval' });
    const offers = offersOf(offersFor(borderPlan(), { kind: 'border', border: 1, template: 'oval' }));
    takeOffer(session, offers[0]!);
    const first = Object.keys(planOf(session.getState()).sheets);
    expect(first).toHaveLength(offers[0]!.sheets.length);
    takeOffer(session, offers[1]!);
    expect(Object.values(planOf(session.getState()).sheets).map(({ repeat }) => repeat)).toEqual(offers[1]!.sheets.map(({ repeat }) => repeat));
    undo(session);
    undo(session);
    expect(planOf(session.getState()).sheets).toEqual({});
    leaveSettingOut(session);
    expect(session.getState().settingOut).toBeUndefined();
  });
});

describe('a line', () => {
  it('echoed by the circle it was sewn with: off by 1/68 in inside or 1/60 outside, whichever is less', () => {
    const [offer] = offersOf(offersFor(arcPlan(), { kind: 'echo', sheet: 'arc', area: 'panel', placement: 'arc', pass: 'a', distance: 0.25 }));
    // Least greatest deviation of a radius of 4 1/4 from one of 4 or 4 1/2 over a chord of 4 in: half the difference of the sagittas, in closed form 1/68 in inside.
    expect(offer!.about.join(' ')).toContain('to within 0.015 in');
    expect(Object.keys(offer!.sheets[0]!.placements)).toEqual(['arc', 'echo']);
  });

  it('drawn straight over the panel is sewn exactly by what has a straight edge, and by nothing with only a small circle', () => {
    const straight = borderPlan();
    const withEdge: Plan = { ...straight, kit: { ...straight.kit, templates: { edge: { name: 'Edge', family: 'straight-edge', sizes: {}, thickness: 0.25, grips: 'none' } } } };
    const asked = { kind: 'match', area: 'panel', line: 'M -2 0 H 2', within: 1 / 32 } as const;
    const [offer] = offersOf(offersFor(withEdge, asked));
    expect(offer!.about[0]).toBe('It follows the line exactly.');
    const lines = evaluate({ ...withEdge, sheets: { a: offer!.sheets[0]! } }).lines;
    expect(lines.reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(4, 6);
    const onlyRound: Plan = { ...straight, kit: { ...straight.kit, templates: { small: straight.kit.templates['small']! } } };
    // Of a needle radius of 3/4 in, a chord whose sagitta is 2/128 in is 2 sqrt(2 r h) long, 0.31 in: shorter than the half inch worth a placement.
    expect(offersFor(onlyRound, { ...asked, within: 1 / 128 }).kind).toBe('none');
  });

  it('that cannot be read, or is no longer there, is told', () => {
    expect(offersFor(borderPlan(), { kind: 'match', area: 'panel', line: 'M 0 0 Q', within: 0.03 }).kind).toBe('none');
    expect(offersFor(borderPlan(), { kind: 'echo', sheet: 'gone', area: 'panel', placement: 'a', pass: 'a', distance: 0.25 }).kind).toBe('none');
  });
});

describe('marks', () => {
  it('are told with the sentences that lay the template by them; of a sheet that is not there, nothing', () => {
    const offers = offersOf(offersFor(borderPlan(), { kind: 'border', border: 1, template: 'leaf', pattern: 'wave' }));
    const plan: Plan = { ...borderPlan(), sheets: { a: { ...offers[0]!.sheets[0]!, chosen: false } } };
    const told = marksTold(plan, 'a', 'unit')!;
    expect(told.sentences.length).toBeGreaterThan(0);
    expect(told.straying[0]).toMatch(/strays by at most 0\.\d+ in/);
    expect(marksTold(plan, 'b', 'unit')).toBeUndefined();
  });
});
