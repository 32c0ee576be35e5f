import { standardAtmospherePa } from '../../src/air/index.ts';
import { findRefrigerant, saturationPressurePa } from '../../src/refrigerants/index.ts';
import { fahrenheitK } from '../../src/units/trade.ts';
import { expectationsIn } from '../../src/visit/diagnosis/expectation.ts';
import { ampsScale, placeOf } from '../../src/visit/diagnosis/observables.ts';
import { responseTable } from '../../src/visit/diagnosis/response-table.ts';
import type { ReadingSet } from '../../src/visit/diagnosis/reading-set.ts';
import { usualDischargeK } from '../../src/visit/diagnosis/usual-discharge.ts';
import { weatherOf } from '../../src/visit/diagnosis/weather.ts';
import { airProbeK, liquidGaugePa, probeK, suctionGaugePa } from '../../src/visit/instrument-accuracy.ts';

const refrigerant = findRefrigerant('R-410A');
const outdoorK = fahrenheitK(95);
const returnK = fahrenheitK(80);

const weather: ReadingSet = {
  gates: {
    filter: 'clean',
    indoorCoil: 'clean',
    outdoorCoil: 'clean',
    vents: 'clean',
    fan: 'clean',
    frost: 'none',
    settledS: 1500,
    volts: 115,
    ratedVolts: { lowerV: 115, upperV: 115 },
    outdoorTemperatureK: outdoorK,
  },
  metering: 'capillary',
  returnTemperatureK: returnK,
  returnWetBulbK: fahrenheitK(67),
  atmospherePa: standardAtmospherePa(0),
  suctionGaugePa,
  liquidGaugePa,
  probeK,
  airProbeK,
};

const { sound } = expectationsIn(weatherOf(weather), 0, responseTable);

/** Everything measured on a sound unit that shows exactly what is expected of it at 95 degF outdoors and 80/67 degF inside. */
export const soundSet: ReadingSet = {
  ...weather,
  refrigerant,
  supplyTemperatureK: returnK - sound[placeOf.split]!,
  suctionLineK: returnK + sound[placeOf.suctionLine]!,
  liquidLineK: outdoorK + sound[placeOf.liquidLine]!,
  condenserAirK: outdoorK + sound[placeOf.condenserRise]!,
  dischargeLineK:
    usualDischargeK(refrigerant, { outdoorTemperatureK: outdoorK, returnTemperatureK: returnK })! +
    sound[placeOf.discharge]!,
  suctionPa: saturationPressurePa(refrigerant, returnK + sound[placeOf.evaporator]!, 'dew'),
  liquidPa: saturationPressurePa(refrigerant, outdoorK + sound[placeOf.condensing]!, 'bubble'),
  ratedAmps: 10,
  amps: 10 * Math.exp(sound[placeOf.amps]! / ampsScale),
};
