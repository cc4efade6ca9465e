// Windows on the same plans: what one tells the others, and how many have a plan on the table. Counting is done with
// locks that the browser lets go by itself when a window closes or crashes; where there are none, nobody is counted.

export type WindowMessage =
  /** A plan has a later revision; `instead` when it took the place of what another window had just made. */
  | { readonly kind: 'kept'; readonly plan: string; readonly revision: number; readonly instead: boolean }
  /** Something in the list of plans or versions is not as it was. */
  | { readonly kind: 'list' }
  /** A window has laid this plan on its table, or put it away. */
  | { readonly kind: 'windows'; readonly plan: string };

const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('needlefall.plans');
const listeners = new Set<(message: WindowMessage) => void>();
if (channel) channel.onmessage = ({ data }) => hear(data as WindowMessage);

/** Tells every window, this one included. */
export function tellWindows(message: WindowMessage): void {
  channel?.postMessage(message);
  hear(message);
}

/** Hears what is told, also by this window itself; returns how to stop. */
export function onWindowMessage(listener: (message: WindowMessage) => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Says that this window has the plan on its table, until it is let go. */
export function holdPlan(plan: string): () => void {
  let letGo = () => undefined as void;
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  const tell = () => tellWindows({ kind: 'windows', plan });
  void locks()
    ?.request(lockName(plan), { mode: 'shared' }, () => {
      tell();
      return held;
    })
    .then(tell);
  return letGo;
}

/** How many other windows have the plan on their table. */
export async function otherWindows(plan: string): Promise<number> {
  const held = (await locks()?.query())?.held ?? [];
  return Math.max(0, held.filter(({ name }) => name === lockName(plan)).length - 1);
}

function hear(message: WindowMessage): void {
  for (const listener of listeners) listener(message);
}

function lockName(plan: string): string {
  return `needlefall.plan.${plan}`;
}

/** Browsers have them only on addresses they trust. */
function locks(): LockManager | undefined {
  return (navigator as Partial<Navigator>).locks;
}
