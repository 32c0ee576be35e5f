import { sheetReader, readRow } from '../../../functions/catalogue/records/read-table.ts';
import { unitSystem } from '../../../functions/runtime/unit-system.ts';
import type { PlacedLines } from '../../../sample-workbooks/visit-sheet/place-of-lines.ts';
import type { TypedVisit } from '../../../sample-workbooks/visit-sheet/sheets/visit-page.ts';
import type { RecordRow, RecordTable } from '../../../src/records/index.ts';
import {
  personOf,
  staffList,
  unitFactsOf,
  unitRegister,
  visitLog,
  visitSetOf,
} from '../../../src/records/index.ts';
import { toSi } from '../../../src/units/conversion.ts';
import type { Quantity } from '../../../src/units/quantities.ts';
import type { Answered, Instruments, Knowledge } from '../../../src/visit/answer/index.ts';
import { answerSet, defaultInstruments, nothingKnown } from '../../../src/visit/answer/index.ts';

type Cell = number | string;

/** What the full answer says to every set of a typed visit; undefined where nothing was typed. */
export function answersByFunctions(
  placed: PlacedLines,
  typed: TypedVisit,
): readonly (Answered | undefined)[] {
  const unit = unitFactsOf(rowOf(placed, unitRegister, cellsOf(placed, typed, 'register')).row);
  const staff = rowOf(placed, staffList, cellsOf(placed, typed, 'staff')).row;
  const instruments = instrumentsOf(placed, typed);
  let before: Knowledge =
    typed.once['topped_up'] === 'yes'
      ? { ...nothingKnown, visit: 'earlier', topUps: 1, toppedUpKg: 0.05 }
      : nothingKnown;
  return Array.from({ length: 8 }, (_, index) => {
    const set = typed.sets[index];
    if (set === undefined || Object.keys(set).length === 0) return undefined;
    const cells = { ...cellsOf(placed, typed, 'log'), ...set, set_no: index + 1, ...gasOf(typed) };
    const { row, unreadable } = rowOf(placed, visitLog, cells);
    const answered = answerSet({
      unit,
      person: personOf(row, staff, true),
      set: visitSetOf(row, unreadable),
      before,
      instruments,
    });
    before = answered.known;
    return answered;
  });
}

function gasOf({ once }: TypedVisit): Readonly<Record<string, Cell>> {
  const gas = once['refrigerant'];
  return gas === undefined ? {} : { gas_in_unit: gas };
}

function cellsOf(
  placed: PlacedLines,
  typed: TypedVisit,
  table: 'log' | 'register' | 'staff',
): Record<string, Cell> {
  const cells: Record<string, Cell> = {};
  for (const { key, tables } of placed.once) {
    const value = typed.once[key];
    if (tables.includes(table) && value !== undefined) cells[key] = value;
  }
  return cells;
}

/** Cells by field name → a row, through the very reading that the log goes through. */
function rowOf(placed: PlacedLines, table: RecordTable, cells: Readonly<Record<string, Cell>>) {
  const names = Object.keys(cells).filter((name) => table.fields.some((field) => field.name === name));
  const headings = names.map((name) => {
    const field = table.fields.find((one) => one.name === name);
    const symbol = field?.quantity === undefined ? '' : placed.units.unit(field.quantity).symbol;
    return symbol === '' ? name : `${name} (${symbol})`;
  });
  if (names.length === 0) return { row: {} as RecordRow, unreadable: [] };
  const reader = sheetReader(table, headings, { units: unitSystem('US'), parameter: 'visit' });
  return readRow(
    reader,
    names.map((name) => cells[name] ?? null),
  );
}

function instrumentsOf(placed: PlacedLines, { once }: TypedVisit): Instruments {
  const si = (key: string, quantity: Quantity, usual: number): number => {
    const value = once[key];
    const preset = placed.once.find((line) => line.key === key)?.preset;
    const typed = typeof value === 'number' ? value : typeof preset === 'number' ? preset : undefined;
    return typed === undefined ? usual : toSi(typed, placed.units.unit(quantity), 0);
  };
  return {
    suctionGaugePa: si('suction_doubt', 'pressureDifference', defaultInstruments.suctionGaugePa),
    liquidGaugePa: si('liquid_doubt', 'pressureDifference', defaultInstruments.liquidGaugePa),
    probeK: si('pipe_doubt', 'temperatureDifference', defaultInstruments.probeK),
    airProbeK: si('air_doubt', 'temperatureDifference', defaultInstruments.airProbeK),
  };
}
