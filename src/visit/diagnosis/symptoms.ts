import type { Observable } from './observables.ts';
import type { ReadingSet } from './reading-set.ts';

/** What a reading is called when it is asked for, and whether a reading set has it. */
const readings = {
  'suction pressure': (r) => r.suctionPa,
  'suction line temperature': (r) => r.suctionLineK,
  'return air': (r) => r.returnTemperatureK,
  'supply air': (r) => r.supplyTemperatureK,
  'outdoor air': (r) => r.gates.outdoorTemperatureK,
  'air that leaves the outdoor coil': (r) => r.condenserAirK,
  'liquid-side pressure': (r) => r.liquidPa,
  'liquid line temperature': (r) => r.liquidLineK,
  'discharge line temperature': (r) => r.dischargeLineK,
  amps: (r) => r.amps,
  'rated amps': (r) => r.ratedAmps,
  'refrigerant on the nameplate': (r) => r.refrigerant,
  'standing pressure after 30 min off': (r) => r.standing,
} as const satisfies Record<string, (r: ReadingSet) => unknown>;

export type ReadingName = keyof typeof readings;

interface SymptomDescription {
  readonly name: string;
  readonly needs: readonly ReadingName[];
  /** What it is made of: the first, less the second. */
  readonly of: readonly [Observable, Observable?];
}

/** What a reading set can show of a running unit. The first seven stand in the published sign table, in its order. */
export const symptoms = {
  evaporator: {
    name: 'evaporator',
    needs: ['refrigerant on the nameplate', 'suction pressure', 'return air'],
    of: ['evaporator'],
  },
  superheat: {
    name: 'superheat',
    needs: ['refrigerant on the nameplate', 'suction pressure', 'suction line temperature', 'return air'],
    of: ['suctionLine', 'evaporator'],
  },
  condensing: {
    name: 'condensing',
    needs: ['refrigerant on the nameplate', 'liquid-side pressure', 'outdoor air'],
    of: ['condensing'],
  },
  subcooling: {
    name: 'subcooling',
    needs: ['refrigerant on the nameplate', 'liquid-side pressure', 'liquid line temperature', 'outdoor air'],
    of: ['condensing', 'liquidLine'],
  },
  discharge: {
    name: 'discharge line',
    needs: ['discharge line temperature', 'refrigerant on the nameplate', 'return air', 'outdoor air'],
    of: ['discharge'],
  },
  condenserRise: {
    name: 'condenser air rise',
    needs: ['air that leaves the outdoor coil', 'outdoor air'],
    of: ['condenserRise'],
  },
  split: { name: 'air split', needs: ['return air', 'supply air'], of: ['split'] },
  amps: { name: 'amps', needs: ['amps', 'rated amps'], of: ['amps'] },
  suctionLine: {
    name: 'suction line',
    needs: ['suction line temperature', 'return air'],
    of: ['suctionLine'],
  },
  liquidLine: { name: 'liquid line', needs: ['liquid line temperature', 'outdoor air'], of: ['liquidLine'] },
} as const satisfies Record<string, SymptomDescription>;

export type Symptom = keyof typeof symptoms;

export const everySymptom = Object.keys(symptoms) as Symptom[];

/** Two observables at most: the second is taken from the first. */
export function partsOf(symptom: Symptom): readonly [Observable, Observable?] {
  return symptoms[symptom].of;
}

/** Readings a symptom still lacks. */
export function missingReadings(symptom: Symptom, set: ReadingSet): readonly ReadingName[] {
  const needs: readonly ReadingName[] = symptoms[symptom].needs;
  return needs.filter((name) => readings[name](set) === undefined);
}

/** A clamp or a thermometer needs no hole in the circuit; a gauge on a sealed unit does. */
export const withoutGauges: readonly Symptom[] = [
  'suctionLine',
  'split',
  'liquidLine',
  'discharge',
  'condenserRise',
  'amps',
];

/** A pipe alone only stands in for what a gauge on the same pipe shows. */
export function supersededBy(set: ReadingSet): readonly Symptom[] {
  const superseded: Symptom[] = [];
  if (set.suctionPa !== undefined) superseded.push('suctionLine');
  if (set.liquidPa !== undefined) superseded.push('liquidLine');
  return superseded;
}

/** Above, as, or below what a sound unit shows. */
export type Sign = '+' | '0' | '-';
