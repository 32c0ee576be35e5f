import { columnLetters } from '../../writing/address.ts';
import { bandLooks, colours, looks } from '../../writing/palette.ts';
import type { CellRecipe, Content, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { layOutTable } from '../../writing/table.ts';
import { unitCell } from '../../writing/record-column.ts';
import { titled } from '../../writing/title-block.ts';
import { sheetNames } from '../names.ts';
import { rowLooks } from './record-sheet.ts';

/** Gases with a column of their own; the last place takes whatever else there is. */
export const gasPlaces = 8;
const months = 12;
const dueMonths = 9;
export const worstPlaces = 10;

const headingRow = 5;
const first = headingRow + 1;
const growingRow = 22;
const sheet = sheetNames.figures;

const cellLook: Look = {
  size: 9,
  line: { colour: colours.faintLine, sides: 'bottom' },
  align: 'right',
  format: '0.0',
};
const labelLook: Look = { ...cellLook, align: 'left', indent: 1, format: '@' };
const dayLook: Look = { ...cellLook, align: 'center', format: 'yyyy-mm-dd' };
const heading: Look = looks.heading;

/** "Nov 25" whatever the language of the program. */
const monthWord = (cell: string): string =>
  `MID("JanFebMarAprMayJunJulAugSepOctNovDec",3*MONTH(${cell})-2,3)&" "&RIGHT(YEAR(${cell}),2)`;

const gasColumn = (place: number): string => columnLetters(4 + place);
const total = columnLetters(4 + gasPlaces);

/**
 * Units that somebody still calls about. LibreOffice does not find texts of an array formula by COUNTIFS, so that all counting
 * over the fleet summary compares instead, each text joined with an empty one, which makes Calc look at its letters.
 */
export const inCare = '(fleet_status&""<>"scrapped")*(fleet_status&""<>"retired")';

function monthRows(): CellRecipe[] {
  return Array.from({ length: months }, (_, index) => {
    const row = first + index;
    const at = (letters: string): string => `${letters}${String(row)}`;
    const added = (gas: string): string =>
      `SUMIFS(Ledger[Added],${gas === '' ? '' : `Ledger[Gas in unit],${gas},`}Ledger[Date and time],">="&$B${row},Ledger[Date and time],"<"&$C${row})`;
    return [
      { at: at('A'), content: formula(monthWord(`B${row}`)), look: labelLook },
      {
        at: at('B'),
        content: formula(
          `IF(fleet_as_of="",0,DATE(YEAR(fleet_as_of),MONTH(fleet_as_of)-${months - 1 - index},1))`,
        ),
        look: dayLook,
      },
      { at: at('C'), content: formula(`DATE(YEAR(B${row}),MONTH(B${row})+1,1)`), look: dayLook },
      ...Array.from({ length: gasPlaces }, (__, place): CellRecipe => {
        const column = gasColumn(place);
        const name = `${column}$${headingRow}`;
        const sum =
          place < gasPlaces - 1
            ? added(name)
            : `${total}${row}-SUM(${gasColumn(0)}${row}:${gasColumn(gasPlaces - 2)}${row})`;
        return { at: at(column), content: formula(`IF(${name}="","",${sum})`), look: cellLook };
      }),
      { at: at(total), content: formula(added('')), look: { ...cellLook, bold: true } },
    ];
  }).flat();
}

const due = { label: 'N', from: 'O', to: 'P', count: 'Q' } as const;

function dueRows(): CellRecipe[] {
  const count = (row: number): string =>
    `SUMPRODUCT(ISNUMBER(fleet_due)*(fleet_due>=${due.from}${row})*(fleet_due<${due.to}${row})*${inCare})`;
  return Array.from({ length: dueMonths + 1 }, (_, index) => {
    const row = first + index;
    const overdue = index === 0;
    return [
      {
        at: `${due.label}${row}`,
        content: overdue ? 'Late' : formula(monthWord(`${due.from}${row}`)),
        look: labelLook,
      },
      {
        at: `${due.from}${row}`,
        content: overdue
          ? 1
          : formula(index === 1 ? 'IF(fleet_as_of="",0,fleet_as_of+1)' : `${due.to}${row - 1}`),
        look: dayLook,
      },
      {
        at: `${due.to}${row}`,
        content: formula(
          overdue
            ? 'IF(fleet_as_of="",1,fleet_as_of+1)'
            : `DATE(YEAR(${due.from}${row}),MONTH(${due.from}${row})+1,1)`,
        ),
        look: dayLook,
      },
      { at: `${due.count}${row}`, content: formula(count(row)), look: { ...cellLook, format: '0' } },
    ] satisfies CellRecipe[];
  }).flat();
}

const worst = { place: 'S', row: 'T', unit: 'U', loss: 'V' } as const;

function worstRows(): CellRecipe[] {
  return Array.from({ length: worstPlaces }, (_, index) => {
    const row = first + index;
    const at = `${worst.row}${row}`;
    const look = { ...cellLook, align: 'center', format: '0' } as const;
    return [
      { at: `${worst.place}${row}`, content: index + 1, look },
      {
        at,
        content: formula(`IFERROR(MATCH(LARGE(fleet_rank,${worst.place}${row}),fleet_rank,0),"")`),
        look,
      },
      {
        at: `${worst.unit}${row}`,
        content: formula(`IF(${at}="","",INDEX(fleet_unit,${at}))`),
        look: labelLook,
      },
      {
        at: `${worst.loss}${row}`,
        content: formula(`IF(${at}="","",INDEX(fleet_loss,${at}))`),
        look: cellLook,
      },
    ] satisfies CellRecipe[];
  }).flat();
}

const growing = layOutTable({
  name: 'GasFigures',
  firstColumn: 1,
  headingRow: growingRow,
  bands: [
    {
      title: 'Gases',
      ...bandLooks.computed,
      columns: [
        { heading: 'Gas', width: 10, origin: 'input', look: { align: 'center' } },
        {
          heading: 'Units',
          width: 11,
          origin: 'computed',
          look: { format: '0' },
          formula: 'SUMPRODUCT((fleet_gas&""=[@Gas])*1)',
        },
        {
          heading: 'Added',
          unit: unitCell('mass'),
          width: 11,
          origin: 'computed',
          look: { format: '0.0' },
          formula: 'SUMIFS(Ledger[Added],Ledger[Gas in unit],[@Gas],Ledger[Date and time],">="&fleet_from)',
        },
        {
          heading: 'CO2-eq AR4',
          unit: 'kg',
          width: 10,
          origin: 'computed',
          look: { format: '#,##0' },
          formula: 'IF([@Gas]="","",IFERROR(OUNCE.CO2E([@Gas],[@Added],"AR4",log_units),""))',
        },
      ],
    },
  ],
  rows: [],
  spareRows: 1,
  looks: rowLooks,
});

const people = layOutTable({
  name: 'TechnicianFigures',
  firstColumn: 14,
  headingRow: growingRow,
  bands: [
    {
      title: 'Technicians',
      ...bandLooks.computed,
      columns: [
        { heading: 'Technician', width: 11, origin: 'input', look: { align: 'left', indent: 1 } },
        {
          heading: 'Sets',
          width: 11,
          origin: 'computed',
          look: { format: '0' },
          formula: 'COUNTIFS(Ledger[Technician],[@Technician])',
        },
        {
          heading: 'Added',
          unit: unitCell('mass'),
          width: 11,
          origin: 'computed',
          look: { format: '0.0' },
          formula: 'SUMIFS(Ledger[Added],Ledger[Technician],[@Technician])',
        },
        {
          heading: 'Filled',
          unit: '%',
          width: 9,
          origin: 'computed',
          look: { format: '0.0' },
          formula: 'IFERROR(AVERAGEIFS(Ledger[Filled],Ledger[Technician],[@Technician]),"")',
        },
      ],
    },
  ],
  rows: [],
  spareRows: 1,
  looks: rowLooks,
});

const head = (at: string, content: Content): CellRecipe => ({ at, content, look: heading });

export const figureNames = {
  fleet_from: `${sheet}!$B$${first}`,
  worst_row: `${sheet}!$${worst.row}$${first}:$${worst.row}$${first + worstPlaces - 1}`,
} as const;

const rows = (column: string, count: number): string =>
  `${sheet}!$${column}$${first}:$${column}$${first + count - 1}`;

/** Cells that the charts of the overview follow. */
export const chartCells = {
  months: rows('A', months),
  gases: Array.from({ length: gasPlaces }, (_, place) => ({
    name: `${sheet}!$${gasColumn(place)}$${headingRow}`,
    values: rows(gasColumn(place), months),
  })),
  dueLabels: rows(due.label, dueMonths + 1),
  dueName: `${sheet}!$${due.count}$${headingRow}`,
  due: rows(due.count, dueMonths + 1),
  worstUnits: rows(worst.unit, worstPlaces),
  worstName: `${sheet}!$${worst.loss}$${headingRow}`,
  worst: rows(worst.loss, worstPlaces),
  people: `${sheet}!$N$${growingRow + 1}:$N$${growingRow + 1}`,
  filledName: `${sheet}!$Q$${growingRow}`,
  filled: `${sheet}!$Q$${growingRow + 1}:$Q$${growingRow + 1}`,
} as const;

export const figuresSheet: SheetRecipe = {
  name: sheet,
  tabColour: '5B6B78',
  gridLines: false,
  widths: { A: 10, 'B:C': 11, 'D:K': 9, L: 9, M: 2, N: 12, 'O:P': 11, Q: 9, R: 2, S: 7, T: 7, U: 10, V: 10 },
  heights: { 1: 26, 2: 16, 4: 16, 5: 22 },
  cells: [
    ...titled('Figures', 'What the charts of the overview are drawn from. All of it follows the ledger.'),
    {
      at: 'A4',
      through: `${total}4`,
      content: 'Added by month and gas',
      look: { ...bandLooks.computed, bold: true, indent: 1, align: 'left' },
    },
    {
      at: 'N4',
      through: 'Q4',
      content: 'Calls due',
      look: { ...bandLooks.computed, bold: true, indent: 1, align: 'left' },
    },
    {
      at: 'S4',
      through: 'V4',
      content: 'Losing most',
      look: { ...bandLooks.computed, bold: true, indent: 1, align: 'left' },
    },
    head('A5', 'Month'),
    head('B5', 'From'),
    head('C5', 'Before'),
    ...Array.from({ length: gasPlaces }, (_, place) =>
      head(
        `${gasColumn(place)}${headingRow}`,
        formula(
          place < gasPlaces - 1
            ? `IF(ROWS(GasFigures[Gas])<${place + 1},"",INDEX(GasFigures[Gas],${place + 1})&"")`
            : `IF(ROWS(GasFigures[Gas])<${gasPlaces},"","others")`,
        ),
      ),
    ),
    head(`${total}5`, 'All'),
    head('N5', 'Month'),
    head('O5', 'From'),
    head('P5', 'Before'),
    head('Q5', 'Units due'),
    head('S5', 'Place'),
    head('T5', 'Row'),
    head('U5', 'Unit'),
    head('V5', 'Loss'),
    ...monthRows(),
    ...dueRows(),
    ...worstRows(),
    ...growing.cells,
    ...people.cells,
  ],
  tables: [growing.native, people.native],
  print: { landscape: true, pagesWide: 1, pagesTall: 1 },
};
