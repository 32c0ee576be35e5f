import type { Given } from './calls.ts';

/** One reading set of an invented unit, with the fault that was put into it. */
export interface Scenario {
  readonly name: string;
  readonly readings: Given;
  /** Cause expected in first place. */
  readonly first: string;
  /** Text expected in the reading to take next, where one is missing. */
  readonly next?: RegExp;
  readonly confidence?: string;
}

const roofUnit: Given = { refrigerant: 'R-410A', rated_amps: 12 };
const windowUnit: Given = { refrigerant: 'R-22', rated_amps: 9 };
const portable: Given = { refrigerant: 'R-32', rated_amps: 9 };
const vanUnit: Given = { refrigerant: 'R-134a', rated_amps: 8 };

/** Starving, with a gauge on the suction side alone. */
export const starvedRoofUnit: Given = {
  ...roofUnit,
  return_temperature: 78,
  return_wet_bulb: 65,
  supply_temperature: 68,
  outdoor_temperature: 92,
  suction_pressure: 84,
  suction_line: 62,
  amps: 7,
};

/** A slow indoor fan behind parts that look clean. */
export const slowFan: Given = {
  ...roofUnit,
  return_temperature: 75,
  return_wet_bulb: 62,
  supply_temperature: 47,
  outdoor_temperature: 85,
  suction_pressure: 91,
  suction_line: 30,
  liquid_pressure: 305,
  liquid_line: 95,
  amps: 9,
};

