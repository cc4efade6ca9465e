// Puts the commands together and turns whatever was typed into an answer. Nothing here ends the process.

import { Command, CommanderError } from 'commander';
import { type Answer, DONE, NOT_READ, refused } from './answer.ts';
import { areasCommand } from './commands/areas.ts';
import { checkCommand } from './commands/check.ts';
import { echoCommand } from './commands/echo.ts';
import { exportCommand } from './commands/export.ts';
import { linesCommand } from './commands/lines.ts';
import { marksCommand } from './commands/marks.ts';
import { matchCommand } from './commands/match.ts';
import { needleCommand } from './commands/needle.ts';
import { placeCommand } from './commands/place.ts';
import { printCommand } from './commands/print.ts';
import { setoutCommand } from './commands/setout.ts';
import { VERSION } from './version.ts';

const COMMANDS = [needleCommand, areasCommand, linesCommand, placeCommand, marksCommand, echoCommand, matchCommand, checkCommand, printCommand, exportCommand, setoutCommand];

/** The answer to a command line, without the program's own name. Never throws. */
export async function commandLine(args: readonly string[]): Promise<Answer> {
  let given: Answer | Promise<Answer> | undefined;
  const said = { text: '', complaint: '' };
  const program = programSaying(said);
  for (const add of COMMANDS) add(program, (answer) => void (given = answer));
  try {
    program.parse([...args], { from: 'user' });
    return (await given) ?? refused(program.helpInformation());
  } catch (error) {
    if (error instanceof CommanderError) return { exit: error.exitCode === 0 ? DONE : NOT_READ, ...said };
    return refused(`This is a fault in Needlefall, not in your plan: ${error instanceof Error ? error.message : String(error)}.`);
  }
}

function programSaying(said: { text: string; complaint: string }): Command {
  return new Command('needlefall')
    .description('Plans ruler-work machine quilting at true scale: for the needle, not for the edge.')
    .usage('COMMAND ...')
    .version(VERSION, '-v, --version', 'the version of Needlefall')
    .helpOption('-h, --help', 'this page, or with a command the page of that command')
    .helpCommand(false)
    .addHelpText(
      'after',
      `
Lengths are written as you would: 1/2, 9/16, 3 3/4, .5, 12.7mm, 9.5cm. Without a unit they are inches.
A plan is a file ending in .needlefall.json; - stands for standard input.

Examples:
  needlefall needle --template circle --foot 1/2
  needlefall check my-quilt.needlefall.json
  needlefall print my-quilt.needlefall.json --out border.pdf --paper letter --area border:1:top

Exit: 0 done, 1 something is to be mended before sewing, 2 something could not be read or was used wrongly.`,
    )
    .showSuggestionAfterError()
    .exitOverride()
    .configureOutput({
      writeOut: (text) => void (said.text += text),
      writeErr: (text) => void (said.complaint += asSentence(text)),
      getOutHelpWidth: () => 100,
      getErrHelpWidth: () => 100,
    });
}

/** `error: unknown option '--fot'` as a sentence, its suggestion kept. */
function asSentence(text: string): string {
  return text.replace(/^error: (.)(.*?)\.?$/m, (_, first: string, rest: string) => `${first.toUpperCase()}${rest}.`);
}
