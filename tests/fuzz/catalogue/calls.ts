import type { Arbitrary } from 'fast-check';
import fc from 'fast-check';
import { catalogue } from '../../../functions/catalogue/index.ts';
import type { Argument, CellInput } from '../../../functions/runtime/cells.ts';
import type { RegisteredFunction } from '../../../functions/runtime/registry.ts';
import { callTable } from '../../functions/hosts/call-table.ts';
import { anyCell, plainCell } from './cells.ts';
import { plausibleArguments } from './plausible.ts';
import { recordTable } from './record-sheets.ts';

export interface RandomCall {
  readonly id: string;
  readonly args: readonly Argument[];
}

type Block<T> = readonly (readonly T[])[];

/** One row, one column, a block, rows of unequal length, nothing at all. */
export function blockOf<T>(cell: Arbitrary<T>): Arbitrary<Block<T>> {
  return fc.oneof(
    { weight: 3, arbitrary: fc.array(cell, { minLength: 1, maxLength: 4 }).map((row) => [row]) },
    { weight: 3, arbitrary: fc.array(fc.tuple(cell), { minLength: 1, maxLength: 4 }) },
    {
      weight: 2,
      arbitrary: fc
        .integer({ min: 1, max: 3 })
        .chain((width) =>
          fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 3 }),
        ),
    },
    { weight: 1, arbitrary: fc.array(fc.array(cell, { maxLength: 3 }), { maxLength: 3 }) },
  );
}

export const anyArgument: Arbitrary<Argument> = fc.oneof(
  { weight: 6, arbitrary: anyCell },
  { weight: 3, arbitrary: blockOf<CellInput>(anyCell) },
  { weight: 1, arbitrary: recordTable },
);

/** What every host can hand over: no dates, errors or ragged rows. */
export const plainArgument: Arbitrary<Argument> = fc.oneof(
  { weight: 8, arbitrary: plainCell },
  {
    weight: 2,
    arbitrary: blockOf(plainCell).filter((rows) => {
      const width = rows[0]?.length ?? 0;
      return width > 0 && rows.every((row) => row.length === width);
    }),
  },
);

const anyFunction = fc.constantFrom(...catalogue.all());

/** Any values at all: too few, enough, too many. */
export function wildCall(argument: Arbitrary<Argument>, extra = 2): Arbitrary<RandomCall> {
  return anyFunction.chain(({ id, parameterNames }) =>
    fc
      .array(argument, { maxLength: parameterNames.length + extra, size: 'max' })
      .map((args) => ({ id, args })),
  );
}

const goodCalls: readonly RandomCall[] = callTable()
  .filter(({ kind }) => kind === 'good' || kind === 'omitted')
  .map(({ id, values }) => ({ id, args: values }));

export const goodCall: Arbitrary<RandomCall> = fc.constantFrom(...goodCalls);

/** A call that works, with one or two of its values replaced by anything. */
export function spoiledCall(argument: Arbitrary<Argument>): Arbitrary<RandomCall> {
  return goodCall.chain((good) => spoil(good, argument));
}

/** Values a technician could have typed, some left out. */
export const plausibleCall: Arbitrary<RandomCall> = plausibleCallOf(catalogue.all(), 1);

export function plausibleCallOf(
  functions: readonly RegisteredFunction[],
  odd: number,
): Arbitrary<RandomCall> {
  return fc
    .constantFrom(...functions)
    .chain((declaration) =>
      plausibleArguments(declaration, odd).map((args) => ({ id: declaration.id, args })),
    );
}

export function spoiledPlausibleCall(argument: Arbitrary<Argument>): Arbitrary<RandomCall> {
  return plausibleCall.chain((good) => spoil(good, argument));
}

function spoil(good: RandomCall, argument: Arbitrary<Argument>): Arbitrary<RandomCall> {
  const { parameterNames } = catalogue.get(good.id);
  const position = fc.nat({ max: parameterNames.length - 1 });
  return fc.array(fc.tuple(position, argument), { minLength: 1, maxLength: 2 }).map((replaced) => {
    const args = parameterNames.map((_, index) => good.args[index]);
    for (const [index, value] of replaced) args[index] = value;
    return { id: good.id, args };
  });
}
