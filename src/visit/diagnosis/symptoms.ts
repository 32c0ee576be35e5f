/**
 * What a reading set can show. The first seven stand in the published sign table, in its order;
 * the rest are amps, the standing pressure, and what pipes and frost tell without gauges.
 */
export const symptoms = {
  evaporator: { name: 'evaporator saturation', take: 'suction pressure and return air' },
  superheat: { name: 'superheat', take: 'suction pressure and suction line temperature' },
  condensing: { name: 'condensing saturation', take: 'liquid-side pressure and outdoor air' },
  subcooling: { name: 'subcooling', take: 'liquid-side pressure and liquid line temperature' },
  discharge: { name: 'discharge line', take: 'discharge line temperature' },
  condenserRise: { name: 'condenser air rise', take: 'air that leaves the outdoor coil' },
  split: { name: 'air split', take: 'return and supply air, with the return wet bulb' },
  amps: { name: 'amps', take: 'amps with the volts at the unit' },
  standing: { name: 'standing pressure', take: 'standing pressure after 30 min off' },
  suctionLine: { name: 'suction line', take: 'suction line temperature' },
  liquidLine: { name: 'liquid line', take: 'liquid line temperature' },
  freezing: { name: 'coil below freezing', take: 'suction pressure, or a look at the coil for frost' },
} as const;

export type Symptom = keyof typeof symptoms;

export const everySymptom = Object.keys(symptoms) as Symptom[];

/** A look or a clamp needs no hole in the circuit; a gauge on a sealed unit does. */
export const withoutGauges: readonly Symptom[] = [
  'split',
  'amps',
  'condenserRise',
  'discharge',
  'suctionLine',
  'liquidLine',
];

/** What was found: above, inside or below the band of a healthy unit. */
export type Sign = '+' | '0' | '-';
