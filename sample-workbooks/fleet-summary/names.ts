/** Sheets of the fleet workbook, in order. */
export const sheetNames = {
  overview: 'Overview',
  units: 'Units',
  ledger: 'Ledger',
  cylinders: 'Cylinders',
  rules: 'Rules',
  cautions: 'Cautions',
  corrections: 'To correct',
  conflicts: 'Conflicts',
  settled: 'Settled',
  aside: 'Set aside',
  register: 'Register',
  cylinderList: 'Cylinder list',
  movements: 'Movements',
  figures: 'Figures',
  settings: 'Settings',
} as const;

/** Row of the headings of every table that grows. */
export const headingRow = 5;
