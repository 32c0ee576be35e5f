import { isFunction } from '@borgar/fx';
import { parse, tokenize } from '@borgar/fx/xlsx';
import { describe, expect, test } from 'vitest';

import { catalogue } from '../../functions/catalogue/index.ts';
import { recipes } from '../../sample-workbooks/recipes.ts';
import { recalculateSample } from '../../sample-workbooks/writing/cached-values.ts';
import { calledFunctions, targets } from '../../sample-workbooks/writing/spelling.ts';
import { committed } from './built.ts';

/** Functions that LibreOffice 7.4 lacks, which the samples are promised to do without. Source: its list of functions. */
const tooNew = [
  'LET',
  'LAMBDA',
  'XLOOKUP',
  'XMATCH',
  'FILTER',
  'SEQUENCE',
  'SORT',
  'SORTBY',
  'UNIQUE',
  'RANDARRAY',
  'VSTACK',
  'HSTACK',
  'TAKE',
  'DROP',
  'TEXTSPLIT',
];

/** They change without anybody typing; a sample must read the same tomorrow. */
const restless = ['NOW', 'TODAY', 'RAND', 'RANDBETWEEN', 'OFFSET', 'INDIRECT'];

/** Source: Excel specifications and limits, length of formula contents. */
const longestFormula = 8192;

const formulasOf = (recipe: (typeof recipes)[number]): readonly string[] =>
  recipe.sheets.flatMap((sheet) => [
    ...sheet.cells.flatMap(({ content }) => (typeof content === 'object' ? [content.formula] : [])),
    ...(sheet.tables ?? []).flatMap(({ columns }) => columns.flatMap(({ fill }) => fill ?? [])),
  ]);

describe.each(recipes)('the formulas of $file', (recipe) => {
  const formulas = [...new Set(formulasOf(recipe))];

  test('are there, parse, and are short enough', () => {
    expect(formulas.length).toBeGreaterThan(20);
    for (const formula of formulas) {
      expect(() => parse(tokenize(`=${formula}`)), formula).not.toThrow();
      expect(formula.length).toBeLessThan(longestFormula);
    }
  });

  test('call only functions of the catalogue', () => {
    const called = new Set(formulas.flatMap(calledFunctions));
    expect([...called].filter((id) => catalogue.find(id) === undefined)).toEqual([]);
  });

  test('need nothing that LibreOffice 7.4 lacks, and nothing that moves by itself', () => {
    const standard = new Set(
      formulas.flatMap((formula) =>
        tokenize(`=${formula}`)
          .filter(isFunction)
          .map(({ value }) => value.toUpperCase()),
      ),
    );
    expect([...standard].filter((name) => [...tooNew, ...restless].includes(name))).toEqual([]);
  });
});

describe.each(recipes.flatMap(({ file }) => targets.map((target) => ({ file, target }))))(
  'the values saved in $file for $target',
  ({ file, target }) => {
    test('are those of a full recalculation, and no cell is an error, kept or in a circle', () => {
      const { changes, errors, kept, cycles, formulaCount } = recalculateSample(committed(file, target));
      expect(formulaCount).toBeGreaterThan(100);
      expect(changes.slice(0, 10)).toEqual([]);
      expect(kept.slice(0, 10)).toEqual([]);
      expect(cycles).toEqual([]);
      if (file === 'visit-log') expect(errors.slice(0, 10)).toEqual([]);
    });
  },
);
