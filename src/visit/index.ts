/** The visit: gates, readings into numbers, targets, electricity, and ranked causes. */
export { ampsAtRatedVolts, ampsCheck } from './amps-check.ts';
export { capacitorCheck, readLabel, runningCapacitanceF } from './capacitor-check.ts';
export { coilTemperature } from './coil-temperature.ts';
export { compressionRatio } from './compression-ratio.ts';
export { cordDropV } from './cord-drop.ts';
export { causes } from './diagnosis/causes.ts';
export { rankedBeliefs } from './diagnosis/diagnose.ts';
export type { CauseLine } from './diagnosis/cause-line.ts';
export { faultSigns, signSource } from './diagnosis/fault-signs.ts';
export type { JudgedCause } from './diagnosis/fault-signs.ts';
export type { CauseBelief, Confidence, RankedBeliefs } from './diagnosis/ranked-beliefs.ts';
export type { ReadingSet } from './diagnosis/reading-set.ts';
export { standingFinding } from './diagnosis/standing-finding.ts';
export type { StandingFinding } from './diagnosis/standing-finding.ts';
export type { ReadingName } from './diagnosis/symptoms.ts';
export { dischargeCheck } from './discharge-check.ts';
export { evapCheck } from './evap-check.ts';
export { expectedAmps } from './expected-amps.ts';
export { expectedCondensingK, expectedEvaporatorK } from './expected-temperatures.ts';
export { cleanlinessChoices, frostChoices, judgeGates } from './gates.ts';
export type { Cleanliness, Frost, Gate, GateReadings } from './gates.ts';
export { idealDischargeK } from './ideal-discharge.ts';
export {
  airProbeK,
  combinedDoubt,
  liquidGaugePa,
  probeK,
  saturationDoubtK,
  suctionGaugePa,
} from './instrument-accuracy.ts';
export type { InstrumentAccuracy } from './instrument-accuracy.ts';
export { readiness } from './readiness.ts';
export { gateWord } from './ready-text.ts';
export { splitCheck, temperatureSplitK } from './split-check.ts';
export { standingCheck } from './standing-check.ts';
export type { StandingPressureReading } from './standing-check.ts';
export { lineDoubtK, subcoolingK, superheatK } from './superheat.ts';
export { subcoolingCheck } from './subcooling-check.ts';
export { superheatCheck } from './superheat-check.ts';
export { readRatedVolts, supplyBand } from './supply-band.ts';
export type { RatedVolts } from './supply-band.ts';
export { targetSplitK } from './target-split.ts';
export { targetSuperheatK } from './target-superheat.ts';
export type { Metering } from './target-superheat.ts';
export { legUnbalance, voltageCheck } from './voltage-check.ts';
