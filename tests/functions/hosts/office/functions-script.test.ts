import { createContext, runInContext } from 'node:vm';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { emitFunctionsJson } from '../../../../functions/hosts/office/emit.ts';
import { call } from '../../../../functions/catalogue/call.ts';
import { catalogue } from '../../../../functions/catalogue/index.ts';
import type { CalcError } from '../../../../src/errors.ts';
import { budget } from '../../../size-budget.ts';
import { built } from '../built.ts';
import type { Plain } from '../call-table.ts';
import { callTable } from '../call-table.ts';
import type { Shown } from './emulated-runtime.ts';
import { EmulatedError, EmulatedExcel } from './emulated-runtime.ts';

const json = emitFunctionsJson(catalogue.all(), 'https://example.org/ouncewise/guide');
let script = '';
let web: EmulatedExcel;
let desktop: EmulatedExcel;

/** A runtime with the language alone: no page, no timers, no network, no text encoders. */
function load(blank: 0 | null): EmulatedExcel {
  const excel = new EmulatedExcel(json, blank);
  const context = createContext(
    { CustomFunctions: excel.CustomFunctions },
    { codeGeneration: { strings: false, wasm: false } },
  );
  runInContext(script, context, { filename: 'functions.js' });
  return excel;
}

beforeAll(() => {
  script = built('office', 'functions.js');
  web = load(null);
  desktop = load(0);
}, 300_000);

function plain(value: Shown): Plain {
  const cell = (each: unknown): number | string | boolean =>
    each instanceof EmulatedError ? each.code : (each as number | string | boolean);
  return Array.isArray(value) ? value.map((row) => row.map(cell)) : cell(value);
}

describe('functions.js in a runtime with nothing but the language', () => {
  it('associates every function of functions.json and no other', () => {
    expect(web.associated()).toEqual(catalogue.all().map(({ id }) => id));
  });

  it('gives what the catalogue gives, call by call', () => {
    const table = callTable();
    expect(table.length).toBeGreaterThanOrEqual(200);
    const wrong = table
      .map((row) => ({ row, shown: plain(web.evaluate(row.id, row.values)) }))
      .filter(({ row, shown }) => JSON.stringify(shown) !== JSON.stringify(row.expected));
    expect(wrong).toEqual([]);
  });

  it('says why in the error', () => {
    const shown = web.evaluate('SATTEMP', ['R-410A', -20]);
    const expected = call('SATTEMP', ['R-410A', -20]) as CalcError;
    expect(shown).toBeInstanceOf(EmulatedError);
    expect((shown as EmulatedError).code).toBe('#NUM!');
    expect((shown as EmulatedError).message).toBe(expected.message);
  });

  it('leaves an error cell to fail alone, and passes a single one on', () => {
    const given = new EmulatedError('#DIV/0!');
    const block = web.evaluate('SATTEMP', ['R-22', [[68.5], [given], [68.5]]]) as unknown[][];
    expect(block[1]).toEqual([given]);
    expect(block[0]?.[0]).toBe(block[2]?.[0]);
    expect(typeof block[0]?.[0]).toBe('number');
    expect(web.evaluate('SATTEMP', ['R-22', given])).toBe(given);
  });

  it('reads a blank cell as Excel hands it over: blank on the web, 0 on the desktop', () => {
    expect(web.evaluate('SATTEMP', ['R-22', null])).toBe('');
    // 0 psig of R-22 is its normal boiling point, -41.4 degF (ASHRAE 34, from memory): why sheets ask IF first.
    expect(desktop.evaluate('SATTEMP', ['R-22', null])).toBeCloseTo(-41.4, 0);
    // 0 psia is no pressure at all.
    expect(plain(desktop.evaluate('SATTEMP', ['R-22', null, undefined, undefined, 'psia']))).toBe('#NUM!');
  });

  it('never shows 0 for a blank result', () => {
    const block = web.evaluate('SATTEMP', ['R-22', [[68.5], [null]]]) as unknown[][];
    expect(block[1]).toEqual(['']);
  });

  it('has no evaluated code in it', () => {
    expect(script).not.toMatch(/\beval\(|new Function\(/);
  });

  it('stays within its size budget', () => {
    expect(Buffer.byteLength(script)).toBeLessThanOrEqual(budget['office/functions.js'].bytes);
    expect(gzipSync(script, { level: 9 }).length).toBeLessThanOrEqual(
      budget['office/functions.js'].compressedBytes,
    );
  });
});
