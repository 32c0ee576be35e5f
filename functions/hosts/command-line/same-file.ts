import { stat } from 'node:fs/promises';

/** Whether two paths lead to one file that is there, through links too. */
export async function isSameFile(one: string, other: string): Promise<boolean> {
  const [first, second] = await Promise.all([one, other].map((path) => stat(path).catch(() => undefined)));
  return first !== undefined && second !== undefined && first.dev === second.dev && first.ino === second.ino;
}
