import { catalogue } from '../../functions/catalogue/index.ts';
import { cautions } from '../../functions/handbook/cautions.ts';
import type { RegisteredFunction } from '../../functions/runtime/registry.ts';
import type { Family } from '../../functions/runtime/families.ts';
import { families } from '../../functions/runtime/families.ts';
import { titled, titleHeights } from '../writing/title-block.ts';
import { linesFor, Page } from '../writing/page.ts';
import { looks } from '../writing/palette.ts';
import type { SheetRecipe, WorkbookRecipe } from '../writing/recipe.ts';
import { formula } from '../writing/recipe.ts';
import { checkColumn, familySheet, familySheetName } from './family-sheet.ts';
import { RangeSheet } from './ranges.ts';

/** Every example of every function, live, beside what it must give. */
export function functionGuide(functions: readonly RegisteredFunction[]): WorkbookRecipe {
  const ranges = new RangeSheet();
  const parts = (Object.keys(families) as Family[])
    .map((family) => ({ family, members: functions.filter((each) => each.family === family) }))
    .filter(({ members }) => members.length > 0)
    .map(({ family, members }) => ({ family, members, ...familySheet(family, members, ranges) }));
  return {
    title: 'Function guide',
    subject: 'Every worksheet function with live examples and the values they are checked against',
    file: 'function-guide',
    names: {},
    sheets: [startSheet(parts), ...parts.map(({ sheet }) => sheet), ranges.sheet()],
  };
}

interface Part {
  readonly family: Family;
  readonly members: readonly RegisteredFunction[];
  readonly checks: number;
}

function startSheet(parts: readonly Part[]): SheetRecipe {
  const page = new Page(4);
  ['Sheet', 'Functions', 'Examples', 'Agree', 'Check'].forEach((heading, column) =>
    page.put('ABCDE'.charAt(column), heading, looks.heading),
  );
  page.next(20);
  const top = page.row;
  for (const { family, members, checks } of parts) {
    const name = familySheetName(family);
    page.put('A', families[family], { ...looks.body, ink: '0B3C66' }, `${name}!A1`);
    page.put('B', members.length, looks.body);
    page.put('C', checks, looks.body);
    page.put('D', formula(`COUNTIF(${name}!${checkColumn}:${checkColumn},"Agrees")`), looks.computed);
    page.put('E', formula(`IF(${page.at('D')}=${page.at('C')},"Agrees","Differs")`), looks.body);
    page.next(18);
  }
  const bottom = page.row - 1;
  page.put('A', 'All', { ...looks.body, bold: true });
  for (const column of ['B', 'C', 'D']) {
    const sum = `SUM(${column}${String(top)}:${column}${String(bottom)})`;
    page.put(column, formula(sum), { ...looks.computed, bold: true });
  }
  page.put('E', formula(`IF(${page.at('D')}=${page.at('C')},"Agrees","Differs")`), {
    ...looks.body,
    bold: true,
  });
  page.next(20);
  const last = page.row - 1;
  page.gap();
  page.section('Before you use any of it', 'A:E');
  page.next(22);
  for (const caution of cautions) {
    page.put('A:E', caution, looks.body);
    page.next(14 * linesFor(caution, 92) + 4);
  }
  return {
    name: 'Guide',
    gridLines: false,
    widths: { A: 44, 'B:E': 13 },
    heights: { ...titleHeights, ...page.heights },
    cells: [
      ...titled(
        'Function guide',
        'If the functions are installed, everything below agrees after a recalculation.',
      ),
      ...page.cells,
    ],
    rules: [
      { range: `E${String(top)}:E${String(last)}`, when: `E${String(top)}="Differs"`, look: looks.stop },
    ],
    print: { landscape: false, pagesWide: 1, pagesTall: 1 },
  };
}

export const functionGuideRecipe = functionGuide(catalogue.all());
