// Runs every benchmark, one after the other, each in a process of its own so that none warms up another.
// `npm run bench -- needle` runs only those whose name contains a word.

import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const folder = new URL('./', import.meta.url);
const words = process.argv.slice(2);
const files = readdirSync(folder).filter((name) => name.endsWith('.bench.ts') && (words.length === 0 || words.some((word) => name.includes(word)))).sort();
if (files.length === 0) {
  console.error('There is no such benchmark.');
  process.exit(1);
}
let failed = 0;
for (const file of files) {
  console.log(`\n== ${file.replace('.bench.ts', '')}`);
  const { status } = spawnSync(process.execPath, ['--import', 'tsx', fileURLToPath(new URL(file, folder))], { stdio: 'inherit' });
  if (status !== 0) failed++;
}
process.exit(failed === 0 ? 0 : 1);
