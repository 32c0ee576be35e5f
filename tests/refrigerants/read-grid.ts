import { readFileSync } from 'node:fs';

/** Rows of a comma-separated file beside the tests; lines that begin with # say where it comes from. */
export function readGrid(file: string): Record<string, string>[] {
  const text = readFileSync(new URL(`../standards/refrigerants/${file}`, import.meta.url), 'utf8');
  const [head, ...lines] = text
    .trim()
    .split('\n')
    .filter((line) => !line.startsWith('#'));
  const names = head!.split(',');
  return lines.map((line) => {
    const cells = line.split(',');
    return Object.fromEntries(names.map((name, i) => [name, cells[i]!]));
  });
}
