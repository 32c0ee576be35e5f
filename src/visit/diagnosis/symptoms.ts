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
  'volts at the unit': (r) => r.gates.volts,
  'rated volts': (r) => r.gates.ratedVolts,
  'refrigerant on the nameplate': (r) => r.refrigerant,
  'standing pressure after 30 min off': (r) => r.standing,
} as const satisfies Record<string, (r: ReadingSet) => unknown>;

export type ReadingName = keyof typeof readings;

interface SymptomDescription {
  readonly name: string;
  readonly needs: readonly ReadingName[];
}

/**
 * What a reading set can show. The first seven stand in the published sign table, in its order;
 * the rest are amps, the standing pressure, and what pipes and frost tell without gauges.
 */
export const symptoms = {
  evaporator: {
    name: 'evaporator saturation',
    needs: ['refrigerant on the nameplate', 'suction pressure', 'return air'],
  },
  superheat: {
    name: 'superheat',
    needs: ['refrigerant on the nameplate', 'suction pressure', 'suction line temperature'],
  },
  condensing: {
    name: 'condensing saturation',
    needs: ['refrigerant on the nameplate', 'liquid-side pressure', 'outdoor air'],
  },
  subcooling: {
    name: 'subcooling',
    needs: ['refrigerant on the nameplate', 'liquid-side pressure', 'liquid line temperature'],
  },
  discharge: {
    name: 'discharge line',
    needs: ['discharge line temperature', 'refrigerant on the nameplate', 'return air', 'outdoor air'],
  },
  condenserRise: { name: 'condenser air rise', needs: ['air that leaves the outdoor coil', 'outdoor air'] },
  split: { name: 'air split', needs: ['return air', 'supply air'] },
  amps: { name: 'amps', needs: ['amps', 'rated amps', 'volts at the unit', 'rated volts'] },
  standing: { name: 'standing pressure', needs: ['standing pressure after 30 min off'] },
  suctionLine: { name: 'suction line', needs: ['suction line temperature', 'return air'] },
  liquidLine: { name: 'liquid line', needs: ['liquid line temperature', 'outdoor air'] },
  freezing: { name: 'coil below freezing', needs: ['refrigerant on the nameplate', 'suction pressure'] },
} as const satisfies Record<string, SymptomDescription>;

export type Symptom = keyof typeof symptoms;

export const everySymptom = Object.keys(symptoms) as Symptom[];

/** Readings a symptom still lacks. */
export function missingReadings(symptom: Symptom, set: ReadingSet): readonly ReadingName[] {
  const needs: readonly ReadingName[] = symptoms[symptom].needs;
  return needs.filter((name) => {
    const value: unknown = readings[name](set);
    return value === undefined || value === '';
  });
}

/** A look or a clamp needs no hole in the circuit; a gauge on a sealed unit does. */
export const withoutGauges: readonly Symptom[] = [
  'split',
  'amps',
  'condenserRise',
  'discharge',
  'suctionLine',
  'liquidLine',
];

/** A pipe alone only stands in for what a gauge on the same pipe shows. */
export function supersededBy(set: ReadingSet): readonly Symptom[] {
  const superseded: Symptom[] = [];
  if (set.suctionPa !== undefined) superseded.push('suctionLine');
  if (set.liquidPa !== undefined) superseded.push('liquidLine');
  return superseded;
}

/** What was found: above, inside or below the band of a healthy unit. */
export type Sign = '+' | '0' | '-';
