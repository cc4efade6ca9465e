// The files of the command line: plans in, drawings out. What goes wrong comes back as a sentence.

import { readFileSync, realpathSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { readPlan } from '../model/codec.ts';
import type { Plan } from '../model/plan.ts';
import { type Outcome, fail, ok } from '../num/outcome.ts';

/** The plan in a file, or on standard input for `-`; or what to say about it. */
export function readPlanFile(path: string): Outcome<Plan, string> {
  const text = readText(path);
  if (!text.ok) return text;
  const plan = readPlan(text.value);
  if (plan.ok) return plan;
  const [first] = plan.problem;
  const name = path === '-' ? 'The plan on standard input' : path;
  if (plan.problem.length === 1 && first) return fail(`${name} could not be read. ${first.message}`);
  return fail(`${name} could not be read: ${plan.problem.length} things are not as they should be.\n${plan.problem.map(({ message }) => `  ${message}`).join('\n')}`);
}

/** Writes a file, whole or not at all, and never over the plan it was made from; undefined when done, else what to say. */
export function writeFileBeside(out: string, content: string | Uint8Array, plan: string): string | undefined {
  if (plan !== '-' && samePlace(out, plan)) return `${out} is the plan itself and is not written over. Give --out another name.`;
  if (statSync(out, { throwIfNoEntry: false })?.isDirectory()) return `${out} is a folder. Give --out the name of a file.`;
  const unfinished = join(dirname(out), `.${basename(out)}.${process.pid}.unfinished`);
  try {
    writeFileSync(unfinished, content);
    renameSync(unfinished, out);
    return undefined;
  } catch (error) {
    rmSync(unfinished, { force: true });
    return `${out} could not be written: ${reasonOf(error)}.`;
  }
}

function readText(path: string): Outcome<string, string> {
  try {
    return ok(readFileSync(path === '-' ? 0 : path, 'utf8'));
  } catch (error) {
    return fail(path === '-' ? `Standard input could not be read: ${reasonOf(error)}.` : `${path} could not be read: ${reasonOf(error)}.`);
  }
}

function samePlace(a: string, b: string): boolean {
  try {
    return realpathSync(a) === realpathSync(b);
  } catch {
    return false;
  }
}

const REASONS: { readonly [code: string]: string } = {
  ENOENT: 'there is no such file or folder',
  EISDIR: 'it is a folder',
  EACCES: 'this needs a permission you do not have',
  EPERM: 'this needs a permission you do not have',
  ENOTDIR: 'part of its path is not a folder',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk can only be read',
};

function reasonOf(error: unknown): string {
  const { code = 'unknown', message = '' } = error as NodeJS.ErrnoException;
  return REASONS[code] ?? (message || code);
}
