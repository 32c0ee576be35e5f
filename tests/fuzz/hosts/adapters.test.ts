import { PassThrough, Readable } from 'node:stream';
import { createContext, runInContext } from 'node:vm';
import type { DuckDBConnection, DuckDBValue } from '@duckdb/node-api';
import { DuckDBDateValue, DuckDBInstance, DuckDBListValue, DuckDBStructValue } from '@duckdb/node-api';
import { beforeAll, describe, expect, test } from 'vitest';
import { call } from '../../../functions/catalogue/call.ts';
import { catalogue } from '../../../functions/catalogue/index.ts';
import { emitStubs } from '../../../functions/hosts/apps-script/emit.ts';
import { outcomeJson } from '../../../functions/hosts/command-line/outcome-json.ts';
import { streamCalls } from '../../../functions/hosts/command-line/stream.ts';
import { calcErrorNumber } from '../../../functions/hosts/libreoffice/error-codes.ts';
import { CalcServer } from '../../../functions/hosts/libreoffice/server.ts';
import { emitFunctionsJson } from '../../../functions/hosts/office/emit.ts';
import { registerFunctions } from '../../../functions/hosts/sql/duckdb/register.ts';
import { bundleLibrary } from '../../../functions/hosts/sql/script/bundle.ts';
import { catalogueFunctions } from '../../../functions/workbook/catalogue-functions.ts';
import { CellError } from '../../../functions/workbook/model/values.ts';
import { isRange } from '../../../functions/runtime/broadcast.ts';
import { cellErrorOf } from '../../../functions/runtime/cell-errors.ts';
import type { Argument, CellOutput, Outcome } from '../../../functions/runtime/cells.ts';
import { dayOfDate, serialOfDay, textOfDay } from '../../../functions/runtime/dates.ts';
import { CalcError } from '../../../src/errors.ts';
import { EmulatedError, EmulatedExcel } from '../../functions/hosts/office/emulated-runtime.ts';
import { bareContext } from '../../functions/hosts/sql/bare-context.ts';
import { sqlLiteral } from '../../functions/hosts/sql/literal.ts';
import { bundled } from './bundled.ts';
import { disagreements, hostCalls, rowCalls } from './host-calls.ts';

const calls = hostCalls(200);
const rows = rowCalls(200);
const minutes = 300_000;

function cells(outcome: Outcome, cell: (each: CellOutput) => unknown): unknown {
  return Array.isArray(outcome) ? outcome.map((row) => row.map(cell)) : cell(outcome);
}

