// How the plan on the table is kept, under its name: "Saved a moment ago".

import { writeKept } from '../plans/said.ts';
import { useKeeper, useNow } from '../plans/use-kept.ts';

export function KeptWords() {
  const lying = useKeeper((state) => state.lying);
  const settled = useKeeper((state) => state.settled);
  const problem = useKeeper((state) => state.problem);
  const otherWindows = useKeeper((state) => state.otherWindows);
  const now = useNow();
  return <p className="plan-state" data-kept={settled && !problem}>{writeKept({ lying, settled, problem, otherWindows }, now)}</p>;
}
