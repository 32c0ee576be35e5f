import { exampleFormula } from '../../functions/handbook/function-guide/example-formula.ts';
import { signature } from '../../functions/handbook/function-guide/function-section.ts';
import { spell } from '../../functions/hosts/office/spell.ts';
import type { RegisteredFunction } from '../../functions/runtime/registry.ts';
import type { Family } from '../../functions/runtime/families.ts';
import { families } from '../../functions/runtime/families.ts';
import { looks } from '../writing/palette.ts';
import type { Look, SheetRecipe } from '../writing/recipe.ts';
import { formula } from '../writing/recipe.ts';
import { linesFor, Page } from '../writing/page.ts';
import { titled, titleHeights } from '../writing/title-block.ts';
import { checksOf } from './checks.ts';
import type { RangeSheet } from './ranges.ts';

const headingRow = 4;
const firstRow = headingRow + 1;
const headings = ['Example', 'Result here', 'Expected', 'Within', 'Check', 'Checked against'] as const;
/** A width that only covers the last digits of a cell is none to a reader. */
const withinFormat = '[<0.000001]"exact";General';
const widths = { A: 62, B: 30, C: 26, D: 10, E: 10, F: 50 } as const;
/** The column that says "Agrees" or "Differs". */
export const checkColumn = 'E';

export function familySheetName(family: Family): string {
  return family.charAt(0).toUpperCase() + family.slice(1);
}

/** All examples of one family: the live call, what it must give, and whether it does. */
export function familySheet(
  family: Family,
  members: readonly RegisteredFunction[],
  ranges: RangeSheet,
): { readonly sheet: SheetRecipe; readonly checks: number } {
  const page = new Page(headingRow);
  headings.forEach((heading, column) => page.put('ABCDEF'.charAt(column), heading, looks.heading));
  page.next(20);
  let checks = 0;
  for (const member of members) {
    page.gap(6);
    page.put('A', member.id, looks.section);
    page.put('B:F', member.summary, { ...looks.section, bold: false, size: 10, wrap: true });
    page.next(Math.max(20, 14 * linesFor(member.summary, 120)));
    page.put('A:F', signature(member), { ...looks.subtitle, wrap: true });
    page.next(14 * linesFor(signature(member), 180));
    for (const example of member.examples) checks += putExample(page, member, example, ranges);
  }
  const sheet: SheetRecipe = {
    name: familySheetName(family),
    gridLines: false,
    freeze: { columns: 0, rows: headingRow },
    widths,
    heights: { ...titleHeights, ...page.heights },
    cells: [
      ...titled(families[family], 'Every example is live: results change when a function does.'),
      ...page.cells,
    ],
    rules: [
      {
        range: `${checkColumn}${String(firstRow)}:${checkColumn}${String(page.row)}`,
        when: `${checkColumn}${String(firstRow)}="Differs"`,
        look: looks.stop,
      },
    ],
    print: {
      landscape: true,
      pagesWide: 1,
      pagesTall: 0,
      repeatRows: `$${String(headingRow)}:$${String(headingRow)}`,
    },
  };
  return { sheet, checks };
}

function putExample(
  page: Page,
  member: RegisteredFunction,
  example: RegisteredFunction['examples'][number],
  ranges: RangeSheet,
): number {
  const call = exampleFormula(member, example, spell, (name, range) =>
    ranges.place(`${member.id}, ${name}`, range),
  );
  const date: Look = member.returns.kind === 'date' ? { format: 'yyyy-mm-dd' } : {};
  const checks = checksOf(member.returns, example);
  for (const check of checks) {
    const at = { result: page.at('B'), expected: page.at('C'), within: page.at('D') };
    const words = check.place === '' ? call : `${call}, ${check.place}`;
    page.put('A', words, looks.body);
    page.put('B', formula(check.pick(call.slice(1))), {
      ...looks.computed,
      ...date,
      wrap: true,
      align: 'left',
    });
    page.put('C', check.expected, {
      ...looks.body,
      align: 'left',
      ...(typeof check.expected === 'number' ? date : {}),
    });
    page.put('D', check.within, {
      ...looks.body,
      ink: looks.subtitle.ink,
      align: 'right',
      format: withinFormat,
    });
    page.put(checkColumn, formula(`IF(${check.test(at)},"Agrees","Differs")`), looks.body);
    page.put('F', example.source, { ...looks.body, size: 9 });
    page.next(
      Math.max(
        16,
        13 *
          Math.max(linesFor(words, 60), linesFor(example.source, 52), linesFor(String(check.expected), 25)),
      ),
    );
  }
  return checks.length;
}
