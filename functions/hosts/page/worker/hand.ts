import type { Hand } from '../protocol.ts';
import { answerInHand } from './answer-in-hand.ts';
import type { TableRow } from './table-row.ts';

const factColumns = ['Wait', 'Nameplate', 'Room', 'Next step', 'Superheat', 'Target superheat', 'Split'];

/** What the row in hand says about itself; undefined for rows of tables without gates and answers. */
export function handOf(row: TableRow | undefined): Hand | undefined {
  const answer = row === undefined ? undefined : answerInHand(row);
  if (row === undefined || answer === undefined) return undefined;
  const unit = row.text('Unit');
  const title =
    unit === ''
      ? `Row ${row.row + 1}: not begun`
      : [unit, row.text('Visit'), row.text('Stage')].filter((word) => word !== '').join(' · ');
  const { next, state, why, asks, danger, gates } = answer;
  const facts = factColumns
    .filter((heading) => row.text(heading) !== '')
    .map((heading) => ({
      name: heading,
      text: `${row.text(heading)}${row.number(heading) === undefined ? '' : ` ${row.unit(heading)}`}`.trim(),
    }));
  const words = asks === '' ? [why] : [why, `next reading: ${asks}`];
  return {
    title,
    next,
    nextState: state,
    why: words.filter((word) => word !== '').join('; '),
    danger,
    gates,
    facts,
  };
}
