import { columnLetters } from '../../writing/address.ts';
import { colours } from '../../writing/palette.ts';
import type { CellRecipe, Look } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { assumptions, names } from '../names.ts';

/** Right of what is printed on the offer: OFFERCHOICES as it comes, and the lines of the chart for the choices it offers. */
const firstColumn = 8;
const tableTop = 4;
const columns = 11;
/** The warranty and the four choices. */
export const mostChoices = 5;
export const shownChoices = 3;
export const listedChoices = 4;
export const years = 10;

const small: Look = { size: 8, ink: colours.quiet };
const call = `OUNCE.OFFERCHOICES(${assumptions},,,${names.units})`;

const at = (row: number, column: number): string => `${columnLetters(firstColumn + column)}${String(row)}`;

/** The columns of OFFERCHOICES by what they hold. */
const place = {
  choice: 0,
  offered: 1,
  price: 2,
  cost: 3,
  from: 4,
  to: 5,
  bestIn: 6,
  done: 7,
  next: 8,
  why: 9,
} as const;

/** A cell of the n-th choice, 1 the first offered. */
export function offered(choice: number, what: keyof typeof place): string {
  return `$${columnLetters(firstColumn + place[what])}$${String(tableTop + choice)}`;
}

const tableCells = Array.from({ length: mostChoices + 1 }, (_row, row) =>
  Array.from({ length: columns }, (_column, column): CellRecipe => ({
    at: at(tableTop + row, column),
    content: formula(`IFERROR(INDEX(${call},${String(row + 1)},${String(column + 1)}),"")`),
    look: small,
  })),
).flat();

/** One line a year of COSTBYYEAR, all its columns. */
const byYear = `OUNCE.COSTBYYEAR(${assumptions},${String(years)},${names.units})`;
const yearTop = tableTop + mostChoices + 3;
const yearColumns = 13;
const yearCells = Array.from({ length: years + 1 }, (_row, row) =>
  Array.from({ length: yearColumns }, (_column, column): CellRecipe => ({
    at: at(yearTop + row, column),
    content: formula(`IFERROR(INDEX(${byYear},${String(row + 2)},${String(column + 1)}),"")`),
    look: { ...small, format: '0' },
  })),
).flat();

const yearAt = (row: number, column: string): string =>
  `INDEX($${columnLetters(firstColumn)}$${String(yearTop + row)}:$${columnLetters(firstColumn + yearColumns - 1)}$${String(yearTop + row)},${column})`;

/** Where a choice stands among the columns of COSTBYYEAR: 1 repair, 2 replace, 3 top up, 4 do nothing. */
const order = (choice: number): string =>
  `MATCH(${offered(choice, 'choice')},{"Repair","Replace","Top up","Do nothing"},0)`;
const isDrawn = (choice: number): string =>
  `AND(${offered(choice, 'offered')}="yes",ISNUMBER(${offered(choice, 'cost')}))`;

const lineTop = yearTop + years + 4;

/** Years and one line a choice; below them the outline of its range: there along the low ends, back along the high ones. */
const outlineTop = lineTop + years + 3;
const outlineRows = 2 * (years + 1);

function shown(choice: number, row: number, column: string): string {
  return `IFERROR(IF(AND(${isDrawn(choice)},ISNUMBER(${yearAt(row, column)})),${yearAt(row, column)},NA()),NA())`;
}

const lineCells: CellRecipe[] = [];
for (let choice = 1; choice <= shownChoices; choice += 1) {
  const name = offered(choice, 'choice');
  lineCells.push(
    { at: at(lineTop - 1, choice), content: formula(`IF(${isDrawn(choice)},${name},"–")`), look: small },
    {
      at: at(outlineTop - 1, choice),
      content: formula(`IF(${isDrawn(choice)},${name}&", 8 of 10 outcomes","–")`),
      look: small,
    },
  );
}
for (let row = 0; row <= years; row += 1) {
  lineCells.push({ at: at(lineTop + row, 0), content: row, look: small });
  for (let choice = 1; choice <= shownChoices; choice += 1) {
    lineCells.push({
      at: at(lineTop + row, choice),
      content: formula(shown(choice, row, `1+${order(choice)}`)),
      look: { ...small, format: '0' },
    });
  }
}
for (let row = 0; row < outlineRows; row += 1) {
  const year = row <= years ? row : outlineRows - 1 - row;
  lineCells.push({ at: at(outlineTop + row, 0), content: year, look: small });
  for (let choice = 1; choice <= shownChoices; choice += 1) {
    const column = `${row <= years ? '4' : '5'}+2*${order(choice)}`;
    lineCells.push({
      at: at(outlineTop + row, choice),
      content: formula(shown(choice, year, column)),
      look: { ...small, format: '0' },
    });
  }
}

export const offerTableCells: readonly CellRecipe[] = [
  { at: at(tableTop - 1, 0), content: 'What OFFERCHOICES says', look: small },
  ...tableCells,
  { at: at(yearTop - 1, 0), content: 'What COSTBYYEAR says', look: small },
  ...yearCells,
  { at: at(lineTop - 2, 0), content: 'Lines of the chart', look: small },
  ...lineCells,
];

/** Columns that hold them, to be folded away. */
export const offerTableColumns = `${columnLetters(firstColumn)}:${columnLetters(firstColumn + yearColumns - 1)}`;

export const offerChoicesRange = `Offer!$${columnLetters(firstColumn)}$${String(tableTop)}:$${columnLetters(firstColumn + columns - 1)}$${String(tableTop + mostChoices)}`;

const range = (column: number, top: number, rows: number): string => {
  const letters = columnLetters(firstColumn + column);
  return `Offer!$${letters}$${String(top)}:$${letters}$${String(top + rows - 1)}`;
};

const lineColours = ['0B3C66', 'D55E00', '2A8C5A'] as const;

/** Full lines for the likely figures, thin dotted outlines for their range. */
export const chartSeries = [1, 2, 3].flatMap((choice) => {
  const colour = lineColours[choice - 1] ?? colours.ink;
  const heading = (top: number): string => `Offer!$${columnLetters(firstColumn + choice)}$${String(top - 1)}`;
  return [
    {
      name: heading(lineTop),
      across: range(0, lineTop, years + 1),
      values: range(choice, lineTop, years + 1),
      colour,
      dash: 'solid' as const,
    },
    {
      name: heading(outlineTop),
      across: range(0, outlineTop, outlineRows),
      values: range(choice, outlineTop, outlineRows),
      colour,
      dash: 'dot' as const,
      thin: true as const,
    },
  ];
});
