// The command line as a test sees it.

import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { z } from 'zod';
import { commandLine } from '../../src/cli/command-line.ts';

/** An example plan's path. */
export function example(name: string): string {
  return fileURLToPath(new URL(`../../examples/${name}.needlefall.json`, import.meta.url));
}

/** A new empty folder. */
export function newFolder(): string {
  return mkdtempSync(join(tmpdir(), 'needlefall-cli-'));
}

/** What a command says. */
export async function say(...args: string[]) {
  const { exit, text = '', complaint = '' } = await commandLine(args);
  return { exit, text, complaint };
}

/** The JSON a command gives, held to its contract. */
export async function json<Shape extends z.ZodType>(contract: Shape, ...args: string[]): Promise<{ exit: number; value: z.infer<Shape> }> {
  const { exit, text, complaint } = await commandLine([...args, '--json']);
  if (text === undefined) throw new Error(`${args.join(' ')}: ${complaint ?? ''}`);
  return { exit, value: contract.parse(JSON.parse(text)) };
}
