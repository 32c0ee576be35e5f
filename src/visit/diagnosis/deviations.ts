import { CalcError } from '../../errors.ts';
import type { Phrase } from '../../phrase.ts';
import { figure, phrase } from '../../phrase.ts';
import type { Quantity } from '../../units/quantities.ts';
import { fahrenheitDifferenceK, fahrenheitK } from '../../units/trade.ts';
import { ampsAtRatedVolts, ampsBand } from '../amps-check.ts';
import { coilTemperature } from '../coil-temperature.ts';
import { dischargeLimitK } from '../discharge-check.ts';
import { freezingK } from '../evap-check.ts';
import {
  condenserBandK,
  condenserDifferenceK,
  evaporatorBandK,
  evaporatorDifferenceK,
} from '../expected-temperatures.ts';
import { combinedDoubt, saturationDoubtK } from '../instrument-accuracy.ts';
import { splitBand, splitDoubtK } from '../split-check.ts';
import { matchesWord, nonCondensablesWord } from '../standing-check.ts';
import { lineDoubtK, subcoolingK, superheatK } from '../superheat.ts';
import { saturationTemperatureK } from '../../refrigerants/index.ts';
import { supplyState } from '../supply-band.ts';
import { targetSuperheatIfAny } from '../target-superheat.ts';
import type { Band } from '../within-doubt.ts';
import { placeInBand } from '../within-doubt.ts';
import type { ReadingSet } from './reading-set.ts';
import type { Sign, Symptom } from './symptoms.ts';

/** One symptom that was measured: where it lies, or that its own doubt gives it no sign. */
export interface Deviation {
  readonly symptom: Symptom;
  readonly sign: Sign | 'within doubt';
  /** The figure with its doubt, and what a healthy unit shows. */
  readonly said: Phrase;
}

const difference = fahrenheitDifferenceK;

/** Superheat and subcooling of a healthy capillary unit where no target exists. Common practice, no source. */
const roughSuperheat: Band = { lowest: difference(5), highest: difference(25) };
const usualSubcooling: Band = { lowest: difference(5), highest: difference(15) };

/** Air leaving less air entering the outdoor coil. Common practice, no source. */
const usualCondenserRise: Band = { lowest: difference(12), highest: difference(32) };

/** Below this outdoors a fixed-orifice unit runs a colder coil without any fault; the band opens by as much. Common practice, no source. */
const mildOutdoorK = fahrenheitK(75);
const mildAllowanceK = difference(5);

/** What a clamp meter and a voltmeter may be wrong by together, as a share. Common figure, no source. */
const ampsDoubtShare = 0.03;

/** Readings → deviations from a healthy unit, in the order of the symptoms. */
export function deviations(readings: ReadingSet): readonly Deviation[] {
  return [
    evaporator(readings),
    superheat(readings),
    condensing(readings),
    subcooling(readings),
    discharge(readings),
    condenserRise(readings),
    split(readings),
    amps(readings),
    standing(readings),
    suctionLine(readings),
    liquidLine(readings),
    freezing(readings),
  ].filter((deviation) => deviation !== undefined);
}

function judged(
  symptom: Symptom,
  name: string,
  reading: {
    readonly value: number;
    readonly doubt: number;
    readonly band: Band;
    readonly quantity?: Quantity;
  },
): Deviation {
  const { value, doubt, band, quantity = 'temperatureDifference' } = reading;
  const place = placeInBand({ value, doubt }, band);
  const sign = ({ low: '-', inside: '0', high: '+', 'within doubt': 'within doubt' } as const)[place];
  const word = { '-': 'low', '0': 'normal', '+': 'high', 'within doubt': 'within doubt' }[sign];
  const said = phrase`${name} ${figure(value, quantity, { doubt })} ${word} (${figure(band.lowest, quantity)} to ${figure(band.highest, quantity)})`;
  return { symptom, sign, said };
}

function evaporator(r: ReadingSet): Deviation | undefined {
  if (!r.refrigerant || r.suctionPa === undefined || r.returnTemperatureK === undefined) return undefined;
  const { middleK } = coilTemperature(r.refrigerant, r.suctionPa);
  const gaugeK = saturationDoubtK({
    refrigerant: r.refrigerant,
    pressurePa: r.suctionPa,
    curve: 'dew',
    gaugePa: r.suctionGaugePa,
  });
  const outdoorK = r.gates.outdoorTemperatureK;
  const mildK = outdoorK !== undefined && outdoorK < mildOutdoorK ? mildAllowanceK : 0;
  const aimK = r.returnTemperatureK - evaporatorDifferenceK;
  return judged('evaporator', 'evaporator', {
    value: middleK,
    doubt: combinedDoubt(gaugeK, r.airProbeK),
    band: { lowest: aimK - evaporatorBandK - mildK, highest: aimK + evaporatorBandK },
    quantity: 'temperature',
  });
}

