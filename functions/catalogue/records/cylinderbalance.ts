import {
  bookingNotes,
  cylinderBalance,
  cylinderDangers,
  cylinderRegister,
  driftIsReal,
} from '../../../src/records/index.ts';
import type { Booking, CylinderBalance, RecordRow } from '../../../src/records/index.ts';
import { defaultScaleStepKg } from '../../../src/charge/next-step.ts';
import { figure, phrase } from '../../../src/phrase.ts';
import type { Phrase } from '../../../src/phrase.ts';
import { defineFunction } from '../../runtime/define.ts';
import { bookingsByCylinder, cylinderKey } from './cylinder-bookings.ts';
import { isEmptyRow, readRow, sheetReader } from './read-table.ts';

export const cylinderbalance = defineFunction({
  id: 'CYLINDERBALANCE',
  family: 'records',
  summary:
    'The account of every cylinder: opening, in, out, closing, what is unexplained against the scale, drift.',
  parameters: {
    cylinders: {
      kind: 'table',
      description: 'Cylinder register with its heading row; cylinder and opening gross are needed.',
    },
    ledger: {
      kind: 'table',
      optional: true,
      description: 'Visit log: what was added, lost in hoses and recovered, by cylinder.',
    },
    movements: {
      kind: 'table',
      optional: true,
      description: 'Other movements with gross before and after: purchase, transfer, return, reclaim.',
    },
    scale_step: {
      kind: 'number',
      quantity: 'mass',
      above: 0,
      maximum: 1,
      default: defaultScaleStepKg,
      description: 'Smallest step of the scale. 0.1 oz if left out.',
    },
  },
  returns: {
    kind: 'table',
    columns: [
      { heading: 'Cylinder', kind: 'text' },
      { heading: 'Gas', kind: 'text' },
      { heading: 'Opening gross', kind: 'number', quantity: 'cylinderMass' },
      { heading: 'In', kind: 'number', quantity: 'cylinderMass' },
      { heading: 'Out', kind: 'number', quantity: 'cylinderMass' },
      { heading: 'Expected gross', kind: 'number', quantity: 'cylinderMass' },
      { heading: 'Closing gross', kind: 'number', quantity: 'cylinderMass' },
      { heading: 'Unexplained', kind: 'number', quantity: 'mass' },
      { heading: 'Tolerance', kind: 'number', quantity: 'mass' },
      { heading: 'Share of out', kind: 'number', quantity: 'percent' },
      { heading: 'Answer', kind: 'text' },
      { heading: 'Note', kind: 'text' },
    ],
    description: 'One row per cylinder. Unexplained is positive when refrigerant is missing.',
  },
  source:
    'Mass balance: opening + in - out - closing. Tolerance: two scale steps times the square root of the bookings and one; common practice, no source.',
  examples: [
    {
      arguments: {
        cylinders: [
          ['Cylinder', 'Gas', 'Opening gross (lb)', 'Closing gross (lb)'],
          ['C-3', 'R-410A', 50, 48.5],
          ['C-4', 'R-22', 40, 40],
        ],
        ledger: [
          ['Unit', 'Date and time', 'Cylinder', 'Added (oz)', 'Lost in hoses (oz)', 'Recovered (oz)'],
          ['W-12', '2026-04-20', 'C-3', 15, 1, 0],
        ],
      },
      gives: [
        [
          'Cylinder',
          'Gas',
          'Opening gross (lb)',
          'In (lb)',
          'Out (lb)',
          'Expected gross (lb)',
          'Closing gross (lb)',
          'Unexplained (oz)',
          'Tolerance (oz)',
          'Share of out (%)',
          'Answer',
        ],
        ['C-3', 'R-410A', 50, 0, 1, 49, 48.5, 8, 0.2 * Math.SQRT2, 50, 'Unexplained'],
        ['C-4', 'R-22', 40, 0, 0, 40, 40, 0, 0.2, '', 'Balances'],
      ],
      tolerance: 1e-6,
      source: 'arithmetic: 16 oz out of 50 lb leave 49 lb, 48.5 lb are there',
    },
    {
      arguments: { cylinders: [['Shoe size'], [44]] },
      gives: '#VALUE!',
      source: 'definition: the needed columns are missing',
    },
  ],
  compute: ({ cylinders, ledger, movements, scale_step }, { units }) => {
    const sheet = sheetReader(cylinderRegister, cylinders[0] ?? [], {
      units,
      parameter: 'cylinders',
      needed: ['cyl_id', 'opening_gross'],
    });
    const bookings = bookingsByCylinder({ ledger, movements, units });
    return cylinders.slice(1).flatMap((cells) => {
      if (isEmptyRow(sheet, cells)) return [];
      const { row } = readRow(sheet, cells);
      const { cyl_id: id, gas, opening_gross: opening, closing_gross: closing } = row;
      if (typeof id !== 'string' || typeof opening !== 'number') {
        return [
          [
            typeof id === 'string' ? id : '?',
            ...Array.from({ length: 9 }, () => undefined),
            'Open',
            'no opening weight',
          ],
        ];
      }
      const own = bookings.get(cylinderKey(id)) ?? [];
      const closingKg = typeof closing === 'number' ? closing : undefined;
      const balance = cylinderBalance({
        openingGrossKg: opening,
        closingGrossKg: closingKg,
        bookings: own,
        scaleStepKg: scale_step,
      });
      return [
        [
          id,
          typeof gas === 'string' ? gas : undefined,
          opening,
          balance.inKg,
          balance.outKg,
          balance.expectedClosingGrossKg,
          closingKg,
          balance.unexplainedKg,
          balance.toleranceKg,
          balance.unexplainedShare,
          balance.answer,
          noteOf(balance, own, scale_step, row),
        ],
      ];
    });
  },
});

function noteOf(
  balance: CylinderBalance,
  bookings: readonly Booking[],
  scaleStepKg: number,
  cylinder: RecordRow,
): Phrase | undefined {
  const [danger] = cylinderDangers(cylinder, bookings);
  if (danger !== undefined) return danger;
  const { answer, betweenKg, toleranceKg, driftKg } = balance;
  const weighed = bookings.filter(
    ({ beforeKg, afterKg }) => beforeKg !== undefined && afterKg !== undefined,
  ).length;
  if (driftKg !== undefined && driftIsReal(driftKg, weighed, scaleStepKg)) {
    return phrase`scale or hoses: each booking shows ${figure(driftKg, 'mass', { decimals: 2 })} more than was booked, ${String(weighed)} weighed`;
  }
  const closing = typeof cylinder['closing_gross'] === 'number' ? cylinder['closing_gross'] : undefined;
  const [first, second] = answer === 'Unexplained' ? bookingNotes(bookings, closing, scaleStepKg) : [];
  if (first !== undefined) return second === undefined ? first : phrase`${first}; ${second}`;
  if (Math.abs(betweenKg) > toleranceKg) {
    return phrase`${figure(betweenKg, 'mass')} went between bookings: leak, unbooked use or another scale`;
  }
  return answer === 'Open' ? phrase`no closing weight` : undefined;
}
