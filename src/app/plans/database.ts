// The browser's own database: opened once, opened again when the browser closed it.

import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { KeptPicture, KeptStep, PlanHead, PlanText, Version, VersionText } from './records.ts';

export interface PlanSchema extends DBSchema {
  plans: { key: string; value: PlanHead };
  texts: { key: [plan: string, place: number]; value: PlanText };
  steps: { key: [plan: string, at: number]; value: KeptStep };
  versions: { key: string; value: Version; indexes: { plan: string } };
  versionTexts: { key: string; value: VersionText };
  pictures: { key: string; value: KeptPicture };
}

export type PlanDatabase = IDBPDatabase<PlanSchema>;

const NAME = 'needlefall';
const VERSION = 1;

let opened: Promise<PlanDatabase> | undefined;

/** The database; rejects where the browser has none, or refuses it. */
export function planDatabase(): Promise<PlanDatabase> {
  opened ??= open();
  return opened;
}

async function open(): Promise<PlanDatabase> {
  const forget = () => {
    opened = undefined;
  };
  try {
    return await openDB<PlanSchema>(NAME, VERSION, {
      upgrade: (db) => {
        db.createObjectStore('plans', { keyPath: 'id' });
        db.createObjectStore('texts', { keyPath: ['plan', 'place'] });
        db.createObjectStore('steps', { keyPath: ['plan', 'at'] });
        db.createObjectStore('versions', { keyPath: 'id' }).createIndex('plan', 'plan');
        db.createObjectStore('versionTexts', { keyPath: 'id' });
        db.createObjectStore('pictures', { keyPath: 'of' });
      },
      // A newer app in another window wants to bring the database up: this one steps aside.
      blocking: (_current, _wanted, event) => {
        (event.target as IDBDatabase).close();
        forget();
      },
      terminated: forget,
    });
  } catch (problem) {
    forget();
    throw problem;
  }
}

/** Every record of one plan in a store keyed by [plan, number]. */
export function ofPlan(plan: string, from = 0): IDBKeyRange {
  return IDBKeyRange.bound([plan, from], [plan, Infinity]);
}

/** Writes are on the disk, not only on their way there, when they are said to be done: a power cut counts as a crash. */
export const ON_DISK = { durability: 'strict' } as const;
