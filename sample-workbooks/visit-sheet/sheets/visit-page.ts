import { columnLetters, columnNumber } from '../../writing/address.ts';
import { bandLooks, colours, looks } from '../../writing/palette.ts';
import { numberFormat } from '../../writing/record-column.ts';
import type { CellRecipe, Check, Look, Rule, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { verdictRules } from '../../visit-log/verdict-rules.ts';
import type { ComputedLine, OnceLine, SetLine, VisitPageLine } from '../lines/line.ts';
import type { PlacedLines } from '../place-of-lines.ts';
import { firstSet, flagColumn, lastSet, setColumns } from '../place-of-lines.ts';
import { entryCheck } from './entry-check.ts';
import type { Tables } from '../tables.ts';
import { cautionLine, unitSign } from './words.ts';

/** What is typed: values by the keys of the lines. */
export interface TypedVisit {
  readonly once: Readonly<Record<string, number | string>>;
  readonly sets: readonly Readonly<Record<string, number | string>>[];
}

/** Columns that a phone shows beside each other. */
const lastOnPhone = columnLetters(columnNumber(firstSet) + 2);

export const headRows = 5;

/** The page that a technician fills: the answer on top, then one line for each reading, one column for each set. */
export function visitPage(placed: PlacedLines, tables: Tables, typed: TypedVisit): SheetRecipe {
  const cells: CellRecipe[] = [...headCells(placed, tables)];
  const checks: Check[] = [];
  const rules: Rule[] = headRules(placed);
  for (const line of placed.visit) {
    const row = placed.row(line.key);
    cells.push(...lineCells(line, row, { placed, tables, typed }));
    if (line.kind === 'once' || line.kind === 'set') {
      const check = entryCheck(line, placed.units, tables.named);
      const range = line.kind === 'once' ? `C${String(row)}` : rangeOfSets(row);
      if (check !== undefined) checks.push({ ...check, range });
    }
    if (line.kind === 'computed' && line.isVerdict === true) rules.push(...verdictRules(rangeOfSets(row)));
  }
  return {
    name: 'Visit',
    tabColour: colours.deep,
    gridLines: false,
    freeze: { columns: 2, rows: headRows },
    widths: { A: 20, B: 6, [`${firstSet}:${lastSet}`]: 9, [flagColumn]: 7 },
    heights: { 1: 26, 2: 44, 3: 21, 4: 13, 5: 26, ...lineHeights(placed) },
    cells,
    checks,
    rules,
    protect: true,
    print: {
      landscape: false,
      pagesWide: 1,
      pagesTall: 2,
      repeatRows: `$1:$${String(headRows)}`,
      area: `$A$1:$${flagColumn}$${String(placed.lastVisitRow)}`,
    },
  };
}

/** Characters of a label, and of a word in a set's column, that fit on one line. */
const labelFits = 21;
const wordFits = 11;

/** Lines whose label or longest word takes two lines: merged and wrapped cells do not grow by themselves. */
function lineHeights(placed: PlacedLines): Record<number, number> {
  const heights: Record<number, number> = { [placed.row('r-standing')]: 24 };
  for (const line of placed.visit) {
    const words = line.kind === 'set' ? (line.choices ?? []) : [];
    if (line.kind === 'section' || line.kind === 'remark') continue;
    if (line.label.length > labelFits || words.some((word) => word.length > wordFits))
      heights[placed.row(line.key)] = 24;
  }
  return heights;
}

const rangeOfSets = (row: number): string => `${firstSet}${String(row)}:${lastSet}${String(row)}`;

/** The last set in use decides what stands on top. */
function headCells(placed: PlacedLines, { named }: Tables): readonly CellRecipe[] {
  const working = (key: string): string => {
    const row = String(placed.row(key));
    return `Working!$${firstSet}$${row}:$${lastSet}$${row}`;
  };
  const last = 'Tables!$B$2';
  // Two indexes: with one, not every program counts along a row.
  const of = (key: string): string => `INDEX(${working(key)},1,${last})`;
  const sentences = named.get('rule_sentences') ?? '';
  const keys = named.get('rule_keys') ?? '';
  const deep: Look = { fill: colours.deep, ink: colours.deepInk, wrap: true, vertical: 'center', indent: 1 };
  const cells: CellRecipe[] = [
    {
      at: 'A1',
      through: `${lastOnPhone}1`,
      content: formula(
        `IF(${last}=0,"Fill in the unit, then set 1 from the top down","Set "&${last}&": "&${of('shown_word')})`,
      ),
      look: { ...deep, bold: true, size: 14 },
    },
    {
      at: 'A2',
      through: `${lastOnPhone}2`,
      content: formula(
        `IF(${last}=0,"The pale cells are for typing. Leave blank what was not measured: blank is not zero.",IF(${of('detail')}="","",${of('detail')}&". ")&INDEX(${sentences},MATCH(${of('answer_key')},${keys},0)))`,
      ),
      look: { ...deep, size: 9 },
    },
    {
      at: 'A3',
      through: `${lastOnPhone}3`,
      content: formula(
        placed.spell(
          `IF(§flammable=1,"THIS GAS BURNS: only who is trained for it. ","")&"${cautionLine}."`,
          'Visit',
          firstSet,
          named,
        ),
      ),
      look: {
        size: 7,
        ink: colours.careInk,
        fill: colours.careFill,
        wrap: true,
        vertical: 'center',
        indent: 1,
      },
    },
    { at: 'A4', content: 'Set', look: { ...looks.heading, align: 'left', indent: 1 } },
    { at: 'B4', look: looks.heading },
    { at: 'A5', content: 'Do next', look: { bold: true, size: 10, indent: 1 } },
    { at: 'B5' },
  ];
  setColumns.forEach((column, index) => {
    cells.push(
      { at: `${column}4`, content: index + 1, look: looks.heading },
      {
        at: `${column}5`,
        content: formula(placed.spell('[shown_word]', 'Visit', column, named)),
        look: { ...looks.computed, bold: true, size: 8, wrap: true, align: 'center' },
      },
    );
  });
  cells.push({ at: `${flagColumn}4`, content: 'look', look: looks.heading });
  return cells;
}

/** The head and "Do next" are coloured by what the answer asks, never by its words. */
function headRules(placed: PlacedLines): Rule[] {
  const row = String(placed.row('asks'));
  const kinds = [
    ['stop', looks.stop],
    ['care', looks.care],
    ['go', looks.good],
  ] as const;
  return kinds.map(([asks, look]) => ({
    range: `${firstSet}5:${lastSet}5`,
    when: `Working!${firstSet}$${row}="${asks}"`,
    look,
  }));
}

interface Context {
  readonly placed: PlacedLines;
  readonly tables: Tables;
  readonly typed: TypedVisit;
}

function lineCells(
  line: VisitPageLine,
  row: number,
  { placed, tables, typed }: Context,
): readonly CellRecipe[] {
  const at = String(row);
  switch (line.kind) {
    case 'section': {
      const band = line.holds === 'typed' ? bandLooks.input : bandLooks.computed;
      return [
        {
          at: `A${at}`,
          through: `${flagColumn}${at}`,
          content: line.label,
          look: { ...band, bold: true, size: 9, indent: 1 },
        },
      ];
    }
    case 'remark':
      return [
        {
          at: `A${at}`,
          through: `${lastOnPhone}${at}`,
          content: line.label,
          look: { size: 8, italic: true, ink: colours.quiet, wrap: true, indent: 1 },
        },
      ];
    case 'once': {
      const content = typed.once[line.key] ?? line.preset;
      return [
        ...labelCells(line, at, placed),
        {
          at: `C${at}`,
          through: `${lastOnPhone}${at}`,
          content,
          look: { ...looks.input, align: 'left', indent: 1, ...formatOf(line) },
        },
        flagCell(at),
      ];
    }
    case 'set':
      return [
        ...labelCells(line, at, placed),
        ...setColumns.map((column, index): CellRecipe => ({
          at: `${column}${at}`,
          content: typed.sets[index]?.[line.key],
          look: {
            ...looks.input,
            size: 9,
            align: 'center',
            ...(line.quantity === undefined && line.field?.kind !== 'dateTime' ? { wrap: true } : {}),
            ...formatOf(line),
          },
        })),
        flagCell(at),
      ];
    case 'computed':
      return [
        ...labelCells(line, at, placed),
        ...setColumns.map((column): CellRecipe => ({
          at: `${column}${at}`,
          content: formula(placed.spell(line.formula, 'Visit', column, tables.named)),
          look: { ...looks.computed, size: 9, align: 'center', wrap: true, ...formatOf(line) },
        })),
      ];
  }
}

function labelCells(
  line: OnceLine | SetLine | ComputedLine,
  at: string,
  placed: PlacedLines,
): readonly CellRecipe[] {
  const symbol =
    line.kind === 'computed'
      ? line.unit
      : line.quantity === undefined
        ? undefined
        : placed.units.unit(line.quantity).symbol;
  const isTyped = line.kind !== 'computed';
  return [
    { at: `A${at}`, content: line.label, look: { size: 9, bold: isTyped, indent: 1, wrap: true } },
    {
      at: `B${at}`,
      content: symbol === undefined || symbol === '' ? undefined : unitSign(symbol),
      look: looks.unit,
    },
  ];
}

/** A mark beside every line in which a cell cannot be right or cannot be read here. */
function flagCell(at: string): CellRecipe {
  return {
    at: `${flagColumn}${at}`,
    content: formula(`IF(COUNTIF(Checks!${firstSet}${at}:${lastSet}${at},">0")>0,1,0)`),
    look: { size: 9, bold: true, ink: colours.stopInk, align: 'left', format: '"✗ look";;' },
  };
}

function formatOf(line: OnceLine | SetLine | ComputedLine): Pick<Look, 'format'> {
  if (line.kind === 'computed') {
    const { decimals } = line;
    return decimals === undefined ? {} : { format: decimals === 0 ? '0' : `0.${'0'.repeat(decimals)}` };
  }
  switch (line.field?.kind) {
    case 'date':
      return { format: 'yyyy-mm-dd' };
    case 'dateTime':
      return { format: 'mm-dd hh:mm' };
    case 'number':
      return { format: numberFormat(line.quantity) };
    case undefined:
      return line.quantity === undefined ? {} : { format: '0.0' };
    default:
      return {};
  }
}
