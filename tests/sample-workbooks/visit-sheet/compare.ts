import type { TypedVisit } from '../../../sample-workbooks/visit-sheet/sheets/visit-page.ts';
import type { Answered } from '../../../src/visit/answer/index.ts';
import { answersByFunctions } from './answers-by-functions.ts';
import { figuresByFunctions, noFigure } from './figures-by-functions.ts';
import type { SheetInHand } from './sheet-in-hand.ts';

/** The sheet's own lines hold numbers of the typed units: what the functions may be beside them [K]. */
const toleranceK = 0.02;

/** Lines that come from a saturation series. */
const fromSeries: ReadonlySet<string> = new Set(['saturation', 'superheat', 'subcooling', 'superheat_doubt']);

/** Rules of the full answer that ask for the ranked causes. Behind them the sheet may only be silent or say the same. */
const byCause: ReadonlySet<string> = new Set([
  'outside the charge',
  'air, perhaps',
  'overcharge',
  'low charge',
  'weighing in goes on',
  'nothing wrong',
  'undecided',
]);

/** Why the sheet may be silent where the full answer is not. */
const mayBeSilent: ReadonlySet<string | number | boolean> = new Set([
  'functions: typed',
  'functions: order',
  'functions: range',
  'functions: weather',
]);

export interface Comparison {
  /** Cells and answers held together. */
  compared: number;
  /** "set 3 superheat: sheet 12.1, functions 12.4". */
  readonly differences: string[];
  readonly silent: Map<string, number>;
  readonly said: Map<string, number>;
}

export function emptyComparison(): Comparison {
  return { compared: 0, differences: [], silent: new Map(), said: new Map() };
}

/** Types a visit into the sheet and holds everything that both say together. */
export function compareVisit(sheet: SheetInHand, visit: TypedVisit, into: Comparison): void {
  sheet.type(visit);
  const { placed } = sheet;
  const answers = answersByFunctions(placed, visit);
  answers.forEach((answered, index) => {
    const set = index + 1;
    if (answered === undefined) {
      into.compared += 1;
      if (sheet.value('shown_word', set) !== '')
        into.differences.push(`set ${String(set)}: an answer to nothing`);
      return;
    }
    compareFigures(sheet, visit, index, into);
    compareAnswer(sheet, answered, set, into);
  });
}

function compareFigures(sheet: SheetInHand, visit: TypedVisit, index: number, into: Comparison): void {
  const set = index + 1;
  const perK = sheet.placed.units.system === 'US' ? 1.8 : 1;
  // A cell that cannot be read, or lies out of its limits, is told as such; figures over it are nobody's.
  const flagged = ['unread', 'out_reading', 'out_record', 'out_elsewhere'].some(
    (key) => sheet.value(key, set) !== 0,
  );
  if (flagged || sheet.value('answer_key', set) === 'functions: typed') return;
  for (const [key, wanted] of Object.entries(figuresByFunctions(sheet.placed, visit, index))) {
    const got = sheet.value(key, set);
    into.compared += 1;
    if (same(key, got, wanted)) continue;
    into.differences.push(`set ${String(set)} ${key}: sheet ${String(got)}, functions ${String(wanted)}`);
  }

  function same(key: string, got: number | string | boolean, wanted: number | string): boolean {
    if (typeof got === 'number' && typeof wanted === 'number')
      return (
        Math.abs(got - wanted) <=
        (fromSeries.has(key) ? toleranceK * perK : 1e-6 * Math.max(1, Math.abs(wanted)))
      );
    if (wanted === noFigure) return got === '–' || got === 'outside' || got === '';
    if (got === 'outside' || got === '–') return beyondSeries(set);
    if (key === 'superheat' || key === 'subcooling' || key === 'superheat_doubt')
      return got === '' && (wanted === '' || beyondSeries(set));
    return got === wanted;
  }

  function beyondSeries(number: number): boolean {
    return ['x_dew', 'x_bubble', 'x_liquid', 'x_outdoor'].some(
      (key) => sheet.value(key, number) === 'outside',
    );
  }
}

function compareAnswer(
  sheet: SheetInHand,
  { answer, decidedBy }: Answered,
  set: number,
  into: Comparison,
): void {
  const action = sheet.value('action', set);
  const key = sheet.value('answer_key', set);
  into.compared += 1;
  const tally = action === '–' ? into.silent : into.said;
  tally.set(String(key), (tally.get(String(key)) ?? 0) + 1);
  const told = `set ${String(set)} answer: sheet ${String(action)} (${String(key)}), functions ${answer.action} (${decidedBy})`;
  if (action === '–') {
    if (!byCause.has(decidedBy) && !mayBeSilent.has(key)) into.differences.push(told);
    return;
  }
  if (action !== answer.action) {
    into.differences.push(told);
    return;
  }
  if (answer.ouncesKg === undefined) return;
  const { units } = sheet.placed;
  const wanted = units.value(answer.ouncesKg, 'mass').toFixed(units.unit('mass').decimals);
  const word = String(sheet.value('shown_word', set));
  if (!word.startsWith(`Add ${wanted} `)) into.differences.push(`${told}: "${word}", functions ${wanted}`);
}
