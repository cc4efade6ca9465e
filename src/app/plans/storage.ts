// How the browser keeps what it is given: asked once to keep it for good, and what it answered, in words.

import { listPlans } from './plan-list.ts';
import { writeSize } from './said.ts';

const ASKED = 'needlefall.asked-to-keep';

/** Asks the browser, once ever, not to clear the plans when the disk is short. */
export async function askToKeep(): Promise<void> {
  const storage = storageHere();
  if (!storage?.persist) return;
  try {
    if (localStorage.getItem(ASKED) !== null) return;
    localStorage.setItem(ASKED, 'yes');
  } catch {
    return;
  }
  await storage.persist();
}

/** How many plans there are, how large, and how safe. */
export async function storageWords(): Promise<string> {
  const plans = await listPlans();
  const storage = storageHere();
  const [forGood, estimate] = await Promise.all([storage?.persisted?.() ?? false, storage?.estimate?.()]);
  const size = estimate?.usage === undefined ? '' : `, ${writeSize(estimate.usage)} with their versions`;
  const count = plans.filter(({ deleted }) => deleted === undefined).length;
  const safe = forGood ? 'They stay until you delete them.' : 'The browser may clear them when the disk is full: save to a file what matters.';
  return `${count === 1 ? '1 plan' : `${count} plans`}${size}, kept in this browser on this device. ${safe}`;
}

/** Browsers have it only on addresses they trust. */
function storageHere(): Partial<StorageManager> | undefined {
  return (navigator as { readonly storage?: Partial<StorageManager> }).storage;
}