function superheat(r: ReadingSet): Deviation | undefined {
  if (!r.refrigerant || r.suctionPa === undefined || r.suctionLineK === undefined) return undefined;
  const line = { refrigerant: r.refrigerant, pressurePa: r.suctionPa, lineTemperatureK: r.suctionLineK };
  return judged('superheat', 'superheat', {
    value: superheatK(line),
    doubt: lineDoubtK({ ...line, curve: 'dew' }, { gaugePa: r.suctionGaugePa, probeK: r.probeK }),
    band: superheatBand(r),
  });
}

function superheatBand(r: ReadingSet): Band {
  const { outdoorTemperatureK } = r.gates;
  if (r.returnWetBulbK === undefined || outdoorTemperatureK === undefined) return roughSuperheat;
  const targetK = targetSuperheatIfAny({
    returnWetBulbK: r.returnWetBulbK,
    outdoorTemperatureK,
    metering: r.metering,
  });
  if (targetK === undefined) return roughSuperheat;
  return { lowest: targetK - difference(5), highest: targetK + difference(5) };
}

function condensing(r: ReadingSet): Deviation | undefined {
  const { outdoorTemperatureK } = r.gates;
  if (!r.refrigerant || r.liquidPa === undefined || outdoorTemperatureK === undefined) return undefined;
  const gaugeK = saturationDoubtK({
    refrigerant: r.refrigerant,
    pressurePa: r.liquidPa,
    curve: 'bubble',
    gaugePa: r.liquidGaugePa,
  });
  const expectedK = outdoorTemperatureK + condenserDifferenceK;
  return judged('condensing', 'condensing', {
    value: saturationTemperatureK(r.refrigerant, r.liquidPa, 'bubble'),
    doubt: combinedDoubt(gaugeK, r.airProbeK),
    band: { lowest: expectedK - condenserBandK, highest: expectedK + condenserBandK },
    quantity: 'temperature',
  });
}

function subcooling(r: ReadingSet): Deviation | undefined {
  if (!r.refrigerant || r.liquidPa === undefined || r.liquidLineK === undefined) return undefined;
  const line = { refrigerant: r.refrigerant, pressurePa: r.liquidPa, lineTemperatureK: r.liquidLineK };
  return judged('subcooling', 'subcooling', {
    value: subcoolingK(line),
    doubt: lineDoubtK({ ...line, curve: 'bubble' }, { gaugePa: r.liquidGaugePa, probeK: r.probeK }),
    band: usualSubcooling,
  });
}

/** A pipe below the limits may still be hotter than it should be: only hot is a sign. */
function discharge(r: ReadingSet): Deviation | undefined {
  if (r.dischargeLineK === undefined || r.dischargeLineK <= dischargeLimitK) return undefined;
  const hot = r.dischargeLineK - r.probeK >= dischargeLimitK;
  return {
    symptom: 'discharge',
    sign: hot ? '+' : 'within doubt',
    said: phrase`discharge line ${figure(r.dischargeLineK, 'temperature', { doubt: r.probeK })} ${hot ? 'hot' : 'within doubt'} (limit ${figure(dischargeLimitK, 'temperature', { decimals: 0 })})`,
  };
}

function condenserRise(r: ReadingSet): Deviation | undefined {
  const { outdoorTemperatureK } = r.gates;
  if (r.condenserAirK === undefined || outdoorTemperatureK === undefined) return undefined;
  return judged('condenserRise', 'condenser air rise', {
    value: r.condenserAirK - outdoorTemperatureK,
    doubt: splitDoubtK(r.airProbeK),
    band: usualCondenserRise,
  });
}

function split(r: ReadingSet): Deviation | undefined {
  const { returnTemperatureK, supplyTemperatureK, returnWetBulbK } = r;
  if (returnTemperatureK === undefined || supplyTemperatureK === undefined) return undefined;
  return judged('split', 'air split', {
    value: returnTemperatureK - supplyTemperatureK,
    doubt: splitDoubtK(r.airProbeK),
    band: splitBandAnyAir(returnTemperatureK, returnWetBulbK),
  });
}

