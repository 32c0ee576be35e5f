import { cellAddress } from '../../../workbook/model/address.ts';
import type { Sheet } from '../../../workbook/model/sheet.ts';
import type { Workbook } from '../../../workbook/run/workbook.ts';
import type { Content } from './typed-input.ts';

/** Why a cell cannot hold a content; undefined when it can. */
export function troubleWith(
  workbook: Workbook,
  content: Content,
  sheet: Sheet,
  row: number,
  column: number,
): string | undefined {
  const present = sheet.formula(row, column);
  const anchor = present?.anchor ?? present;
  if (anchor !== undefined && anchor.height * anchor.width > 1) {
    return `${cellAddress(row, column)} is part of an array formula, which can only be changed as a whole.`;
  }
  const table = workbook.tableAt(sheet, row, column);
  if (table !== undefined && table.hasHeader && row === table.top) {
    return `${cellAddress(row, column)} is a heading of the table ${table.name}; formulas go by it, so it stays.`;
  }
  if (!('formula' in content)) return undefined;
  if (content.formula.length > 8192) return 'The formula is longer than a cell of this format may hold.';
  if (/(?<![\w.])(?:LET|LAMBDA)\s*\(/i.test(content.formula)) {
    return 'LET and LAMBDA cannot be typed here yet; the file would not keep them for every program.';
  }
  const compiled = workbook.compile(content.formula, sheet, row, column, false);
  if (compiled.problem === undefined) return undefined;
  return `That formula is not understood: ${compiled.problem.message}.`;
}
