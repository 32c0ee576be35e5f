import type { Arbitrary } from 'fast-check';
import fc from 'fast-check';
import type { CellInput } from '../../../functions/runtime/cells.ts';
import { costInputNames, definitionOf } from '../../../src/cost/inputs.ts';
import type { CostInput } from '../../../src/cost/inputs.ts';
import { recordTables } from '../../../src/records/index.ts';
import type { Field, RecordTable } from '../../../src/records/index.ts';
import { anyCell } from './cells.ts';
import { designation, isoDay, usualNumber } from './plausible-values.ts';

export type Sheet = readonly (readonly CellInput[])[];

/** Few names, so that rows of one unit, visit and cylinder meet. */
const names = fc.constantFrom('W-12', 'R-02', 'w-12 ', 'V-1', 'V-2', 'C-3', 7);

function usualCell(field: Field): Arbitrary<CellInput> {
  switch (field.kind) {
    case 'number':
      return usualNumber(field.quantity ?? 'ratio');
    case 'choice':
      return fc.constantFrom(
        ...(field.choices ?? ['-']),
        ...(field.numbered ?? []).map((word) => `${word} 2`),
      );
    case 'yesNo':
      return fc.constantFrom<CellInput>('yes', 'no', true, false);
    case 'refrigerant':
      return designation;
    case 'date':
    case 'dateTime':
      return isoDay;
    case 'text':
    case 'link':
      return names;
  }
}

function cellOf(field: Field, odd: number): Arbitrary<CellInput> {
  return fc.oneof(
    { weight: 17, arbitrary: usualCell(field) },
    { weight: 2, arbitrary: fc.constant(null) },
    { weight: odd, arbitrary: anyCell },
  );
}

/** Columns that functions ask for; the others come and go. */
const needed = new Set([
  'unit_id',
  'visit_id',
  'set_no',
  'date_time',
  'added',
  'cyl_id',
  'gross_before',
  'gross_after',
  'date',
]);

export interface SheetSize {
  readonly min: number;
  readonly max: number;
  /** How many cells in twenty hold anything at all. */
  readonly odd?: number;
}

/** The needed columns of a table and some others in any order, with a few rows. */
export function sheetOf(table: RecordTable, { min, max, odd = 1 }: SheetSize): Arbitrary<Sheet> {
  const others = table.fields.filter(({ name }) => !needed.has(name));
  const always = table.fields.filter(({ name }) => needed.has(name));
  return fc
    .subarray(others)
    .chain((some) => fc.shuffledSubarray([...always, ...some], { minLength: always.length + some.length }))
    .chain((fields) =>
      fc
        .array(fc.tuple(...fields.map((field) => cellOf(field, odd))), { minLength: min, maxLength: max })
        .map((body) => [fields.map(({ heading }) => heading), ...body]),
    );
}

export const anyTable: Arbitrary<RecordTable> = fc.constantFrom(...recordTables);

/** A sheet of any of the declared records. */
export const recordTable: Arbitrary<Sheet> = anyTable.chain((table) => sheetOf(table, { min: 0, max: 4 }));

/** What an estimate always needs. */
const always: readonly CostInput[] = [
  'capacity',
  'efficiency',
  'hours',
  'powerPrice',
  'repairPrice',
  'replacementPrice',
  'newLife',
  'yearsLeft',
  'discountRate',
];

/** Whole numbers of the usual units between which an assumption usually lies; shares under 1 % are asked back. */
const usualAssumptions: Partial<Record<CostInput, readonly [number, number]>> = {
  capacity: [5000, 30_000],
  efficiency: [6, 14],
  newEfficiency: [6, 14],
  hours: [0, 4000],
  nameplate: [8, 40],
  leakRate: [2, 20],
  leakGrowth: [2, 50],
  refillAt: [50, 95],
  chargeNow: [60, 90],
  efficiencyLoss: [2, 17],
  usableDownTo: [35, 45],
  repairPrice: [50, 900],
  chanceOfHolding: [20, 90],
  replacementPrice: [300, 3000],
  newLife: [5, 20],
  yearsLeft: [1, 12],
  discountRate: [2, 15],
  capacityLoss: [2, 20],
  coolingMissed: [2, 45],
  age: [1, 25],
  expectedLife: [8, 30],
  flammability: [1, 2],
  gasObtainable: [0, 0],
};

function usualAssumption(name: CostInput): Arbitrary<number> {
  const span = usualAssumptions[name];
  if (span) return fc.integer({ min: span[0], max: span[1] });
  return usualNumber(definitionOf(name).quantity);
}

/** An assumption range: the inputs that every estimate needs and some others, likely values, some with a span. */
export const assumptions: Arbitrary<Sheet> = fc
  .subarray(costInputNames.filter((name) => !always.includes(name)))
  .chain((chosen) =>
    fc.tuple(
      ...[...always, ...chosen].map((name) =>
        fc
          .tuple(usualAssumption(name), fc.boolean())
          .map(([likely, span]): readonly CellInput[] => [
            definitionOf(name).label,
            likely,
            ...(span ? [likely * 0.9, likely * 1.1] : [null, null]),
          ]),
      ),
    ),
  )
  .map((rows) => [['Input', 'Likely', 'Low', 'High'], ...rows]);
