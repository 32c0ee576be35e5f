import { CalcError } from '../../errors.ts';
import type { Phrase } from '../../phrase.ts';
import { causes } from '../diagnosis/causes.ts';
import type { Knowledge } from './knowledge.ts';
import type { Instruments, UnitFacts, VisitSet } from './facts.ts';
import { valveDiagnosis } from './valve-diagnosis.ts';
import { gateReadingsOf } from './gate-readings.ts';

export type Confidence = 'likely' | 'possible' | 'unlikely';

/** A cause that the readings were held against. */
export interface JudgedCause {
  readonly cause: string;
  readonly confidence: Confidence;
  readonly inFavor: Phrase;
}

/** What the readings point to, likeliest first; nothing where no cause may be named. */
export interface Diagnosis {
  readonly causes: readonly JudgedCause[];
  /** Why no cause may be named. */
  readonly refusal?: string | undefined;
}

const confidences: readonly string[] = ['likely', 'possible', 'unlikely'];

/** Holds the set against the causes. Gates are judged before: this is asked only behind open ones. */
export function diagnose(
  set: VisitSet,
  unit: UnitFacts,
  known: Knowledge,
  instruments: Instruments,
): Diagnosis {
  if (unit.metering === 'valve') return valveDiagnosis(set, unit, instruments);
  try {
    const lines = causes({
      gates: gateReadingsOf(set, unit),
      metering: unit.metering ?? 'capillary',
      returnTemperatureK: set.returnK,
      returnWetBulbK: set.returnWetBulbK,
      supplyTemperatureK: set.supplyK,
      condenserAirK: set.condenserAirK,
      suctionLineK: set.suctionLineK,
      liquidLineK: set.liquidLineK,
      dischargeLineK: set.dischargeLineK,
      amps: set.compressorAmps,
      ratedAmps: unit.ratedAmps,
      refrigerant: unit.refrigerant,
      suctionPa: set.suctionPa,
      liquidPa: set.liquidPa,
      standing: known.standing,
      openedBefore: (unit.tapsFitted ?? 0) > 0 || known.accessed || known.topUps > 0,
      atmospherePa: set.atmospherePa,
      suctionGaugePa: instruments.suctionGaugePa,
      liquidGaugePa: instruments.liquidGaugePa,
      probeK: instruments.probeK,
      airProbeK: instruments.airProbeK,
    });
    return {
      causes: lines
        .filter(({ confidence }) => confidences.includes(confidence))
        .map(({ cause, confidence, inFavor }) => ({ cause, confidence: confidence as Confidence, inFavor })),
    };
  } catch (error) {
    if (error instanceof CalcError) return { causes: [], refusal: error.message };
    throw error;
  }
}
