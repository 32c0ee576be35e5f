import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';

/** A number that no sample computes. */
export const poisonNumber = -987_654_321;

/** The file with every saved formula result replaced by the poison: a program that does not recalculate shows it. */
export function poison(xlsx: Uint8Array): { bytes: Uint8Array; poisoned: number } {
  const files = unzipSync(xlsx);
  let poisoned = 0;
  for (const [path, content] of Object.entries(files)) {
    if (!/^xl\/worksheets\/[^/]+\.xml$/.test(path)) continue;
    const xml = strFromU8(content).replace(
      /<c\b([^>]*)>((?:(?!<\/c>).)*?<f\b.*?)<\/c>/gs,
      (_cell, attributes: string, inside: string) => {
        poisoned += 1;
        const plain = attributes.replace(/\st="[^"]*"/, '');
        const withoutValue = inside.replace(/<v\/>|<v\b[^>]*>.*?<\/v>/gs, '');
        return `<c${plain}>${withoutValue}<v>${poisonNumber}</v></c>`;
      },
    );
    files[path] = strToU8(xml);
  }
  return { bytes: zipSync(files), poisoned };
}
