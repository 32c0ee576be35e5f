/// <reference types="custom-functions-runtime" />
/// <reference types="office-js" />
import { describe, expect, expectTypeOf, it } from 'vitest';
import type { ErrorKit } from '../../../../functions/hosts/office/adapter.ts';
import { adapt } from '../../../../functions/hosts/office/adapter.ts';
import { spell, spellInFile } from '../../../../functions/hosts/office/spell.ts';
import { catalogue } from '../../../../functions/catalogue/index.ts';
import { EmulatedError, EmulatedExcel } from './emulated-runtime.ts';

const kit = new EmulatedExcel('{"functions":[]}', null).CustomFunctions as unknown as ErrorKit;
const sattemp = adapt(catalogue.get('SATTEMP'), kit);
const invocation = { functionName: 'SATTEMP', address: undefined };

describe('a function as Excel calls it', () => {
  it('is written against Excel’s own declarations', () => {
    expectTypeOf<typeof CustomFunctions>().toExtend<ErrorKit>();
    expectTypeOf({ SATTEMP: sattemp }).toExtend<Parameters<typeof CustomFunctions.associate>[0]>();
    // A block of values is what Excel takes for the values of a range, too.
    expectTypeOf<ReturnType<typeof sattemp>>().toExtend<Excel.Range['values']>();
  });

  it('gives a block of one cell for one value', () => {
    const block = sattemp([['R-22']], [[68.5]], null, null, null, invocation);
    expect(block).toHaveLength(1);
    expect(block[0]).toHaveLength(1);
    // ASHRAE Handbook Fundamentals, saturated R-22 at 40 degF is 68.5 psig, from memory.
    expect(block[0]?.[0]).toBeCloseTo(40, 0);
  });

  it('throws Excel’s own error with our message', () => {
    let thrown: unknown;
    try {
      sattemp([['R-22']], [['warm']], null, null, null, invocation);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(EmulatedError);
    expect(thrown).toMatchObject({ code: '#VALUE!' });
    expect((thrown as EmulatedError).message).toMatch(/^pressure must be a number/);
  });

  it('puts errors into the block where ranges are given', () => {
    const [[first], [second]] = sattemp([['R-22']], [[68.5], ['warm']], null, null, null, invocation) as [
      [unknown],
      [unknown],
    ];
    expect(first).toBeCloseTo(40, 0);
    expect(second).toMatchObject({ code: '#VALUE!' });
  });

  it('is spelled as the sheet and as the file want it', () => {
    expect(spell('SATTEMP')).toBe('OUNCE.SATTEMP');
    expect(spellInFile('SATTEMP')).toBe('_xldudf_OUNCE_SATTEMP');
  });
});
