/** A log of three visits to two made-up units, in columns of its own order. */
export const exampleLedger = [
  ['Unit', 'Visit', 'Date and time', 'Added (oz)', 'Why added', 'Recovered', 'Taps left in place'],
  ['W-12', 'V-1', '2026-04-20', 3, 'leak', 0, 1],
  ['W-12', 'V-3', '2026-06-19', 3, 'leak', 0, 1],
  ['R-02', 'V-2', '2026-05-04', 0, null, 0, 0],
] as const;

const exampleRegister = [
  ['Unit', 'Site', 'Refrigerant', 'Nameplate charge (oz)', 'Installed', 'Status'],
  ['R-02', 'Pier 4', 'R-410A', 17, '2024-03-01', 'in use'],
  ['W-12', 'Mill Lane', 'R-410A', 14, '2025-10-02', 'in use'],
] as const;

export const fleetExample = {
  arguments: { ledger: exampleLedger, register: exampleRegister },
  gives: [
    [
      'Unit',
      'Site',
      'Refrigerant',
      'Status',
      'Visits',
      'Last visit',
      'Last verdict',
      'Added (oz)',
      'Loss (oz/year)',
      'Leak rate (%/year)',
      'Trend',
      'Confidence',
      'Next due',
    ],
    ['R-02', 'Pier 4', 'R-410A', 'in use', 1, 46_146, '', 0, '', 0, 'No loss', 'none', ''],
    [
      'W-12',
      'Mill Lane',
      'R-410A',
      'in use',
      2,
      46_192,
      '',
      6,
      (3 * 365) / 60,
      (100 * 6) / 14,
      'One interval',
      'low',
      46_234,
    ],
  ],
  tolerance: 1e-6,
  source:
    'arithmetic: 3 oz in 60 days from top-up to top-up; 6 of 14 oz within 365 days; 2.1 oz at 3 oz in 60 days last 42 days from 2026-06-19',
} as const;
