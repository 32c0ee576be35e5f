import {
  answerUnit,
  peopleOf,
  staffList,
  unitKeyOf,
  unitRegister,
  visitLog,
} from '../../../src/records/index.ts';
import type { LogEntry, People, RecordRow, RecordTable } from '../../../src/records/index.ts';
import { precedence } from '../../../src/visit/answer/index.ts';
import type { Instruments } from '../../../src/visit/answer/index.ts';
import { defineFunction } from '../../runtime/define.ts';
import type { TableCell } from '../../runtime/define.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import type { Cells, SheetReader } from '../records/read-table.ts';
import { isEmptyRow, readRow, sheetReader } from '../records/read-table.ts';
import { memoryFor } from './answer-memory.ts';
import type { AnswerTexts } from './answer-texts.ts';
import { answerTexts } from './answer-texts.ts';
import * as shared from './shared-parameters.ts';
import { donextExamples } from './donext-examples.ts';

type Range = readonly Cells[];

export const donext = defineFunction({
  id: 'DONEXT',
  family: 'visit',
  summary:
    'What to do next after every set of a visit log, and why: one answer that has heard the readings, the masses, the person, the unit and its earlier visits.',
  parameters: {
    log: {
      kind: 'table',
      description:
        'Visit log with its heading row. Columns are found by name, in any order; a unit in brackets wins over units: "Added (g)". A blank is not measured, never zero.',
    },
    register: {
      kind: 'table',
      optional: true,
      description:
        'Unit register with its heading row: gas, nameplate, volts, metering, taps, warranty, status.',
    },
    staff: {
      kind: 'table',
      optional: true,
      description: 'Staff list with its heading row: certificate and training for flammable gas.',
    },
    earlier: {
      kind: 'table',
      optional: true,
      description: 'Earlier visits, when they stand in a log of their own.',
    },
    gauge_accuracy: shared.suctionGaugeParameter,
    liquid_gauge_accuracy: shared.liquidGaugeParameter,
    probe_accuracy: shared.probeParameter,
    air_accuracy: shared.airProbeParameter,
  },
  returns: {
    kind: 'table',
    columns: [
      { heading: 'Do next', kind: 'text' },
      { heading: 'Why', kind: 'text' },
      { heading: 'Ask next', kind: 'text' },
      { heading: 'Action', kind: 'text' },
      { heading: 'Ounces', kind: 'number', quantity: 'count' },
    ],
    description:
      'A row for every row of the log, in its order; blank for a free row. Ounces of weight, only where something is to be added. As an array formula over a fixed range it works without spilling.',
  },
  source: `One order of precedence, the first that has something to say decides: ${precedence.map(([name]) => name).join(', ')}. Rules: ounces by weight and gates as READYCHECK, STANDINGCHECK, CAUSES, NEXTSTEP; certificates 40 CFR 82.161, from memory; the order itself is common practice, no source.`,
  examples: donextExamples,
  compute: ({ log, register, staff, earlier, ...accuracy }, { units }) => {
    const instruments: Instruments = {
      suctionGaugePa: accuracy.gauge_accuracy,
      liquidGaugePa: accuracy.liquid_gauge_accuracy,
      probeK: accuracy.probe_accuracy,
      airProbeK: accuracy.air_accuracy,
    };
    const sheet = sheetReader(visitLog, log[0] ?? [], { units, parameter: 'log', needed: ['unit_id'] });
    const body = log.slice(1);
    const around = surroundingsOf({ register, staff, earlier, instruments }, units);
    const texts = answersOf(sheet, body, around);
    return body.map((_, index) => cellsOf(texts[index]));
  },
});

function cellsOf(texts: AnswerTexts | undefined): readonly TableCell[] {
  if (texts === undefined) return ['', '', '', '', undefined];
  return [
    texts.word,
    texts.because.join('; '),
    texts.ask.join(', '),
    texts.action,
    texts.ounces ?? undefined,
  ];
}

