import type { Gate, Hand } from '../protocol.ts';
import { asideValue } from './evaluate.ts';
import { shownText } from './cell-text.ts';
import type { LogSession } from './log-session.ts';

/** Cells of the estimate workbook that are told beside the answer, by their defined names. */
const factNames = [
  ['Repair asked', 'estimate_repair'],
  ['Worth at most', 'estimate_worth'],
  ['Leak', 'history_trend'],
  ['Years old', 'unit_age'],
] as const;

/** The answer of an estimate, in view while its assumptions are edited; undefined in any other workbook. */
export function estimateInHand(session: LogSession): Hand | undefined {
  const verdict = named(session, 'estimate_verdict');
  if (verdict === '') return undefined;
  const [, answer = verdict, why = ''] = /^([^:;]{1,40})[:;]\s*(.*)$/s.exec(verdict) ?? [];
  const examples = Number(named(session, 'estimate_draft'));
  return {
    title: named(session, 'quote_unit') || 'No unit picked',
    next: answer,
    nextState: stateOf(answer),
    why,
    danger: '',
    gates: [
      gate('Complete', /^Cannot/i.test(verdict) ? 'stop' : 'good', verdict),
      gate(
        'Figures your own',
        examples > 0 ? 'care' : 'good',
        examples > 0 ? `${examples} figures are still the examples of the form` : 'no example is left',
      ),
    ],
    facts: factNames
      .map(([name, cell]) => ({ name, text: named(session, cell) }))
      .filter(({ text }) => text !== ''),
  };
}

function stateOf(answer: string): Hand['nextState'] {
  if (/^(?:Repair|Replace|Top up|Do nothing)/i.test(answer)) return 'good';
  return /^Too close/i.test(answer) ? 'care' : 'none';
}

function gate(name: string, state: Gate['state'], text: string): Gate {
  return { name, state, text };
}

function named(session: LogSession, name: string): string {
  const { workbook } = session;
  const [sheet] = workbook.sheets;
  if (sheet === undefined) return '';
  const value = asideValue(workbook, name, { sheet, baseRow: 0, baseColumn: 0, row: 0, column: 0 });
  if (typeof value === 'string') return value;
  // Money and years: more places than two say more than is known.
  return typeof value === 'number'
    ? shownText(value, '#,##0.##', workbook.dateSystem).replace(/\.$/, '')
    : '';
}
