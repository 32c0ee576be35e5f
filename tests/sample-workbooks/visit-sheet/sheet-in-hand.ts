import { catalogueFunctions } from '../../../functions/workbook/catalogue-functions.ts';
import { loadWorkbook } from '../../../functions/workbook/file/load-workbook.ts';
import type { CellValue } from '../../../functions/workbook/model/values.ts';
import { CellError } from '../../../functions/workbook/model/values.ts';
import type { Workbook } from '../../../functions/workbook/run/workbook.ts';
import { PlacedLines, setColumns } from '../../../sample-workbooks/visit-sheet/place-of-lines.ts';
import { visitSheetRecipe } from '../../../sample-workbooks/visit-sheet/recipe.ts';
import type { UnitSystemName } from '../../../sample-workbooks/visit-sheet/sheet-units.ts';
import { SheetUnits } from '../../../sample-workbooks/visit-sheet/sheet-units.ts';
import type { TypedVisit } from '../../../sample-workbooks/visit-sheet/sheets/visit-page.ts';
import type { WorkbookRecipe } from '../../../sample-workbooks/writing/recipe.ts';
import { writeWorkbook } from '../../../sample-workbooks/writing/write.ts';

/** The visit sheet opened in the workbook engine, to type into and to read from. */
export class SheetInHand {
  readonly placed: PlacedLines;
  readonly #workbook: Workbook;

  private constructor(system: UnitSystemName, bytes: Uint8Array) {
    this.placed = new PlacedLines(new SheetUnits(system));
    this.#workbook = loadWorkbook(bytes, {
      customFunctions: catalogueFunctions,
      now: () => new Date(2026, 0, 1),
    }).workbook;
    this.#workbook.recalculate();
  }

  static async open(
    system: UnitSystemName,
    recipe: WorkbookRecipe = visitSheetRecipe(system),
  ): Promise<SheetInHand> {
    return new SheetInHand(system, await writeWorkbook(recipe, 'others'));
  }

  /** Types a visit over whatever stood there. */
  type({ once, sets }: TypedVisit): void {
    const page = this.#sheet('Visit');
    for (const { key, preset } of this.placed.once)
      this.#workbook.setValue(page, this.placed.row(key) - 1, 2, once[key] ?? preset ?? null);
    for (const { key } of this.placed.bySet) {
      setColumns.forEach((_, index) => {
        this.#workbook.setValue(page, this.placed.row(key) - 1, 2 + index, sets[index]?.[key] ?? null);
      });
    }
    this.#workbook.recalculate();
  }

  /** Value of a line in a set, counted from 1; errors as their codes, blank as "". */
  value(key: string, set: number): number | string | boolean {
    const row = this.placed.row(key);
    const isWorking = this.placed.working.some((line) => line.key === key);
    return plainOf(this.#sheet(isWorking ? 'Working' : 'Visit').value(row - 1, 1 + set));
  }

  at(sheet: string, row: number, column: number): number | string | boolean {
    return plainOf(this.#sheet(sheet).value(row - 1, column - 1));
  }

  #sheet(name: string) {
    const sheet = this.#workbook.findSheet(name);
    if (sheet === undefined) throw new Error(`no sheet ${name}`);
    return sheet;
  }
}

function plainOf(value: CellValue): number | string | boolean {
  if (value === null) return '';
  return value instanceof CellError ? value.code : value;
}
