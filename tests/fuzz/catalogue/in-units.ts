import type { Argument, CellInput } from '../../../functions/runtime/cells.ts';
import type { Parameter, ScalarParameter } from '../../../functions/runtime/define.ts';
import type { RegisteredFunction } from '../../../functions/runtime/registry.ts';
import type { UnitSystem } from '../../../functions/runtime/unit-system.ts';
import { unitSystem } from '../../../functions/runtime/unit-system.ts';
import { standardAtmospherePa } from '../../../src/air/standard-atmosphere.ts';
import { costInputNames, definitionOf } from '../../../src/cost/inputs.ts';
import {
  cylinderMovements,
  cylinderRegister,
  matchHeadings,
  recordTables,
  unitRegister,
  visitLog,
} from '../../../src/records/index.ts';
import type { RecordTable } from '../../../src/records/index.ts';
import { fromSi, toSi } from '../../../src/units/conversion.ts';
import type { Quantity } from '../../../src/units/quantities.ts';
import type { Sheet } from './record-sheets.ts';

export const us = unitSystem('US');
export const si = unitSystem('SI');

/** How a number of US units is written instead. */
export type Spelling = (value: number, quantity: Quantity) => CellInput;

export function metric(atmospherePa: number): Spelling {
  return (value, quantity) => inSystem(value, quantity, si, atmospherePa);
}

/** "-3.2 degC": text with a unit of the other system. */
export function metricText(atmospherePa: number): Spelling {
  return (value, quantity) => {
    const { symbol } = si[quantity];
    if (symbol === '' || symbol === 'money') return value;
    return `${String(inSystem(value, quantity, si, atmospherePa))} ${symbol}`;
  };
}

function inSystem(value: number, quantity: Quantity, system: UnitSystem, atmospherePa: number): number {
  return fromSi(toSi(value, us[quantity], atmospherePa), system[quantity], atmospherePa);
}

/** Elevation of a call in metres, from its US number. */
export function elevationM(declaration: RegisteredFunction, args: readonly Argument[]): number {
  const value = args[declaration.parameterNames.indexOf('elevation')];
  return typeof value === 'number' ? toSi(value, us.altitude, 0) : 0;
}

/** The same values, every number of a quantity written otherwise. */
export function respelled(
  declaration: RegisteredFunction,
  args: readonly Argument[],
  spelling: (atmospherePa: number) => Spelling,
): Argument[] {
  const spell = spelling(standardAtmospherePa(elevationM(declaration, args)));
  return declaration.parameterNames.map((name, index) => {
    const parameter = declaration.parameters[name];
    const value = args[index];
    if (!parameter) return value;
    return parameter.kind === 'table'
      ? respelledTable(name, value, spell)
      : respelledArgument(parameter, value, spell);
  });
}

function respelledArgument(parameter: Parameter, value: Argument, spell: Spelling): Argument {
  const one: Parameter = parameter.kind === 'list' ? parameter.of : parameter;
  const cell = (given: CellInput): CellInput => respelledCell(one as ScalarParameter, given, spell);
  return Array.isArray(value)
    ? value.map((row: readonly CellInput[]) => row.map(cell))
    : cell(value as CellInput);
}

function respelledCell(parameter: ScalarParameter, cell: CellInput, spell: Spelling): CellInput {
  return parameter.kind === 'number' && typeof cell === 'number' ? spell(cell, parameter.quantity) : cell;
}

const tables: Readonly<Record<string, RecordTable>> = {
  ledger: visitLog,
  register: unitRegister,
  cylinders: cylinderRegister,
  movements: cylinderMovements,
};

function respelledTable(name: string, value: Argument, spell: Spelling): Argument {
  if (!Array.isArray(value)) return value;
  const sheet = value as Sheet;
  const table = tables[name];
  if (table) return respelledSheet(table, sheet, spell);
  return name === 'assumptions' ? respelledAssumptions(sheet, spell) : sheet;
}

function respelledSheet(table: RecordTable, sheet: Sheet, spell: Spelling): Sheet {
  const headings = (sheet[0] ?? []).map(String);
  const quantityAt = new Map<number, Quantity>();
  for (const { index, field, unit } of matchHeadings(table, headings).columns) {
    if (field.quantity !== undefined && unit === undefined) quantityAt.set(index, field.quantity);
  }
  return sheet.map((row, line) =>
    row.map((cell, index) => {
      const quantity = quantityAt.get(index);
      return line > 0 && quantity !== undefined && typeof cell === 'number' ? spell(cell, quantity) : cell;
    }),
  );
}

function respelledAssumptions(sheet: Sheet, spell: Spelling): Sheet {
  return sheet.map((row) => {
    const name = costInputNames.find((each) => definitionOf(each).label === row[0]);
    if (name === undefined) return row;
    return row.map((cell) => (typeof cell === 'number' ? spell(cell, definitionOf(name).quantity) : cell));
  });
}

/** The record that a heading row and a row below it belong to, spelled alike. */
export function respelledRow(record: string, headings: Sheet, row: Sheet, spell: Spelling): Sheet {
  const table = recordTables.find(({ name }) => name === record) ?? visitLog;
  return respelledSheet(table, [headings[0] ?? [], ...row], spell).slice(1);
}
