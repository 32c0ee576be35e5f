import { createContext, runInContext } from 'node:vm';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { emitScript } from '../../../../functions/hosts/apps-script/emit.ts';
import { catalogue } from '../../../../functions/catalogue/index.ts';
import { dayOfDate, serialOfDay } from '../../../../functions/runtime/dates.ts';
import { budget } from '../../../size-budget.ts';
import { built } from '../built.ts';
import type { Plain } from '../call-table.ts';
import { callTable } from '../call-table.ts';
import { tooModern } from '../modern-syntax.ts';

let script = '';
let sheet: Sheet;

/** A spreadsheet's script: the language alone, and the functions it declares at the top. */
class Sheet {
  private readonly context = createContext({}, { codeGeneration: { strings: false, wasm: false } });

  constructor(text: string) {
    runInContext(text, this.context, { filename: 'ouncewise.gs' });
  }

  /** Calls a custom function with values that were made inside the script's own world, as Google's are. */
  evaluate(name: string, values: readonly unknown[]): unknown {
    const json = JSON.stringify(values.map((value) => forSheet(value)));
    const code = `
      (() => {
        const revive = (value) => Array.isArray(value) ? value.map(revive)
          : value && value.date ? new Date(value.date) : value === null ? undefined : value;
        return ${name}(...${json}.map(revive));
      })()`;
    return runInContext(code, this.context);
  }

  isFunction(name: string): boolean {
    return runInContext(`typeof ${name} === 'function'`, this.context) as boolean;
  }
}

/** Google hands blanks over as empty text; only what is left out at the end is undefined. */
function forSheet(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(forSheet);
  if (value instanceof Date) return { date: value.getTime() };
  return value === null || value === undefined ? '' : value;
}

/** What the cells show, without the words behind an error's name. */
function shown(evaluate: () => unknown): Plain {
  let value: unknown;
  try {
    value = evaluate();
  } catch (error) {
    return errorName(String((error as Error).message));
  }
  const cell = (each: unknown): number | string | boolean => {
    if (typeof each === 'string') return errorName(each);
    // Dates come from the script's own world.
    if (Object.prototype.toString.call(each) === '[object Date]') {
      return serialOfDay(dayOfDate(new Date((each as Date).getTime())) ?? Number.NaN);
    }
    return each as number | boolean;
  };
  return Array.isArray(value) ? (value as unknown[][]).map((row) => row.map(cell)) : cell(value);
}

function errorName(text: string): string {
  return /^#(VALUE!|NUM!|N\/A)(?= )/.exec(text)?.[0] ?? text;
}

beforeAll(() => {
  script = emitScript({
    functions: catalogue.all(),
    version: '1.2.3',
    core: built('apps-script', 'core.js'),
  });
  sheet = new Sheet(script);
}, 300_000);

describe('ouncewise.gs in a world with nothing but the language', () => {
  it('declares every function at the top level', () => {
    for (const { id } of catalogue.all()) expect(sheet.isFunction(`OUNCE_${id}`), id).toBe(true);
  });

  it('documents every function for the sheet’s help', () => {
    for (const { id, summary, parameterNames } of catalogue.all()) {
      const [, comment = ''] =
        new RegExp(`(/\\*\\*(?:(?!\\*/)[^])*\\*/)\\nfunction OUNCE_${id}\\(`).exec(script) ?? [];
      expect(comment, id).toContain('@customfunction');
      expect(comment, id).toContain(summary);
      for (const name of parameterNames)
        expect(comment, id).toMatch(new RegExp(`@param \\{[^}]+\\} \\[?${name}\\]? \\S`));
      expect(comment, id).toMatch(/@return \{[^}]+\} \S/);
    }
  });

  it('gives what the catalogue gives, call by call', () => {
    const table = callTable();
    expect(table.length).toBeGreaterThanOrEqual(200);
    const wrong = table
      .map((row) => ({ row, outcome: shown(() => sheet.evaluate(`OUNCE_${row.id}`, row.values)) }))
      .filter(({ row, outcome }) => JSON.stringify(outcome) !== JSON.stringify(row.expected));
    expect(wrong).toEqual([]);
  });

  it('takes a whole column in one call, and a bad cell fails alone with its reason', () => {
    const column = Array.from({ length: 500 }, (_, row) => [row === 7 ? 'warm' : row === 9 ? '' : 68.5]);
    const block = sheet.evaluate('OUNCE_SATTEMP', ['R-22', column]) as unknown[][];
    expect(block).toHaveLength(500);
    expect(block[7]?.[0]).toMatch(/^#VALUE! pressure must be a number/);
    expect(block[9]?.[0]).toBe('');
    expect(block[8]?.[0]).toBe(block[0]?.[0]);
    expect(typeof block[0]?.[0]).toBe('number');
  });

  it('throws the reason where one cell cannot answer', () => {
    expect(() => sheet.evaluate('OUNCE_READMASS', ['12 fl oz'])).toThrow(
      /^#VALUE! .*fluid ounces measure volume/,
    );
  });

  it('does not compute with an error that comes in', () => {
    expect(() => sheet.evaluate('OUNCE_READMASS', ['#DIV/0!'])).toThrow('#DIV/0! in a value that was given');
    expect(sheet.evaluate('OUNCE_READMASS', [[['#REF!'], [3]]])).toEqual([['#REF!'], [3]]);
  });

  it('takes dates as Google makes them: every example with dates gives the same', () => {
    let dates = 0;
    const asDate = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(asDate);
      if (typeof value !== 'string' || !/^\d{4}-\d\d-\d\d$/.test(value)) return value;
      dates += 1;
      return new Date(`${value}T00:00`);
    };
    for (const { id, parameterNames, parameters, examples } of catalogue.all()) {
      const isDate = (name: string): boolean => {
        const parameter = parameters[name];
        return parameter?.kind === 'date' || (parameter?.kind === 'list' && parameter.of.kind === 'date');
      };
      for (const { arguments: given } of examples.filter((each) =>
        Object.keys(each.arguments).some(isDate),
      )) {
        const values = parameterNames.map((name) => given[name]);
        const dated = parameterNames.map((name) => (isDate(name) ? asDate(given[name]) : given[name]));
        const name = `OUNCE_${id}`;
        expect(
          shown(() => sheet.evaluate(name, dated)),
          id,
        ).toEqual(shown(() => sheet.evaluate(name, values)));
      }
    }
    expect(dates).toBeGreaterThan(5);
  });

  it('gives a date back as a date', () => {
    const [example] = catalogue.get('NEXTDUE').examples;
    const values = catalogue.get('NEXTDUE').parameterNames.map((name) => example?.arguments[name]);
    expect(Object.prototype.toString.call(sheet.evaluate('OUNCE_NEXTDUE', values))).toBe('[object Date]');
  });

  it('is written in JavaScript that Apps Script reads', () => {
    expect(tooModern(script)).toEqual([]);
    expect(tooModern('class A { #x = 1; static { } } a?.b; a ??= 1')).toEqual(
      expect.arrayContaining(['private field', 'static block', 'optional chaining']),
    );
  });

  it('stays within its size budget', () => {
    const limit = budget['apps-script/ouncewise.gs'];
    expect(Buffer.byteLength(script)).toBeLessThanOrEqual(limit.bytes);
    expect(gzipSync(script, { level: 9 }).length).toBeLessThanOrEqual(limit.compressedBytes);
  });
});
