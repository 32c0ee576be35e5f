import type { Condition, RecordRow } from './field.ts';

function any(row: RecordRow, ...names: readonly string[]): boolean {
  return names.some((name) => row[name] !== undefined);
}

function positive(row: RecordRow, name: string): boolean {
  const value = row[name];
  return typeof value === 'number' && value > 0;
}

/** Two hot legs: a 208 or 240 V supply. */
const twoLegsFromV = 180;

export const whenPressureRead: Condition = {
  words: 'when a pressure was read',
  when: (row) => any(row, 'suction_pressure', 'liquid_pressure'),
};

export const whenStanding: Condition = {
  words: 'for a standing pressure',
  when: (row) => row['compressor_state'] === 'off' && any(row, 'suction_pressure', 'liquid_pressure'),
};

export const whenTwoLegs: Condition = {
  words: 'on a 208 or 240 V supply',
  when: (row) => typeof row['volts_run'] === 'number' && row['volts_run'] >= twoLegsFromV,
};

export const whenWeighed: Condition = {
  words: 'when refrigerant was added or recovered',
  when: (row) => positive(row, 'added') || positive(row, 'recovered'),
};

export const whenAdded: Condition = {
  words: 'when refrigerant was added',
  when: (row) => positive(row, 'added'),
};

export const whenLeakFound: Condition = {
  words: 'when a leak was found',
  when: (row) => row['leak_found'] === true,
};

export const whenLeakFixed: Condition = {
  words: 'when a leak was fixed',
  when: (row) => row['leak_fixed'] === true,
};

export const whenTested: Condition = {
  words: 'when the pressure was tested',
  when: (row) =>
    any(
      row,
      'test_gas',
      'test_start_pressure',
      'test_start_temperature',
      'test_end_pressure',
      'test_end_temperature',
    ),
};

export const whenPumped: Condition = {
  words: 'when the unit was evacuated',
  when: (row) => any(row, 'vacuum_start', 'vacuum_end', 'vacuum_minutes'),
};

export const whenTapAdded: Condition = {
  words: 'when a tap was fitted',
  when: (row) => positive(row, 'tap_added'),
};

export const whenAirflowGiven: Condition = {
  words: 'when an airflow is given',
  when: (row) => any(row, 'airflow'),
};

export const whenRetired: Condition = {
  words: 'when the unit is retired or scrapped',
  when: (row) => row['status'] === 'retired' || row['status'] === 'scrapped',
};
