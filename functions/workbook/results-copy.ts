import { idOf } from './spell.ts';
import type { FormulaCell } from './model/sheet.ts';
import type { Workbook } from './run/workbook.ts';
import { readPart } from './file/package-parts.ts';
import type { LoadedWorkbook } from './file/load-workbook.ts';
import { fileWith, partsWith } from './file/save-edited.ts';

export interface ResultsCopy {
  readonly bytes: Uint8Array;
  /** Cells that show a result and no longer the formula behind it. */
  readonly cellCount: number;
}

/**
 * A copy for somebody without our functions, such as an owner who gets it by mail: each formula that calls one of them gives
 * way to its result, standard formulas stay live. Spreadsheet programs keep the saved result of an unknown function in
 * single cells but not in array formulas, and lose all of them when asked to work out everything again.
 */
export function resultsCopy(loaded: LoadedWorkbook): ResultsCopy {
  const namesOfOurs = namesThatCall(loaded.workbook);
  let cellCount = 0;
  const parts = partsWith(loaded, ({ sheet }) => {
    const cells = [...sheet.formulaCells()].filter((cell) =>
      callsOurs((cell.anchor ?? cell).text(), namesOfOurs),
    );
    cellCount += cells.length;
    return cells.map(({ row, column, value }: FormulaCell) => ({ row, column, value, keepsEmptyText: true }));
  });
  for (const name of loaded.archive.names) {
    if (!/(?:^|\/)tables\/[^/]*\.xml$/.test(name)) continue;
    const text = readPart(loaded.archive, name);
    const without = text.replace(
      /<calculatedColumnFormula[^>]*>([^<]*)<\/calculatedColumnFormula>/g,
      (element, formula: string) => (callsOurs(formula, namesOfOurs) ? '' : element),
    );
    if (without !== text) parts.set(name, without);
  }
  return { bytes: fileWith(loaded, parts), cellCount };
}

/** Names of the workbook whose formulas call ours, in lower case. */
function namesThatCall(workbook: Workbook): ReadonlySet<string> {
  const found = new Set<string>();
  const names = [...workbook.names()];
  // A name may stand on another one.
  for (let before = -1; before < found.size;) {
    before = found.size;
    for (const { name, formula } of names) if (callsOurs(formula, found)) found.add(name.toLowerCase());
  }
  return found;
}

function callsOurs(formula: string, names: ReadonlySet<string>): boolean {
  const withoutTexts = formula.replace(/"(?:[^"]|"")*"/g, '""');
  return (withoutTexts.match(/[A-Za-z_][\w.]*/g) ?? []).some(
    (word) => idOf(word) !== undefined || names.has(word.toLowerCase()),
  );
}
