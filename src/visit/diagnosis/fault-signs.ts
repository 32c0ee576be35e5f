import type { Sign, Symptom } from './symptoms.ts';

/**
 * What a fault makes a symptom do: one sign, a sign that may be too small to see ("+0"), or nothing known ("?").
 */
export type Expected = Sign | '+0' | '-0' | '?';

export const judgedCauses = [
  'low charge',
  'restriction',
  'overcharge',
  'low indoor airflow',
  'dirty condenser',
  'non-condensables',
  'weak compressor',
  'ice',
  'nothing wrong',
] as const;

export type JudgedCause = (typeof judgedCauses)[number];

type Signs = Readonly<Record<Symptom | 'standing', Expected>>;

const tableOrder = [
  'evaporator',
  'superheat',
  'condensing',
  'subcooling',
  'discharge',
  'condenserRise',
  'split',
] as const;
type TableSymptom = (typeof tableOrder)[number];

/** Seven signs in the order of the published table. */
function published(pattern: string): Readonly<Record<TableSymptom, Expected>> {
  const signs = pattern.split(' ') as Expected[];
  return Object.fromEntries(tableOrder.map((symptom, index) => [symptom, signs[index] ?? '?'])) as Record<
    TableSymptom,
    Expected
  >;
}

const sevenNormal = published('0 0 0 0 0 0 0');

/** Short citation of the signs. */
export const signSource =
  'Signs of fixed-orifice units: statistical rule-based method, HVAC&R Research 3(1), 1997; overcharge, non-condensables and amps: general literature, from memory';

/** What stands under every answer: where its figures come from, and what is nobody's but ours. */
export const causeSource = `Sizes of the faults and what sound units show: regression on 2,000 simulated readings of 14 capillary units; prior odds, spread among designs and the limits of the words: own choice. Directions held against: ${signSource}`;

/**
 * Published fault signs of units with a fixed orifice or a capillary tube: the outside check on the fitted responses, which say how much.
 *
 * Seven refrigerant and air signs of restriction, dirty condenser, low indoor airflow and weak compressor: statistical
 * rule-based method, HVAC&R Research 3(1), 1997, as reprinted in a Purdue thesis on rooftop units, table 1-1.
 * Low charge: the same table, this row from memory.
 * Overcharge, non-condensables, all amps: general fault-detection literature (NIST SP 1087 treats both) and practice, from memory.
 * Suction line = evaporator + superheat and liquid line over outdoor = condensing - subcooling: derived from those columns,
 * unknown where the two pull apart.
 * Ice: as low airflow, since ice stops air; the split of an iced coil is unknown.
 */
export const faultSigns: Readonly<Record<JudgedCause, Signs>> = {
  'low charge': {
    ...published('- + - - + - -'),
    amps: '-',
    standing: '-0',
    suctionLine: '+',
    liquidLine: '?',
  },
  restriction: {
    ...published('- + - + + - -'),
    amps: '-',
    standing: '0',
    suctionLine: '+',
    liquidLine: '-',
  },
  overcharge: {
    ...published('+ - + + -0 + -0'),
    amps: '+',
    standing: '0',
    suctionLine: '-0',
    liquidLine: '?',
  },
  'low indoor airflow': {
    ...published('- - - - - - +'),
    amps: '-0',
    standing: '0',
    suctionLine: '-',
    liquidLine: '?',
  },
  'dirty condenser': {
    ...published('+ - + - + + -'),
    amps: '+',
    standing: '0',
    suctionLine: '?',
    liquidLine: '+',
  },
  'non-condensables': {
    ...published('+0 -0 + + + ? ?'),
    amps: '+',
    standing: '+',
    suctionLine: '?',
    liquidLine: '?',
  },
  'weak compressor': {
    ...published('+ - - - - - -'),
    amps: '-',
    standing: '0',
    suctionLine: '?',
    liquidLine: '?',
  },
  ice: {
    ...published('- - - - - - ?'),
    amps: '-0',
    standing: '0',
    suctionLine: '-',
    liquidLine: '?',
  },
  'nothing wrong': {
    ...sevenNormal,
    amps: '0',
    standing: '0',
    suctionLine: '0',
    liquidLine: '0',
  },
};

/** Causes that can only be acted on by opening or weighing the circuit: no word on them behind a closed gate. */
export const circuitCauses: readonly JudgedCause[] = [
  'low charge',
  'restriction',
  'overcharge',
  'non-condensables',
  'weak compressor',
];

/** Causes that say something about the amount: no word on them while the gas inside is not the one on the nameplate. */
export const chargeCauses: readonly JudgedCause[] = ['low charge', 'overcharge'];
