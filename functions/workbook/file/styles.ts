import { isDateFormat } from 'numfmt';
import { attribute, readXml } from './xml-reader.ts';

/** Built-in number formats that show dates or times (ECMA-376 Part 1, 18.8.30). */
const builtInDates = new Set([
  14, 15, 16, 17, 18, 19, 20, 21, 22, 27, 28, 29, 30, 31, 32, 33, 34, 35, 36, 45, 46, 47, 50, 51, 52, 53, 54,
  55, 56, 57, 58,
]);

/** For each cell format of the workbook: whether it shows a number as a date or time. */
export function readDateStyles(text: string, part: string): boolean[] {
  const custom = new Map<number, string>();
  const styles: boolean[] = [];
  let inCellFormats = false;
  readXml(text, part, {
    open(element, attributes) {
      if (element === 'numFmt') {
        custom.set(Number(attribute(attributes, 'numFmtId')), attribute(attributes, 'formatCode') ?? '');
      } else if (element === 'cellXfs') {
        inCellFormats = true;
      } else if (element === 'xf' && inCellFormats) {
        const id = Number(attribute(attributes, 'numFmtId') ?? 0);
        const pattern = custom.get(id);
        styles.push(pattern === undefined ? builtInDates.has(id) : isDatePattern(pattern));
      }
    },
    close(element) {
      if (element === 'cellXfs') inCellFormats = false;
    },
  });
  return styles;
}

function isDatePattern(pattern: string): boolean {
  try {
    return isDateFormat(pattern);
  } catch {
    return false;
  }
}
