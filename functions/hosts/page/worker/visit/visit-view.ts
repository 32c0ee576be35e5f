import { unitFacts, visitLayout } from '../../../../../src/records/index.ts';
import type {
  VisitList,
  VisitOunces,
  VisitPlace,
  VisitSectionView,
  VisitSet,
  VisitView,
} from '../../visit-protocol.ts';
import { answerInHand } from '../answer-in-hand.ts';
import type { LogSession } from '../log-session.ts';
import type { CheckedSet } from './visit-lines.ts';
import { cellOf, lineView, sectionView } from './visit-lines.ts';
import { momentText, RecordTableRow, rowsOf, rowWith } from './visit-row.ts';
import { staffTableOf, unitTableOf, visitTableOf } from './visit-table.ts';
import { nextVisitNumber } from './visit-number.ts';

/** Most visits offered to go back to. */
const mostVisits = 60;

/** The visit to which a row of the readings belongs; of a free row, the last set of the log. Undefined without any set. */
export function visitView(session: LogSession, place: VisitPlace): VisitView | undefined {
  const table = visitTableOf(session.workbook);
  if (table === undefined) return undefined;
  const wanted = new RecordTableRow(session, table, place.row);
  const isIn = place.sheet === table.table.sheet.index && place.row >= table.table.firstRow;
  const row = isIn && !wanted.isFree ? wanted : lastSet(session);
  if (row === undefined) return undefined;
  const unit = row.shown('unit_id');
  const visit = row.shown('visit_id');
  const rows = [...rowsOf(session, table)]
    .filter((other) => !other.isFree && other.shown('unit_id') === unit && other.shown('visit_id') === visit)
    .sort((one, other) => Number(one.fieldValue('set_no')) - Number(other.fieldValue('set_no')));
  const present = Math.max(
    rows.findIndex((other) => other.row === row.row),
    0,
  );
  const sets = rows.map((each): CheckedSet => ({
    row: each,
    findings: withUsedTwice(session, each),
    isStanding: each.shown('compressor_state') === 'off',
  }));
  const sections = visitLayout
    .map((section) => sectionView(section, sets, present))
    .filter((section) => section !== undefined);
  const facts = unitSection(session, unit, sets.length, present);
  return {
    place: { sheet: table.table.sheet.index, row: row.row },
    unit,
    visit,
    about: aboutUnit(session, unit),
    sets: sets.map(setOf),
    present,
    answer: { ...(answerInHand(row) ?? noAnswer), settledAt: settledAt(row) },
    ounces: ouncesOf(row),
    sections: facts === undefined ? sections : [facts, ...sections],
  };
}

const noAnswer = { next: '', state: 'none', why: '', asks: '', danger: '', gates: [] } as const;

/** The last row of the readings in which something was typed. */
export function lastSet(session: LogSession): RecordTableRow | undefined {
  const table = visitTableOf(session.workbook);
  if (table === undefined) return undefined;
  const rows = [...rowsOf(session, table)].filter((row) => !row.isFree);
  return rows.at(-1);
}

function setOf({ row, isStanding }: CheckedSet): VisitSet {
  const moment = row.fieldValue('date_time');
  return {
    row: row.row,
    number: row.shown('set_no'),
    stage: row.shown('stage'),
    clock: typeof moment === 'number' ? momentText(moment).slice(11) : '',
    isStanding,
  };
}

/** A visit number that stands on two units is told where it was typed, on both. */
function withUsedTwice(session: LogSession, row: RecordTableRow): CheckedSet['findings'] {
  const findings = row.findings();
  const visit = row.shown('visit_id');
  const table = visitTableOf(session.workbook);
  if (visit === '' || table === undefined) return findings;
  const unit = row.shown('unit_id');
  for (const other of rowsOf(session, table)) {
    const otherUnit = other.shown('unit_id');
    if (other.shown('visit_id') !== visit || otherUnit === unit || otherUnit === '') continue;
    const words = `Visit ${visit} stands on unit ${otherUnit} too: give this one a number of its own`;
    return new Map([...findings, ['visit_id', { severity: 'reject' as const, words }]]);
  }
  return findings;
}

