import { parseOptions } from './parse-options.ts';
import { UsageError } from './usage-error.ts';

export interface FileWords {
  readonly inputs: readonly string[];
  readonly output: string | undefined;
  readonly flags: ReadonlySet<string>;
  readonly options: ReadonlyMap<string, string>;
}

interface Allowed {
  readonly flags?: readonly string[];
  /** Options that take a value, beside -o. */
  readonly options?: readonly string[];
  /** How many inputs the command takes; any number of at least one when absent. */
  readonly inputs?: number;
}

/** Words of a command that reads files and writes one: INPUT... [-o OUTPUT] [flags]. @throws UsageError */
export function readFileWords(words: readonly string[], allowed: Allowed): FileWords {
  const { options: valued = [], flags: switches = [] } = allowed;
  const plain = (word: string): string => word.slice('--'.length);
  const { values, positionals } = parseOptions({
    args: [...words],
    allowPositionals: true,
    options: {
      o: { type: 'string', short: 'o' },
      ...Object.fromEntries(valued.map((word) => [plain(word), { type: 'string' as const }])),
      ...Object.fromEntries(switches.map((word) => [plain(word), { type: 'boolean' as const }])),
    },
  });
  if (positionals.length === 0) throw new UsageError('name a file; --help shows how');
  if (allowed.inputs !== undefined && positionals.length !== allowed.inputs) {
    throw new UsageError(
      `takes ${allowed.inputs} file or word, received ${positionals.length}: ${positionals.join(', ')}`,
    );
  }
  const options = new Map<string, string>();
  const flags = new Set<string>();
  for (const [name, value] of Object.entries<string | boolean | undefined>(values)) {
    const word = name === 'o' ? '-o' : `--${name}`;
    if (value === true) flags.add(word);
    else if (typeof value !== 'string' || value === '')
      throw new UsageError(`${word} needs a value behind it`);
    else options.set(word, value);
  }
  return { inputs: positionals, output: options.get('-o'), flags, options };
}
