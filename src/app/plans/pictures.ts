// Pictures of plans and versions: made by a worker one after the other, kept, and made again when the plan has changed.

import { type Remote, wrap } from 'comlink';
import { planDatabase } from './database.ts';
import type { PlanPicture } from './picture.ts';
import type { PicturePainter } from './picture.worker.ts';
import { textOfVersion } from './versions.ts';

let painter: { readonly remote: Remote<PicturePainter>; readonly broken: Promise<undefined> } | undefined;
let last: Promise<unknown> = Promise.resolve();

/** A picture of a plan's text; nothing for a text that is no plan, or when it cannot be made. */
export function pictureOfText(text: string): Promise<PlanPicture | undefined> {
  const made = last.then(() => {
    painter ??= hire();
    return Promise.race([painter.remote.picture(text), painter.broken]);
  });
  last = made.catch(() => undefined);
  return made.catch(() => undefined);
}

function hire(): NonNullable<typeof painter> {
  const worker = new Worker(new URL('./picture.worker.ts', import.meta.url), { type: 'module', name: 'pictures' });
  const broken = new Promise<undefined>((resolve) => {
    worker.onerror = () => {
      painter = undefined;
      resolve(undefined);
    };
  });
  return { remote: wrap<PicturePainter>(worker), broken };
}

/** The picture of a plan as it is kept now. */
export async function pictureOfPlan(id: string): Promise<PlanPicture | undefined> {
  const db = await planDatabase();
  const head = await db.get('plans', id);
  if (!head) return undefined;
  return kept(id, head.revision, async () => (await db.get('texts', [id, head.revision % 2]))?.text ?? '');
}

/** The picture of a version; a version never changes. */
export async function pictureOfVersion(id: string): Promise<PlanPicture | undefined> {
  return kept(id, 0, () => textOfVersion(id));
}

async function kept(of: string, revision: number, textOf: () => Promise<string>): Promise<PlanPicture | undefined> {
  const db = await planDatabase();
  const before = await db.get('pictures', of);
  if (before?.revision === revision) return before.picture;
  const picture = await pictureOfText(await textOf());
  if (picture) await db.put('pictures', { of, revision, picture });
  return picture ?? before?.picture;
}
