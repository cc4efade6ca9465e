// All that can be done with plans, for the header, the panels and the keys: which panel is up, what went wrong, what is said.

import { useCallback, useMemo, useState } from 'react';
import { keepGesture } from '../../session/change-plan.ts';
import { returnTo } from '../../session/plan/lay.ts';
import { saysTheSame } from '../../session/plan/same.ts';
import { planOf } from '../../session/store.ts';
import { useTheSession } from '../use-session.ts';
import type { Example } from './examples.ts';
import { chooseFile, hasFileAccess } from './file-access.ts';
import { type KeptTable, layExample, layFile, layKept, layNew, layOwn } from './lay-plan.ts';
import type { NotOpened } from './open.ts';
import { freeName, listPlans } from './plan-list.ts';
import type { Version } from './records.ts';
import { nameOfVersion } from './said.ts';
import { savePlan } from './save.ts';
import { useTheKeeper } from './use-kept.ts';
import { keepVersion, planOfVersion } from './versions.ts';

export type PlanPanel = { readonly kind: 'none' } | { readonly kind: 'plans' } | { readonly kind: 'name' } | { readonly kind: 'versions'; readonly plan: string };

export interface PlanActions {
  readonly open: (file: File, handle?: FileSystemFileHandle) => Promise<void>;
  /** Asks for a file; `pickFile` asks where the browser has no file access of its own. */
  readonly chooseAndOpen: (pickFile: () => void) => Promise<void>;
  readonly openExample: (example: Example) => Promise<void>;
  readonly lay: (id: string) => Promise<void>;
  readonly begin: () => Promise<void>;
  readonly save: (to: 'same' | 'another') => Promise<void>;
  readonly goBack: (version: Version) => Promise<void>;
  readonly makePlanOf: (version: Version) => Promise<void>;
  readonly show: (panel: PlanPanel) => void;
  /** The versions of the plan on the table. */
  readonly showVersions: () => void;
  readonly forgiveProblem: () => void;
}

export interface Plans {
  readonly panel: PlanPanel;
  readonly notOpened: NotOpened | undefined;
  /** What was done last, for those who listen. */
  readonly said: string;
  readonly actions: PlanActions;
}

const NONE: PlanPanel = { kind: 'none' };

export function usePlans(): Plans {
  const session = useTheSession();
  const keeper = useTheKeeper();
  const [panel, show] = useState<PlanPanel>(NONE);
  const [notOpened, setNotOpened] = useState<NotOpened>();
  const [said, say] = useState('');

  /** Waits for something to be laid on the table, and says what came of it. */
  const told = useCallback(
    async (laying: Promise<NotOpened | undefined>) => {
      const problem = await laying.catch((): NotOpened => ({ fileName: 'this plan', problems: [CANNOT_READ] }));
      setNotOpened(problem);
      say(problem ? '' : `${planOf(session.getState()).name} lies on the table.`);
      if (!problem) show(NONE);
    },
    [session],
  );

  const actions = useMemo((): PlanActions => {
    const table: KeptTable = { session, keeper };
    const open = (file: File, handle?: FileSystemFileHandle) => told(layFile(table, file, handle));
    return {
      open,
      chooseAndOpen: async (pickFile) => {
        if (!hasFileAccess()) return pickFile();
        const handle = await chooseFile().catch(() => pickFile());
        if (handle) await open(await handle.getFile(), handle);
      },
      openExample: (example) => told(layExample(table, example)),
      lay: async (id) => {
        const { lying } = keeper.store.getState();
        if (lying.kind === 'own' && lying.id === id) return show(NONE);
        await told(layKept(table, id));
      },
      begin: async () => {
        await layNew(table);
        show(NONE);
        location.hash = 'top';
        say('A new plan lies on the table.');
      },
      save: async (to) => {
        const done = await savePlan(table, to);
        if (done === undefined) return;
        say(done);
        // What somebody else wrote into the file is worth more than a word for those who listen.
        if (done.includes('versions')) keeper.tellNews(done);
      },
      goBack: async (version) => {
        const read = await planOfVersion(version.id);
        const name = nameOfVersion(version);
        if (!read.ok) return setNotOpened({ fileName: name, problems: read.problem });
        const { lying } = keeper.store.getState();
        if (lying.kind !== 'own' || lying.id !== version.plan) {
          const problem = await layKept(table, version.plan);
          if (problem) return setNotOpened(problem);
        }
        keepGesture(session);
        const before = planOf(session.getState());
        if (!saysTheSame(before, read.value)) {
          // When there is no room even for that, undo still goes back.
          await keepVersion(version.plan, before, 'before-return').catch(() => undefined);
          returnTo(session, version.name === undefined ? 'Go back to an earlier version' : `Go back to ${version.name}`, read.value);
        }
        show(NONE);
        say(`${name} lies on the table. Undo goes back.`);
      },
      makePlanOf: async (version) => {
        const read = await planOfVersion(version.id);
        if (!read.ok) return setNotOpened({ fileName: nameOfVersion(version), problems: read.problem });
        const taken = (await listPlans()).map((head) => head.name);
        layOwn(table, { ...read.value, name: freeName(`${read.value.name}, ${version.name ?? 'earlier'}`, taken) });
        show(NONE);
      },
      show,
      showVersions: () => {
        const { lying } = keeper.store.getState();
        if (lying.kind === 'own') show({ kind: 'versions', plan: lying.id });
      },
      forgiveProblem: () => setNotOpened(undefined),
    };
  }, [session, keeper, told]);

  return { panel, notOpened, said, actions };
}

const CANNOT_READ = { path: '', expected: 'a plan', found: 'nothing', message: 'The browser could not read what it keeps. Try again, or open the plan from a file.' };
