import { describe, expect, test } from 'vitest';

import { unitRegister, visitLog } from '../../../src/records/index.ts';
import { recordColumn, unitCell } from '../../../sample-workbooks/writing/record-column.ts';

describe('a column of a declared field', () => {
  test('limits follow the unit system: 55 °F is 12.778 °C, by definition of the scales', () => {
    // return_db allows 40 to 110 °F; (40 - 32) * 5 / 9 = 4.444, (110 - 32) * 5 / 9 = 43.333.
    const { check } = recordColumn(visitLog, 'return_db', { width: 8 });
    expect(check?.allow).toEqual({
      kind: 'between',
      minimum: 'IF(log_units="SI",4.444,40)',
      maximum: 'IF(log_units="SI",43.333,110)',
    });
    expect(check?.strict).toBe(true);
  });

  test('a gauge limit goes from psig to kPa gauge: 400 psig is 2757.903 kPa, 1 psi = 6.894757 kPa', () => {
    const { check } = recordColumn(visitLog, 'suction_pressure', { width: 8 });
    expect(check?.allow.kind === 'between' ? check.allow.maximum : '').toBe(
      'IF(log_units="SI",2757.903,400)',
    );
  });

  test('a limit without units is the same in both systems', () => {
    const { check } = recordColumn(visitLog, 'tap_added', { width: 8 });
    expect(check?.allow).toEqual({ kind: 'between', minimum: '0', maximum: '1', whole: true });
  });

  test('a numbered choice offers its numbers and may go on', () => {
    const { check } = recordColumn(visitLog, 'stage', { width: 8 });
    expect(check?.allow.kind === 'choices' ? check.allow.choices : []).toContain('after step 3');
    expect(check?.strict).toBe(false);
  });

  test('every dropdown fits into the 255 characters a list may have', () => {
    // Source: ECMA-376 gives no limit; Excel refuses longer literal lists (its data-validation documentation).
    for (const table of [visitLog, unitRegister]) {
      for (const field of table.fields) {
        const allow = recordColumn(table, field.name, { width: 8 }).check?.allow;
        if (allow?.kind === 'choices') expect(allow.choices.join(',').length).toBeLessThanOrEqual(255);
      }
    }
  });

  test('the unit is a formula only where it differs', () => {
    expect(unitCell('voltage')).toBe('V');
    expect(unitCell('temperature')).toEqual({ formula: 'IF(log_units="SI","°C","°F")' });
    expect(unitCell(undefined)).toBeUndefined();
  });
});
