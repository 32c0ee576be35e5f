import {
  decayLimitPa,
  decayS,
  gaugeShare,
  largestRiseShare,
  moisturePlateauPa,
  targetVacuumPa,
} from '../../../src/access/vacuum.ts';
import { highestElevationM, lowestElevationM } from '../../../src/air/standard-atmosphere.ts';
import {
  defaultScaleStepKg,
  largestStepKg,
  largestStepShare,
  roundingShare,
} from '../../../src/charge/next-step.ts';
import { highestBarometerPa, lowestBarometerPa } from '../../../src/records/row-atmosphere.ts';
import { meterAllowance } from '../../../src/records/visit-rules.ts';
import { massCrumbKg } from '../../../src/visit/answer/knowledge.ts';
import { wholeShare } from '../../../src/visit/answer/learn.ts';
import { leastResponseK } from '../../../src/visit/answer/rules/charge.ts';
import { clampK } from '../../../src/visit/answer/rules/contradiction.ts';
import { zeroDoubtPa } from '../../../src/visit/answer/rules/harm.ts';
import { ampsBand } from '../../../src/visit/amps-check.ts';
import { labelTolerance } from '../../../src/visit/capacitor-check.ts';
import { inletQuality } from '../../../src/visit/coil-temperature.ts';
import { usualSubcooling } from '../../../src/visit/rough-bands.ts';
import { dischargeLimitK } from '../../../src/visit/discharge-check.ts';
import { freezingK } from '../../../src/visit/evap-check.ts';
import {
  condenserBandK,
  condenserDifferenceK,
  evaporatorBandK,
  evaporatorDifferenceK,
  expectedEvaporatorK,
  highestReturnK,
} from '../../../src/visit/expected-temperatures.ts';
import { highestOutdoorK, lowestOutdoorK, settlingS } from '../../../src/visit/gates.ts';
import { roughBand } from '../../../src/visit/split-check.ts';
import { identityTolerance, leastOffS } from '../../../src/visit/standing-check.ts';
import { superheatToleranceK, valveBand } from '../../../src/visit/superheat-check.ts';
import { voltageTolerance } from '../../../src/visit/supply-band.ts';
import { splitToleranceK } from '../../../src/visit/target-split.ts';
import { dropLimit, unbalanceStop } from '../../../src/visit/voltage-check.ts';
import { fahrenheitK, psiPa } from '../../../src/units/trade.ts';
import type { SheetUnits } from '../sheet-units.ts';
import { plain } from '../sheet-units.ts';

/** Every limit of the formulas, from the package, as text in the units of a sheet. */
export function limitsOf(units: SheetUnits) {
  const kelvin = (si: number): string => units.text(si, 'temperature');
  const difference = (si: number): string => units.text(si, 'temperatureDifference');
  const pressure = (si: number): string => units.text(si, 'pressureDifference');
  const mass = (si: number): string => units.text(si, 'mass');
  const minutes = (si: number): string => units.text(si, 'minutes');
  const vacuum = (si: number): string => units.text(si, 'vacuum');
  return {
    settling: minutes(settlingS),
    off: minutes(leastOffS),
    outdoor: kelvin(lowestOutdoorK),
    highestOutdoor: kelvin(highestOutdoorK),
    highestReturn: kelvin(highestReturnK),
    freezing: kelvin(freezingK),
    discharge: kelvin(dischargeLimitK),
    coil: difference(evaporatorDifferenceK),
    weather: weatherOfCoil(units),
    coilBand: difference(evaporatorBandK),
    condenser: difference(condenserDifferenceK),
    condenserBand: difference(condenserBandK),
    inlet: plain(inletQuality),
    clamp: difference(clampK),
    kelvin: difference(1),
    superheat: difference(superheatToleranceK.installer),
    valveLow: difference(valveBand.installer.lowest),
    valveHigh: difference(valveBand.installer.highest),
    split: difference(splitToleranceK.installer),
    splitLow: difference(roughBand.lowest),
    splitHigh: difference(roughBand.highest),
    subcoolingLow: difference(usualSubcooling.lowest),
    response: difference(leastResponseK),
    identity: plain(identityTolerance),
    lowVolts: plain(1 - voltageTolerance),
    highVolts: plain(1 + voltageTolerance),
    drop: plain(dropLimit),
    unbalance: plain(unbalanceStop),
    capacitor: plain(labelTolerance),
    meter: plain(meterAllowance),
    // A compressor that takes next to nothing does not pump, which starves the coil as well.
    leastAmps: plain(ampsBand.lowest),
    zero: pressure(zeroDoubtPa),
    // Conversions of the same figure in two cells may differ in the last digits: a pascal is equal, a psi is not.
    pascal: pressure(1),
    psi: pressure(psiPa(1)),
    lowestBarometer: units.text(lowestBarometerPa, 'absolutePressure'),
    highestBarometer: units.text(highestBarometerPa, 'absolutePressure'),
    lowestElevation: units.text(lowestElevationM, 'altitude'),
    highestElevation: units.text(highestElevationM, 'altitude'),
    vacuum: vacuum(targetVacuumPa),
    decay: vacuum(decayLimitPa),
    decayWait: minutes(decayS),
    plateau: vacuum(moisturePlateauPa),
    rise: vacuum(largestRiseShare * decayLimitPa),
    surelyDry: vacuum(decayLimitPa / (1 + gaugeShare)),
    crumb: mass(massCrumbKg),
    largestStep: mass(largestStepKg),
    stepShare: plain(largestStepShare),
    stepRounding: plain(roundingShare),
    scaleStep: mass(defaultScaleStepKg),
    whole: plain(wholeShare),
    cylinder: units.ratio('cylinderMass', 'mass'),
  } as const;
}

export type Limits = ReturnType<typeof limitsOf>;

/** How the weather moves the coil to expect: a straight line, whose slope and middle are read off the function itself. */
function weatherOfCoil(units: SheetUnits): { readonly slope: string; readonly middle: string } {
  const [low, high] = [fahrenheitK(70), fahrenheitK(100)];
  const at = (outdoorTemperatureK: number | undefined): number =>
    expectedEvaporatorK({ returnTemperatureK: 300, differenceK: 0, outdoorTemperatureK });
  const slope = (at(high) - at(low)) / (high - low);
  const middleK = low + (at(undefined) - at(low)) / slope;
  return { slope: plain(Number(slope.toPrecision(12))), middle: units.text(middleK, 'temperature') };
}
