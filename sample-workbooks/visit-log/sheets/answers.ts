import { columnLetters } from '../../writing/address.ts';
import { bandLooks, colours, looks } from '../../writing/palette.ts';
import type { CellRecipe, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { titled } from '../../writing/title-block.ts';
import { answerColumn, answersSheetName, mostSets } from './answers-place.ts';
import { readings } from './readings.ts';

const headingRow = readings.firstRow - 1;
const lastRow = headingRow + mostSets;
const keys = ['Unit', 'Visit', 'Set'];
const firstAnswer = columnLetters(keys.length + 1);
const lastAnswer = columnLetters(keys.length + Object.keys(answerColumn).length);

const quiet: Look = {
  size: 9,
  wrap: true,
  vertical: 'top',
  line: { colour: colours.faintLine, sides: 'bottom' },
};
const lookOf: readonly Look[] = [
  { ...quiet, align: 'center', bold: true },
  { ...quiet, align: 'center' },
  { ...quiet, align: 'center' },
  { ...quiet, bold: true },
  quiet,
  quiet,
  { ...quiet, ink: colours.quiet },
  { ...quiet, align: 'right', format: '0.0' },
];

function cellsOf(): CellRecipe[] {
  const cells: CellRecipe[] = [];
  const put = (letters: string, row: number, cell: Omit<CellRecipe, 'at'>): void => {
    cells.push({ at: `${letters}${String(row)}`, ...cell });
  };
  keys.forEach((heading, index) => {
    put(columnLetters(index + 1), headingRow, { content: heading, look: looks.heading });
  });
  const first = headingRow + 1;
  const keyArea = `A${String(first)}:C${String(lastRow)}`;
  const answerArea = `${firstAnswer}${String(headingRow)}:${lastAnswer}${String(lastRow)}`;
  lookOf.forEach((look, index) => {
    const letters = columnLetters(index + 1);
    for (let row = first; row <= lastRow; row += 1) {
      const content = index === 0 && row === first ? { ...formula('log_keys&""'), over: keyArea } : undefined;
      put(letters, row, { content, look });
    }
    if (index < keys.length) return;
    const content =
      index === keys.length
        ? {
            ...formula(
              'OUNCE.DONEXT(log_all,register_all,staff_all,"",log_gauge_accuracy,log_liquid_gauge_accuracy,log_probe_accuracy,log_probe_accuracy,log_units)',
            ),
            over: answerArea,
          }
        : undefined;
    put(letters, headingRow, { content, look: looks.heading });
  });
  return cells;
}

const absolute = (letters: string, row: number): string => `$${letters}$${String(row)}`;

/** Named areas that the array formulas take: LibreOffice takes no table by its name there. */
export const answerNames: Readonly<Record<string, string>> = {
  log_all: `Readings!${absolute(readings.letters('Unit'), headingRow)}:${absolute(readings.letters('Note'), lastRow)}`,
  log_keys: `Readings!${absolute(readings.letters('Unit'), headingRow + 1)}:${absolute(readings.letters('Set'), lastRow)}`,
  log_answers: `${answersSheetName}!${absolute(firstAnswer, headingRow + 1)}:${absolute(lastAnswer, lastRow)}`,
};

export const answersSheet: SheetRecipe = {
  name: answersSheetName,
  tabColour: '3F6484',
  gridLines: false,
  freeze: { columns: 3, rows: headingRow },
  widths: { A: 9, B: 10, C: 5, D: 24, E: 96, F: 30, G: 20, H: 8 },
  heights: { 1: 26, 2: 16, 3: 18, 4: 6, [headingRow]: 26 },
  cells: [
    ...titled(
      'Answers',
      'What to do next after every set, and why. Worked out as a whole from readings, register and staff list; nothing to type here.',
    ),
    {
      at: 'A3',
      through: `${lastAnswer}3`,
      content: `Row for row as on the sheet Readings, ${mostSets.toLocaleString('en')} sets at the most: start a new log for the next season`,
      look: { ...bandLooks.computed, bold: true, indent: 1, align: 'left' },
    },
    ...cellsOf(),
  ],
  print: {
    landscape: true,
    pagesWide: 1,
    pagesTall: 0,
    area: `$A$1:$F$${String(readings.lastRow)}`,
    repeatRows: `$3:$${String(headingRow)}`,
  },
};
