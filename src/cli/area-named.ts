// The area a person named.

import type { LaidTop } from '../top/area.ts';

/** What to say when the named area is not on the top; undefined when it is, or when none was named. */
export function areaProblem(top: LaidTop, id: string | undefined): string | undefined {
  if (id === undefined || top.areas.some((area) => area.id === id)) return undefined;
  const ids = top.areas.map((area) => area.id);
  const shown = ids.slice(0, 12).join(', ');
  return `There is no area "${id}" on this top. There ${ids.length === 1 ? 'is' : 'are'}: ${shown}${ids.length > 12 ? ` and ${ids.length - 12} more (needlefall areas lists them)` : ''}.`;
}
