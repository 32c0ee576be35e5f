import { foldHeading } from '../../../src/records/index.ts';
import type { Field, Finding } from '../../../src/records/index.ts';
import { readRow } from '../../catalogue/records/read-table.ts';
import type { CellInput } from '../../runtime/cells.ts';
import { isBlank } from '../../runtime/cells.ts';
import { serialOfDay, textOfDay } from '../../runtime/dates.ts';
import { extrasText, numberCell, usesDecimalComma } from './cell-texts.ts';
import type { GatheredRow } from './gathered-row.ts';
import { noRules } from './reading-rules.ts';
import type { DateColumn, ReadingQuestion, ReadingRules } from './reading-rules.ts';
import type { RecordSheet } from './record-sheet.ts';
import { printOf } from './row-print.ts';
import type { SheetValues } from './sheet-values.ts';
import type { DateOrder, WrittenDate } from './written-dates.ts';
import { dateOrders, momentOf, ordersOf, readWrittenDate } from './written-dates.ts';

/** A column of dates: what its own dates, or the office, say of their order. */
interface ReadDates {
  readonly index: number;
  readonly field: Field;
  readonly orders: ReadonlyMap<string, DateOrder>;
}

/** How the cells of one sheet are understood, found out from the sheet as a whole. */
interface Understanding {
  readonly typed: RecordSheet['reader']['columns'];
  readonly dates: readonly ReadDates[];
  readonly commaIsPoint: boolean;
  /** A column with the time of day beside one with the day. */
  readonly timeIndex: number | undefined;
}

/** The filled rows of a table, each with its place. Rows in which only formulas show something are not filled. */
export function* readRows(
  file: string,
  sheet: SheetValues,
  from: RecordSheet,
  isOnlySheet: boolean,
  rules: ReadingRules = noRules,
  ask: (question: ReadingQuestion) => void = () => undefined,
): Generator<GatheredRow> {
  const understood = understand(file, sheet, from, rules, ask);
  const { typed } = understood;
  const columns = from.reader.columns;
  for (let row = from.firstRow; row < sheet.rows.length; row += 1) {
    const cells = sheet.rows[row] ?? [];
    if (typed.every(({ index }) => isBlank(cells[index])) || repeatsHeadings(cells, from)) continue;
    const shown = shifted(cells, from, sheet.dayShift ?? 0);
    const { ready, written } = madeReadable(shown, understood);
    const { row: values, unreadable } = readRow(from.reader, ready);
    // Formulas of a ready-made row may show a zero or a word; without a word of its key, a date and a weight it is empty.
    const isKeyless = from.table.key.every((name) => values[name] === undefined) && !hasDate(values);
    if (isKeyless && unreadable.length === 0 && !(Number(values['added'] ?? 0) > 0)) continue;
    for (const { field } of unreadable) {
      const index = columns.find((column) => column.field.name === field)?.index ?? -1;
      written[field] ??= textOf(shown[index]);
    }
    const filled = [...columns, ...from.others].filter(({ index }) => !isBlank(shown[index]));
    yield {
      place: {
        file,
        sheet: isOnlySheet ? undefined : sheet.name,
        row: sheet.rowNumbers?.[row] ?? row + 1,
        ...typedIn(cells, from),
      },
      values,
      unreadable: unreadable.map((finding) => explained(finding, written[finding.field])),
      from,
      ...(unreadable.length > 0 && { written }),
      extras: extrasText(
        from.others.flatMap(({ index, heading }): [string, CellInput][] =>
          isBlank(shown[index]) ? [] : [[heading, shown[index] ?? null]],
        ),
      ),
      print:
        sheet.prints?.[row] ??
        printOf(filled.map((column) => [headingOf(column), shown[column.index] ?? null])),
    };
  }
}

function typedIn(cells: readonly CellInput[], { typedElsewhere }: RecordSheet): { typedIn?: string } {
  const said = typedElsewhere === undefined ? undefined : cells[typedElsewhere.column];
  return typeof said === 'string' && said !== '' ? { typedIn: said } : {};
}

function headingOf(column: { readonly field: Field } | { readonly heading: string }): string {
  return 'field' in column ? column.field.name : `\u0003${foldHeading(column.heading)}`;
}

function textOf(cell: CellInput): string {
  return typeof cell === 'string' ? cell.trim() : typeof cell === 'number' ? String(cell) : '';
}

