import { Page, linesFor } from '../../writing/page.ts';
import { looks } from '../../writing/palette.ts';
import type { SheetRecipe } from '../../writing/recipe.ts';
import { cautions } from '../../visit-log/cautions.ts';
import { titled, titleHeights } from '../../writing/title-block.ts';
import { sheetNames } from '../names.ts';

/** What goes wrong at the desk, not on the roof. */
const officeCautions: readonly (readonly [title: string, text: string])[] = [
  [
    'One interval',
    'A unit topped up twice has one interval. Its rate and its date may be off by the whole answer: the confidence says "low". Call to look, not to bill.',
  ],
  [
    'Top-offs',
    'A correction after the season or a top-off of a new unit is no leak. The reason in the log keeps it out of the rate; without a reason it counts.',
  ],
  [
    'Hoses',
    'What the hoses kept left the cylinder and never reached the unit. It stands in a column of its own and in the cylinder account, not in the leak.',
  ],
  [
    'Small additions',
    'Three ounces every spring are cheap each time and dear in sum. Look at the cost so far before the next top-up is agreed to.',
  ],
  [
    'Blank or zero',
    'Zero ounces added is an answer; a blank is a question that nobody can answer next month. Ask on the day.',
  ],
  [
    'Unexplained ounces',
    'Within the tolerance they are the scale. Beyond it they are a leak, an unbooked use or another scale: ask before you suspect anybody.',
  ],
  [
    'Conflicts',
    'Two logs that say different things about one set: the first counts until somebody has asked the technician. Correct the log, then gather again.',
  ],
  [
    'Scope of rules',
    'Leak-rate duties begin at pounds, these units hold ounces. Recovery, certification and the ban on venting bind all the same.',
  ],
  [
    'Weather',
    'A cool day in spring and a hot one in August are not comparable. Compare readings in like weather only.',
  ],
];

const page = new Page(4);
for (const caution of cautions) {
  page.put('A', `${caution.number}   ${caution.title}`, {
    ...looks.body,
    size: 11,
    bold: true,
    ink: looks.stop.ink,
    vertical: 'top',
  });
  page.put('B', caution.text, { ...looks.body, size: 11, vertical: 'top' });
  page.next(14.5 * linesFor(caution.text, 84) + 7);
}
page.gap();
page.section('At the desk', 'A:B');
page.next(22);
for (const [title, text] of officeCautions) {
  page.put('A', title, { ...looks.body, bold: true });
  page.put('B', text, looks.body);
  page.next(13 * linesFor(text, 92) + 7);
}

export const cautionsSheet: SheetRecipe = {
  name: sheetNames.cautions,
  tabColour: 'B4532A',
  gridLines: false,
  widths: { A: 32, B: 92 },
  heights: { ...titleHeights, ...page.heights },
  cells: [
    ...titled('Cautions', 'The first five before every unit, the others before every decision.'),
    ...page.cells,
  ],
  print: { landscape: false, pagesWide: 1, pagesTall: 1 },
};
