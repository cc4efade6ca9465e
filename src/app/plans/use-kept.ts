// What is kept of plans, within React: read from the database, and read again whenever a window changes it.

import { createContext, useContext, useEffect, useState, useSyncExternalStore } from 'react';
import { useStore } from 'zustand';
import type { Keeper, KeeperState } from './keeper.ts';
import { onWindowMessage } from './windows.ts';

export const KeeperContext = createContext<Keeper | undefined>(undefined);

/** What keeps the plan on the table. */
export function useTheKeeper(): Keeper {
  const keeper = useContext(KeeperContext);
  if (!keeper) throw new Error('Nothing keeps the plan: a part of the screen was used outside the app.');
  return keeper;
}

/** A part of how the plan on the table is kept. */
export function useKeeper<Part>(part: (state: KeeperState) => Part): Part {
  return useStore(useTheKeeper().store, part);
}

/** What a reading of the database gives: undefined until it is there. `read` must be the same function as long as it reads the same. */
export function useKept<Kept>(read: () => Promise<Kept>): Kept | undefined {
  const [kept, setKept] = useState<Kept>();
  useEffect(() => {
    let wanted = true;
    const again = () => {
      read().then((found) => wanted && setKept(found), () => undefined);
    };
    again();
    const stop = onWindowMessage(({ kind }) => kind !== 'windows' && again());
    return () => {
      wanted = false;
      stop();
    };
  }, [read]);
  return kept;
}

const EVERY = 15_000;

/** The time, told again every quarter of a minute. */
export function useNow(): number {
  return useSyncExternalStore(eachQuarter, () => Math.floor(Date.now() / EVERY) * EVERY + EVERY);
}

function eachQuarter(tell: () => void): () => void {
  const timer = setInterval(tell, 1000);
  return () => clearInterval(timer);
}
