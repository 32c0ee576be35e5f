import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { catalogue } from '../../../catalogue/index.ts';
import { bundleOffice } from '../../office/bundle.ts';
import { serveOffice } from '../../office/serve.ts';
import type { Command } from '../command.ts';
import { packageRoot } from '../package-root.ts';
import { parseOptions } from '../parse-options.ts';
import { UsageError } from '../usage-error.ts';

export const bundleCommand: Command = {
  summary: 'Write the Excel add-in for your own web address, or try it on this computer.',
  usage: `ouncewise bundle office --base-url https://tools.example.org/ouncewise -o FOLDER
ouncewise bundle office --serve FOLDER --cert CERTIFICATE.pem --key KEY.pem [--port 3443]

The first form writes static files: put them at that address and hand out manifest.xml. The second serves such a folder
at https://localhost with a certificate you have made and trust; only this computer can reach it. Install steps are in
guide/install-excel.html of the folder.`,
  run: async (words) => {
    const [what, ...rest] = words;
    if (what !== 'office') throw new UsageError('what is bundled must be: office');
    const options = readOptions(rest);
    if (options.serve !== undefined) return serve(options);
    const { 'base-url': baseUrl, output } = options;
    if (baseUrl === undefined) throw new UsageError('--base-url is missing: the https address of the files');
    if (output === undefined) throw new UsageError('-o is missing: the folder to write');
    const root = packageRoot();
    if (!existsSync(join(root, 'dist/office/functions.js')))
      throw new UsageError('dist/office/functions.js is not built yet; run: npm run build');
    const files = bundleOffice({ functions: catalogue.all(), baseUrl, outDir: output, packageRoot: root });
    console.log(`${files.length} files in ${output}\nPut them at ${baseUrl} and hand out manifest.xml.`);
    return 0;
  },
};

type Options = Partial<Record<'base-url' | 'output' | 'serve' | 'cert' | 'key' | 'port', string>>;

function readOptions(words: readonly string[]): Options {
  return parseOptions({
    args: [...words],
    options: {
      'base-url': { type: 'string' },
      output: { type: 'string', short: 'o' },
      serve: { type: 'string' },
      cert: { type: 'string' },
      key: { type: 'string' },
      port: { type: 'string' },
    },
  }).values;
}

async function serve({ serve: folder = '', cert, key, port = '3443' }: Options): Promise<number> {
  if (cert === undefined || key === undefined)
    throw new UsageError('--serve needs --cert and --key: Excel takes add-ins over https only');
  const number = Number(port);
  if (!Number.isInteger(number) || number < 1 || number > 65_535)
    throw new UsageError(`--port must be a whole number from 1 to 65535; received "${port}"`);
  for (const path of [folder, cert, key]) if (!existsSync(path)) throw new UsageError(`${path} is not there`);
  const server = await serveOffice({ folder, certificatePath: cert, keyPath: key, port: number });
  console.log(`https://localhost:${number}/functions.html\nCtrl+C ends it.`);
  await new Promise((ended) => server.once('close', ended));
  return 0;
}
