import type { VisitSet } from './facts.ts';

/** What can be asked for, by the heading under which the log takes it. A test holds each to the declared fields. */
export const headings = {
  outdoorK: 'Outdoor dry bulb',
  returnK: 'Return dry bulb',
  returnWetBulbK: 'Return wet bulb',
  supplyK: 'Supply dry bulb',
  condenserAirK: 'Outdoor coil air',
  suctionLineK: 'Suction line',
  liquidLineK: 'Liquid line',
  dischargeLineK: 'Discharge line',
  suctionPa: 'Suction pressure',
  liquidPa: 'Liquid pressure',
  compressorAmps: 'Amps compressor',
  volts: 'Volts running',
  idleVolts: 'Volts idle',
  secondLegV: 'Volts second leg',
  compressor: 'Compressor',
  settledS: 'Minutes since change',
  offS: 'Minutes off',
  partsSpreadK: 'Spread of the parts',
  massBasis: 'Mass known by',
  foundKg: 'Found by weight',
  addedKg: 'Added',
  recoveredKg: 'Recovered',
  gasAdded: 'Gas added',
  vacuumStartPa: 'Vacuum start',
  vacuumEndPa: 'Vacuum end',
  vacuumS: 'Vacuum wait',
  vacuumFarEnd: 'Vacuum gauge far from pump',
  testStartPa: 'Test pressure start',
  leakPlace: 'Leak place',
  customerAgrees: 'Customer agrees',
  set: 'Set',
  scaleStepKg: 'Scale step',
} as const satisfies Partial<Record<keyof VisitSet, string>>;

/** Asked for where the register or the staff list has a gap. */
export const registerHeadings = {
  refrigerant: 'Refrigerant',
  nameplate: 'Nameplate charge',
  ratedVolts: 'Rated volts',
  certificate: 'Certificate',
  status: 'Status',
} as const;

/** Readings that tell as much as a gauge on a sealed unit, best first. */
const withoutHole = ['liquidLineK', 'dischargeLineK', 'condenserAirK', 'suctionLineK'] as const;
const air = ['supplyK', 'returnK', 'returnWetBulbK', 'compressorAmps'] as const;
const withGauge = ['suctionPa', 'liquidPa'] as const;

/**
 * Readings of a running unit that are still open, best first. A gauge is asked for only where there is a way in already: no
 * second hole is ever the next reading.
 */
export function openReadings(set: VisitSet, hasWayIn: boolean): readonly string[] {
  const wanted = [...air, ...withoutHole, ...(hasWayIn ? withGauge : [])];
  return wanted.filter((name) => set[name] === undefined).map((name) => headings[name]);
}
