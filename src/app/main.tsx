// The page begins: theme first, then whatever plan lies on the table.

import './look/fonts.css';
import './look/tokens.css';
import './look/cloth.css';
import './look/base.css';
import { createRoot } from 'react-dom/client';
import { newPlan } from '../model/new-plan.ts';
import { openPlan } from '../session/change-plan.ts';
import { createSession } from '../session/store.ts';
import { App } from './App.tsx';
import { keptTheme, wearTheme } from './look/theme.ts';
import { EXAMPLES } from './plans/examples.ts';
import { planOfExample } from './plans/open.ts';
import { SessionContext } from './use-session.ts';

wearTheme(keptTheme());

const session = createSession(newPlan('A first block'), { kind: 'new' });
const root = createRoot(document.getElementById('app')!);

void layFirstPlan().then(() => {
  root.render(
    <SessionContext value={session}>
      <App />
    </SessionContext>,
  );
});

/** The first example, if it can be read; a single block to begin with otherwise. */
async function layFirstPlan(): Promise<void> {
  const example = EXAMPLES[0];
  if (!example) return;
  const read = await planOfExample(example);
  if (read.ok) openPlan(session, read.value, { kind: 'example', name: example.name });
}
