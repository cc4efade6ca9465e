// Registrations that cannot be met together, or that name something that is not there.

import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { finding } from '../report.ts';
import { chosenPlacements } from '../stitched.ts';
import { areaName, templateName, written } from '../words.ts';

/** One finding for each placement of a chosen sheet, each kind of area and each reason; of what cannot be met, measured is the gap the best try leaves. */
export function placementHeld(input: CheckInput): readonly Finding[] {
  const { plan } = input;
  const said = new Set<string>();
  return chosenPlacements(input).flatMap(({ sheet, placement, standing, areas }) => {
    const area = areas[0] ?? '';
    const name = templateName(plan, sheet, placement);
    const field = `sheets.${sheet}.placements.${placement}.registrations`;
    const once = (found: Finding): readonly Finding[] => {
      const key = `${sheet}\n${placement}\n${found.message}`;
      if (said.has(key)) return [];
      said.add(key);
      return [found];
    };
    if (standing.kind === 'impossible') {
      const message = `${name} cannot lie in ${areaName(input, area)} as told: ${written(plan, standing.gap)} are left open. Take out a pin.`;
      return once(finding('placement-impossible', message, { area, sheet, placement, field: `${field}[${standing.against[0] ?? 0}]` }, { measured: standing.gap, limit: 0 }));
    }
    if (standing.kind === 'unreadable') {
      return once(finding('registration-unreadable', `${name} cannot be put as told. ${standing.detail}`, { area, sheet, placement, field: `${field}[${standing.registration}]` }));
    }
    return [];
  });
}
