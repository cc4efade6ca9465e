// The command line: `needlefall COMMAND ...`. Plans in; needle lines, findings and full-size prints out.

import { commandLine } from './command-line.ts';

// A reader that has had enough, such as `head`, is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

const { exit, text, complaint } = await commandLine(process.argv.slice(2));
if (text !== undefined && text !== '') process.stdout.write(text.endsWith('\n') ? text : `${text}\n`);
if (complaint !== undefined) process.stderr.write(`${complaint.trimEnd()}\n`);
process.exitCode = exit;
