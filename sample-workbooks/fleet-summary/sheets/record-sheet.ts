import type { Field, RecordTable } from '../../../src/records/index.ts';
import { bandLooks, colours, looks } from '../../writing/palette.ts';
import { recordColumn } from '../../writing/record-column.ts';
import type { Rule, SheetRecipe } from '../../writing/recipe.ts';
import type { Band, ColumnRecipe, LaidOutTable } from '../../writing/table.ts';
import { layOutTable } from '../../writing/table.ts';
import { titled } from '../../writing/title-block.ts';
import { headingRow } from '../names.ts';

export const rowLooks = {
  heading: looks.heading,
  unit: looks.unit,
  input: { size: 9, line: { colour: colours.faintLine, sides: 'bottom' as const } },
  computed: {
    size: 9,
    fill: colours.computedFill,
    line: { colour: colours.faintLine, sides: 'bottom' as const },
  },
};

const widths: Partial<Record<Field['kind'], number>> = {
  date: 11,
  dateTime: 15,
  refrigerant: 9.5,
  text: 13,
  link: 15,
  choice: 12,
};

const wide: Readonly<Record<string, number>> = {
  unit_id: 9,
  visit_id: 10,
  technician_id: 10,
  owner: 25,
  site: 18,
  note: 40,
  nameplate_from: 16,
  cyl_id: 9,
};

/** Gathered rows are read, not typed: no dropdowns and no notes, so that ten thousand of them stay quick to open. */
export function plainColumn(table: RecordTable, field: Field): ColumnRecipe {
  const column = recordColumn(table, field.name, { width: wide[field.name] ?? widths[field.kind] ?? 9.5 });
  return {
    heading: column.heading,
    unit: column.unit,
    width: column.width,
    origin: 'input',
    look: column.look,
  };
}

/** A sheet with one table of gathered rows, its columns in the groups of the record. */
export function recordSheet(given: {
  readonly sheet: string;
  readonly title: string;
  readonly line: string;
  readonly table: string;
  readonly record: RecordTable;
  readonly tabColour: string;
  readonly pagesWide: number;
  readonly frozenColumns: number;
  readonly more?: readonly Band[];
}): { readonly laidOut: LaidOutTable; readonly recipe: SheetRecipe; readonly whole: string } {
  const { record, more = [] } = given;
  const fields = record.fields.filter(({ origin }) => origin === 'input');
  const groups = [...new Set(fields.map(({ group }) => group))];
  const laidOut = layOutTable({
    name: given.table,
    firstColumn: 1,
    headingRow,
    bands: [
      ...groups.map((group) => ({
        title: group,
        ...bandLooks.input,
        columns: fields.filter((field) => field.group === group).map((field) => plainColumn(record, field)),
      })),
      ...more,
    ],
    rows: [],
    spareRows: 1,
    looks: rowLooks,
  });
  const [top, corner = ''] = laidOut.native.range.split(':');
  return {
    laidOut,
    // An array formula of LibreOffice takes a named area, but no table by its name.
    whole: `'${given.sheet}'!${absolute(top ?? '')}:${absolute(corner)}`,
    recipe: {
      name: given.sheet,
      tabColour: given.tabColour,
      gridLines: false,
      freeze: { columns: given.frozenColumns, rows: headingRow },
      widths: laidOut.widths,
      heights: { 1: 26, 2: 16, 3: 18, 4: 14, 5: 30 },
      cells: [...titled(given.title, given.line), ...laidOut.cells],
      tables: [laidOut.native],
      rules: gapRules(record, laidOut),
      print: {
        landscape: true,
        pagesWide: given.pagesWide,
        pagesTall: 0,
        repeatRows: '$3:$5',
        repeatColumns: `$A:$${'ABCDEF'[given.frozenColumns - 1] ?? 'A'}`,
      },
    },
  };
}

function absolute(address: string): string {
  return address.replace(/^([A-Z]+)(\d+)$/, '$$$1$$$2');
}

/** What is always asked for and blank is coloured, not hidden. */
function gapRules(record: RecordTable, table: LaidOutTable): Rule[] {
  const [key = ''] = record.key;
  const first = record.fields.find(({ name }) => name === key)?.heading ?? '';
  const row = String(table.firstRow);
  return record.fields
    .filter(({ required, origin }) => required === true && origin === 'input')
    .map(({ heading }) => {
      const cell = `${table.letters(heading)}${row}`;
      return {
        range: cell,
        when: `AND($${table.letters(first)}${row}<>"",${cell}="")`,
        look: { fill: colours.careFill },
      };
    });
}
