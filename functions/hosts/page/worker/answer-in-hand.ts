import { actions } from '../../../../src/visit/answer/index.ts';
import type { Action } from '../../../../src/visit/answer/index.ts';
import { cautions } from '../../../handbook/cautions.ts';
import { CellError, describeError } from '../../../workbook/model/values.ts';
import type { Gate } from '../protocol.ts';
import type { TableRow } from './table-row.ts';

/** What a row of readings says to do next, and what decided it. */
export interface AnswerInHand {
  readonly next: string;
  readonly state: Gate['state'];
  readonly why: string;
  readonly asks: string;
  readonly danger: string;
  readonly gates: readonly Gate[];
}

const gateColumns = ['Supply gate', 'Ice gate', 'Air gate', 'Weather gate', 'Settled gate'];

/** Undefined for rows of tables without answers. */
export function answerInHand(row: TableRow): AnswerInHand | undefined {
  if (!row.has('Do next')) return undefined;
  const gates: Gate[] = gateColumns
    .filter((heading) => row.has(heading))
    .map((heading) => {
      const text = row.text(heading);
      return { name: heading.replace(/ gate$/, ''), text: text === '' ? '–' : text, state: gateState(text) };
    });
  const danger = dangerOf(row);
  const broken = brokenOf(row);
  if (broken !== undefined) {
    return { next: 'Cannot be worked out', state: 'stop', why: broken, asks: '', danger, gates };
  }
  const next = row.text('Do next');
  return { next, state: stateOfAnswer(row, next, gates), why: whyOf(row), asks: asksOf(row), danger, gates };
}

/** The unit's safety class from the register, when its gas burns or is toxic (ASHRAE 34: anything but A1). */
function dangerOf(row: TableRow): string {
  const safetyClass = row.elsewhere('Units', 'Unit', row.text('Unit'))?.text('Safety class') ?? '';
  if (safetyClass === '' || safetyClass === 'A1') return '';
  const words = /^(?:A2L?|A3)$/.test(safetyClass)
    ? (cautions[0] ?? '')
    : 'Look the gas up before opening anything.';
  return `Class ${safetyClass}. ${words}`;
}

/**
 * The reason of the first error in the row when there is no answer, or one that holds an error itself: what stands behind
 * it often only passes it on. An answer of nothing beside an error elsewhere is no answer.
 */
function brokenOf(row: TableRow): string | undefined {
  const answer = row.value('Do next');
  const hasAnswer = !(answer instanceof CellError) && answer !== null && answer !== '' && answer !== '–';
  if (hasAnswer) return undefined;
  const found = row.table.columns.find((heading) => row.value(heading) instanceof CellError);
  const first = found === undefined ? answer : row.value(found);
  if (!(first instanceof CellError)) return undefined;
  const words = describeError(first);
  return found === undefined ? words : `${found}: ${words}`;
}

function gateState(text: string): Gate['state'] {
  if (text === '') return 'none';
  if (text === 'ok') return 'good';
  return text === 'stop' ? 'stop' : 'care';
}

const good = /^(?:Enough in|On target|In range|Ready|Matches|Normal|Good|nothing wrong|ok)/i;
const stop = /^(?:Fix|Thaw|Clean|Mismatch|Non-condensables|Empty|Too hot|stop|Reject)/i;
const refused = /^(?:Refused|Unknown)/i;

/** The one place where the page reads a state from words: of an answer, or of a verdict. */
export function stateOfWords(words: string): Gate['state'] {
  if (words === '' || words === '–' || refused.test(words)) return 'none';
  if (stop.test(words)) return 'stop';
  return good.test(words) ? 'good' : 'care';
}

const stateOfAsks = { go: 'good', care: 'care', stop: 'stop' } as const;

/** The kind of answer says it where the log has it; older logs have words alone. */
function stateOfAnswer(row: TableRow, next: string, gates: readonly Gate[]): Gate['state'] {
  if (next === '') return 'none';
  const action = row.text('Action');
  if (action in actions) return stateOfAsks[actions[action as Action].asks];
  return gates.some(({ state }) => state === 'stop') ? 'stop' : stateOfWords(next);
}

/** The words behind the answer: its own reasons where the log has them, or the closed gate, or the verdict with evidence. */
function whyOf(row: TableRow): string {
  if (row.has('Why')) return row.text('Why');
  const ready = row.text('Ready');
  if (ready !== '' && !/^Ready/i.test(ready)) return ready;
  const verdict = row.text('Verdict');
  const words = verdict === '' ? [row.text('Standing check') || ready] : [verdict, row.text('Evidence')];
  return words.filter((word) => word !== '').join('; ');
}

function asksOf(row: TableRow): string {
  if (row.has('Ask next')) return row.text('Ask next');
  // A closed gate says itself what to do first.
  return /^(?:Ready|$)/i.test(row.text('Ready')) ? row.text('Reading to take next') : '';
}
