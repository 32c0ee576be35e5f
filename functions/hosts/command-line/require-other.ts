import { isSameFile } from './same-file.ts';
import { UsageError } from './usage-error.ts';

/** @throws UsageError when the file to write is one of those to read: it would be lost */
export async function requireOther(output: string, inputs: readonly string[]): Promise<void> {
  for (const input of inputs) {
    if (!(await isSameFile(input, output))) continue;
    throw new UsageError(`-o ${output} is a file to be read and would be lost; name another one`);
  }
}
