// What is etched on a template, in one sentence: "2 centre lines, 1 cross, 10 ticks, 1 other line".

import type { EtchedShape } from '../../model/kit/shape.ts';

export function sayEtchings(etchings: readonly EtchedShape[]): string {
  if (etchings.length === 0) return 'Nothing is etched on it.';
  const counts = new Map<string, number>();
  for (const etching of etchings) counts.set(kindOf(etching), (counts.get(kindOf(etching)) ?? 0) + 1);
  const parts = [...counts].map(([kind, count]) => `${count === 1 ? 'one' : count} ${kind}${count === 1 ? '' : kind.endsWith('cross') ? 'es' : 's'}`);
  const said = parts.length === 1 ? parts[0]! : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)!}`;
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}

function kindOf({ kind, id }: EtchedShape): string {
  if (id.startsWith('centre-')) return 'centre line';
  if (id.startsWith('tick-')) return 'tick';
  if (id.startsWith('inner-line')) return 'quarter-inch inner line';
  return kind;
}
