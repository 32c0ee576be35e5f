import { cautions } from './cautions.ts';
import { commands } from './commands/index.ts';
import { printable } from './printable.ts';
import { UsageError } from './usage-error.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import { CalcError } from '../../../src/errors.ts';

declare const OUNCEWISE_VERSION: string;

function help(): string {
  const width = Math.max(...Object.keys(commands).map((name) => name.length));
  const lines = Object.entries(commands).map(([name, { summary }]) => `  ${name.padEnd(width)}  ${summary}`);
  return [
    'ouncewise: calculations for servicing small factory-sealed air conditioners by weighed ounces',
    '',
    'Usage: ouncewise COMMAND [...]',
    '',
    ...lines,
    '',
    'ouncewise COMMAND --help tells more about one command.',
    cautions,
  ].join('\n');
}

async function run(words: readonly string[]): Promise<number> {
  const [name, ...rest] = words;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    console.log(help());
    return name === undefined ? 1 : 0;
  }
  if (name === '--version') {
    console.log(OUNCEWISE_VERSION);
    return 0;
  }
  const command = commands[name];
  if (!command)
    throw new UsageError(`no command is called "${name}"; there are: ${Object.keys(commands).join(', ')}`);
  if (rest.includes('--help') || rest.includes('-h')) {
    console.log(`${command.summary}\n\n${command.usage}`);
    return 0;
  }
  return command.run(rest);
}

// A reader that stops early (`| head`) is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? 0 : 1);
});

run(process.argv.slice(2)).then(
  (exitCode) => {
    process.exitCode = exitCode;
  },
  (error: unknown) => {
    const expected = error instanceof UsageError || error instanceof CalcError || error instanceof FileError;
    console.error(
      expected || !(error instanceof Error)
        ? printable(`ouncewise: ${messageOf(error)}`)
        : `ouncewise: a fault of the program, please report it:\n${error.stack ?? error.message}`,
    );
    process.exitCode = 1;
  },
);

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
