import { beforeAll, describe, expect, test } from 'vitest';
import type vm from 'node:vm';
import { call } from '../../../../functions/catalogue/call.ts';
import { catalogue } from '../../../../functions/catalogue/index.ts';
import { bundleFunction, bundleLibrary, limits } from '../../../../functions/hosts/sql/script/bundle.ts';
import {
  defaultOptions,
  emitInlineDefinition,
  emitLibraryDefinitions,
} from '../../../../functions/hosts/sql/script/emit.ts';
import { isRange } from '../../../../functions/runtime/broadcast.ts';
import type { Argument, CellOutput, Outcome } from '../../../../functions/runtime/cells.ts';
import type { RegisteredFunction } from '../../../../functions/runtime/registry.ts';
import type { CalcError } from '../../../../src/errors.ts';
import type { Call } from '../calls.ts';
import { everyCall } from '../calls.ts';
import { bareContext, runBody } from './bare-context.ts';

/** The text of one definition: parameter names and body. */
function read(sql: string, id: string): { names: string[]; body: string } {
  const [, parameters = '', rest = ''] =
    new RegExp(`CREATE OR REPLACE FUNCTION OUNCE_${id}\\(([^)]*)\\)([^]*)`).exec(sql) ?? [];
  const [, library, inline] = /AS (?:r"""([^]*?)"""|\$\$([^]*?)\$\$);/.exec(rest) ?? [];
  const names = parameters.split(', ').map((parameter) => parameter.split(' ')[0] ?? '');
  return { names, body: library ?? inline ?? '' };
}

/** Arguments as an engine hands them over. */
function given(id: string, args: readonly Argument[]): unknown[] {
  const parameters = Object.values(catalogue.get(id).parameters);
  return parameters.map((parameter, index) => {
    const arg = args[index];
    if (!isRange(arg)) return arg ?? null;
    return parameter.kind === 'table' ? JSON.stringify(arg) : arg.flat().map((cell) => cell ?? null);
  });
}

function expectedOf({ returns }: RegisteredFunction, outcome: Outcome): unknown {
  const cell = (value: CellOutput, kind: string): unknown => {
    if (value === '' || typeof value === 'object') return null;
    if (kind === 'date') return new Date((Number(value) - 25_569) * 86_400_000).toISOString().slice(0, 10);
    return kind === 'fact' || kind === 'text' ? String(value) : value;
  };
  if (!Array.isArray(outcome)) return cell(outcome, returns.kind);
  if (returns.kind !== 'table') throw new Error('a range');
  const { columns } = returns;
  const records = outcome
    .slice(1)
    .map((row) =>
      Object.fromEntries(columns.map(({ heading, kind }, i) => [heading, cell(row[i] ?? '', kind)])),
    );
  return JSON.stringify(records);
}

const calls: readonly Call[] = everyCall().filter(({ id, args }) => {
  const parameters = Object.values(catalogue.get(id).parameters);
  return args.every((arg, i) => !isRange(arg) || ['list', 'table'].includes(parameters[i]?.kind ?? ''));
});

function differences(run: (id: string, values: readonly unknown[]) => unknown, some = calls): string[] {
  return some.flatMap(({ label, id, args }) => {
    const expected = JSON.stringify(expectedOf(catalogue.get(id), call(id, args)));
    const found = JSON.stringify(run(id, given(id, args)) ?? null);
    return found === expected ? [] : [`${label}: ${found} instead of ${expected}`];
  });
}

describe('definitions with a library, in a JavaScript without a host', () => {
  let context: vm.Context;
  let library: string;
  beforeAll(async () => {
    library = await bundleLibrary();
    context = bareContext();
    (await import('node:vm')).default.runInContext(library, context);
  });
  const sql = emitLibraryDefinitions(catalogue.all(), 'somewhere/library.js');

  test('every call gives what it gives in this process', () => {
    expect(
      differences((id, values) => {
        const { names, body } = read(sql, id);
        return runBody(context, body, names, values);
      }),
    ).toEqual([]);
    expect(calls.length).toBeGreaterThan(2 * catalogue.all().length);
  });

  test('the reason of an error: from OUNCE_WHY, or as the end of the query', () => {
    const { names, body } = read(sql, 'WHY');
    const outcome = call('READMASS', ['12 fl oz']) as CalcError;
    expect(runBody(context, body, names, ['READMASS', '["12 fl oz"]'])).toBe(outcome.message);
    expect(runBody(context, body, names, ['OUNCE_READMASS', '["12 oz"]'])).toBe(null);
    const strict = read(
      emitLibraryDefinitions(catalogue.all(), 'x', { ...defaultOptions, errors: 'fail' }),
      'READMASS',
    );
    expect(() => runBody(context, strict.body, strict.names, ['12 fl oz', null])).toThrow(outcome.message);
  });

  test('fits into what an engine loads', () => {
    expect(new TextEncoder().encode(library).length).toBeLessThan(limits.library);
  });
});

