import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readPlan, writePlan } from './codec.ts';

const full = readFileSync(new URL('../../test/corpus/plans/version-1.needlefall.json', import.meta.url), 'utf8');

type Loose = { [field: string | number]: Loose };

/** What is wrong after a change to a good plan: path, what was found, line. */
function wrongAfter(change: (plan: Loose) => void) {
  const value = JSON.parse(full) as Loose;
  change(value);
  const plan = readPlan(JSON.stringify(value, null, 1));
  return plan.ok ? [] : plan.problem.map(({ path, found }) => [path, found]);
}

const put = (value: unknown) => value as Loose;

describe('reading a plan', () => {
  it('reads a plan that uses every field, and writes the same text again', () => {
    const plan = readPlan(full);
    if (!plan.ok) throw new Error(plan.problem[0]!.message);
    expect(plan.value).toEqual(JSON.parse(full));
    expect(writePlan(plan.value)).toBe(full);
  });

  it('keeps unknown fields at every level', () => {
    const marked = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(marked);
      if (typeof value !== 'object' || value === null) return value;
      const inside = Object.fromEntries(Object.entries(value).map(([key, each]) => [key, marked(each)]));
      // Maps keyed by id hold things of one kind only: an unknown field among them would be a thing of that kind.
      const isMap = Object.values(value).every((each) => typeof each === 'object' && each !== null && 'name' in each) || 'radius' in value || 'slot' in value || 'mine' in value || 'dot' in value || 'a' in value || 'spacing' in value || 'echo' in value || 'near-seam corner-arcs/p1/a' in value;
      return isMap ? inside : { ...inside, later: { x: [1, 'two'] } };
    };
    const value = marked(JSON.parse(full));
    expect(JSON.stringify(value).match(/"later"/g)!.length).toBeGreaterThan(40);
    const plan = readPlan(JSON.stringify(value));
    if (!plan.ok) throw new Error(plan.problem[0]!.message);
    const again = readPlan(writePlan(plan.value));
    expect(again.ok && again.value).toEqual(value);
  });

  it('says all that is wrong at once, each with its path and what was found', () => {
    expect(
      wrongAfter((plan) => {
        plan['kit']!['feet']!['half-round']!['diameter'] = put('half');
        plan['top']!['blocks']!['rows'] = put(0);
        plan['top']!['borders']![1]!['measured']!['top'] = put(-1);
        delete plan['sheets']!['corner-arcs']!['placements']!['p1']!['foot'];
        plan['sheets']!['border']!['chosen'] = put('yes');
      }),
    ).toEqual([
      ['kit.feet.half-round.diameter', '"half"'],
      ['top.blocks.rows', '0'],
      ['top.borders[1].measured.top', '-1'],
      ['sheets.corner-arcs.placements.p1.foot', 'nothing'],
      ['sheets.border.chosen', '"yes"'],
    ]);
  });

  it('gives the line of the field, or of the thing that should hold it', () => {
    const text = full.replace('"diameter": 0.53125', '"diameter": 53125');
    const line = full.split('\n').findIndex((each) => each.includes('0.53125')) + 1;
    const plan = readPlan(text);
    expect(!plan.ok && plan.problem).toEqual([
      {
        path: 'kit.feet.off-centre.diameter',
        expected: 'inches, more than 0 and at most 4',
        found: '53125',
        message: `kit.feet.off-centre.diameter (line ${line}): expected inches, more than 0 and at most 4; found 53125.`,
        line,
        column: full.split('\n')[line - 1]!.indexOf('0.53125') + 1,
      },
    ]);
  });

  it('where several kinds are possible, says what is wrong with the one that was meant', () => {
    expect(
      wrongAfter((plan) => {
        const templates = plan['kit']!['templates']!;
        delete templates['arc8']!['sizes'];
        templates['mine']!['outline'] = put(5);
        templates['empty'] = put({ name: 'x', thickness: 0.25, grips: 'none' });
        templates['both'] = put({ ...(JSON.parse(full) as Loose)['kit']!['templates']!['arc8'], outline: 'M 0 0' });
        const sheet = plan['sheets']!['border']!;
        sheet['repeat'] = put([{ turn: 0 }, { mirror: 'a', turn: 4 }, {}, { along: 'walk', count: 3 }, { along: 'run', count: { top: 0 } }, { along: 'run', count: 'x' }]);
        const pass = plan['sheets']!['corner-arcs']!['placements']!['p1']!['passes']!['a']!;
        pass['start'] = put({ crosses: 4 });
        pass['stop'] = put('round');
        templates['mine']!['etchings']!['dot']!['kind'] = put('dott');
      }),
    ).toEqual([
      ['kit.templates.arc8.sizes', 'nothing'],
      ['kit.templates.mine.etchings.dot.kind', '"dott"'],
      ['kit.templates.mine.outline', '5'],
      ['kit.templates.empty', 'a map with "name", "thickness", "grips"'],
      ['kit.templates.both.outline', '"M 0 0"'],
      ['sheets.corner-arcs.placements.p1.passes.a.start.crosses', '4'],
      ['sheets.corner-arcs.placements.p1.passes.a.stop', '"round"'],
      ['sheets.border.repeat[0].turn', '0'],
      ['sheets.border.repeat[1].turn', '4'],
      ['sheets.border.repeat[2]', 'an empty map'],
      ['sheets.border.repeat[3].along', '"walk"'],
      ['sheets.border.repeat[4].count.top', '0'],
      ['sheets.border.repeat[5].count', '"x"'],
    ]);
  });

  it('leaves what ids refer to for the checks', () => {
    expect(wrongAfter((plan) => void (plan['sheets']!['corner-arcs']!['placements']!['p1']!['template'] = put('not-there')))).toEqual([]);
  });

  it.each(['constructor', '__proto__', 'toString', 'a b', 'a/b', 'a:b', ''])('takes no id %j', (id) => {
    const inMap = full.replace('"half-round":', `${JSON.stringify(id)}:`);
    const asReference = full.replace('"foot": "half-round"', `"foot": ${JSON.stringify(id)}`);
    expect(readPlan(asReference).ok).toBe(false);
    expect(readPlan(inMap).ok).toBe(false);
  });

  it.each([
    ['', 'The file is empty.'],
    ['null', 'This is not a Needlefall plan: expected "format": "needlefall-plan", found null.'],
    ['{"a": 1}', 'This is not a Needlefall plan: expected "format": "needlefall-plan", found nothing.'],
    ['{\n"format": "needlefall-plan"\n"version": 1}', 'This is not JSON past line 3, column 1: expected "," or "}", found "\\"version\\": 1…".'],
    ['{"format": "needlefall-plan", "version": 7}', 'This plan was made by a newer Needlefall: it is version 7, and this one reads up to version 1.'],
    ['{"format": "needlefall-plan", "version": "1"}', 'version (line 1): expected a version number, 1 or more; found "1".'],
  ])('says plainly what is the matter with %j', (text, message) => {
    const plan = readPlan(text);
    expect(!plan.ok && plan.problem.map((problem) => problem.message)).toEqual([message]);
  });

  it('does not mind a byte order mark', () => {
    expect(readPlan(`\uFEFF${full}`).ok).toBe(true);
  });
});