/** Refrigerant, nameplate and what else answers need to know of the unit; undefined without a register. */
function unitSection(
  session: LogSession,
  unit: string,
  count: number,
  present: number,
): VisitSectionView | undefined {
  const register = unitTableOf(session.workbook);
  const row = register === undefined ? undefined : rowWith(session, register, 'unit_id', unit);
  if (register === undefined || row === undefined) return undefined;
  const findings = row.findings();
  const lines = unitFacts.flatMap((name) => {
    const field = register.fields.get(name);
    const cell = field === undefined ? undefined : cellOf(row, field, findings);
    if (field === undefined || cell === undefined) return [];
    const cells = Array.from({ length: count }, (_one, index) => (index === present ? cell : undefined));
    return [
      {
        ...lineView(row, field, cells, {
          label: field.heading,
          isOfVisit: true,
          isAsked: true,
          isNext: cell.canType && cell.shown === '',
        }),
        name: `unit ${name}`,
      },
    ];
  });
  const open = lines.filter(({ cells }) => cells[present]?.finding?.severity === 'missing');
  return {
    name: 'nameplate',
    title: `Nameplate of ${unit}`,
    lines,
    open: open.map(({ name }) => name),
  };
}

function aboutUnit(session: LogSession, unit: string): string {
  const register = unitTableOf(session.workbook);
  const row = register === undefined ? undefined : rowWith(session, register, 'unit_id', unit);
  if (row === undefined) return '';
  const gas = row.shown('refrigerant');
  const safety = row.shown('safety_class');
  const charge = row.shown('nameplate');
  return [
    row.shown('site'),
    row.shown('kind'),
    gas === '' ? '' : safety === '' ? gas : `${gas} (${safety})`,
    charge === '' ? '' : `nameplate ${charge} ${row.unit('Nameplate charge')}`.trim(),
  ]
    .filter((word) => word !== '')
    .join(' · ');
}

/** Time of the readings, and what was still missing to fifteen minutes then. */
function settledAt(row: RecordTableRow): string {
  const moment = row.fieldValue('date_time');
  const wait = row.number('Wait');
  if (typeof moment !== 'number' || wait === undefined || wait <= 0) return '';
  return momentText(moment + wait / 1440);
}

function ouncesOf(row: RecordTableRow): VisitOunces {
  const found = row.fieldValue('found');
  const next = row.number('Next step');
  return {
    unit: row.unit('Added'),
    nameplate: row.number('Nameplate'),
    found:
      typeof found === 'number' ? found : row.shown('mass_basis') === 'nameplate weighed in' ? 0 : undefined,
    added: row.number('Added so far') ?? 0,
    next: next !== undefined && next > 0 ? next : undefined,
  };
}

/** What may be begun or gone back to. */
export function visitList(session: LogSession): VisitList | undefined {
  const table = visitTableOf(session.workbook);
  if (table === undefined) return undefined;
  const byVisit = new Map<string, RecordTableRow>();
  for (const row of rowsOf(session, table)) {
    if (row.isFree) continue;
    const key = `${row.shown('unit_id')}\n${row.shown('visit_id')}`;
    byVisit.delete(key);
    byVisit.set(key, row);
  }
  const visits = [...byVisit.values()].reverse().map((row) => {
    const moment = row.fieldValue('date_time');
    return {
      row: row.row,
      unit: row.shown('unit_id'),
      visit: row.shown('visit_id'),
      day: typeof moment === 'number' ? momentText(moment).slice(0, 10) : '',
      next: answerInHand(row)?.next ?? '',
    };
  });
  const register = unitTableOf(session.workbook);
  const units =
    register === undefined
      ? []
      : [...rowsOf(session, register)]
          .map((row) => row.shown('unit_id'))
          .filter((name) => name !== '')
          .map((name) => ({ name, about: aboutUnit(session, name) }));
  const staff = staffTableOf(session.workbook);
  return {
    sheet: table.table.sheet.index,
    units,
    visits: visits.slice(0, mostVisits),
    nextVisit: nextVisitNumber(visits.map(({ visit }) => visit)),
    asksTechnician: staff !== undefined && [...rowsOf(session, staff)].every((row) => row.isFree),
  };
}
