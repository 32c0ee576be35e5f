import { buildXlsx } from '../../workbook/build-xlsx.ts';
import type { TestCell } from '../../workbook/build-xlsx.ts';

type Row = readonly TestCell[];

const register: readonly Row[] = [
  [
    'Unit',
    'Owner',
    'Site',
    'Kind',
    'Refrigerant',
    'Nameplate charge',
    'Cooling capacity',
    'Efficiency',
    'Installed',
    'Months in service',
    'Taps fitted',
    'Warranty ends',
  ],
  ['OLD', 'Fernhollow Park', 'Pitch 4', 'roof', 'R-410A', 16, 13_500, 9, '2015-06-01', 6, 1, ''],
  ['WARRANTY', 'Fernhollow Park', 'Office', 'window', 'R-32', 12, 8000, 12, '2024-05-14', 5, 0, '2029-05-13'],
  ['PROPANE', 'Tarn House', 'Kitchen', 'portable', 'R-290', 8.8, 9000, 10.4, '2021-05-14', 6, 0, ''],
  ['MILD', 'Tarn House', 'Hall', 'window', 'R-32', 12, 8000, 12.1, '2021-04-02', 6, 0, ''],
  ['UNSEEN', 'Quarry Lane Studio', 'Loft', 'through-wall', 'R-410A', 20, 9000, 11.3, '2020-03-09', 8, 0, ''],
  ['TWICE', 'Quarry Lane Studio', 'Shop', 'roof', 'R-410A', 14, 11_000, 9.2, '2020-05-02', 6, 1, ''],
  ['STEADY', 'Fernhollow Park', 'Kiosk', 'roof', 'R-134a', 15, 7000, 9.1, '2019-06-21', 6, 1, ''],
  ['PAST', 'Orchard Bank', 'Barn', 'window', 'R-410A', 19, 12_000, 9.5, '2008-05-27', 5, 1, ''],
];

const ledger: readonly Row[] = [
  ['Unit', 'Visit', 'Date and time', 'Added', 'Recovered', 'Added for'],
  ...(
    [
      ['OLD', '2024-05-20', 3.1],
      ['OLD', '2024-11-02', 3.4],
      ['OLD', '2025-05-10', 3.6],
      ['OLD', '2025-10-28', 3.5],
      ['OLD', '2026-05-06', 3.8],
      ['OLD', '2026-10-12', 3.5],
      ['WARRANTY', '2026-08-28', 1.9],
      ['WARRANTY', '2026-10-12', 2.7],
      ['PROPANE', '2025-06-11', 0.9],
      ['PROPANE', '2026-06-20', 1.1],
      ['MILD', '2025-07-01', 1.2],
      ['MILD', '2026-07-15', 1.4],
      ['TWICE', '2025-10-01', 2.2],
      ['TWICE', '2026-07-28', 2.6],
      ['STEADY', '2023-06-10', 0.6],
      ['STEADY', '2024-06-14', 0.6],
      ['STEADY', '2025-06-10', 0.7],
      ['STEADY', '2026-06-12', 0.6],
      ['PAST', '2025-06-10', 2.2],
      ['PAST', '2026-06-12', 2.4],
    ] as const
  ).map(([unit, day, ounces], index): Row => [unit, `V-${String(index + 1)}`, day, ounces, 0, 'leak']),
];

const prices: readonly Row[] = [
  ['Code', 'Description', 'Unit', 'Sell', 'Valid from'],
  ['CALL', 'Trip and first hour', 'each', 95, '2026-01-01'],
  ['REPAIR', 'Find, mend, test, weigh in', 'each', 420, '2026-01-01'],
  ['R-410A', 'weighed', 'oz', 2.6, '2026-01-01'],
  ['R-32', 'weighed', 'oz', 2.1, '2026-01-01'],
  ['R-134a', 'weighed', 'oz', 2.4, '2026-01-01'],
  ['R-290', 'weighed', 'oz', 2.2, '2026-01-01'],
];

const cells = (rows: readonly Row[]): Record<string, TestCell> =>
  Object.fromEntries(
    rows.flatMap((row, index) =>
      row.map((cell, column) => [`${String.fromCharCode(65 + column)}${String(index + 1)}`, cell] as const),
    ),
  );

/** Eight invented units that differ in what may be offered for them; ounces, Btu/h. */
export function contrastingFleet(): Uint8Array {
  return buildXlsx({
    sheets: [
      { name: 'Register', cells: cells(register) },
      { name: 'Weighings', cells: cells(ledger) },
      { name: 'Money', cells: cells(prices) },
    ],
  });
}
