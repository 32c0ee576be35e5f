import { describe, expect, it } from 'vitest';
import {
  foldHeading,
  headingProblemText,
  matchHeadings,
  missingHeadings,
  unitRegister,
  visitLog,
} from '../../src/records/index.ts';

/* A heading means a field by its name, heading or another name, however spaced and cased: by the definition of the record. */

describe('headings', () => {
  const matched = (heading: string, table = visitLog): string => {
    const { columns, unknown, problems } = matchHeadings(table, [heading]);
    if (problems.length > 0) return `${problems[0]?.kind}: ${problems.map(headingProblemText).join()}`;
    if (unknown.length > 0) return `unknown: ${unknown.join()}`;
    return columns.map(({ field, unit }) => `${field.name} ${unit?.symbol ?? '-'}`).join();
  };

  it.each<[string, string]>([
    ['added', 'added -'],
    ['Added', 'added -'],
    ['  ADDED  ', 'added -'],
    ['Added (oz)', 'added oz'],
    ['Added [g]', 'added g'],
    ['Added(g)', 'added g'],
    ['  Added ( g )  ', 'added g'],
    ['added_g', 'added g'],
    ['added g', 'added g'],
    ['added, g', 'added g'],
    ['added oz', 'added oz'],
    ['ADDED_OZ', 'added oz'],
    ['refrigerant added', 'added -'],
    ['refrigerant added (kg)', 'added kg'],
    ['Outdoor dry bulb (degC)', 'outdoor_db degC'],
    ['outdoor_db_degC', 'outdoor_db degC'],
    ['Outdoor-dry-bulb  degF', 'outdoor_db degF'],
    ['Suction pressure (kPa)', 'suction_pressure kPa'],
    [
      'Suction pressure (kPa (gauge))',
      'wrong-unit: "Suction pressure (kPa (gauge))": kPa (gauge) is no unit for Suction pressure',
    ],
    ['Added (psig)', 'wrong-unit: "Added (psig)": psig is no unit for Added'],
    ['added psig', 'unknown: added psig'],
    ['Unit (number)', 'unit_id -'],
    ['unit no', 'unit_id -'],
    ['Unit old', 'unknown: Unit old'],
    ['Weather', 'unknown: Weather'],
    ['(oz)', 'unknown: (oz)'],
    ['oz', 'unknown: oz'],
    ['Added (oz) twice', 'unknown: Added (oz) twice'],
    ['   ', ''],
    ['', ''],
  ])('"%s" is %s', (heading, expected) => {
    expect(matched(heading)).toBe(expected);
  });

  it('of another table name their unit at the end', () => {
    expect(matched('low design psig', unitRegister)).toBe('low_side_design psig');
    expect(matched('Low-side pressure', unitRegister)).toBe('low_side_design -');
    expect(matched('eer', unitRegister)).toBe('efficiency -');
  });

  it('keep their places, blank and unknown ones between', () => {
    const { columns, unknown, problems } = matchHeadings(visitLog, [
      '',
      'Weather',
      'Added (g)',
      'Unit',
      'added_oz',
    ]);
    expect(columns.map(({ index, field }) => [index, field.name])).toEqual([
      [2, 'added'],
      [3, 'unit_id'],
    ]);
    expect(unknown).toEqual(['Weather']);
    expect(problems.map(({ kind }) => kind)).toEqual(['repeated']);
    expect(problems.map(headingProblemText)).toEqual(['"added_oz" and "Added (g)" both mean Added']);
  });

  it('that are needed and missing are named as a sheet shows them', () => {
    const { columns } = matchHeadings(visitLog, ['Unit', 'Added (psig)']);
    expect(missingHeadings(visitLog, columns, ['unit_id', 'added', 'no field'])).toEqual([
      'Added',
      'no field',
    ]);
  });

  it('of thousands of characters are left alone', () => {
    // The longest heading looked into has 300 characters: regression.
    expect(matched(`Added${' '.repeat(291)}(oz)`)).toBe('added oz');
    expect(matched(`Added${' '.repeat(292)}(oz)`)).toMatch(/^unknown/);
  });

  it('fold case, spaces, underscores and hyphens', () => {
    expect(foldHeading('  Low-Side__PRESSURE \t now ')).toBe('low side pressure now');
  });
});
