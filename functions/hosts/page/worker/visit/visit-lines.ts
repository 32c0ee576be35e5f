import type { Field, VisitEntry, VisitFigure, VisitSection } from '../../../../../src/records/index.ts';
import { fieldOfEntry, isEntry, isRequiredHere, labelOf } from '../../../../../src/records/index.ts';
import type { VisitCell, VisitLineView, VisitSectionView } from '../../visit-protocol.ts';
import { stateOfWords } from '../answer-in-hand.ts';
import { typedText } from '../cell-text.ts';
import { choicesOf, validationOf } from '../validations.ts';
import type { RecordTableRow } from './visit-row.ts';

/** Longer lists are typed with suggestions instead of being laid out. */
const mostButtons = 8;

type Findings = ReturnType<RecordTableRow['findings']>;

/** The sets of a visit, and what the checks say of each. */
export interface CheckedSet {
  readonly row: RecordTableRow;
  readonly findings: Findings;
  readonly isStanding: boolean;
}

export function sectionView(
  section: VisitSection,
  sets: readonly CheckedSet[],
  present: number,
): VisitSectionView | undefined {
  const here = sets[present];
  if (here === undefined || !hasSection(section, here)) return undefined;
  const lines = section.lines.flatMap((line) => {
    const view = isEntry(line) ? entryView(section, line, sets, here) : figureView(section, line, sets, here);
    return view === undefined ? [] : [view];
  });
  const open = lines.filter(({ cells }) => cells[present]?.finding?.severity === 'missing');
  return { name: section.name, title: section.title, lines, open: open.map(({ name }) => name) };
}

function hasSection({ sets }: VisitSection, { isStanding }: CheckedSet): boolean {
  return sets === 'every' || (sets === 'standing') === isStanding;
}

function entryView(
  section: VisitSection,
  entry: VisitEntry,
  sets: readonly CheckedSet[],
  here: CheckedSet,
): VisitLineView | undefined {
  if (here.row.column(entry.field) === undefined) return undefined;
  const field = fieldOfEntry(entry);
  const cells = sets.map((set) =>
    hasSection(section, set) ? cellOf(set.row, field, set.findings) : undefined,
  );
  const asked = isAsked(entry, field, here);
  const at = sets.indexOf(here);
  const before = sets.slice(0, at).findLast(({ isStanding }) => isStanding === here.isStanding);
  const isWanted = before === undefined || before.row.shown(entry.field) !== '' || isAskedNow(field, here);
  return lineView(here.row, field, cells, {
    label: labelOf(entry),
    isOfVisit: entry.ofVisit === true,
    isAsked: asked,
    isNext: asked && isWanted && here.row.shown(entry.field) === '',
  });
}

/** Required because of what this very set says, such as the cylinder of what was added. */
function isAskedNow(field: Field, { row }: CheckedSet): boolean {
  return typeof field.required !== 'boolean' && isRequiredHere(field, row.record.row);
}

/** The line of a field of any record. */
export function lineView(
  row: RecordTableRow,
  field: Field,
  cells: readonly (VisitCell | undefined)[],
  about: Pick<VisitLineView, 'label' | 'isOfVisit' | 'isAsked' | 'isNext'>,
): VisitLineView {
  const choices = choicesFor(row, field);
  const isLong = choices.length > mostButtons;
  return {
    ...about,
    name: field.name,
    unit: field.kind === 'number' ? row.unit(headingOf(row, field)) : '',
    kind:
      field.kind === 'number'
        ? 'number'
        : choices.length > 0 && !isLong && isClosed(field)
          ? 'choice'
          : 'text',
    choices,
    help: field.help,
    cells,
    expected: '',
    verdict: '',
    state: 'none',
  };
}

/** Names of one's own, such as units and cylinders, may be new; declared words are all there are. */
function isClosed({ kind }: Field): boolean {
  return kind === 'choice' || kind === 'yesNo' || kind === 'text';
}

function headingOf(row: RecordTableRow, field: Field): string {
  const column = row.column(field.name);
  return column === undefined ? '' : (row.table.columns[column - row.table.left] ?? '');
}

function isAsked(entry: VisitEntry, field: Field, { row }: CheckedSet): boolean {
  if (row.fieldValue(entry.field) !== null && row.fieldValue(entry.field) !== '') return true;
  if (entry.isSeldom === true) return row.text('Ask next').includes(field.heading);
  // What is required only at times is asked for at those times, the rest always.
  return typeof field.required === 'boolean' || isRequiredHere(field, row.record.row);
}

export function cellOf(row: RecordTableRow, field: Field, findings: Findings): VisitCell | undefined {
  const column = row.column(field.name);
  if (column === undefined) return undefined;
  return {
    sheet: row.table.sheet.index,
    row: row.row,
    column,
    shown: row.shown(field.name),
    typed: row.typed(field.name),
    canType: !row.isWorkedOut(field.name),
    finding: findings.get(field.name),
  };
}

function choicesFor(row: RecordTableRow, field: Field): string[] {
  const numbered = field.numbered ?? [];
  if (numbered.length > 0) return withNextNumber(row, field, numbered);
  if (field.choices !== undefined) return [...field.choices];
  if (field.kind === 'yesNo') return ['yes', 'no'];
  if (field.kind === 'number') return [];
  const { session } = row;
  const { sheet } = row.table;
  const column = row.column(field.name);
  if (column === undefined) return [];
  const check = validationOf(session.layout(sheet).validations, row.row, column);
  if (check === undefined) return [];
  const { workbook } = session;
  const listed = choicesOf(check, { workbook, sheet, row: row.row, column });
  return listed
    .map((choice) => typedText(choice, 'General', workbook.dateSystem))
    .filter((word) => word !== '');
}

/** "after step" offers the number that this set has, or that comes next in its visit. */
function withNextNumber(row: RecordTableRow, field: Field, numbered: readonly string[]): string[] {
  const numberIn = (text: string): number => Number(/ (\d+)$/.exec(text)?.[1] ?? 0);
  const own = numberIn(row.shown(field.name));
  let last = 0;
  for (const other of row.siblings()) {
    if (other.row === row.row || other.text('Visit') !== row.text('Visit')) continue;
    if (other.text('Unit') === row.text('Unit'))
      last = Math.max(last, numberIn(other.text(headingOf(row, field))));
  }
  const number = own === 0 ? last + 1 : own;
  return (field.choices ?? []).map((word) => (numbered.includes(word) ? `${word} ${number}` : word));
}

function figureView(
  section: VisitSection,
  line: VisitFigure,
  sets: readonly CheckedSet[],
  here: CheckedSet,
): VisitLineView | undefined {
  if (!here.row.has(line.figure)) return undefined;
  const expected = line.expected === undefined ? '' : here.row.text(line.expected);
  const verdict = line.verdict === undefined ? '' : here.row.text(line.verdict);
  return {
    name: `figure ${line.figure}`,
    label: line.label,
    unit: here.row.unit(line.figure),
    kind: 'figure',
    choices: [],
    help: '',
    isOfVisit: false,
    isAsked: true,
    isNext: false,
    cells: sets.map((set) => (hasSection(section, set) ? figureCell(set.row, line.figure) : undefined)),
    expected: expected === '–' ? '' : expected,
    verdict,
    state: stateOfWords(verdict),
  };
}

function figureCell(row: RecordTableRow, heading: string): VisitCell {
  const shown = row.text(heading);
  const column = row.table.left + (row.table.columnPosition(heading) ?? 0);
  const { sheet } = row.table;
  return { sheet: sheet.index, row: row.row, column, shown, typed: '', canType: false, finding: undefined };
}
