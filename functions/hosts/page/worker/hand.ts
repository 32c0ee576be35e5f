import { cautions } from '../../../handbook/cautions.ts';
import type { Gate, Hand } from '../protocol.ts';
import type { TableRow } from './table-row.ts';
import { CellError, describeError } from '../../../workbook/model/values.ts';

const gateColumns = ['Supply gate', 'Ice gate', 'Air gate', 'Weather gate', 'Settled gate'];
const factColumns = ['Wait', 'Nameplate', 'Room', 'Next step', 'Superheat', 'Target superheat', 'Split'];

/** What the row in hand says about itself; undefined for rows of tables without gates and answers. */
export function handOf(row: TableRow | undefined): Hand | undefined {
  if (row === undefined || !row.has('Do next')) return undefined;
  const unit = row.text('Unit');
  const visit = row.text('Visit');
  const title =
    unit === ''
      ? `Row ${row.row + 1}: not begun`
      : [unit, visit, row.text('Stage')].filter((word) => word !== '').join(' · ');
  const gates: Gate[] = gateColumns
    .filter((heading) => row.has(heading))
    .map((heading) => {
      const text = row.text(heading);
      return { name: heading.replace(/ gate$/, ''), text: text === '' ? '–' : text, state: gateState(text) };
    });
  const broken = row.value('Do next');
  const next = broken instanceof CellError ? 'Cannot be worked out' : row.text('Do next');
  const facts = factColumns
    .filter((heading) => row.text(heading) !== '')
    .map((heading) => ({
      name: heading,
      text: `${row.text(heading)}${row.number(heading) === undefined ? '' : ` ${row.unit(heading)}`}`.trim(),
    }));
  return {
    title,
    next,
    nextState: nextState(next, gates),
    why: broken instanceof CellError ? brokenWords(row, broken) : whyOf(row),
    danger: dangerOf(row),
    gates,
    facts,
  };
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

/** The reason of the first error among the gates and answers: what stands behind it often only passes it on. */
function brokenWords(row: TableRow, broken: CellError): string {
  const found = row.table.columns.find((heading) => row.value(heading) instanceof CellError);
  const first = found === undefined ? broken : row.value(found);
  const words = describeError(first instanceof CellError ? first : broken);
  return found === undefined ? words : `${found}: ${words}`;
}

function gateState(text: string): Gate['state'] {
  if (text === '') return 'none';
  if (text === 'ok') return 'good';
  return text === 'stop' ? 'stop' : 'care';
}

const good = /^(?:Enough in|On target|In range|Ready|Matches|Normal|Good|nothing wrong|ok)/i;
const stop = /^(?:Fix|Thaw|Clean|Mismatch|Non-condensables|Empty|Too hot|stop|Reject)/i;

function nextState(next: string, gates: readonly Gate[]): Gate['state'] {
  if (next === '') return 'none';
  if (stop.test(next) || gates.some(({ state }) => state === 'stop')) return 'stop';
  return good.test(next) ? 'good' : 'care';
}

/** The words behind the answer: the closed gate, or the verdict with its evidence and the reading to take next. */
function whyOf(row: TableRow): string {
  const ready = row.text('Ready');
  if (ready !== '' && !/^Ready/i.test(ready)) return ready;
  const verdict = row.text('Verdict');
  const words = verdict === '' ? [row.text('Standing check') || ready] : [verdict];
  const evidence = row.text('Evidence');
  if (evidence !== '') words.push(evidence);
  const wanted = row.text('Reading to take next');
  if (wanted !== '') words.push(`next reading: ${wanted}`);
  return words.filter((word) => word !== '').join('; ');
}
