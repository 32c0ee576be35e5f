import type { WorkbookRecipe } from '../writing/recipe.ts';
import { PlacedLines } from './place-of-lines.ts';
import type { UnitSystemName } from './sheet-units.ts';
import { SheetUnits } from './sheet-units.ts';
import { checksPage, registerPage, rowsPage, staffPage, workingPage } from './sheets/behind.ts';
import { printPage } from './sheets/print-page.ts';
import type { TypedVisit } from './sheets/visit-page.ts';
import { visitPage } from './sheets/visit-page.ts';
import { tablesOf } from './tables.ts';

/** File of each unit system: figures and limits are typed in one of them throughout. */
export const visitSheetFiles: Readonly<Record<UnitSystemName, string>> = {
  US: 'visit-sheet',
  SI: 'visit-sheet-si',
};

const nothingTyped: TypedVisit = { once: {}, sets: [] };

/** One visit down a page, of formulas that every spreadsheet program has: nothing needs to be installed. */
export function visitSheetRecipe(system: UnitSystemName, typed: TypedVisit = nothingTyped): WorkbookRecipe {
  const placed = new PlacedLines(new SheetUnits(system));
  const tables = tablesOf(placed);
  return {
    title: 'Visit sheet',
    subject: 'One visit to a small sealed air conditioner; plain formulas, nothing to install',
    file: visitSheetFiles[system],
    names: {},
    sheets: [
      visitPage(placed, tables, typed),
      printPage(placed),
      rowsPage(placed),
      registerPage(placed),
      staffPage(placed),
      workingPage(placed, tables),
      checksPage(placed, tables),
      tables.sheet(),
    ],
  };
}
