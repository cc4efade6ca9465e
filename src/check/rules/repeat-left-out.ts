// Steps of a repeat that could not be done: a mirror that is not there or not straight, a side without a count.

import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { finding } from '../report.ts';
import { chosenPlacements } from '../stitched.ts';
import { sheetName } from '../words.ts';

/** One finding for each step of a repeat on a chosen sheet and each reason it is left out. */
export function repeatLeftOut(input: CheckInput): readonly Finding[] {
  const said = new Set<string>();
  return chosenPlacements(input).flatMap(({ sheet, placement, areas, repeatProblems }) =>
    repeatProblems.flatMap(({ step, detail }) => {
      const own = input.plan.sheets[sheet]?.placements[placement]?.repeat !== undefined;
      const field = own ? `sheets.${sheet}.placements.${placement}.repeat[${step}]` : `sheets.${sheet}.repeat[${step}]`;
      const key = `${field}\n${detail}`;
      if (said.has(key)) return [];
      said.add(key);
      const where = { ...(areas[0] !== undefined && { area: areas[0] }), sheet, placement, field };
      return [finding('repeat-left-out', `Step ${step + 1} of the repeat on ${sheetName(input.plan, sheet)} is left out. ${detail}`, where)];
    }),
  );
}
