import { describe } from 'vitest';
import { completenessOf, cylinderBalance } from '../../../src/records/index.ts';
import type { RecordTable } from '../../../src/records/index.ts';
import { tradeRows } from '../trade-rows.ts';

const rows = tradeRows(new URL('./rows.csv', import.meta.url));

const balance = cylinderBalance({
  openingGrossKg: 25,
  closingGrossKg: 29.3,
  scaleStepKg: 0.05,
  bookings: [25, 3.2, -21.4, -2].map((bookedKg, moment) => ({ moment, bookedKg })),
});

describe('balance', () => {
  rows.figure('BAL-01', () => balance.unexplainedKg ?? NaN);
  rows.figure('BAL-02', () => (100 * (balance.unexplainedKg ?? NaN)) / 21.4);
  rows.figure('BAL-04', () => {
    const fields = Array.from({ length: 14 }, (_, index) => ({
      name: `f${String(index)}`,
      heading: `Field ${String(index)}`,
      kind: 'text' as const,
      required: true,
      origin: 'input' as const,
      group: 'g',
      help: 'h',
    }));
    const table: RecordTable = { name: 't', title: 'T', key: ['f0'], fields, rules: [] };
    return (
      100 * completenessOf(table, Object.fromEntries(fields.slice(2).map(({ name }) => [name, 'x']))).share
    );
  });
});

rows.nothingForgotten();
