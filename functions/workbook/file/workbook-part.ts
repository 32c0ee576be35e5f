import { FileError } from './file-error.ts';
import type { Attributes } from './xml-reader.ts';
import { attribute, decodeEscapes, readXml, truth } from './xml-reader.ts';

export interface SheetEntry {
  readonly name: string;
  readonly relationId: string;
  readonly isHidden: boolean;
}

export interface NameEntry {
  readonly name: string;
  readonly formula: string;
  /** Position of the only sheet it is valid on. */
  readonly sheetPosition: number | undefined;
}

/** What the workbook part says: sheets in order, names, date system. */
export interface WorkbookEntries {
  readonly sheets: readonly SheetEntry[];
  readonly names: readonly NameEntry[];
  readonly uses1904: boolean;
}

export function readWorkbookPart(text: string, part: string): WorkbookEntries {
  const sheets: SheetEntry[] = [];
  const names: NameEntry[] = [];
  let uses1904 = false;
  let isWorkbook = false;
  let open: { name: string; sheetPosition: number | undefined } | undefined;
  let formula = '';
  readXml(text, part, {
    open(element, attributes) {
      if (element === 'workbook') isWorkbook = true;
      else if (element === 'workbookPr') uses1904 = truth(attribute(attributes, 'date1904'), false);
      else if (element === 'sheet') sheets.push(sheetEntry(attributes));
      else if (element === 'definedName') {
        const position = attribute(attributes, 'localSheetId');
        open = {
          name: attribute(attributes, 'name') ?? '',
          sheetPosition: position === undefined ? undefined : Number(position),
        };
        formula = '';
      }
    },
    text(piece) {
      if (open !== undefined) formula += piece;
    },
    close(element) {
      if (element !== 'definedName' || open === undefined) return;
      // Print areas and the like are settings, not names for formulas.
      if (!/^_xlnm\./i.test(open.name)) names.push({ ...open, formula: formula.trim() });
      open = undefined;
    },
  });
  if (!isWorkbook) throw new FileError('not-a-workbook', 'the file is an office document but no workbook');
  return { sheets, names, uses1904 };
}

function sheetEntry(attributes: Attributes): SheetEntry {
  const state = attribute(attributes, 'state');
  return {
    name: decodeEscapes(attribute(attributes, 'name') ?? ''),
    relationId: attribute(attributes, 'id') ?? '',
    isHidden: state === 'hidden' || state === 'veryHidden',
  };
}
