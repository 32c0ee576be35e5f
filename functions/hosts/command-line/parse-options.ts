import { parseArgs } from 'node:util';
import type { ParseArgsConfig } from 'node:util';
import { UsageError } from './usage-error.ts';

/** Words taken apart by Node; what is wrong with them is said in plain words. @throws UsageError */
export function parseOptions<T extends ParseArgsConfig>(config: T): ReturnType<typeof parseArgs<T>> {
  try {
    return parseArgs(config);
  } catch (error) {
    const { code, message } = error as Error & { code?: string };
    const option = /'(-[^\s']+)/.exec(message)?.[1];
    if (option === undefined) throw new UsageError(message);
    if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') {
      const allowed = Object.keys(config.options ?? {}).map((name) => (name === 'o' ? '-o' : `--${name}`));
      throw new UsageError(
        `${option} is not known here; allowed: ${allowed.join(', ')}. A file whose name begins with a dash goes behind --`,
      );
    }
    const takesNone = message.includes('does not take');
    throw new UsageError(`${option} ${takesNone ? 'takes no value' : 'needs a value behind it'}`);
  }
}