function understand(
  file: string,
  sheet: SheetValues,
  from: RecordSheet,
  rules: ReadingRules,
  ask: (question: ReadingQuestion) => void,
): Understanding {
  const { columns } = from.reader;
  const typed = columns.filter(({ field }) => field.origin === 'input');
  const isDate = ({ field }: { readonly field: Field }): boolean =>
    field.kind === 'date' || field.kind === 'dateTime';
  const technicians = distinctTexts(
    sheet,
    from,
    columns.find(({ field }) => field.name === 'technician_id')?.index,
  );
  const read = columns.filter(isDate).map((column) => ({
    ...column,
    ...ordersOf(distinctTexts(sheet, from, column.index)),
  }));
  const dates = read.map(({ index, field, settled, open }): ReadDates => {
    const orders = new Map(settled);
    for (const [mark, example] of open) {
      const heading = textOf(sheet.rows[from.headingRow]?.[index] ?? null) || field.heading;
      const column: DateColumn = { file, heading, technicians, example };
      // The hand that wrote the other dates of the sheet wrote these.
      const beside = new Set(read.flatMap((other) => other.settled.get(mark) ?? []));
      const [only] = beside;
      const ruled = rules.dateOrder(column);
      const order = ruled ?? (beside.size === 1 ? only : undefined);
      if (order !== undefined) orders.set(mark, order);
      if (ruled !== undefined) ask({ kind: 'date order read', column, order: ruled });
      if (order === undefined)
        ask({ kind: 'date order', column, rows: undecided(sheet, from, index, orders) });
    }
    return { index, field, orders };
  });
  const numbers = columns.filter(({ field }) => field.kind === 'number');
  const hasTime = /^(?:time(?: of day)?|hour|start time|clock)$/;
  return {
    typed,
    dates,
    commaIsPoint: usesDecimalComma(
      cellsOf(
        sheet,
        from,
        numbers.map(({ index }) => index),
      ),
    ),
    timeIndex: dates.some(({ field }) => field.kind === 'dateTime')
      ? from.others.find(({ heading }) => hasTime.test(foldHeading(heading)))?.index
      : undefined,
  };
}

function* cellsOf(sheet: SheetValues, from: RecordSheet, indexes: readonly number[]): Generator<CellInput> {
  for (let row = from.firstRow; row < sheet.rows.length; row += 1)
    for (const index of indexes) yield sheet.rows[row]?.[index] ?? null;
}

function distinctTexts(sheet: SheetValues, from: RecordSheet, index: number | undefined): string[] {
  const texts = new Set<string>();
  if (index === undefined) return [];
  for (const cell of cellsOf(sheet, from, [index]))
    if (typeof cell === 'string' && cell.trim() !== '') texts.add(cell.trim());
  return [...texts];
}

function undecided(
  sheet: SheetValues,
  from: RecordSheet,
  index: number,
  orders: ReadonlyMap<string, DateOrder>,
): number {
  let count = 0;
  for (const cell of cellsOf(sheet, from, [index])) {
    const date = typeof cell === 'string' ? readWrittenDate(cell) : undefined;
    if (date !== undefined && momentOf(date, orders) === undefined) count += 1;
  }
  return count;
}

/** Dates as serial numbers and numbers with points, so far as they can be understood; the others stay what they are. */
function madeReadable(
  cells: readonly CellInput[],
  { typed, dates, commaIsPoint, timeIndex }: Understanding,
): { readonly ready: readonly CellInput[]; readonly written: Record<string, string> } {
  const ready = [...cells];
  const written: Record<string, string> = {};
  for (const { index, field } of typed) ready[index] = numberCell(field, cells[index] ?? null, commaIsPoint);
  for (const { index, field, orders } of dates) {
    const cell = cells[index];
    const time = timeIndex === undefined || field.kind !== 'dateTime' ? undefined : cells[timeIndex];
    if (typeof cell === 'string') {
      const date = readWrittenDate(cell) ?? withTime(cell, time);
      const moment = date && momentOf(date, orders);
      if (date !== undefined && moment === undefined) written[field.name] = cell.trim();
      if (moment !== undefined) ready[index] = serialOfDay(moment);
    }
    const ready0 = ready[index];
    if (typeof ready0 === 'number' && Number.isInteger(ready0)) ready[index] = ready0 + timeIn(time);
  }
  return { ready, written };
}

function withTime(day: string, time: CellInput | undefined): WrittenDate | undefined {
  return typeof time === 'string' ? readWrittenDate(`${day.trim()} ${time.trim()}`) : undefined;
}

/** Share of the day that a cell with a time of day says; 0 when it says none. */
function timeIn(time: CellInput | undefined): number {
  if (typeof time === 'number') return time > 0 && time < 1 ? time : 0;
  const date = typeof time === 'string' ? readWrittenDate(`2000-01-01 ${time.trim()}`) : undefined;
  return date?.kind === 'sure' ? date.moment - Math.floor(date.moment) : 0;
}

/** Both days that a date can be, where it can be two. */
function explained(finding: Finding, text: string | undefined): Finding {
  const date = text === undefined ? undefined : readWrittenDate(text);
  if (date?.kind !== 'order') return finding;
  const days = dateOrders.flatMap((order) => {
    const moment = date.by[order];
    return moment === undefined ? [] : [textOfDay(Math.floor(moment))];
  });
  return { ...finding, message: [`"${text ?? ''}" can be ${days.join(' or ')}: which is the month?`] };
}

function hasDate(values: GatheredRow['values']): boolean {
  return values['date_time'] !== undefined || values['date'] !== undefined;
}

/** Logs that were put together by hand repeat their headings. */
function repeatsHeadings(cells: readonly CellInput[], { reader }: RecordSheet): boolean {
  let repeated = 0;
  for (const { index, field } of reader.columns) {
    const cell = cells[index];
    if (typeof cell !== 'string') continue;
    const text = foldHeading(cell);
    if (text === foldHeading(field.heading) || text === foldHeading(field.name)) repeated += 1;
    if (repeated >= 3) return true;
  }
  return false;
}

function shifted(cells: readonly CellInput[], { reader }: RecordSheet, days: number): readonly CellInput[] {
  if (days === 0) return cells;
  const moved = [...cells];
  for (const { index, field } of reader.columns) {
    const cell = moved[index];
    if ((field.kind === 'date' || field.kind === 'dateTime') && typeof cell === 'number')
      moved[index] = cell + days;
  }
  return moved;
}
