import { Page, linesFor } from './page.ts';
import { colours, looks } from './palette.ts';
import type { Look, SheetRecipe } from './recipe.ts';
import { titled, titleHeights } from './title-block.ts';

export interface StartHere {
  readonly title: string;
  readonly line: string;
  /** What to do in order: the sheet it is done in, and the words. */
  readonly steps: readonly (readonly [string, string])[];
  readonly cautions: readonly { readonly number: string; readonly title: string; readonly text: string }[];
  /** Words that are coloured, with the look they have. */
  readonly key: readonly (readonly [string, Look, string])[];
  /** Sheets with a line about each; none when the steps name them all. */
  readonly sheets?: readonly (readonly [string, string])[];
  readonly goodToKnow: readonly string[];
}

const textWidth = 92;
const body: Look = { ...looks.body, indent: 1 };
const jump: Look = { size: 10, bold: true, ink: '2E6DA4' };
const number: Look = { bold: true, align: 'center', ink: colours.quiet };

/** The first sheet of a workbook: steps, cautions, colours, sheets and what else is good to know, on one printed page. */
export function startHere(content: StartHere): SheetRecipe {
  const page = new Page(4);
  page.section('How to use it', 'A:C');
  page.next(22);
  content.steps.forEach(([sheet, text], index) => {
    page.put('A', String(index + 1), number);
    page.put('B', sheet, jump, `'${sheet}'!A1`);
    page.put('C', text, body);
    page.next(13 * linesFor(text, textWidth) + 7);
  });
  page.gap();
  page.section('Before every result', 'A:C');
  page.next(22);
  for (const caution of content.cautions) {
    page.put('A', caution.number, { ...number, ink: colours.stopInk });
    page.put('B', caution.title, { bold: true, ink: colours.stopInk });
    page.put('C', caution.text, body);
    page.next(13 * linesFor(caution.text, textWidth) + 7);
  }
  page.gap();
  page.section('Colours, with their words', 'A:C');
  page.next(22);
  for (const [word, look, text] of content.key) {
    page.put('B', word, { ...look, align: 'center' });
    page.put('C', text, body);
    page.next(18);
  }
  page.gap();
  if (content.sheets !== undefined) {
    page.section('Sheets', 'A:C');
    page.next(22);
    for (const [sheet, text] of content.sheets) {
      page.put('B', sheet, jump, `'${sheet}'!A1`);
      page.put('C', text, body);
      page.next(17);
    }
    page.gap();
  }
  page.section('Good to know', 'A:C');
  page.next(22);
  for (const text of content.goodToKnow) {
    page.put('B:C', text, looks.body);
    page.next(13 * linesFor(text, textWidth + 26) + 6);
  }
  return {
    name: 'Start here',
    tabColour: '22384D',
    gridLines: false,
    widths: { A: 5, B: 26, C: textWidth },
    heights: { ...titleHeights, ...page.heights },
    cells: [...titled(content.title, content.line), ...page.cells],
    print: { landscape: false, pagesWide: 1, pagesTall: 1 },
  };
}
