// The page begins: theme first, then whatever plan lies on the table.

import './look/fonts.css';
import './look/tokens.css';
import './look/cloth.css';
import './look/base.css';
import { startTransition } from 'react';
import { createRoot } from 'react-dom/client';
import { newPlan } from '../model/new-plan.ts';
import { createSession } from '../session/store.ts';
import { App } from './App.tsx';
import { findingsAtLeisure } from './findings-at-leisure.ts';
import { whenSpare } from './in-steps.ts';
import { HAND, MOVEMENT, THEME } from './look/choices.ts';
import { EXAMPLES } from './plans/examples.ts';
import { createKeeper } from './plans/keeper.ts';
import { lastPlan } from './plans/last-plan.ts';
import { layExample, layKept } from './plans/lay-plan.ts';
import { plansByUse } from './plans/plan-list.ts';
import { KeeperContext } from './plans/use-kept.ts';
import { SessionContext } from './use-session.ts';

for (const choice of [THEME, HAND, MOVEMENT]) choice.takeKept();

const session = createSession(newPlan('A first block'), { kind: 'new' });
const keeper = createKeeper(session);
const table = { session, keeper };
const root = createRoot(document.getElementById('app')!);

/** The database may be slow or stuck; then the first example lies on the table until it answers. */
const PATIENCE = 4000;

void layFirstPlan().then(() => {
  // As a transition it is made bit by bit; until all of it is there the page shows what index.html draws.
  startTransition(() => {
    root.render(
      <SessionContext value={session}>
        <KeeperContext value={keeper}>
          <App />
        </KeeperContext>
      </SessionContext>,
    );
  });
  // Check opens at once when the findings are known by then.
  whenSpare(() => findingsAtLeisure(session));
});

/** What lay here last, or on any table, if it can be read; the first example otherwise; a single block when not even that. */
async function layFirstPlan(): Promise<void> {
  const last = lastPlan();
  if (last?.kind !== 'example' && (await Promise.race([layOwn(last?.id), waited(PATIENCE)]))) return;
  const example = EXAMPLES.find(({ id }) => last?.kind === 'example' && id === last.id) ?? EXAMPLES[0];
  await layExample(table, example);
}

/** True when the plan, or the one laid last that can be read, lies on the table. */
async function layOwn(id: string | undefined): Promise<boolean> {
  try {
    const heads = await plansByUse();
    const wanted = [...heads.filter((head) => head.id === id), ...heads];
    for (const head of wanted) {
      if ((await layKept(table, head.id)) !== undefined) continue;
      if (head !== wanted[0]) keeper.tellNews('The plan that lay here last could not be read. It is still in the list of plans, with its versions.');
      return true;
    }
    return false;
  } catch {
    return false;
  }
}

function waited(milliseconds: number): Promise<false> {
  return new Promise((resolve) => setTimeout(() => resolve(false), milliseconds));
}
