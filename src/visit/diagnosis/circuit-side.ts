import { saturationPressurePa, saturationTemperatureK } from '../../refrigerants/index.ts';
import { fahrenheitDifferenceK, fahrenheitK } from '../../units/trade.ts';
import { coilTemperature } from '../coil-temperature.ts';
import { dischargeLimitK } from '../discharge-check.ts';
import {
  condenserBandK,
  condenserDifferenceK,
  evaporatorBandK,
  evaporatorDifferenceK,
} from '../expected-temperatures.ts';
import { idealDischargeK, usualEfficiency } from '../ideal-discharge.ts';
import { combinedDoubt, saturationDoubtK } from '../instrument-accuracy.ts';
import { lineDoubtK, subcoolingK, superheatK } from '../superheat.ts';
import { targetSuperheatIfAny } from '../target-superheat.ts';
import type { Band } from '../within-doubt.ts';
import type { Deviation } from './deviation.ts';
import { judged, roughSuperheat, usualSubcooling } from './deviation.ts';
import type { ReadingSet } from './reading-set.ts';

/** Below this outdoors a fixed-orifice unit runs a colder coil without any fault; the band opens by as much. Common practice, no source. */
const mildOutdoorK = fahrenheitK(75);
const mildAllowanceK = fahrenheitDifferenceK(5);

/** Deviations that need a gauge, or the refrigerant on the nameplate. */
export function circuitDeviations(r: ReadingSet): readonly (Deviation | undefined)[] {
  return [evaporator(r), superheat(r), condensing(r), subcooling(r), discharge(r)];
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
  return { lowest: targetK - fahrenheitDifferenceK(5), highest: targetK + fahrenheitDifferenceK(5) };
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

/**
 * Pipe outside against the ideal cycle of a healthy unit in this weather; without refrigerant or air only the limit is a sign.
 */
function discharge(r: ReadingSet): Deviation | undefined {
  if (r.dischargeLineK === undefined) return undefined;
  const expectedK = expectedDischargeK(r);
  if (expectedK === undefined && r.dischargeLineK <= dischargeLimitK) return undefined;
  return judged('discharge', 'discharge line', {
    value: r.dischargeLineK,
    doubt: r.probeK,
    band:
      expectedK === undefined
        ? { lowest: 0, highest: dischargeLimitK }
        : {
            lowest: expectedK - dischargeBelowK,
            highest: Math.min(expectedK + dischargeAboveK, dischargeLimitK),
          },
    quantity: 'temperature',
  });
}

/** By how much a healthy unit's discharge pipe may lie under and over the ideal cycle. Common practice, no source. */
const dischargeBelowK = fahrenheitDifferenceK(45);
const dischargeAboveK = fahrenheitDifferenceK(10);
const usualSuperheatK = fahrenheitDifferenceK(12);

function expectedDischargeK(r: ReadingSet): number | undefined {
  const { outdoorTemperatureK } = r.gates;
  if (!r.refrigerant || r.returnTemperatureK === undefined || outdoorTemperatureK === undefined)
    return undefined;
  const evaporatorK = r.returnTemperatureK - evaporatorDifferenceK;
  const condenserK = outdoorTemperatureK + condenserDifferenceK;
  // Near the critical point there is no cycle to compare with; the limit still holds.
  if (condenserK > r.refrigerant.saturation.highestTemperatureK) return undefined;
  return idealDischargeK({
    refrigerant: r.refrigerant,
    suctionPa: saturationPressurePa(r.refrigerant, evaporatorK, 'dew'),
    suctionTemperatureK: evaporatorK + usualSuperheatK,
    dischargePa: saturationPressurePa(r.refrigerant, condenserK, 'bubble'),
    efficiency: usualEfficiency,
  });
}