describe('definitions with the program as the body', () => {
  test('every call gives what it gives in this process, each function alone in its context', async () => {
    const wrong: string[] = [];
    const tooLarge: string[] = [];
    for (const declaration of catalogue.all()) {
      const { id } = declaration;
      const { names, body } = read(emitInlineDefinition(declaration, await bundleFunction(declaration)), id);
      if (body.length > limits.inlineBody) tooLarge.push(id);
      const context = bareContext();
      const capitals = names.map((name) => name.toUpperCase());
      wrong.push(
        ...differences(
          (_id, values) => runBody(context, body, capitals, values),
          calls.filter((one) => one.id === id),
        ),
      );
    }
    expect(wrong).toEqual([]);
    // These read whole tables of records, weigh every reading of a visit, or take a pressure with its barometer and the verdicts of
    // other checks: work for a library or the call stream.
    const known = [
      'CAUSES',
      'CHARGEPLAN',
      'COMPLETENESS',
      'CYLINDERBALANCE',
      'CYLINDERLIMIT',
      'DONEXT',
      'DUTYCHECK',
      'EVAPCHECK',
      'EXPECTEDDISCHARGE',
      'FLEETSUMMARY',
      'LEAKHISTORY',
      'ROWCHECK',
      'STANDINGCHECK',
      'SUBCOOLINGCHECK',
      'SUPERHEATCHECK',
    ];
    expect(tooLarge.filter((id) => !known.includes(id))).toEqual([]);
  }, 180_000);
});

test('the texts', () => {
  const declaration = catalogue.get('READMASS');
  expect(emitInlineDefinition(declaration, 'PROGRAM')).toBe(
    `-- ${declaration.summary}
CREATE OR REPLACE FUNCTION OUNCE_READMASS(text_given FLOAT, units VARCHAR)
RETURNS FLOAT
LANGUAGE JAVASCRIPT
AS $$
if (!globalThis.ounce_READMASS) {
PROGRAM
globalThis.ounce_READMASS = Ouncewise.answer;
}
return globalThis.ounce_READMASS([TEXT_GIVEN, UNITS], false);
$$;
`,
  );
  expect(emitLibraryDefinitions([declaration], 'x/y.js', { errors: 'fail', numbers: 'text' })).toContain(
    `CREATE OR REPLACE FUNCTION OUNCE_READMASS(text_given STRING, units STRING)
RETURNS FLOAT64
LANGUAGE js
OPTIONS (library = ['x/y.js'])
AS r"""return Ouncewise.answer('READMASS', [text_given, units], true);""";
`,
  );
  // Two dollar signs would end the body early.
  expect(emitInlineDefinition(declaration, 'a = `$$${b}`').split('$$')).toHaveLength(3);
});

test('tables come as rows, as records or as one row', async () => {
  const context = bareContext();
  (await import('node:vm')).default.runInContext(await bundleLibrary(), context);
  const { names, body } = read(emitLibraryDefinitions(catalogue.all(), 'x'), 'COMPLETENESS');
  const example = catalogue.get('COMPLETENESS').examples[0];
  const args = catalogue.get('COMPLETENESS').parameterNames.map((name) => example?.arguments[name]);
  const rows = given('COMPLETENESS', args);
  const flat = rows.map((value) => {
    const parsed: unknown =
      typeof value === 'string' && value.startsWith('[[') ? JSON.parse(value) : undefined;
    return Array.isArray(parsed) && parsed.length === 1 ? JSON.stringify(parsed[0]) : value;
  });
  expect(flat).not.toEqual(rows);
  expect(runBody(context, body, names, flat)).toBe(call('COMPLETENESS', args));
  expect(runBody(context, body, names, ['no json', ...rows.slice(1)])).toBe(null);
});
