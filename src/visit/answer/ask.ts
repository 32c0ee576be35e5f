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
  metering: 'Metering',
  certificate: 'Certificate',
  status: 'Status',
} as const;

/** Readings of a running unit in the order of their worth; the last two take a way into the circuit. */
const running = [
  'supplyK',
  'returnK',
  'returnWetBulbK',
  'compressorAmps',
  'liquidLineK',
  'dischargeLineK',
  'condenserAirK',
  'suctionLineK',
  'suctionPa',
  'liquidPa',
] as const;

/**
 * Readings of a running unit that are still open, best first. Liquid line, discharge line and the air off the outdoor coil come
 * before any gauge: together they tell as much. A gauge is asked for only where there is a way in on that side already: no second
 * hole is ever the next reading.
 */
export function openReadings(evidence: {
  readonly set: VisitSet;
  readonly hasWayIn: boolean;
  readonly hasLiquidWayIn: boolean;
}): readonly string[] {
  const { set, hasWayIn, hasLiquidWayIn } = evidence;
  return running
    .filter((name) => set[name] === undefined)
    .filter((name) => (name === 'suctionPa' ? hasWayIn : name === 'liquidPa' ? hasLiquidWayIn : true))
    .map((name) => headings[name]);
}
