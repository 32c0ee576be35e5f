import type { Example } from '../../runtime/define.ts';

const headings = [
  'Unit',
  'Visit',
  'Set',
  'Technician',
  'Certificate',
  'Compressor',
  'Filter',
  'Indoor coil',
  'Outdoor coil',
  'Vents and ducts',
  'Fan',
  'Frost',
  'Minutes since change',
  'Volts idle',
  'Volts running',
  'Outdoor dry bulb (degF)',
  'Return dry bulb (degF)',
  'Return wet bulb (degF)',
  'Supply dry bulb (degF)',
  'Suction line (degF)',
  'Liquid line (degF)',
  'Discharge line (degF)',
  'Suction pressure (psig)',
  'Liquid pressure (psig)',
  'Amps compressor',
  'Mass known by',
  'Found by weight (oz)',
  'Added (oz)',
];

const register = [
  [
    'Unit',
    'Refrigerant',
    'Nameplate charge (oz)',
    'Rated volts',
    'Rated load amps',
    'Metering',
    'Taps fitted',
  ],
  ['W-12', 'R-410A', 14, '115', 9.4, 'capillary', 1],
];

/** A unit short of charge with its mass weighed, and the same with a dirty filter, in a log of its own. */
const set = (number: number, filter: string, added: number): (string | number)[] => [
  'W-12',
  'V-1',
  number,
  'KB',
  'Universal',
  'running',
  filter,
  'clean',
  'clean',
  'clean',
  'clean',
  'none',
  20,
  118,
  116,
  95,
  80,
  67,
  71.3,
  65.3,
  107.8,
  186,
  101.2,
  364,
  6.1,
  'residual weighed',
  8,
  added,
];

export const donextExamples: readonly Example[] = [
  {
    arguments: { log: [headings, set(1, 'clean', 0), set(2, 'dirty', 1)], register },
    gives: [['Do next'], ['Add 1.0 oz'], ['Clean first']],
    source:
      'common practice, no source: weighed, room left, starved coil, small steps; dirt looks like a charge fault',
  },
  {
    arguments: { log: [headings, set(1, 'clean', 9)], register },
    gives: [['Do next'], ['Recover 3.0 oz']],
    source: 'arithmetic: 8 found and 9 added are 3 oz over a nameplate of 14',
  },
  {
    arguments: { log: [['Shoe size'], [44]] },
    gives: '#VALUE!',
    source: 'definition: the needed column is missing',
  },
];
