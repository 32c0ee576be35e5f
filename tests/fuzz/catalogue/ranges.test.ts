import type { Arbitrary } from 'fast-check';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { call } from '../../../functions/catalogue/call.ts';
import { catalogue } from '../../../functions/catalogue/index.ts';
import type { Argument, CellInput } from '../../../functions/runtime/cells.ts';
import { holds } from '../runs.ts';
import { plausibleArguments } from './plausible.ts';
import { anyCell } from './cells.ts';
import { asData } from './snapshot.ts';

const functions = catalogue.all().filter(({ returns }) => returns.kind !== 'table');

interface Block {
  readonly id: string;
  /** The same call several times over, each with other values. */
  readonly calls: readonly (readonly Argument[])[];
  /** Which parameters get their values as a range. */
  readonly ranged: readonly boolean[];
}

const blocks: Arbitrary<Block> = fc.constantFrom(...functions).chain((declaration) => {
  const { id, parameterNames, parameters } = declaration;
  const scalar = parameterNames.map((name) => {
    const kind = parameters[name]?.kind;
    return kind !== 'list' && kind !== 'table';
  });
  return fc
    .tuple(
      fc.array(plausibleArguments(declaration, 1), { minLength: 2, maxLength: 4 }),
      fc.array(fc.boolean(), { minLength: scalar.length, maxLength: scalar.length }),
      fc.array(fc.tuple(fc.nat(3), fc.nat(scalar.length - 1), anyCell), { maxLength: 2 }),
    )
    .map(([plausible, chosen, odd]) => {
      const calls = plausible.map((args) => [...args]);
      for (const [line, index, cell] of odd) {
        const args = calls[line];
        if (args && scalar[index] === true) args[index] = cell;
      }
      return { id, calls, ranged: scalar.map((can, index) => can && chosen[index] === true) };
    });
});

/** Parameters that are not ranged have the value of the first call everywhere. */
function single({ calls, ranged }: Block, line: number): Argument[] {
  return ranged.map((isRanged, index) => calls[isRanged ? line : 0]?.[index]);
}

describe('a range gives what its cells give one by one', () => {
  test('columns side by side', () => {
    holds(blocks, 300, (block) => {
      const { id, calls, ranged } = block;
      if (!ranged.includes(true)) return;
      const args = ranged.map((isRanged, index) =>
        isRanged ? calls.map((one) => [one[index] as CellInput]) : calls[0]?.[index],
      );
      const expected = calls.map((_, line) => [call(id, single(block, line))]);
      expect(asData(call(id, args))).toEqual(asData(expected as never));
    });
  });

  test('a column against a row', () => {
    holds(blocks, 300, ({ id, calls, ranged }) => {
      const down = ranged.indexOf(true);
      const across = ranged.indexOf(true, down + 1);
      if (across < 0) return;
      const base = calls[0] ?? [];
      const args = [...base];
      args[down] = calls.map((one) => [one[down] as CellInput]);
      args[across] = [calls.map((one) => one[across] as CellInput)];
      const expected = calls.map((row) =>
        calls.map((column) => call(id, base.with(down, row[down]).with(across, column[across]))),
      );
      expect(asData(call(id, args))).toEqual(asData(expected as never));
    });
  });
});

test('nothing, blank text and a cell left out are the same', () => {
  const calls = fc
    .constantFrom(...catalogue.all())
    .chain((declaration) => plausibleArguments(declaration, 1).map((args) => ({ id: declaration.id, args })));
  holds(calls, 300, ({ id, args }) => {
    const expected = asData(call(id, args));
    for (const blank of [null, '', '  ', [[null]], [[]], [] as []]) {
      expect(
        asData(
          call(
            id,
            args.map((arg) => (arg === undefined ? blank : arg)),
          ),
        ),
      ).toEqual(expected);
    }
    const last = args.findLastIndex((arg) => arg !== undefined);
    expect(asData(call(id, args.slice(0, last + 1)))).toEqual(expected);
    const { parameterNames } = catalogue.get(id);
    const named = Object.fromEntries(
      parameterNames.flatMap((name, index) => (args[index] === undefined ? [] : [[name, args[index]]])),
    );
    expect(asData(call(id, named))).toEqual(expected);
  });
});

test('elevation 0 is sea level', () => {
  const atSeaLevel = functions
    .concat(catalogue.all())
    .filter(({ parameterNames }) => parameterNames.includes('elevation'));
  const calls = fc
    .constantFrom(...atSeaLevel)
    .chain((declaration) => plausibleArguments(declaration, 1).map((args) => ({ declaration, args })));
  holds(calls, 300, ({ declaration, args }) => {
    const { id, parameterNames, parameters } = declaration;
    // AIRPRESSURE has no other value to work with.
    if (!('default' in (parameters['elevation'] ?? {}))) return;
    const at = parameterNames.indexOf('elevation');
    const expected = asData(call(id, args.with(at, undefined)));
    for (const zero of [0, -0, '0', '0 ft', '0 m']) {
      expect(asData(call(id, args.with(at, zero)))).toEqual(expected);
    }
  });
});
