// Templates whose outline, windows or sizes give no shape.

import { shapeOf } from '../../model/kit/shape-of.ts';
import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { finding } from '../report.ts';
import { chosenSheets } from '../../stitch/sheet-areas.ts';

/** One finding for each template of the kit that cannot be drawn; for one no chosen sheet uses it is only a note. */
export function badTemplate({ plan }: CheckInput): readonly Finding[] {
  const used = new Set(chosenSheets(plan).flatMap(([, sheet]) => Object.values(sheet.placements).map(({ template }) => template)));
  return Object.entries(plan.kit.templates).flatMap(([id, template]) => {
    const shape = shapeOf(template);
    if (shape.ok) return [];
    const found = finding('bad-template', `${template.name} cannot be drawn. ${shape.problem.message}`, { field: `kit.templates.${id}.${shape.problem.field}` });
    return [used.has(id) ? found : { ...found, severity: 'note' as const }];
  });
}
