import { expect, it } from 'vitest';
import { call } from '../../../../functions/catalogue/call.ts';
import { catalogue } from '../../../../functions/catalogue/index.ts';
import { inWords } from '../../../../functions/hosts/command-line/outcome-words.ts';
import type { Argument } from '../../../../functions/runtime/cells.ts';

function words(id: string, args: Record<string, Argument>): string {
  return inWords(catalogue.get(id), call(id, args));
}

it('figures come without the crumbs of binary arithmetic', () => {
  // The makers' published table at 67 degF wet bulb and 95 degF outdoors: 12 (tests/standards/visit).
  expect(words('TARGETSUPERHEAT', { return_wet_bulb: 67, outdoor_temperature: 95 })).toBe('12');
});

it('a day is shown as a date', () => {
  // Arithmetic: 0.15 x 14 / (3 / 200) = 140 days after 2026-06-01.
  expect(words('NEXTDUE', { full_charge: 14, added: 3, days: 200, filled_on: '2026-06-01' })).toBe(
    '2026-10-19',
  );
});

it('the dates of a table are shown as dates, its figures as figures', () => {
  const ledger = [
    ['Unit', 'Date', 'Added'],
    ['Roof 4', '2026-02-10', 2],
    ['Roof 4', '2026-08-30', 3],
  ];
  const [headings = '', first = ''] = words('LEAKHISTORY', {
    ledger,
    unit_id: 'Roof 4',
    since: '2025-11-02',
  }).split('\n');
  expect(headings.split('\t').slice(0, 2)).toEqual(['From', 'To']);
  // What was typed: from the day since which the charge was right to the first addition.
  expect(first.split('\t').slice(0, 2)).toEqual(['2025-11-02', '2026-02-10']);
});

it('a cell of a range that went wrong shows its error code', () => {
  expect(words('SATTEMP', { refrigerant: 'R-410A', pressure: [[62], ['twelve']] }).split('\n')[1]).toBe(
    '#VALUE!',
  );
});