/** Outside the published table the rough band has to do. */
function splitBandAnyAir(returnTemperatureK: number, returnWetBulbK: number | undefined): Band {
  try {
    return splitBand({ returnTemperatureK, returnWetBulbK, role: 'installer' }).band;
  } catch (error) {
    if (!(error instanceof CalcError) || error.code !== 'out-of-range') throw error;
    return splitBand({ returnTemperatureK, returnWetBulbK: undefined, role: 'installer' }).band;
  }
}

/** Amps count only with volts inside the band. */
function amps(r: ReadingSet): Deviation | undefined {
  const { volts, ratedVolts } = r.gates;
  if (r.amps === undefined || r.ratedAmps === undefined || volts === undefined || !ratedVolts)
    return undefined;
  if (supplyState(volts, ratedVolts) !== 'in band') return undefined;
  const share = ampsAtRatedVolts({ amps: r.amps, volts, rated: ratedVolts }) / r.ratedAmps;
  return judged('amps', 'amps of the rated load', {
    value: share,
    doubt: ampsDoubtShare * share,
    band: ampsBand,
    quantity: 'percent',
  });
}

function standing(r: ReadingSet): Deviation | undefined {
  const text = r.standing?.trim() ?? '';
  const starts = (word: string): boolean => text.toLowerCase().startsWith(word.toLowerCase());
  if (starts(matchesWord))
    return { symptom: 'standing', sign: '0', said: phrase`standing pressure matches the gas` };
  if (starts(nonCondensablesWord))
    return { symptom: 'standing', sign: '+', said: phrase`standing pressure above the gas` };
  if (starts('Mismatch') || starts('Empty'))
    return { symptom: 'standing', sign: '-', said: phrase`standing pressure below the gas` };
  return undefined;
}

/** Stands in for superheat where no gauge is on: the rough superheat band over the evaporator aim. */
function suctionLine(r: ReadingSet): Deviation | undefined {
  if (r.suctionPa !== undefined) return undefined;
  if (r.suctionLineK === undefined || r.returnTemperatureK === undefined) return undefined;
  return judged('suctionLine', 'suction line against return air', {
    value: r.suctionLineK - r.returnTemperatureK,
    doubt: combinedDoubt(r.probeK, r.airProbeK),
    band: {
      lowest: roughSuperheat.lowest - evaporatorDifferenceK,
      highest: roughSuperheat.highest - evaporatorDifferenceK,
    },
  });
}

/** Stands in for condensing less subcooling where no gauge is on: the widest the two bands allow. */
function liquidLine(r: ReadingSet): Deviation | undefined {
  const { outdoorTemperatureK } = r.gates;
  if (r.liquidPa !== undefined || r.liquidLineK === undefined || outdoorTemperatureK === undefined)
    return undefined;
  return judged('liquidLine', 'liquid line over outdoor', {
    value: r.liquidLineK - outdoorTemperatureK,
    doubt: combinedDoubt(r.probeK, r.airProbeK),
    band: {
      lowest: condenserDifferenceK - condenserBandK - usualSubcooling.highest,
      highest: condenserDifferenceK + condenserBandK - usualSubcooling.lowest,
    },
  });
}

function freezing(r: ReadingSet): Deviation | undefined {
  const cold = coldestCoil(r);
  if (!cold) return undefined;
  const place = placeInBand(cold, { lowest: freezingK, highest: Infinity });
  const sign = ({ low: '+', inside: '0', high: '0', 'within doubt': 'within doubt' } as const)[place];
  const word = { '+': 'below freezing', '0': 'above freezing', 'within doubt': 'about freezing' }[sign];
  return {
    symptom: 'freezing',
    sign,
    said: phrase`coil ${figure(cold.value, 'temperature', { doubt: cold.doubt })} ${word}`,
  };
}

/** From the suction gauge; without one a suction line at freezing is proof, a warmer one proves nothing. */
function coldestCoil(r: ReadingSet): { readonly value: number; readonly doubt: number } | undefined {
  if (r.refrigerant && r.suctionPa !== undefined) {
    const { inletK } = coilTemperature(r.refrigerant, r.suctionPa);
    return {
      value: inletK,
      doubt: saturationDoubtK({
        refrigerant: r.refrigerant,
        pressurePa: r.suctionPa,
        curve: 'dew',
        gaugePa: r.suctionGaugePa,
      }),
    };
  }
  if (r.suctionLineK !== undefined && r.suctionLineK < freezingK)
    return { value: r.suctionLineK, doubt: r.probeK };
  return undefined;
}
