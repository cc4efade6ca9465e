// Ids that lead nowhere: a template or foot that is not in the kit, an area the top does not have.

import type { Severity, Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { finding } from '../report.ts';
import { sheetName } from '../words.ts';

/** One finding for each id of a sheet that leads nowhere; on a sheet that is not chosen it is only a note. */
export function unknownIds({ plan, top }: CheckInput): readonly Finding[] {
  const areas = new Set(top.areas.map((area) => area.id));
  return Object.entries(plan.sheets).flatMap(([id, sheet]) => {
    const found: Finding[] = [];
    for (const [placementId, { template, foot }] of Object.entries(sheet.placements)) {
      const where = { sheet: id, placement: placementId };
      const field = `sheets.${id}.placements.${placementId}`;
      if (!Object.hasOwn(plan.kit.templates, template)) {
        found.push(finding('unknown-template', `${sheetName(plan, id)} uses the template "${template}", which is not in the kit.`, { ...where, field: `${field}.template` }));
      }
      if (!Object.hasOwn(plan.kit.feet, foot)) {
        found.push(finding('unknown-foot', `${sheetName(plan, id)} uses the foot "${foot}", which is not in the kit.`, { ...where, field: `${field}.foot` }));
      }
    }
    for (const list of ['only', 'except'] as const) {
      (sheet.for[list] ?? []).forEach((area, i) => {
        if (areas.has(area)) return;
        found.push(finding('unknown-area', `${sheetName(plan, id)} names the area "${area}", which this top does not have.`, { sheet: id, field: `sheets.${id}.for.${list}[${i}]` }));
      });
    }
    return sheet.chosen ? found : found.map((each): Finding => ({ ...each, severity: 'note' satisfies Severity }));
  });
}
