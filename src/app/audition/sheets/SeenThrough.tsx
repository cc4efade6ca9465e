// The sheets that show through the one on the table, each as strongly as it is wished to; and of sewn sheets that it covers in part,
// what lies beside it.

import { useMemo } from 'react';
import type { Evaluation } from '../../../engine/evaluation.ts';
import { coveredPlacements } from '../../../session/sheet/covered.ts';
import { areasById } from '../../../space/lines-near.ts';
import { inkData } from '../table/ink-data.ts';
import { useSession, useTheSession } from '../../use-session.ts';
import { useOnTable } from '../use-on-table.ts';

export function SeenThrough() {
  const session = useTheSession();
  const through = useSession((state) => state.seen.through);
  // What a hand moves is drawn by others; all else lies as it did when the hand took it up.
  const evaluation = useSession((state) => state.gesture?.settled ?? state.evaluation);
  const on = useOnTable();
  const seen = useMemo(() => {
    const { placements, top: { areas }, plan: { sheets } } = evaluation;
    const layers = Object.entries(through).flatMap(([sheet, strength]) => {
      if (sheet === on?.sheet?.id || !sheets[sheet]) return [];
      return [{ key: sheet, strength, d: dataOf(placements, areas, sheet, () => true) }];
    });
    // A sewn sheet is on the quilt already, unless the one on the table covers it.
    const covered = new Set(coveredPlacements({ ...session.getState(), evaluation }).map(({ sheet }) => sheet));
    const mine = new Set((on?.areas ?? []).map(({ id }) => id));
    const beside = [...covered].map((sheet) => ({ key: `${sheet} beside`, strength: 1, d: dataOf(placements, areas, sheet, (id) => !mine.has(id)) }));
    return [...layers.filter(({ key }) => covered.has(key) || !sheets[key]!.chosen), ...beside].filter(({ d }) => d !== '');
  }, [session, through, evaluation, on]);
  return <>{seen.map(({ key, strength, d }) => <g key={key} className="layer needle seen-through" opacity={strength}><path d={d} /></g>)}</>;
}

function dataOf(placements: Evaluation['placements'], areas: Evaluation['top']['areas'], sheet: string, wanted: (area: string) => boolean): string {
  const byId = areasById(areas);
  return placements
    .filter((laid) => laid.sheet === sheet)
    .map((laid) => inkData(laid, laid.areas.flatMap((id) => (wanted(id) ? (byId.get(id) ?? []) : []))))
    .join('');
}
