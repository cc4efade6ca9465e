import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { distance } from '../geometry/point.ts';
import { type Pose, after, carry, poseOf, turnAbout } from '../geometry/pose.ts';
import { readPlan } from '../model/codec.ts';
import { random } from '../num/random.ts';
import { EYE, SAME_MARK } from '../num/tolerances.ts';
import { register } from '../place/register.ts';
import { placesRound } from '../place/wander/wander.ts';
import { setOut } from './evaluate.ts';
import { marksOf } from './marks.ts';

function example(name: string) {
  const plan = readPlan(readFileSync(new URL(`../../examples/${name}.needlefall.json`, import.meta.url), 'utf8'));
  if (!plan.ok) throw new Error(`${name} is not a plan.`);
  return setOut(plan.value);
}

// The judge is the registration solver: a template put down nearby and lined up by the marks alone must come to lie where the plan has it.
describe('the marks of the example plans', () => {
  it.each([['practice-block', 31], ['medallion', 32], ['tidewater', 33], ['king-size', 34]])('lay every placement of %s again, put down a little off (seed %i)', (name, seed) => {
    const chance = random(seed);
    const { templates } = marksOf(example(name));
    const layings = templates.flatMap((template) => template.layings);
    expect(layings.length).toBeGreaterThan(3);
    for (const { laying, holding, wander } of layings) {
      expect(holding, laying.id).toBeDefined();
      expect(wander.kind).toBe('held');
      const off: Pose<'template', 'area'> = after(laying.pose, turnAbout({ x: laying.pose.x, y: laying.pose.y }, chance.between(-0.05, 0.05)));
      const from = { ...off, x: off.x + chance.between(-0.1, 0.1), y: off.y + chance.between(-0.1, 0.1) };
      const lined = register(holding!.holds.map(({ requirement }) => requirement), { from, outline: laying.laid.template.outline, search: 'nearest' });
      if (lined.kind === 'impossible') throw new Error(`${laying.id}: the marks contradict each other.`);
      const misfit = Math.max(...holding!.holds.map((hold) => hold.misfit));
      expect(misfit).toBeLessThanOrEqual(SAME_MARK);
      const again = placesRound({ pose: lined.poses[0]!, sewn: laying.sewn });
      // A circle may have turned: each place of its needle line is somewhere on the line as it was.
      const before = placesRound({ pose: laying.pose, sewn: laying.sewn });
      again.forEach(({ at, away }, i) => {
        const moved = lined.kind === 'free' ? Math.min(...before.map((place) => Math.abs((at.x - place.at.x) * away.x + (at.y - place.at.y) * away.y))) : distance(at, before[i]!.at);
        expect(moved).toBeLessThan(lined.kind === 'free' ? EYE : 4 * misfit + 1e-6);
      });
    }
  });

  it('share marks among images: the sentences of all images of a petal name the same letters', () => {
    const petal = marksOf(example('practice-block')).templates.find(({ id }) => id === 'arc-6')!;
    const said = petal.layings[0]!.sentences;
    expect(said.flatMap(({ images }) => images).sort((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(said.filter(({ faceDown }) => faceDown)).toHaveLength(4);
    for (const { say } of said) expect(say).toMatch(/^Face (up|down): A along the diagonal .*, B on the .* edge\.$/);
  });

  it('lift two crosses that fall on one place to one dot', () => {
    const { tops } = marksOf(example('medallion'));
    const places = tops.flatMap(({ dots }) => dots.map(({ at }) => carry(poseOf<'area', 'area'>(0, 0), at)));
    for (const [i, a] of places.entries()) for (const b of places.slice(i + 1)) expect(distance(a, b)).toBeGreaterThan(SAME_MARK);
  });

  it('are made once for a plan', () => {
    const evaluation = example('practice-block');
    expect(marksOf(evaluation)).toBe(marksOf(evaluation));
  });
});