/** Reading sets of our own: directions of the sign table, sizes common practice, pressures from saturation tables. */
export const scenarios: readonly Scenario[] = [
  {
    name: 'roof unit of a site office, short of charge, gauges on both sides',
    readings: {
      ...roofUnit,
      return_temperature: 78,
      return_wet_bulb: 65,
      supply_temperature: 68,
      outdoor_temperature: 92,
      suction_pressure: 84,
      suction_line: 62,
      liquid_pressure: 330,
      liquid_line: 101,
      amps: 7,
    },
    first: 'low charge',
    confidence: 'likely',
  },
  {
    name: 'the same roof unit, capillary tube half closed',
    readings: {
      ...roofUnit,
      return_temperature: 78,
      return_wet_bulb: 65,
      supply_temperature: 69,
      outdoor_temperature: 92,
      suction_pressure: 84,
      suction_line: 62,
      liquid_pressure: 366,
      liquid_line: 86,
      amps: 8,
    },
    first: 'restriction',
    confidence: 'likely',
  },
  {
    name: 'the same roof unit starving, suction gauge only',
    readings: starvedRoofUnit,
    // The liquid line would part it from a restriction; a gauge would need a second hole.
    first: 'low charge',
    next: /^liquid line temperature$/,
  },
  {
    name: 'window unit of a kiosk, topped up once too often',
    readings: {
      ...windowUnit,
      return_temperature: 76,
      return_wet_bulb: 64,
      supply_temperature: 60,
      outdoor_temperature: 88,
      suction_pressure: 83,
      suction_line: 51,
      liquid_pressure: 262,
      liquid_line: 94,
      discharge_line: 134,
      condenser_air: 106,
      amps: 8.2,
    },
    first: 'overcharge',
    confidence: 'likely',
  },
  {
    name: 'roof unit with a slow indoor fan, everything looks clean',
    readings: slowFan,
    first: 'low indoor airflow',
    confidence: 'likely',
  },
  {
    name: 'portable of a server closet, condenser matted inside',
    readings: {
      ...portable,
      return_temperature: 80,
      return_wet_bulb: 66,
      supply_temperature: 67,
      outdoor_temperature: 95,
      suction_pressure: 158,
      suction_line: 58,
      liquid_pressure: 540,
      liquid_line: 136,
      condenser_air: 138,
      amps: 11,
    },
    first: 'dirty condenser',
    confidence: 'likely',
  },
  {
    name: 'window unit closed without a vacuum after a repair',
    readings: {
      ...windowUnit,
      return_temperature: 76,
      return_wet_bulb: 64,
      supply_temperature: 59,
      outdoor_temperature: 88,
      suction_pressure: 75,
      suction_line: 55,
      liquid_pressure: 317,
      liquid_line: 104,
      amps: 10.9,
      standing: 'Non-condensables: 17.8 ± 5.3 psi above the 132.2 psig of R-22 with liquid at 75.0 degF',
    },
    first: 'non-condensables',
    confidence: 'likely',
  },
  {
    name: 'van unit whose compressor valves leak',
    readings: {
      ...vanUnit,
      return_temperature: 78,
      return_wet_bulb: 64,
      supply_temperature: 70,
      outdoor_temperature: 90,
      suction_pressure: 56,
      suction_line: 60,
      liquid_pressure: 118,
      liquid_line: 96,
      amps: 4,
    },
    first: 'weak compressor',
    confidence: 'likely',
  },
  {
    name: 'van unit on a long thin cord',
    readings: {
      ...vanUnit,
      return_temperature: 80,
      supply_temperature: 68,
      outdoor_temperature: 92,
      volts: 98,
      amps: 9.6,
    },
    first: 'supply fault',
    confidence: 'seen',
  },
  {
    name: 'roof unit frozen solid',
    readings: {
      ...roofUnit,
      return_temperature: 74,
      supply_temperature: 66,
      outdoor_temperature: 84,
      frost: 'full',
    },
    first: 'ice',
    confidence: 'seen',
  },
  {
    name: 'roof unit icing behind a cover nobody took off',
    readings: {
      ...roofUnit,
      return_temperature: 74,
      return_wet_bulb: 61,
      supply_temperature: 60,
      outdoor_temperature: 84,
      suction_pressure: 70,
      suction_line: 20,
      frost: 'not seen',
    },
    first: 'ice',
    next: /frost/,
  },
  {
    name: 'healthy roof unit on a hot day',
    readings: {
      ...roofUnit,
      return_temperature: 80,
      return_wet_bulb: 67,
      supply_temperature: 61,
      outdoor_temperature: 105,
      suction_pressure: 130,
      suction_line: 53,
      liquid_pressure: 478,
      liquid_line: 120,
      amps: 11.6,
    },
    first: 'nothing wrong',
    confidence: 'likely',
  },
  {
    name: 'healthy roof unit on a mild day',
    readings: {
      ...roofUnit,
      return_temperature: 72,
      return_wet_bulb: 60,
      supply_temperature: 53,
      outdoor_temperature: 68,
      suction_pressure: 103,
      suction_line: 46,
      liquid_pressure: 278,
      liquid_line: 78,
      amps: 8.6,
    },
    first: 'nothing wrong',
    confidence: 'likely',
  },
  {
    name: 'healthy window unit, no gauges at all',
    readings: {
      ...windowUnit,
      return_temperature: 76,
      return_wet_bulb: 63,
      supply_temperature: 57,
      outdoor_temperature: 90,
      suction_line: 54,
      liquid_line: 104,
      condenser_air: 112,
      amps: 8.2,
    },
    first: 'nothing wrong',
    confidence: 'likely',
  },
  {
    name: 'starving window unit, no gauges at all',
    readings: {
      ...windowUnit,
      return_temperature: 76,
      return_wet_bulb: 63,
      supply_temperature: 68,
      outdoor_temperature: 90,
      suction_line: 73,
      discharge_line: 224,
      amps: 5.4,
    },
    first: 'low charge or restriction',
    next: /^liquid line temperature$/,
  },
  {
    name: 'smothered window unit, no gauges at all',
    readings: {
      ...windowUnit,
      return_temperature: 76,
      return_wet_bulb: 63,
      supply_temperature: 61,
      outdoor_temperature: 90,
      liquid_line: 124,
      condenser_air: 130,
      amps: 10.8,
    },
    first: 'dirty condenser',
    confidence: 'likely',
  },
  {
    name: 'window unit with closed louvers, no gauges at all',
    readings: {
      ...windowUnit,
      return_temperature: 76,
      return_wet_bulb: 63,
      supply_temperature: 48,
      outdoor_temperature: 90,
      suction_line: 38,
      amps: 7,
    },
    first: 'low indoor airflow',
  },
  {
    name: 'two faults: short of charge behind a dirty filter',
    readings: {
      ...roofUnit,
      filter: 'dirty',
      return_temperature: 78,
      supply_temperature: 68,
      outdoor_temperature: 92,
      suction_pressure: 84,
      suction_line: 62,
    },
    first: 'low indoor airflow',
    confidence: 'seen',
    next: /clean, settle 15 min/,
  },
  {
    name: 'two faults: low volts and ice',
    readings: { ...roofUnit, volts: 100, frost: 'part', return_temperature: 78, outdoor_temperature: 92 },
    first: 'supply fault',
    confidence: 'seen',
  },
];
