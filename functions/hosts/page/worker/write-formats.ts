import { parseAddress } from '../../../workbook/model/address.ts';
import type { Sheet } from '../../../workbook/model/sheet.ts';
import { addNumberFormat, setCellStyles } from '../../../workbook/file/add-number-format.ts';
import { readPart, readRelationships, workbookPart } from '../../../workbook/file/package-parts.ts';
import type { OpenLog } from './open-log.ts';

/** Puts number formats that came with what was typed into the parts of a file: looks into its styles, and on the cells. */
export function writeFormats(
  { loaded, layouts }: OpenLog,
  formats: ReadonlyMap<Sheet, ReadonlyMap<string, string>>,
  parts: Map<string, string>,
): void {
  if ([...formats.values()].every(({ size }) => size === 0)) return;
  const { archive } = loaded;
  const links = readRelationships(archive, workbookPart(archive));
  const stylesPart = links.find(({ kind }) => kind === 'styles')?.part;
  // A file without styles shows the bare number; that is all it can say.
  if (stylesPart === undefined) return;
  let styles = parts.get(stylesPart) ?? readPart(archive, stylesPart);
  const made = new Map<string, number>();
  for (const { sheet, part, text, isUtf8 } of loaded.sheets) {
    const own = formats.get(sheet);
    const layout = layouts.get(sheet);
    if (own === undefined || layout === undefined || !isUtf8) continue;
    const looks = new Map<string, number>();
    for (const [address, format] of own) {
      const place = parseAddress(address);
      if (place === undefined) continue;
      const base = layout.styles[place.column]?.[place.row] ?? layout.columnStyles.get(place.column) ?? 0;
      const key = `${base} ${format}`;
      let look = made.get(key);
      if (look === undefined) {
        const added = addNumberFormat(styles, base, format);
        if (added === undefined) continue;
        styles = added.text;
        made.set(key, (look = added.style));
      }
      looks.set(address, look);
    }
    parts.set(part, setCellStyles(parts.get(part) ?? text, looks));
  }
  parts.set(stylesPart, styles);
}
