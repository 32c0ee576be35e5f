/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { CalcError } from '../../../../src/errors.ts';
import { catalogue } from '../../../catalogue/index.ts';
import { describeParameter } from '../../../runtime/describe.ts';
import { guideLink } from '../../../handbook/function-guide/links.ts';
import { FileError } from '../../../workbook/file/file-error.ts';
import type { CallName, Calls, Gaze, LogInfo, View } from '../protocol.ts';
import { namespace } from '../spell.ts';
import { chartsOf } from './charts.ts';
import { findCell } from './find-cell.ts';
import { unitsOf } from './log-units.ts';
import { LogSession } from './log-session.ts';
import type { Outcome } from './outcome.ts';
import { sheetCharts } from './sheet-charts.ts';
import { estimateOf, fleetOf } from './make-workbook.ts';
import { takeLog, takenLogs } from './one-tab.ts';
import { columnCharacters, sheetInfos } from './open-log.ts';
import { printArea } from './print-area.ts';
import { deleteLog, keepLog, keepSteps, listLogs, markSaved, readLog } from './storage.ts';
import { TableRow } from './table-row.ts';
import { shownCells, viewOf } from './view.ts';
import type { VisitStep } from './visit/visit-steps.ts';
import { beginVisit, nextSet, readNow } from './visit/visit-steps.ts';
import { visitTableOf } from './visit/visit-table.ts';
import { visitList } from './visit/visit-view.ts';

/** Kept logs without unsaved changes; older ones go. */
const savedLogsKept = 3;
/** A reloading tab lets go of its log within this time. */
const reloadPatienceMs = 1500;

let session: LogSession | undefined;
let current = { id: '', name: '', isChanged: false };
let storageTrouble = '';

function present(): LogSession {
  if (session === undefined) throw new Error('no log is open');
  return session;
}

/** The log works on when the browser refuses to keep it; the page tells. */
function quietly(work: Promise<void>): void {
  work.catch((problem: unknown) => {
    storageTrouble = `The browser does not keep changes (${problem instanceof Error ? problem.message : String(problem)}). Save to a file.`;
  });
}

function sessionOf(id: string, name: string, bytes: Uint8Array): LogSession {
  return new LogSession(
    bytes,
    (steps) => {
      current.isChanged = true;
      quietly(keepSteps(id, steps));
    },
    (fresh) => {
      current.isChanged = true;
      quietly(keepLog({ id, name, bytes: fresh, changedAt: Date.now(), isChanged: true }));
    },
  );
}

function logInfo(): LogInfo {
  const { log } = present();
  const first = log.loaded.workbook.sheets.findIndex(({ hidden }) => !hidden);
  return {
    id: current.id,
    name: current.name,
    sheets: sheetInfos(log),
    styles: log.styles.cells,
    overlays: log.styles.overlays,
    first: Math.max(first, 0),
    hasVisits: visitTableOf(log.loaded.workbook) !== undefined,
  };
}

const nothing: Outcome = { notice: '', wasRefused: false, isRebuilt: false };

function view(gaze: Gaze, act: () => Outcome = () => nothing): View {
  const began = performance.now();
  const outcome = act();
  const shown = viewOf(present(), gaze, outcome, current.isChanged);
  const notice = [storageTrouble, shown.notice].filter((words) => words !== '').join(' ');
  storageTrouble = '';
  return { ...shown, notice, milliseconds: performance.now() - began };
}

/** A change of a visit: the set that is in hand after it is what the page looks at. */
function stepView(gaze: Gaze, act: () => VisitStep): View {
  const { outcome, row } = act();
  const { visit } = gaze;
  const moved =
    outcome.wasRefused || visit === undefined
      ? gaze
      : { ...gaze, visit: { ...visit, row }, cell: { ...gaze.cell, row } };
  return view(moved, () => outcome);
}

type Methods = {
  [K in CallName]: (...args: Parameters<Calls[K]>) => ReturnType<Calls[K]> | Promise<ReturnType<Calls[K]>>;
};

