import { columnLetters } from '../../writing/address.ts';
import { colours, looks } from '../../writing/palette.ts';
import type { CellRecipe, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { titled, titleHeights } from '../../writing/title-block.ts';
import { assumptions, counts, names } from '../names.ts';
import { answerRules } from './answer-rules.ts';

const hourSteps = 7;
const priceSteps = 6;
const middleHour = 3;
const middlePrice = 2;

const cells: CellRecipe[] = [
  ...titled(
    'Sensitivity',
    'Hours a year against power price: everything else as in the assumptions. The dark headings are the figures of the assumptions.',
  ),
  { at: 'A4', content: 'Step of the hours, %', look: looks.label },
  { at: 'B4', content: 20, look: { ...looks.input, align: 'right' } },
  {
    at: 'D4',
    through: 'E4',
    content: 'Step of the power price, %',
    look: { ...looks.label, align: 'right', indent: 1 },
  },
  { at: 'F4', content: 25, look: { ...looks.input, align: 'right' } },
];

const hoursAt = (index: number): string =>
  `IF(N(${counts('hours')})=0,"",ROUND(${counts('hours')}*(1+${String(index - middleHour)}*$B$4/100),0))`;
const priceAt = (index: number): string =>
  `IF(N(${counts('power price')})=0,"",ROUND(${counts('power price')}*(1+${String(index - middlePrice)}*$F$4/100),4))`;

const marked: Look = { fill: colours.deep, ink: colours.deepInk };

interface Grid {
  readonly title: string;
  readonly top: number;
  readonly look: Look;
  /** Formula of a cell from its address and those of its hours and price. */
  readonly each: (letters: string, row: number, hours: string, price: string) => string;
}

/** A grid with its axes: hours down, power price across. Returns the range of its body. */
function putGrid({ title, top, look, each }: Grid, firstColumn = 1): string {
  const letters = (offset: number): string => columnLetters(firstColumn + offset);
  const first = top + 2;
  const last = first + hourSteps - 1;
  const body = `${letters(1)}${String(first)}:${letters(priceSteps)}${String(last)}`;
  cells.push({
    at: `${letters(0)}${String(top)}`,
    through: `${letters(priceSteps)}${String(top)}`,
    content: title,
    look: looks.section,
  });
  cells.push({
    at: `${letters(0)}${String(top + 1)}`,
    content: 'h a year \\ per kWh',
    look: looks.heading,
  });
  for (let across = 0; across < priceSteps; across += 1) {
    cells.push({
      at: `${letters(across + 1)}${String(top + 1)}`,
      content: formula(priceAt(across)),
      look: { ...looks.heading, format: '0.000', ...(across === middlePrice ? marked : {}) },
    });
  }
  for (let down = 0; down < hourSteps; down += 1) {
    const row = first + down;
    cells.push({
      at: `${letters(0)}${String(row)}`,
      content: formula(hoursAt(down)),
      look: { ...looks.heading, format: '#,##0', ...(down === middleHour ? marked : {}) },
    });
    for (let across = 0; across < priceSteps; across += 1) {
      const at = `${letters(across + 1)}${String(row)}`;
      const column = letters(across + 1);
      const text = each(column, row, `$${letters(0)}${String(row)}`, `${column}$${String(top + 1)}`);
      cells.push({
        at,
        content: formula(text),
        look: {
          ...looks.computed,
          ...look,
        },
      });
    }
  }
  return body;
}

const wordsTop = 6;
const worthTop = wordsTop + hourSteps + 3;
/** The full sentences stand right of what is printed, in the same rows as their words. */
const sentenceColumn = 9;
const toSentence = (letters: string): string => {
  const offset = letters.charCodeAt(0) - 65;
  return columnLetters(sentenceColumn + offset);
};

const words = putGrid({
  title: 'Which choice costs least',
  top: wordsTop,
  look: { align: 'center', wrap: true },
  each: (letters, row) => {
    const sentence = `${toSentence(letters)}${String(row)}`;
    const leans = (words: string, shown: string, otherwise: string): string =>
      `IF(MID(${sentence},20,${String(words.length)})="${words}","${shown}?",${otherwise})`;
    const leaning = leans(
      'repair',
      'Repair',
      leans('replace', 'Replace', leans('top up', 'Top up', '"Do nothing?"')),
    );
    return `IF(${sentence}="","",IF(LEFT(${sentence},19)="Too close to call: ",${leaning},LEFT(${sentence},FIND(":",${sentence}&":")-1)))`;
  },
});
putGrid({
  title: 'Highest repair price worth paying',
  top: worthTop,
  look: { align: 'right', indent: 1, format: '#,##0' },
  each: (_letters, _row, hours, price) =>
    `IFERROR(OUNCE.BREAKEVENREPAIR(${assumptions},${hours},${price},"cheapest",${names.units}),"none")`,
});
putGrid(
  {
    title: 'The answers in full',
    top: wordsTop,
    look: { align: 'left', size: 8 },
    each: (_letters, _row, hours, price) =>
      `IFERROR(OUNCE.REPAIRORREPLACE(${assumptions},${hours},${price},${names.units}),"")`,
  },
  sentenceColumn,
);

const firstWord = words.split(':')[0] ?? words;

export const sensitivitySheet: SheetRecipe = {
  name: 'Sensitivity',
  tabColour: '3F6484',
  gridLines: false,
  widths: { A: 19, 'B:G': 14, H: 3, I: 19, 'J:O': 24 },
  heights: {
    ...titleHeights,
    4: 19,
    ...Object.fromEntries(
      [wordsTop, worthTop].flatMap((top) => [
        [top, 22] as const,
        ...Array.from({ length: hourSteps + 1 }, (_row, row) => [top + 1 + row, 22] as const),
      ]),
    ),
  },
  cells: [
    ...cells,
    {
      at: `A${String(worthTop + hourSteps + 3)}`,
      content:
        'A question mark: too close to call, leans that way at the likely figures. The sentences with the deciding figure stand to the right.',
      look: { ...looks.subtitle, size: 9 },
    },
  ],
  rules: [{ range: words, when: `RIGHT(${firstWord},1)="?"`, look: looks.care }, ...answerRules(words)],
  groups: [{ columns: 'I:O', folded: false }],
  print: {
    landscape: false,
    pagesWide: 1,
    pagesTall: 1,
    area: `$A$1:$G$${String(worthTop + hourSteps + 3)}`,
  },
};
