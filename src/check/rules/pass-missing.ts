// Passes that could not be found on the needle line: a start or stop off its end, a crossing or line that is not there.

import type { LaidPass } from '../../stitch/laid-placement.ts';
import type { FindingCode } from '../codes.ts';
import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { finding } from '../report.ts';
import { areaName, templateName } from '../words.ts';
import { chosenPlacements } from '../stitched.ts';

type Why = Extract<LaidPass, { kind: 'missing' }>['why'];

const CODE: { readonly [why in Why]: FindingCode } = {
  'off-the-end': 'pass-off-line',
  'no-crossing': 'pass-no-crossing',
  'no-line': 'pass-no-line',
  'no-edge': 'pass-no-edge',
  'no-length': 'pass-no-length',
};

/** One finding for each pass of a chosen sheet and each reason it cannot be sewn, however many areas it is so in. */
export function passMissing(input: CheckInput): readonly Finding[] {
  const found = new Map<string, { readonly finding: (areas: readonly string[]) => Finding; readonly areas: string[] }>();
  for (const laid of chosenPlacements(input)) {
    for (const pass of laid.passes) {
      if (pass.kind === 'found') continue;
      const key = [laid.sheet, laid.placement, pass.pass, pass.why, pass.end ?? '', pass.detail].join('\n');
      const known = found.get(key);
      if (known) {
        known.areas.push(...laid.areas);
        continue;
      }
      const name = input.plan.sheets[laid.sheet]?.placements[laid.placement]?.passes[pass.pass]?.name ?? pass.pass;
      const field = `sheets.${laid.sheet}.placements.${laid.placement}.passes.${pass.pass}${pass.end ? `.${pass.end}` : ''}`;
      found.set(key, {
        areas: [...laid.areas],
        finding: (areas) => {
          const first = areas[0] ?? '';
          const more = areas.length > 1 ? ` and ${areas.length - 1} more` : '';
          const message = `Pass ${name} of ${templateName(input.plan, laid.sheet, laid.placement)} cannot be sewn in ${areaName(input, first)}${more}. ${pass.detail}`;
          return finding(CODE[pass.why], message, { area: first, sheet: laid.sheet, placement: laid.placement, pass: pass.pass, field });
        },
      });
    }
  }
  return [...found.values()].map(({ finding: make, areas }) => make(areas));
}
