import { FileError } from './file-error.ts';

/** Puts the name of the file before what is wrong with it: whoever gave several files must know which one is meant. */
export function aboutFile<T>(file: string, work: () => T): T {
  try {
    return work();
  } catch (problem) {
    if (!(problem instanceof FileError) || problem.message.includes(file)) throw problem;
    throw new FileError(problem.code, `${file}: ${problem.message}`);
  }
}
