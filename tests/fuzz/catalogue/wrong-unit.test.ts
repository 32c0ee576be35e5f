import { expect, test } from 'vitest';
import { call } from '../../../functions/catalogue/call.ts';
import { catalogue } from '../../../functions/catalogue/index.ts';
import type { Argument } from '../../../functions/runtime/cells.ts';
import type { Parameter } from '../../../functions/runtime/define.ts';
import type { RegisteredFunction } from '../../../functions/runtime/registry.ts';
import { CalcError } from '../../../src/errors.ts';
import { recordTables } from '../../../src/records/index.ts';
import { findUnit } from '../../../src/units/conversion.ts';
import type { Quantity } from '../../../src/units/quantities.ts';
import { quantities } from '../../../src/units/quantities.ts';
import { runs } from '../runs.ts';

const fluidOunces = ['fl oz', 'fl. oz', 'floz', 'oz fl', 'fluid oz', 'fluid ounces', 'Fl Oz'];

/** Other spellings of the same units only when many cases are asked for. */
const everySpelling = runs(1) > 1;

const unitNames: readonly string[] = [
  ...new Set([
    ...fluidOunces,
    ...Object.values(quantities).flatMap(({ units }) =>
      units.flatMap(({ symbol, names }) => (everySpelling ? [symbol, ...(names ?? [])] : [symbol])),
    ),
  ]),
].filter((name) => name !== '');

function foreignTo(quantity: Quantity): readonly string[] {
  // A barometer stands for an elevation.
  const own: readonly Quantity[] = quantity === 'altitude' ? ['altitude', 'absolutePressure'] : [quantity];
  return unitNames.filter((name) => own.every((each) => findUnit(each, name) === undefined));
}

/** A call that works, from the function's first example. */
function goodArguments({ parameterNames, examples }: RegisteredFunction): Argument[] {
  return parameterNames.map((name) => examples[0]?.arguments[name]);
}

interface Slot {
  readonly declaration: RegisteredFunction;
  readonly name: string;
  readonly index: number;
  readonly parameter: Parameter;
}

const slots: readonly Slot[] = catalogue.all().flatMap((declaration) =>
  Object.entries(declaration.parameters).map(([name, parameter], index) => ({
    declaration,
    name,
    index,
    parameter,
  })),
);

function refused({ declaration, name, index }: Slot, value: Argument): string | undefined {
  const outcome = call(declaration.id, goodArguments(declaration).with(index, value));
  if (outcome instanceof CalcError && outcome.code === 'invalid-argument' && outcome.parameter === name) {
    return undefined;
  }
  const said = outcome instanceof CalcError ? `${outcome.code} ${outcome.message}` : JSON.stringify(outcome);
  return `${declaration.id} ${name} ${JSON.stringify(value)}: ${said.slice(0, 200)}`;
}

test('no function takes a number with a unit of another quantity', () => {
  let tried = 0;
  const passed = slots.flatMap((slot) => {
    const { parameter } = slot;
    const one = parameter.kind === 'list' ? parameter.of : parameter;
    if (one.kind !== 'number') return [];
    return foreignTo(one.quantity).flatMap((unit) => {
      tried += 1;
      return refused(slot, `12 ${unit}`) ?? [];
    });
  });
  expect(passed).toEqual([]);
  // About 170 numbers of the catalogue, each with more than 70 units that are not its own.
  expect(tried).toBeGreaterThan(8000);
});

test('no record takes a column in a unit of another quantity', () => {
  const passed: string[] = [];
  for (const table of recordTables) {
    const first = table.fields.find(({ name }) => name === table.key[0]);
    for (const field of table.fields) {
      if (field.quantity === undefined || field === first) continue;
      for (const unit of foreignTo(field.quantity)) {
        // "Added (12)" and the like would be no unit at all.
        if (/[()[\]]/.test(unit)) continue;
        const headings = [[first?.heading ?? '', `${field.heading} (${unit})`]];
        const outcome = call('ROWCHECK', [headings, [['X-1', 12]], table.name]);
        if (!(outcome instanceof CalcError) || outcome.parameter !== 'headings') {
          passed.push(`${table.name}: ${field.heading} (${unit}): ${JSON.stringify(outcome)}`);
        }
      }
    }
  }
  expect(passed).toEqual([]);
});

test('what no parameter can be is refused in the name of that parameter', () => {
  const passed = slots.flatMap((slot) => {
    const { kind } = slot.parameter;
    if (kind === 'table' || kind === 'text') return [];
    return ['no such thing', '__proto__', '=1+1', true].flatMap((value) => {
      const takesYes = kind === 'yesNo' && value === true;
      return takesYes ? [] : (refused(slot, value) ?? []);
    });
  });
  expect(passed).toEqual([]);
});
