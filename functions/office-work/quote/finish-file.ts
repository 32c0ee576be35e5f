import { usualLimits } from '../../workbook/file/limits.ts';
import { readPart, readRelationships, workbookPart } from '../../workbook/file/package-parts.ts';
import { openContainer } from '../../workbook/file/recognize.ts';
import { readWorkbookPart } from '../../workbook/file/workbook-part.ts';

export const papers = ['A4', 'letter'] as const;
export type Paper = (typeof papers)[number];

/** ECMA-376 Part 1, 18.3.1.63: paper sizes by number. */
const sizeOf: Readonly<Record<Paper, string>> = { letter: '1', A4: '9' };

/**
 * A finished quote opens on the sheet that is meant to be read, prints on the paper of the place, and shows no chart where
 * there is nothing to draw. Cells stay as they are.
 */
export function finishFile(
  bytes: Uint8Array,
  { opensOn, paper, withoutChart }: { opensOn: string; paper: Paper; withoutChart: boolean },
): Uint8Array {
  const archive = openContainer(bytes, usualLimits);
  const main = workbookPart(archive);
  const text = readPart(archive, main);
  const links = readRelationships(archive, main);
  const { sheets } = readWorkbookPart(text, main);
  const place = sheets.findIndex(({ name }) => name === opensOn);
  if (place < 0) throw new Error(`the template has no sheet ${opensOn}`);
  const contents = new Map<string, Uint8Array>();
  const put = (part: string, xml: string): void => void contents.set(part, new TextEncoder().encode(xml));
  put(
    main,
    text.replace(
      /<workbookView\b([^>]*?)(\/?)>/,
      (_all, rest: string, slash: string) =>
        `<workbookView${rest.replace(/\s+activeTab="\d*"/, '')} activeTab="${String(place)}"${slash}>`,
    ),
  );
  for (const [index, { name, relationId }] of sheets.entries()) {
    const part = links.find(({ id }) => id === relationId)?.part;
    if (part === undefined) continue;
    let xml = readPart(archive, part)
      .replace(/\s+tabSelected="[^"]*"/, '')
      .replace(/(<pageSetup\b[^>]*\bpaperSize=")\d+(")/, `$1${sizeOf[paper]}$2`);
    if (index === place) xml = xml.replace(/<sheetView\b/, '<sheetView tabSelected="true"');
    if (name === opensOn && withoutChart) xml = xml.replace(/<drawing\b[^>]*?(?:\/>|><\/drawing>)/, '');
    put(part, xml);
  }
  return archive.withReplaced(contents);
}
