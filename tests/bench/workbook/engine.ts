/** Times the engine: rows of readings with eight custom functions and two conditional sums each. `npm run bench -- workbook`. */
import type { CustomFunctions } from '../../../functions/workbook/model/custom-functions.ts';
import { Workbook } from '../../../functions/workbook/run/workbook.ts';

export const cheapFunctions: CustomFunctions = {
  resolve: (name) => (name.startsWith('DEMO.') ? name.slice(5) : undefined),
  call: (id, args) => {
    const [first] = args;
    return typeof first === 'number' ? first * 2 + id.length : 'blank';
  },
};

/** A ledger with eight calls and two sums by criteria in every row. */
export function ledger(rows: number): Workbook {
  const workbook = new Workbook({ customFunctions: cheapFunctions });
  const sheet = workbook.addSheet('Ledger');
  for (let row = 1; row <= rows; row++) {
    workbook.setValue(sheet, row, 0, `AC-${row % 60}`);
    workbook.setValue(sheet, row, 1, 40 + (row % 90));
    workbook.setValue(sheet, row, 2, (row * 7) % 33);
    workbook.setValue(sheet, row, 3, 46_000 + (row % 365));
    for (let call = 0; call < 8; call++) {
      const column = 4 + call;
      const argument = call % 2 === 0 ? `B${row + 1}` : `${String.fromCharCode(64 + column)}${row + 1}`;
      workbook.setFormula(sheet, row, column, `DEMO.F${call}(${argument},"US",C${row + 1})`);
    }
    workbook.setFormula(sheet, row, 12, `SUMIFS($C$2:$C$${rows + 1},$A$2:$A$${rows + 1},A${row + 1})`);
    workbook.setFormula(
      sheet,
      row,
      13,
      `SUMIFS($C$2:$C$${rows + 1},$A$2:$A$${rows + 1},A${row + 1},$D$2:$D$${rows + 1},"<="&D${row + 1})`,
    );
  }
  return workbook;
}
