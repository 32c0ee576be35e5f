import { format, resolveConfig } from 'prettier';
import type { ResponseTable } from '../response-form.ts';

const header =
  '// Written by src/visit/diagnosis/tools/derive.ts (`npm run fit`); do not edit. Source: regression.\n';

/** The table as a module, formatted as the rest of the source. */
export async function tableText(table: ResponseTable, file: URL): Promise<string> {
  const options = await resolveConfig(file.pathname);
  const text = `${header}import type { ResponseTable } from './response-form.ts';\n\n/** Fitted to simulated units; see tests/visit/simulated/README.md. */\nexport const responseTable: ResponseTable = ${JSON.stringify(table)};\n`;
  return format(text, { ...options, parser: 'typescript' });
}
