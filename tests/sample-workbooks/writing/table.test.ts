import { describe, expect, test } from 'vitest';

import { expandReferences, layOutTable } from '../../../sample-workbooks/writing/table.ts';

const headings = new Set(['a', 'b c', "it's [#1]"]);
const looks = { heading: {}, unit: {}, input: { fill: 'FFFFFF' }, computed: { fill: 'EEEEEE' } };

describe('short references', () => {
  /** Structured references as ECMA-376 18.17.2.4 and the Excel help on special characters define them. */
  test.each([
    ['[@a]*2', 'T[[#This Row],[a]]*2'],
    ['F([?b c])', 'F(IF(T[[#This Row],[b c]]="","",T[[#This Row],[b c]]))'],
    ['G([&a])', 'G(T[[#This Row],[a]]&"")'],
    ['SUM(U[x])', 'SUM(U[x])'],
  ])('%s', (text, expected) => {
    expect(expandReferences(text, 'T', headings)).toBe(expected);
  });

  test('an unknown heading is caught when the recipe is read, not in the workbook', () => {
    expect(() => expandReferences('[@missing]', 'T', headings)).toThrow('no column "missing"');
  });
});

describe('a laid out table', () => {
  const table = layOutTable({
    name: 'T',
    firstColumn: 2,
    headingRow: 4,
    bands: [
      {
        title: 'Typed',
        fill: '000000',
        ink: 'FFFFFF',
        columns: [{ heading: 'a', width: 9, origin: 'input' }],
      },
      {
        title: 'Computed',
        fill: '000000',
        ink: 'FFFFFF',
        columns: [{ heading: 'b', width: 9, origin: 'computed', formula: '[@a]+1' }],
      },
    ],
    rows: [{ a: 5 }, {}],
    spareRows: 1,
    looks,
  });

  test('spans headings, data and spare rows', () => {
    expect(table.native.range).toBe('B4:C7');
    expect(table.body('b')).toBe('$C$5:$C$7');
    expect(table.cells.filter(({ at }) => /^C[567]$/.test(at)).map(({ content }) => content)).toEqual(
      Array(3).fill({ formula: 'T[[#This Row],[a]]+1' }),
    );
  });

  test('tells hosts the formula of a new row', () => {
    expect(table.native.columns).toEqual([
      { heading: 'a', fill: undefined },
      { heading: 'b', fill: 'T[[#This Row],[a]]+1' },
    ]);
  });

  test('refuses cells for a column that is not there', () => {
    expect(() =>
      layOutTable({
        name: 'T',
        firstColumn: 1,
        headingRow: 3,
        bands: [],
        rows: [{ x: 1 }],
        spareRows: 0,
        looks,
      }),
    ).toThrow('no column "x"');
  });
});
