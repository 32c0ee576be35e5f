import { parseArea } from '../../../workbook/model/address.ts';
import type { Sheet } from '../../../workbook/model/sheet.ts';
import type { LoadedWorkbook } from '../../../workbook/file/load-workbook.ts';
import { readPart, workbookPart } from '../../../workbook/file/package-parts.ts';
import { attribute, readXml } from '../../../workbook/file/xml-reader.ts';
import type { Area } from '../protocol.ts';

/** Most of a sheet that goes on paper at once. */
const mostRows = 2000;
const mostColumns = 60;

/** The part of a sheet its file says is to be printed, or all that is in use. */
export function printArea({ archive }: LoadedWorkbook, sheet: Sheet): Area {
  const main = workbookPart(archive);
  const sheetNames: string[] = [];
  let position: number | undefined;
  let formula = '';
  let declared: Area | undefined;
  readXml(readPart(archive, main), main, {
    open(element, attributes) {
      if (element === 'sheet') sheetNames.push(attribute(attributes, 'name') ?? '');
      if (element !== 'definedName' || attribute(attributes, 'name') !== '_xlnm.Print_Area') return;
      position = Number(attribute(attributes, 'localSheetId'));
      formula = '';
    },
    text(piece) {
      formula += piece;
    },
    close(element) {
      if (element !== 'definedName' || position === undefined) return;
      const area = parseArea(formula.slice(formula.lastIndexOf('!') + 1).replaceAll('$', ''));
      if (sheetNames[position] === sheet.name) declared = area;
      position = undefined;
    },
  });
  const all = { top: 0, left: 0, bottom: sheet.rowCount - 1, right: sheet.columnCount - 1 };
  const { top, left, bottom, right } = declared ?? all;
  return {
    top,
    left,
    bottom: Math.min(bottom, sheet.rowCount - 1, top + mostRows - 1),
    right: Math.min(right, sheet.columnCount - 1, left + mostColumns - 1),
  };
}
