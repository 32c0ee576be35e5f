import { CalcError } from '../../errors.ts';
import { saturationTemperatureK } from '../../refrigerants/index.ts';
import { saturationDoubtK } from '../instrument-accuracy.ts';
import type { RatedVolts } from '../supply-band.ts';
import { ampsScale, observableCount, placeOf } from './observables.ts';
import type { Observable } from './observables.ts';
import type { ReadingSet } from './reading-set.ts';
import { usualDischargeK } from './usual-discharge.ts';

/** A reading set as the calculation hears it. */
export interface Observation {
  /** By place of the observable; undefined where a reading lacks or cannot be worked out. */
  readonly values: readonly (number | undefined)[];
  /** What the instruments alone may have moved: variances and covariances, rows one after another. */
  readonly instruments: Float64Array;
  /** Ten times the logarithm of the volts over the rated volts, and the standard deviation where nobody measured them. */
  readonly volts: number;
  readonly voltsDoubt: number;
  /** Readings that were given and lead nowhere, with the reason: off the curve of the gas, mostly. */
  readonly notWorkedOut: readonly { readonly observable: Observable; readonly reason: string }[];
}

/** Half-widths of instruments are taken as two standard deviations. */
const deviationsPerHalfWidth = 2;
/** Half-width of amps and volts together, as a share. Common figure, no source. */
const ampsDoubtShare = 0.03;
/** Volts nobody measured lie anywhere in the band of a tenth: standard deviation of that, on the scale of amps. */
const unknownVolts = (ampsScale * 0.1) / Math.sqrt(3);

/** @returns what of the set can be held against an expectation; never throws over an optional reading */
export function observe(set: ReadingSet): Observation {
  const values = new Array<number | undefined>(observableCount).fill(undefined);
  const notWorkedOut: { observable: Observable; reason: string }[] = [];
  const take = (observable: Observable, value: () => number | undefined): void => {
    try {
      values[placeOf[observable]] = value();
    } catch (error) {
      if (!(error instanceof CalcError)) throw error;
      notWorkedOut.push({ observable, reason: error.message });
    }
  };
  const { returnTemperatureK: returnK, refrigerant, gates } = set;
  const outdoorK = gates.outdoorTemperatureK;
  const less = (one: number | undefined, other: number | undefined): number | undefined =>
    one === undefined || other === undefined ? undefined : one - other;
  take('split', () => less(returnK, set.supplyTemperatureK));
  take('suctionLine', () => less(set.suctionLineK, returnK));
  take('liquidLine', () => less(set.liquidLineK, outdoorK));
  take('condenserRise', () => less(set.condenserAirK, outdoorK));
  take('amps', () =>
    set.amps === undefined || set.ratedAmps === undefined || set.amps <= 0
      ? undefined
      : ampsScale * Math.log(set.amps / set.ratedAmps),
  );
  let evaporatorDoubtK = 0;
  let condensingDoubtK = 0;
  if (refrigerant !== undefined) {
    const { suctionPa, liquidPa, dischargeLineK } = set;
    take('evaporator', () => {
      if (suctionPa === undefined || returnK === undefined) return undefined;
      const dewK = saturationTemperatureK(refrigerant, suctionPa, 'dew');
      evaporatorDoubtK = saturationDoubtK({
        refrigerant,
        pressurePa: suctionPa,
        curve: 'dew',
        gaugePa: set.suctionGaugePa,
      });
      return dewK - returnK;
    });
    take('condensing', () => {
      if (liquidPa === undefined || outdoorK === undefined) return undefined;
      const bubbleK = saturationTemperatureK(refrigerant, liquidPa, 'bubble');
      condensingDoubtK = saturationDoubtK({
        refrigerant,
        pressurePa: liquidPa,
        curve: 'bubble',
        gaugePa: set.liquidGaugePa,
      });
      return bubbleK - outdoorK;
    });
    take('discharge', () =>
      dischargeLineK === undefined || outdoorK === undefined || returnK === undefined
        ? undefined
        : less(
            dischargeLineK,
            usualDischargeK(refrigerant, { outdoorTemperatureK: outdoorK, returnTemperatureK: returnK }),
          ),
    );
  }
  const { volts, ratedVolts } = gates;
  const known = volts !== undefined && ratedVolts !== undefined;
  return {
    values,
    instruments: instrumentCovariances(set, evaporatorDoubtK, condensingDoubtK),
    volts: known ? ampsScale * Math.log(volts / ratedFor(volts, ratedVolts)) : 0,
    voltsDoubt: known ? 0 : unknownVolts,
    notWorkedOut,
  };
}

/** Between the two ratings of a dual nameplate any voltage is a rated one, so that nothing jumps on the way. */
function ratedFor(volts: number, { lowerV, upperV }: RatedVolts): number {
  return Math.min(Math.max(volts, lowerV), upperV);
}

/** One thermometer serves two readings: return and outdoor air move several observables together. */
function instrumentCovariances(
  { airProbeK, probeK }: ReadingSet,
  evaporatorDoubtK: number,
  condensingDoubtK: number,
): Float64Array {
  const variance = (halfWidth: number): number => (halfWidth / deviationsPerHalfWidth) ** 2;
  const air = variance(airProbeK);
  const pipe = variance(probeK);
  const matrix = new Float64Array(observableCount * observableCount);
  const put = (one: Observable, other: Observable, value: number): void => {
    matrix[placeOf[one] * observableCount + placeOf[other]] = value;
    matrix[placeOf[other] * observableCount + placeOf[one]] = value;
  };
  put('split', 'split', 2 * air);
  put('split', 'suctionLine', -air);
  put('split', 'evaporator', -air);
  put('suctionLine', 'suctionLine', air + pipe);
  put('suctionLine', 'evaporator', air);
  put('evaporator', 'evaporator', air + variance(evaporatorDoubtK));
  put('condensing', 'condensing', air + variance(condensingDoubtK));
  put('condensing', 'liquidLine', air);
  put('condensing', 'condenserRise', air);
  put('liquidLine', 'liquidLine', air + pipe);
  put('liquidLine', 'condenserRise', air);
  put('condenserRise', 'condenserRise', 2 * air);
  put('discharge', 'discharge', pipe);
  put('amps', 'amps', variance(ampsScale * ampsDoubtShare));
  return matrix;
}
