import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strToU8 } from 'fflate';
import { generateLogs } from '../../functions/office-work/gather/generated-logs.ts';
import { buildXlsx, tableXml } from '../../functions/workbook/build-xlsx.ts';
import type { TestCell } from '../../functions/workbook/build-xlsx.ts';

/** A command that writes a file, with all it needs in one folder. */
export interface Scene {
  readonly name: string;
  /** Words of the command; names of files are those in its folder. */
  readonly words: readonly string[];
  /** The file it writes; the folder holds an older one already. */
  readonly target: string;
  readonly prepare: (folder: string) => void;
}

const columns = ['Unit', 'Visit', 'Set', 'Date and time', 'Added (oz)', 'Gas in unit', 'Sum'];
const register = ['Unit', 'Refrigerant', 'Nameplate charge (oz)'];

/** A log with formulas that nobody has worked out yet, and a register. */
function log(): Uint8Array {
  const cells: Record<string, TestCell> = {};
  columns.forEach((heading, column) => (cells[`${String.fromCharCode(65 + column)}1`] = heading));
  for (let row = 2; row <= 41; row += 1) {
    Object.assign(cells, {
      [`A${row}`]: `U-${row % 4}`,
      [`B${row}`]: `V-${row}`,
      [`C${row}`]: 1,
      [`D${row}`]: 45_000 + row * 9,
      [`E${row}`]: row / 10,
      [`F${row}`]: 'R-410A',
      [`G${row}`]: `=SUM($E$2:E${row})`,
    });
  }
  const units: Record<string, TestCell> = {};
  register.forEach((heading, column) => (units[`${String.fromCharCode(65 + column)}1`] = heading));
  for (let unit = 0; unit < 4; unit += 1) {
    Object.assign(units, { [`A${unit + 2}`]: `U-${unit}`, [`B${unit + 2}`]: 'R-410A', [`C${unit + 2}`]: 14 });
  }
  return buildXlsx({
    sheets: [
      { name: 'Log', cells, tables: [tableXml(1, 'Log', 'A1:G41', columns)] },
      { name: 'Units', cells: units, tables: [tableXml(2, 'Units', 'A1:C5', register)] },
    ],
  });
}

const yesterday = strToU8('the file of yesterday');

export const scenes: readonly Scene[] = [
  {
    name: 'recalc in place',
    words: ['recalc', 'log.xlsx'],
    target: 'log.xlsx',
    prepare: (folder) => {
      writeFileSync(join(folder, 'log.xlsx'), log());
    },
  },
  {
    name: 'recalc -o',
    words: ['recalc', 'log.xlsx', '-o', 'out.xlsx'],
    target: 'out.xlsx',
    prepare: (folder) => {
      writeFileSync(join(folder, 'log.xlsx'), log());
      writeFileSync(join(folder, 'out.xlsx'), yesterday);
    },
  },
  {
    name: 'gather',
    words: ['gather', 'logs', '-o', 'fleet.xlsx'],
    target: 'fleet.xlsx',
    prepare: (folder) => {
      mkdirSync(join(folder, 'logs'), { recursive: true });
      const { logs, corrupt } = generateLogs(3, 5, 3);
      for (const { name, bytes } of logs) {
        if (!corrupt.includes(name)) writeFileSync(join(folder, 'logs', name), bytes);
      }
      writeFileSync(join(folder, 'fleet.xlsx'), yesterday);
    },
  },
  {
    name: 'quote',
    words: ['quote', 'log.xlsx', 'U-1', '-o', 'quote.xlsx'],
    target: 'quote.xlsx',
    prepare: (folder) => {
      writeFileSync(join(folder, 'log.xlsx'), log());
      writeFileSync(join(folder, 'quote.xlsx'), yesterday);
    },
  },
  {
    name: 'ledger',
    words: ['ledger', 'ledger.csv', '-o', 'summary.csv'],
    target: 'summary.csv',
    prepare: (folder) => {
      const rows = Array.from(
        { length: 400 },
        (_, index) => `U-${index % 9},V-${index},1,2026-0${(index % 9) + 1}-05,R-22,${index % 4}`,
      );
      writeFileSync(
        join(folder, 'ledger.csv'),
        ['Unit,Visit,Set,Date and time,Gas in unit,Added (oz)', ...rows].join('\n'),
      );
      writeFileSync(join(folder, 'summary.csv'), yesterday);
    },
  },
];
