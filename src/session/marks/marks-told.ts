// The marks of one placement's template as plain words and a picture: what to draw on it, and how far the needle line strays laid by them.

import { markedTemplate } from '../../drawing/marked-template.ts';
import type { DisplayList } from '../../drawing/display-list.ts';
import { setOut } from '../../engine/evaluate.ts';
import { marksOf } from '../../engine/marks.ts';
import type { Plan } from '../../model/plan.ts';
import { writeFineLength } from '../../num/inches.ts';
import { FOOT_SLACK, MARK_SLACK } from '../../num/tolerances.ts';

export interface MarksTold {
  readonly picture: DisplayList<'template'>;
  /** What is drawn on the template, by letter; none where its own etchings and tips do. */
  readonly letters: readonly string[];
  /** "Face down: A on the vertical centre line, tip on the horizontal centre line." */
  readonly sentences: readonly string[];
  /** How far the needle line may stray, and what would be steadier. */
  readonly straying: readonly string[];
}

/** What to mark on a placement's template so that all that is laid with it on this sheet can be laid again without measuring; undefined when it is not laid. */
export function marksTold(plan: Plan, sheet: string, placement: string): MarksTold | undefined {
  const mine = plan.sheets[sheet];
  if (!mine) return undefined;
  const { templates } = marksOf(setOut({ ...plan, sheets: { [sheet]: { ...mine, chosen: true } } }));
  const template = templates.find(({ layings }) => layings.some(({ laying }) => laying.laid.placement === placement));
  const laying = template?.layings.find((each) => each.laying.laid.placement === placement);
  if (!template || !laying) return undefined;
  const fine = (inches: number) => writeFineLength(inches, plan.shownIn);
  const { wander, steadier, meetings, sentences } = laying;
  return {
    picture: markedTemplate(template),
    letters: template.marks.map(({ letter }) => letter),
    sentences: sentences.map(({ say }) => say),
    straying: [
      wander.kind === 'held'
        ? `Laid by these, with each mark off by up to ${fine(MARK_SLACK)} and the foot by ${fine(FOOT_SLACK)}, the needle line strays by at most ${fine(wander.worst)} 95 times of 100.`
        : 'Nothing was found on it that holds it: lay it by its pins, or measure.',
      ...meetings.filter(({ stillMeets }) => !stillMeets).slice(0, 1).map(({ gap }) => `Ends that meet may come to lie ${fine(gap)} apart: start from the end that is sewn.`),
      ...(steadier ? [`Steadier: ${steadier.say} Then it strays by at most ${fine(steadier.worst)}.`] : []),
      ...(template.layings.length > 1 ? [`The same marks serve all ${template.layings.length} ways it is laid on this sheet, and every image of the repeat.`] : []),
    ],
  };
}