const methods: Methods = {
  functions: () =>
    catalogue.all().map((each) => ({
      name: namespace + each.id,
      summary: each.summary,
      guide: guideLink(each),
      parameters: Object.entries(each.parameters).map(([name, parameter]) => ({
        name,
        description: describeParameter(parameter),
        optional: 'optional' in parameter || 'default' in parameter,
        choices: parameter.kind === 'choice' ? parameter.choices : [],
      })),
    })),
  async kept() {
    const [logs, taken] = await Promise.all([listLogs(), takenLogs()]);
    const free = logs.filter(({ id }) => !taken.has(id));
    const done = free.filter(({ isChanged }) => !isChanged);
    for (const { id } of done.slice(savedLogsKept)) await deleteLog(id);
    return free.filter(({ isChanged }) => isChanged);
  },
  discard: (id) => deleteLog(id),
  async open(name, bytes) {
    const id = crypto.randomUUID();
    const next = sessionOf(id, name, bytes);
    await takeLog(id, 0);
    session = next;
    current = { id, name, isChanged: false };
    quietly(keepLog({ id, name, bytes, changedAt: Date.now(), isChanged: false }));
    return logInfo();
  },
  async reopen(id) {
    const kept = await readLog(id);
    if (kept === undefined || !(await takeLog(id, reloadPatienceMs))) return undefined;
    const { log, steps } = kept;
    const next = sessionOf(id, log.name, log.bytes);
    next.replay(steps);
    session = next;
    current = { id, name: log.name, isChanged: log.isChanged };
    return logInfo();
  },
  recalculate() {
    const { workbook } = present();
    const { cycles } = workbook.recalculate({ everything: true });
    let formulas = 0;
    let left = 0;
    for (const sheet of workbook.sheets) {
      for (const cell of sheet.formulaCells()) {
        if (cell.anchor !== undefined) continue;
        formulas++;
        if (cell.kept !== undefined) left++;
      }
    }
    return { formulas, circles: cycles.length, left };
  },
  gather: (logs, template, units) => fleetOf(logs, template, units),
  estimate(unit, template) {
    const { workbook } = present();
    const log = { name: current.name, bytes: present().save() };
    return estimateOf(log, unit, template, unitsOf(workbook, present().sheet(0)));
  },
  look: (gaze) => view(gaze),
  find: (text, from, isBackwards) => findCell(present(), text, from, isBackwards),
  type: (cells, isPasted, gaze) => view(gaze, () => present().type(gaze.sheet, cells, isPasted)),
  clear: (area, gaze) => view(gaze, () => present().clear(gaze.sheet, area)),
  copy: (fromSheet, from, to, gaze) => view(gaze, () => present().copy(fromSheet, from, gaze.sheet, to)),
  addRows: (row, count, gaze) =>
    view(gaze, () => present().addRows(gaze.sheet, row, gaze.cell.column, count)),
  deleteRows: (row, count, gaze) =>
    view(gaze, () => present().deleteRows(gaze.sheet, row, gaze.cell.column, count)),
  setWidths: (from, to, pixels, gaze) =>
    view(gaze, () => present().setWidths(gaze.sheet, from, to, columnCharacters(pixels))),
  visits: () => visitList(present()),
  beginVisit: (unit, technician, at, gaze) =>
    stepView(gaze, () => beginVisit(present(), unit, technician, at)),
  nextSet: (at, gaze) =>
    stepView(gaze, () => nextSet(present(), gaze.visit ?? { sheet: gaze.sheet, row: gaze.cell.row }, at)),
  readNow: (at, gaze) =>
    stepView(gaze, () => readNow(present(), gaze.visit ?? { sheet: gaze.sheet, row: gaze.cell.row }, at)),
  undo: (gaze) => view(gaze, () => present().undo()),
  redo: (gaze) => view(gaze, () => present().redo()),
  sheetCharts: (sheet) => sheetCharts(present(), present().sheet(sheet)),
  charts(sheet, row) {
    const here = present();
    return chartsOf(here, TableRow.at(here, here.sheet(sheet), row, 0));
  },
  print(index) {
    const here = present();
    const sheet = here.sheet(index);
    const area = printArea(here.log.loaded, sheet);
    return { area, cells: shownCells(here, sheet, area) };
  },
  file: () => present().save(),
  savedToFile(name) {
    current = { ...current, name, isChanged: false };
    return markSaved(current.id, name);
  },
};

/** The worker's side of its channel; the page's types describe a window instead. */
const channel = globalThis as unknown as {
  postMessage(message: unknown, transfer?: readonly Transferable[]): void;
  onmessage: ((event: MessageEvent<{ id: number; name: CallName; args: never[] }>) => void) | null;
};

// One request after the other: two edits never meet.
let queue = Promise.resolve();
channel.onmessage = ({ data: { id, name, args } }) => {
  queue = queue.then(async () => {
    try {
      const method = methods[name] as (...words: never[]) => unknown;
      const answer = await method(...args);
      channel.postMessage({ id, answer }, answer instanceof Uint8Array ? [answer.buffer] : []);
    } catch (problem) {
      const isExpected = problem instanceof FileError || problem instanceof CalcError;
      const words = problem instanceof Error ? problem.message : String(problem);
      channel.postMessage({
        id,
        fault: isExpected ? words : `Something went wrong here: ${words}`,
      });
    }
  });
};
