import { CalcError } from '../../../errors.ts';
import type { Phrase } from '../../../phrase.ts';
import { figure, phrase } from '../../../phrase.ts';
import { saturationTemperatureK } from '../../../refrigerants/index.ts';
import { fahrenheitDifferenceK } from '../../../units/trade.ts';
import { coilTemperature } from '../../coil-temperature.ts';
import { combinedDoubt, saturationDoubtK } from '../../instrument-accuracy.ts';
import { lineDoubtK } from '../../superheat.ts';
import { answerOf } from '../answer-form.ts';
import { headings } from '../ask.ts';
import type { Evidence, Rule } from '../evidence.ts';

/** What a clamp in moving air may add to its own doubt. Common practice, no source. */
export const clampK = fahrenheitDifferenceK(3);

/** Readings that cannot stand together in any running unit: a probe, a gauge or the gas is not what it seems. */
export const contradiction: Rule = (evidence) => {
  if (evidence.set.compressor === 'off') return undefined;
  for (const look of [negativeSuperheat, coilAgainstAir, condensingAgainstAir, liquidLine, dischargeLine]) {
    const found = look(evidence);
    if (found) return answerOf('read-again', phrase`Read again`, [found.said], found.ask);
  }
  return undefined;
};

interface Found {
  readonly said: Phrase;
  readonly ask: readonly string[];
}

/** A saturation temperature with its doubt; undefined off the curve. */
function saturation(
  evidence: Evidence,
  pressurePa: number | undefined,
  side: 'dew' | 'bubble',
): { readonly valueK: number; readonly doubtK: number } | undefined {
  const { unit, instruments } = evidence;
  const { refrigerant } = unit;
  if (refrigerant === undefined || pressurePa === undefined) return undefined;
  const gaugePa = side === 'dew' ? instruments.suctionGaugePa : instruments.liquidGaugePa;
  try {
    return {
      valueK: saturationTemperatureK(refrigerant, pressurePa, side),
      doubtK: saturationDoubtK({ refrigerant, pressurePa, curve: side, gaugePa }),
    };
  } catch (error) {
    if (error instanceof CalcError) return undefined;
    throw error;
  }
}

/** Below zero by more than its doubt: liquid comes back, or the probe sits loose. */
function negativeSuperheat({ superheatK, unit, set, instruments }: Evidence): Found | undefined {
  if (superheatK === undefined || unit.refrigerant === undefined || set.suctionPa === undefined)
    return undefined;
  const doubtK = lineDoubtK(
    { refrigerant: unit.refrigerant, pressurePa: set.suctionPa, curve: 'dew' },
    { gaugePa: instruments.suctionGaugePa, probeK: instruments.probeK },
  );
  if (superheatK >= -doubtK) return undefined;
  return {
    said: phrase`superheat ${figure(superheatK, 'temperatureDifference', { doubt: doubtK })} cannot be below zero: liquid comes back to the compressor, or the probe is loose or the gauge off; put the clamp on bare pipe, insulate it, read both again`,
    ask: [headings.suctionLineK, headings.suctionPa],
  };
}

/** A coil cannot cool air below its own temperature. */
function coilAgainstAir(evidence: Evidence): Found | undefined {
  const { unit, set, instruments } = evidence;
  if (unit.refrigerant === undefined || set.suctionPa === undefined || set.supplyK === undefined)
    return undefined;
  const at = saturation(evidence, set.suctionPa, 'dew');
  if (at === undefined) return undefined;
  const { inletK } = coilTemperature(unit.refrigerant, set.suctionPa);
  const doubtK = combinedDoubt(at.doubtK, instruments.airProbeK) + clampK;
  if (inletK <= set.supplyK + doubtK) return undefined;
  return {
    said: phrase`the coil boils at ${figure(inletK, 'temperature')}, warmer than the supply air it is said to cool to ${figure(set.supplyK, 'temperature')}: gauge, probe or gas is not what it seems`,
    ask: [headings.suctionPa, headings.supplyK],
  };
}

/** Heat does not flow out into warmer air. */
function condensingAgainstAir(evidence: Evidence): Found | undefined {
  const { set, instruments } = evidence;
  const at = saturation(evidence, set.liquidPa, 'bubble');
  if (at === undefined || set.outdoorK === undefined) return undefined;
  const doubtK = combinedDoubt(at.doubtK, instruments.airProbeK) + clampK;
  if (at.valueK >= set.outdoorK - doubtK) return undefined;
  return {
    said: phrase`condensing at ${figure(at.valueK, 'temperature')} lies below the outdoor air of ${figure(set.outdoorK, 'temperature')}: gauge, thermometer or gas is not what it seems, or the unit is nearly empty`,
    ask: [headings.liquidPa, headings.outdoorK],
  };
}

/** Liquid is cooled by outdoor air and condensed above it. */
function liquidLine(evidence: Evidence): Found | undefined {
  const { set, instruments } = evidence;
  if (set.liquidLineK === undefined) return undefined;
  const doubtK = combinedDoubt(instruments.probeK, instruments.airProbeK) + clampK;
  if (set.outdoorK !== undefined && set.liquidLineK < set.outdoorK - doubtK) {
    return {
      said: phrase`the liquid line, ${figure(set.liquidLineK, 'temperature')}, is colder than the outdoor air of ${figure(set.outdoorK, 'temperature')} that cools it: read both again`,
      ask: [headings.liquidLineK, headings.outdoorK],
    };
  }
  const at = saturation(evidence, set.liquidPa, 'bubble');
  if (
    at === undefined ||
    set.liquidLineK <= at.valueK + combinedDoubt(at.doubtK, instruments.probeK) + clampK
  )
    return undefined;
  return {
    said: phrase`the liquid line, ${figure(set.liquidLineK, 'temperature')}, is hotter than the gas condenses, ${figure(at.valueK, 'temperature')}: probe, gauge or gas is not what it seems`,
    ask: [headings.liquidLineK, headings.liquidPa],
  };
}

/** The compressor sends out the hottest gas of the circuit. */
function dischargeLine(evidence: Evidence): Found | undefined {
  const { set, instruments } = evidence;
  if (set.dischargeLineK === undefined) return undefined;
  const doubtK = combinedDoubt(instruments.probeK, instruments.probeK) + clampK;
  const [name, otherK] =
    set.liquidLineK !== undefined && set.dischargeLineK < set.liquidLineK - doubtK
      ? ['liquid line', set.liquidLineK]
      : set.suctionLineK !== undefined && set.dischargeLineK < set.suctionLineK - doubtK
        ? ['suction line', set.suctionLineK]
        : ['', undefined];
  if (otherK === undefined) return undefined;
  return {
    said: phrase`the discharge line, ${figure(set.dischargeLineK, 'temperature')}, is colder than the ${name}, ${figure(otherK, 'temperature')}: a running compressor cannot do that`,
    ask: [headings.dischargeLineK, name === 'liquid line' ? headings.liquidLineK : headings.suctionLineK],
  };
}