interface Surroundings {
  readonly registered: ReadonlyMap<string, RecordRow>;
  readonly people: People | undefined;
  readonly earlier: ReadonlyMap<string, readonly LogEntry[]>;
  readonly instruments: Instruments;
  readonly cells: readonly unknown[];
}

function surroundingsOf(
  given: {
    readonly register: Range | undefined;
    readonly staff: Range | undefined;
    readonly earlier: Range | undefined;
    readonly instruments: Instruments;
  },
  units: UnitSystem,
): Surroundings {
  const registered = new Map<string, RecordRow>();
  for (const { row } of rowsOf(unitRegister, given.register, 'register', units)) {
    const key = unitKeyOf(row);
    if (key !== '' && !registered.has(key)) registered.set(key, row);
  }
  const staff = rowsOf(staffList, given.staff, 'staff', units).map(({ row }) => row);
  const earlier = new Map<string, LogEntry[]>();
  for (const entry of rowsOf(visitLog, given.earlier, 'earlier', units)) {
    const key = unitKeyOf(entry.row);
    const entries = earlier.get(key);
    if (entries) entries.push(entry);
    else earlier.set(key, [entry]);
  }
  return {
    registered,
    people: given.staff === undefined ? undefined : peopleOf(staff),
    earlier,
    instruments: given.instruments,
    cells: [given.register, given.staff, given.earlier, given.instruments],
  };
}

function rowsOf(
  table: RecordTable,
  range: Range | undefined,
  parameter: string,
  units: UnitSystem,
): readonly LogEntry[] {
  if (range === undefined) return [];
  const sheet = sheetReader(table, range[0] ?? [], {
    units,
    parameter,
    needed: table.key.slice(0, 1).map((name) => (table === visitLog ? 'unit_id' : name)),
  });
  return range
    .slice(1)
    .filter((cells) => !isEmptyRow(sheet, cells))
    .map((cells) => readRow(sheet, cells));
}

/** An answer for each row of the log; none for a free row. */
function answersOf(
  sheet: SheetReader,
  body: Range,
  { registered, people, earlier, instruments, cells: surroundings }: Surroundings,
): readonly (AnswerTexts | undefined)[] {
  const typed = sheet.columns.filter(({ field }) => field.origin === 'input');
  const unit = sheet.columns.find(({ field }) => field.name === 'unit_id');
  const memory = memoryFor([
    surroundings,
    sheet.columns.map(({ index, field, unit: stated }) => [index, field.name, stated?.symbol]),
    sheet.units.mass.symbol,
    sheet.units.temperature.symbol,
    sheet.units.pressure.symbol,
  ]);
  const units = unitsOf(sheet);
  const places = new Map<string, number[]>();
  body.forEach((cells, index) => {
    const written = cells[unit?.index ?? 0];
    if (typeof written !== 'string' && typeof written !== 'number') return;
    const key = unitKeyOf({ unit_id: String(written) });
    if (key === '') return;
    const rows = places.get(key);
    if (rows) rows.push(index);
    else places.set(key, [index]);
  });
  const answers: (AnswerTexts | undefined)[] = [];
  for (const [key, rows] of places) {
    // What is worked out in the row is no evidence of its own: only typed cells are compared and read.
    const own = rows.map((index) => typed.map(({ index: column }) => body[index]?.[column]));
    const entries = memory.entries(key, own, (place) => readRow(sheet, body[rows[place] ?? -1] ?? []));
    const texts = answerUnit({
      log: entries,
      earlier: earlier.get(key) ?? [],
      registered: registered.get(key),
      people,
      instruments,
      recall: memory.recall,
    }).map((answered, place) =>
      memory.texts(answered, () => answerTexts(answered, entries[place]?.row ?? {}, units)),
    );
    rows.forEach((index, place) => {
      answers[index] = texts[place];
    });
  }
  return answers;
}

/** What the log is written in: the call's units, and over them what its headings state. */
function unitsOf({ units, columns }: SheetReader): UnitSystem {
  const stated = columns.flatMap(({ field, unit }) =>
    field.quantity === undefined || unit === undefined ? [] : [[field.quantity, unit] as const],
  );
  return { ...units, ...Object.fromEntries(stated) };
}
