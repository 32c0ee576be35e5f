import type { Condition, RecordRow } from './field.ts';

function any(row: RecordRow, ...names: readonly string[]): boolean {
  return names.some((name) => row[name] !== undefined);
}

function condition(words: string, uses: readonly string[], when: (row: RecordRow) => boolean): Condition {
  return { words, uses, when };
}

function positive(row: RecordRow, name: string): boolean {
  const value = row[name];
  return typeof value === 'number' && value > 0;
}

/** Two hot legs: a 208 or 240 V supply. */
const twoLegsFromV = 180;

export const whenPressureRead = condition(
  'when a pressure was read',
  ['liquid_pressure', 'suction_pressure'],
  (row) => any(row, 'suction_pressure', 'liquid_pressure'),
);

export const whenStanding = condition(
  'for a standing pressure',
  ['compressor_state', 'liquid_pressure', 'suction_pressure'],
  (row) => row['compressor_state'] === 'off' && any(row, 'suction_pressure', 'liquid_pressure'),
);

export const whenTwoLegs = condition(
  'on a 208 or 240 V supply',
  ['volts_run'],
  (row) => typeof row['volts_run'] === 'number' && row['volts_run'] >= twoLegsFromV,
);

export const whenWeighed = condition(
  'when refrigerant was added or recovered',
  ['added', 'recovered'],
  (row) => positive(row, 'added') || positive(row, 'recovered'),
);

export const whenResidualWeighed = condition(
  'when the residual was weighed',
  ['mass_basis'],
  (row) => row['mass_basis'] === 'residual weighed',
);

export const whenAdded = condition('when refrigerant was added', ['added'], (row) => positive(row, 'added'));

export const whenLeakFound = condition(
  'when a leak was found',
  ['leak_found'],
  (row) => row['leak_found'] === true,
);

export const whenLeakFixed = condition(
  'when a leak was fixed',
  ['leak_fixed'],
  (row) => row['leak_fixed'] === true,
);

export const whenTested = condition(
  'when the pressure was tested',
  ['test_end_pressure', 'test_end_temperature', 'test_gas', 'test_start_pressure', 'test_start_temperature'],
  (row) =>
    any(
      row,
      'test_gas',
      'test_start_pressure',
      'test_start_temperature',
      'test_end_pressure',
      'test_end_temperature',
    ),
);

export const whenPumped = condition(
  'when the unit was evacuated',
  ['vacuum_end', 'vacuum_minutes', 'vacuum_start'],
  (row) => any(row, 'vacuum_start', 'vacuum_end', 'vacuum_minutes'),
);

export const whenTapAdded = condition('when a tap was fitted', ['tap_added'], (row) =>
  positive(row, 'tap_added'),
);

export const whenAirflowGiven = condition('when an airflow is given', ['airflow'], (row) =>
  any(row, 'airflow'),
);

export const whenRetired = condition(
  'when the unit is retired or scrapped',
  ['status'],
  (row) => row['status'] === 'retired' || row['status'] === 'scrapped',
);
