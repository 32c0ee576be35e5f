import { buildXlsx, escapeXml } from '../../../functions/workbook/build-xlsx.ts';
import type { TestCell } from '../../../functions/workbook/build-xlsx.ts';

/** How many units the ledger is about; the sheet of units has so many rows. */
const units = 60;

/** What is asked of every engine alike. */
export interface Job {
  readonly path: string;
  /** Cells whose values must be the same in all engines: sheet, row and column, counted from 1. */
  readonly checked: readonly (readonly [sheet: number, row: number, column: number])[];
  /** A typed cell that two formulas of its row read, and one that every conditional sum reads. */
  readonly edits: readonly Edit[];
  /** The name of a function the bench brings along; empty when the workbook calls standard functions alone. */
  readonly custom: string;
}

export interface Edit {
  readonly name: 'row' | 'column';
  readonly row: number;
  readonly column: number;
  readonly values: readonly number[];
}

export type Kind = 'standard functions' | 'eight own calls a row';

/** Parts that one of the engines does not open a file without. */
const expectedParts = {
  styles:
    '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><fonts count="1"><font><sz val="11"/></font></fonts><fills count="1"><fill><patternFill patternType="none"/></fill></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="1"><xf/></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>',
  extraParts: {
    'docProps/app.xml':
      '<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties"/>',
  },
};

/** A ledger of readings with formulas that every engine knows, and its totals on a sheet of its own. */
export function ledgerFile(rows: number, kind: Kind): { bytes: Uint8Array; job: Omit<Job, 'path'> } {
  const last = rows + 1;
  const ledger: Record<string, TestCell> = {};
  const headings = ['Unit', 'Pressure', 'Added', 'Day'];
  headings.forEach((heading, column) => {
    ledger[`${letter(column)}1`] = heading;
  });
  const formulas = kind === 'standard functions' ? standardFormulas : ownCalls;
  for (let row = 2; row <= last; row++) {
    ledger[`A${row}`] = `AC-${row % units}`;
    ledger[`B${row}`] = 40 + (row % 90);
    ledger[`C${row}`] = (row * 7) % 33;
    ledger[`D${row}`] = 46_000 + (row % 365);
    formulas(row, last).forEach((formula, index) => {
      const address = `${letter(4 + index)}${row}`;
      ledger[address] = formulaCell(address, formula);
    });
  }
  const count = formulas(2, last).length;
  const register: Record<string, string | number> = {};
  for (let row = 1; row <= units; row++) {
    register[`A${row}`] = `AC-${row - 1}`;
    register[`B${row}`] = 8 + (row % 13);
  }
  const totals: Record<string, TestCell> = {};
  for (let index = 0; index < count; index++) {
    const column = letter(4 + index);
    totals[`A${index + 1}`] = formulaCell(`A${index + 1}`, `SUM(Ledger!$${column}$2:$${column}$${last})`);
  }
  const bytes = buildXlsx({
    ...expectedParts,
    sheets: [
      { name: 'Ledger', cells: ledger },
      { name: 'Units', cells: register },
      { name: 'Totals', cells: totals },
    ],
  });
  const checked: Job['checked'][number][] = [];
  for (let index = 0; index < count; index++) {
    checked.push([3, index + 1, 1]);
    for (let row = 2; row <= last; row += Math.max(1, Math.floor(rows / 50)))
      checked.push([1, row, 5 + index]);
  }
  const edits: Edit[] = [
    { name: 'row', row: 7, column: 2, values: [55, 56, 57] },
    { name: 'column', row: 7, column: 3, values: [3, 4, 5] },
  ];
  return { bytes, job: { checked, edits, custom: kind === 'standard functions' ? '' : ownName } };
}

function standardFormulas(row: number, last: number): string[] {
  return [
    `ROUND((B${row}+14.696)*6.894757,3)`,
    `IF(B${row}>100,"high",IF(B${row}<60,"low","fair"))&" "&A${row}`,
    `INDEX(Units!$B$1:$B$${units},MATCH(A${row},Units!$A$1:$A$${units},0))`,
    `IF(G${row}=0,0,C${row}/G${row})`,
    `MAX(0,G${row}-C${row})+MIN(C${row},E${row})`,
    `IFERROR(SQRT(H${row}-0.5),LEN(F${row}))`,
    `SUMIFS($C$2:$C$${last},$A$2:$A$${last},A${row})`,
    `SUMIFS($C$2:$C$${last},$A$2:$A$${last},A${row},$D$2:$D$${last},"<="&D${row})`,
  ];
}

/** With a value as saved, because one of the engines prints a line about every formula that has none. */
function formulaCell(address: string, formula: string): TestCell {
  return { xml: `<c r="${address}"><f>${escapeXml(formula)}</f><v>0</v></c>` };
}

const ownName = 'BENCHREADING';

function ownCalls(row: number, last: number): string[] {
  const calls = Array.from(
    { length: 8 },
    (_, call) => `${ownName}(${call % 2 === 0 ? `B${row}` : `${letter(3 + call)}${row}`},C${row})`,
  );
  return [...calls, ...standardFormulas(row, last).slice(-2)];
}

function letter(column: number): string {
  return String.fromCharCode(65 + column);
}