describe('random calls give the same everywhere', () => {
  test('enough of them give a value', () => {
    expect(calls.length).toBeGreaterThan(300);
    const values = calls.filter(({ id, args }) => !(call(id, args) instanceof CalcError));
    expect(values.length).toBeGreaterThan(calls.length / 4);
  });

  test(
    'in Excel, as it calls an add-in',
    async () => {
      const excel = new EmulatedExcel(emitFunctionsJson(catalogue.all(), 'https://example.org/guide'), null);
      const program = await bundled('functions/hosts/office/functions.ts');
      runInContext(program, createContext({ CustomFunctions: excel.CustomFunctions }));
      const plain = (cell: unknown): unknown => (cell instanceof EmulatedError ? cell.code : cell);
      const shown = (id: string, args: readonly Argument[]): unknown => {
        const value = excel.evaluate(
          id,
          args.map((arg) => arg ?? null),
        );
        return Array.isArray(value) ? value.map((row) => row.map(plain)) : plain(value);
      };
      expect(disagreements(calls, shown)).toEqual([]);
    },
    minutes,
  );

  test(
    'in Google Sheets, as it calls a script',
    async () => {
      const context = createContext({}, { codeGeneration: { strings: false, wasm: false } });
      runInContext(await bundled('functions/hosts/apps-script/main.ts'), context);
      runInContext(emitStubs(catalogue.all()), context);
      const plain = (cell: unknown): unknown => {
        if (Object.prototype.toString.call(cell) === '[object Date]')
          return serialOfDay(dayOfDate(new Date((cell as Date).getTime())) ?? Number.NaN);
        return typeof cell === 'string' ? (/^#(?:VALUE!|NUM!|N\/A)(?= )/.exec(cell)?.[0] ?? cell) : cell;
      };
      const shown = (id: string, args: readonly Argument[]): unknown => {
        const given = args.map((arg) =>
          isRange(arg) ? arg.map((row) => row.map((cell) => cell ?? '')) : (arg ?? ''),
        );
        let value: unknown;
        try {
          value = runInContext(`OUNCE_${id}(...${JSON.stringify(given)})`, context);
        } catch (error) {
          return plain((error as Error).message);
        }
        return Array.isArray(value) ? (value as unknown[][]).map((row) => row.map(plain)) : plain(value);
      };
      expect(disagreements(calls, shown)).toEqual([]);
    },
    minutes,
  );

  test(
    'in ONLYOFFICE, as it calls a library',
    async () => {
      const context = createContext({}, { codeGeneration: { strings: false, wasm: false } });
      runInContext(await bundled('functions/hosts/onlyoffice/main.ts'), context);
      const shown = (id: string, args: readonly Argument[]): unknown =>
        runInContext(
          `Ouncewise.call(${JSON.stringify(id)}, ${JSON.stringify(args.map((arg) => arg ?? null))})`,
          context,
        );
      expect(disagreements(calls, shown)).toEqual([]);
    },
    minutes,
  );

  test('in the lines that LibreOffice asks', () => {
    const server = new CalcServer();
    const wire = (cell: CellOutput): unknown =>
      cell instanceof CalcError ? { e: calcErrorNumber[cellErrorOf[cell.code]] } : cell;
    const shown = (id: string, args: readonly Argument[]): unknown =>
      (
        JSON.parse(server.answerLine(JSON.stringify({ n: 1, f: id, a: args.map((arg) => arg ?? null) }))) as {
          v: unknown;
        }
      ).v;
    expect(disagreements(calls, shown, (id, args) => cells(call(id, args), wire))).toEqual([]);
  });

  test('in a workbook of the command line', () => {
    const plain = (cell: unknown): unknown => (cell instanceof CellError ? cell.code : cell);
    const shown = (id: string, args: readonly Argument[]): unknown => {
      const value = catalogueFunctions.call(id, args.map((arg) => arg ?? null) as never) as unknown;
      return Array.isArray(value) ? (value as unknown[][]).map((row) => row.map(plain)) : plain(value);
    };
    expect(disagreements(calls, shown)).toEqual([]);
  });

  test('in the call stream', async () => {
    const output = new PassThrough();
    const chunks: string[] = [];
    output.on('data', (chunk: Buffer) => chunks.push(chunk.toString()));
    await streamCalls(
      Readable.from(
        calls.map(({ id, args }) => `${JSON.stringify({ id, args: args.map((arg) => arg ?? null) })}\n`),
      ),
      output,
    );
    const answers = chunks.join('').trimEnd().split('\n');
    expect(answers).toHaveLength(calls.length);
    const wrong = calls.flatMap(({ id, args }, index) => {
      const expected = JSON.stringify(outcomeJson(call(id, args)));
      return answers[index] === expected
        ? []
        : [`${id} ${JSON.stringify(args)}: ${answers[index] ?? ''} / ${expected}`];
    });
    expect(wrong).toEqual([]);
  });
});

/** Results in SQL: blank and errors are NULL, dates are days, a table has no heading row. */
function sqlResult(id: string, args: readonly Argument[], date: (serial: number) => unknown): unknown {
  const { returns } = catalogue.get(id);
  const outcome = call(id, args);
  const cell = (value: CellOutput, kind: string): unknown => {
    if (value === '' || typeof value === 'object') return null;
    if (kind === 'date') return date(Number(value));
    return ['text', 'verdict', 'fact'].includes(kind) ? String(value) : value;
  };
  if (!Array.isArray(outcome)) return cell(outcome, returns.kind);
  const columns = returns.kind === 'table' ? returns.columns : [];
  return outcome
    .slice(1)
    .map((row) => row.map((value, index) => cell(value, columns[index]?.kind ?? 'text')));
}

describe('random calls give the same in SQL', () => {
  test(
    'in an engine that runs the script library',
    async () => {
      const context = bareContext();
      runInContext(await bundleLibrary(), context);
      const shown = (id: string, args: readonly Argument[]): unknown => {
        const parameters = Object.values(catalogue.get(id).parameters);
        const given = parameters.map((parameter, index) => {
          const arg = args[index];
          if (parameter.kind === 'table')
            return arg == null || arg === '' ? null : JSON.stringify(isRange(arg) ? arg : [[arg]]);
          return isRange(arg) ? arg.flat().map((cell) => cell ?? null) : (arg ?? null);
        });
        const text = runInContext(
          `JSON.stringify(Ouncewise.answer(${JSON.stringify(id)}, ${JSON.stringify(given)}, false))`,
          context,
        ) as string;
        const value: unknown = JSON.parse(text);
        return catalogue.get(id).returns.kind === 'table' && typeof value === 'string'
          ? (JSON.parse(value) as object[]).map((row) => Object.values(row) as unknown)
          : value;
      };
      expect(
        disagreements(rows, shown, (id, args) => sqlResult(id, args, (serial) => textOfDay(serial - 25_569))),
      ).toEqual([]);
    },
    minutes,
  );

  test(
    'in DuckDB',
    async () => {
      const connection: DuckDBConnection = await (await DuckDBInstance.create(':memory:')).connect();
      await registerFunctions(connection);
      const plain = (value: DuckDBValue): unknown => {
        if (value instanceof DuckDBDateValue) return value.days + 25_569;
        if (value instanceof DuckDBListValue) return value.items.map(plain);
        if (value instanceof DuckDBStructValue) return Object.values(value.entries).map(plain);
        return value;
      };
      const wrong: string[] = [];
      // A column of a list has one type, and a table is written with its headings as names: other cells cannot be asked.
      const askable = rows.filter(({ args }) => !args.some(isRange)).slice(0, 400);
      for (const { id, args } of askable) {
        const parameters = Object.values(catalogue.get(id).parameters);
        const literals = args.map((arg, index) => sqlLiteral(arg, parameters[index]));
        const [row] = (
          await connection.runAndReadAll(`SELECT OUNCE_${id}(${literals.join(', ')})`)
        ).getRows();
        const found = JSON.stringify(plain(row?.[0] ?? null));
        const wanted = JSON.stringify(sqlResult(id, args, (serial) => serial));
        if (found !== wanted) wrong.push(`${id} ${JSON.stringify(args)}: ${found} instead of ${wanted}`);
      }
      expect(wrong).toEqual([]);
      expect(askable.length).toBeGreaterThan(50);
    },
    minutes,
  );
});

beforeAll(() => {
  // The first call reads the data of all refrigerants.
  call('REFRIGERANTLIST', []);
});
