import type { Arbitrary } from 'fast-check';
import fc from 'fast-check';
import type { Argument, CellInput } from '../../../functions/runtime/cells.ts';
import type { NumberParameter, Parameter, ScalarParameter } from '../../../functions/runtime/define.ts';
import type { RegisteredFunction } from '../../../functions/runtime/registry.ts';
import { unitSystem } from '../../../functions/runtime/unit-system.ts';
import { standardAtmospherePa } from '../../../src/air/standard-atmosphere.ts';
import { cylinderMovements, cylinderRegister, unitRegister, visitLog } from '../../../src/records/index.ts';
import { fromSi } from '../../../src/units/conversion.ts';
import { dayNumber, designation, isoDay, usualNumber } from './plausible-values.ts';
import { anyTable, assumptions, sheetOf } from './record-sheets.ts';

/** What texts of the catalogue's parameters usually hold. */
const usualTexts: Readonly<Record<string, readonly string[]>> = {
  ready: ['Ready', 'Ready: settled', 'Wait: 12 min', 'Refused: ice'],
  rated_volts: ['115', '208/230', '115-120', '230'],
  label: ['45', '45/5', '35+5 uF', '30 uF'],
  standing: ['Fits: R-410A', 'Lower: less pressure', 'Ready'],
  gas: ['nitrogen', 'oxygen', 'air'],
  unit_id: ['W-12', 'R-02'],
  text: ['12 oz', '1 lb 4 oz', '340 g', '0.5 kg', '14'],
};

const us = unitSystem('US');

/**
 * Values of US units that a technician could have given to a function, in calling order; what may be left out often is.
 *
 * @param odd - how many of twenty cells of records hold anything at all
 */
export function plausibleArguments(
  { parameterNames, parameters }: RegisteredFunction,
  odd: number,
): Arbitrary<readonly Argument[]> {
  const usual = fc.tuple(...parameterNames.map((name) => plausibleArgument(name, parameters[name], odd)));
  if (!parameterNames.includes('headings')) return usual;
  // The heading row, the row and the name of their record belong together.
  return anyTable.chain((table) =>
    fc.tuple(usual, sheetOf(table, { min: 1, max: 1, odd })).map(([args, [headings = [], ...row]]) =>
      args.map((arg, index) => {
        const name = parameterNames[index];
        return name === 'headings' ? [headings] : name === 'row' ? row : name === 'record' ? table.name : arg;
      }),
    ),
  );
}

function plausibleArgument(name: string, parameter: Parameter | undefined, odd: number): Arbitrary<Argument> {
  if (!parameter || name === 'units') return fc.constant(undefined);
  const value = valueOf(name, parameter, odd);
  const mayBeLeftOut = parameter.optional === true || 'default' in parameter;
  return mayBeLeftOut ? fc.oneof(value, fc.constant(undefined)) : value;
}

function valueOf(name: string, parameter: Parameter, odd: number): Arbitrary<Argument> {
  if (parameter.kind === 'table') return tableNamed(name, odd);
  if (parameter.kind === 'list') {
    const cell = fc.oneof(
      { weight: 9, arbitrary: plausibleCell(name, parameter.of) },
      { weight: 1, arbitrary: fc.constant(null) },
    );
    return fc.array(fc.tuple(cell), { minLength: 1, maxLength: 5 });
  }
  return plausibleCell(name, parameter);
}

export function plausibleCell(name: string, parameter: ScalarParameter): Arbitrary<CellInput> {
  switch (parameter.kind) {
    case 'number':
      return plausibleNumber(parameter);
    case 'choice':
      return fc.constantFrom(...parameter.choices);
    case 'yesNo':
      return fc.constantFrom<CellInput>('yes', 'no', true, false);
    case 'date':
      return fc.oneof(isoDay, dayNumber);
    case 'refrigerant':
      return designation;
    case 'text':
      return fc.constantFrom(...(usualTexts[name] ?? ['text']));
  }
}

/** A usual reading, moved inside the parameter's own limits. */
export function plausibleNumber(parameter: NumberParameter): Arbitrary<number> {
  const { quantity, minimum, maximum, above, integer } = parameter;
  const inUs = (si: number): number => fromSi(si, us[quantity], standardAtmospherePa(0));
  const low = minimum ?? above;
  return usualNumber(quantity).map((value) => {
    let inside = value;
    if (low !== undefined && inside <= inUs(low)) inside = inUs(low) + (above === undefined ? 0 : 1);
    if (maximum !== undefined && inside > inUs(maximum)) inside = inUs(maximum);
    return integer === true ? Math.round(inside) : inside;
  });
}

function tableNamed(name: string, odd: number): Arbitrary<Argument> {
  switch (name) {
    case 'ledger':
      return sheetOf(visitLog, { min: 0, max: 5, odd });
    case 'register':
      return sheetOf(unitRegister, { min: 0, max: 3, odd });
    case 'cylinders':
      return sheetOf(cylinderRegister, { min: 0, max: 3, odd });
    case 'movements':
      return sheetOf(cylinderMovements, { min: 0, max: 4, odd });
    default:
      return assumptions;
  }
}
