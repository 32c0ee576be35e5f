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
  const inputs: string[] = [];
  const flags = new Set<string>();
  const options = new Map<string, string>();
  const valued = ['-o', ...(allowed.options ?? [])];
  let plain = false;
  for (let index = 0; index < words.length; index += 1) {
    const word = words[index] ?? '';
    if (plain || !word.startsWith('-') || word === '-') inputs.push(word);
    else if (word === '--') plain = true;
    else if (valued.includes(word)) {
      const value = words[index + 1];
      if (value === undefined || value === '') throw new UsageError(`${word} needs a value behind it`);
      options.set(word, value);
      index += 1;
    } else if (allowed.flags?.includes(word)) flags.add(word);
    else
      throw new UsageError(
        `${word} is not known here; allowed: ${[...valued, ...(allowed.flags ?? [])].join(', ')}. A file whose name begins with a dash goes behind --`,
      );
  }
  if (inputs.length === 0) throw new UsageError('name a file; --help shows how');
  if (allowed.inputs !== undefined && inputs.length !== allowed.inputs) {
    throw new UsageError(
      `takes ${allowed.inputs} file or word, received ${inputs.length}: ${inputs.join(', ')}`,
    );
  }
  return { inputs, output: options.get('-o'), flags, options };
}
