import { UsageError } from './usage-error.ts';

/** The allowed word that was meant, whatever its case. @throws UsageError */
export function oneOf<T extends string>(option: string, word: string, allowed: readonly T[]): T {
  const found = allowed.find((candidate) => candidate.toLowerCase() === word.toLowerCase());
  if (found === undefined)
    throw new UsageError(`${option} must be ${allowed.join(' or ')}; received "${word}"`);
  return found;
}
