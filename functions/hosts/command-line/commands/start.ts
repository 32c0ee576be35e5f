import { existsSync, mkdirSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { catalogue } from '../../../catalogue/index.ts';
import { emitGuide } from '../../../handbook/function-guide/emit.ts';
import { serveAtHome } from '../serve-at-home.ts';
import type { Command } from '../command.ts';
import { packageRoot } from '../package-root.ts';
import { parseOptions } from '../parse-options.ts';
import { UsageError } from '../usage-error.ts';
import { visitsCommand } from './visits.ts';

declare const OUNCEWISE_VERSION: string;

export const startCommand: Command = {
  summary: 'Tell the sample log and serve the worksheet page on this computer.',
  usage: `ouncewise start [--port NUMBER] [--once]

Prints the last visit of each unit of the sample log, then serves the worksheet page to this computer alone
(127.0.0.1) until Ctrl+C. Without --port it is served where it was the last time, so that the browser finds what it kept
of your work. With --once, or with OUNCEWISE_NO_BROWSER or CI set in
the environment, it ends after the printing.`,
  run: async (words) => {
    const { port, once } = readWords(words);
    const root = packageRoot();
    const sample = join(root, 'sample-workbooks/visit-log.xlsx');
    const code = await visitsCommand.run([sample, '-o', join(folderForResults(root), 'visit-log.xlsx')]);
    const isQuiet = isSet(process.env.OUNCEWISE_NO_BROWSER) || isSet(process.env.CI);
    if (once || isQuiet || code !== 0) return code;
    const folder = join(root, 'dist/page');
    if (!existsSync(join(folder, 'index.html'))) {
      throw new UsageError('the page is not built; run: npx webpack --config-name page');
    }
    const guide = Object.fromEntries(
      Object.entries(emitGuide(catalogue.all(), OUNCEWISE_VERSION)).map(([name, text]) => [
        `guide/${name}`,
        text,
      ]),
    );
    const { address, server, words: about } = await serveAtHome({ folder, texts: guide }, port);
    console.log(`\nThe worksheet page: ${address}\nOpen it in a browser on this computer.${about}`);
    if (server === undefined) return 0;
    console.log('Ctrl+C ends it.');
    await new Promise<void>((resolve) => {
      for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
    });
    server.closeAllConnections();
    server.close();
    return 0;
  },
};

/** A clone has a folder for what is made; an installed package is not written into, and may belong to somebody else. */
function folderForResults(root: string): string {
  if (!existsSync(join(root, 'webpack.config.js'))) return mkdtempSync(join(tmpdir(), 'ouncewise-'));
  const folder = join(root, 'dist');
  mkdirSync(folder, { recursive: true });
  return folder;
}

function isSet(value: string | undefined): boolean {
  return value !== undefined && value !== '' && value !== '0' && value !== 'false';
}

function readWords(words: readonly string[]): { port: number | undefined; once: boolean } {
  const { port, once = false } = parseOptions({
    args: [...words],
    options: { port: { type: 'string' }, once: { type: 'boolean' } },
  }).values;
  if (port !== undefined && (!/^\d{1,5}$/.test(port) || Number(port) > 65_535)) {
    throw new UsageError(`--port takes a number from 0 to 65535, received ${port}`);
  }
  return { port: port === undefined ? undefined : Number(port), once };
}
