import { CalcError } from '../../errors.ts';
import type { Phrase } from '../../phrase.ts';
import { figure, phrase } from '../../phrase.ts';
import { fahrenheitDifferenceK } from '../../units/trade.ts';
import { usualSubcooling } from '../rough-bands.ts';
import { splitBand, splitDoubtK, temperatureSplitK } from '../split-check.ts';
import { lineDoubtK, subcoolingK, superheatK } from '../superheat.ts';
import type { Band, Place } from '../within-doubt.ts';
import { placeInBand } from '../within-doubt.ts';
import type { Diagnosis, JudgedCause } from './diagnosis.ts';
import type { Instruments, UnitFacts, VisitSet } from './facts.ts';

/** What a valve holds. Source: California RA3.2.2 (2013), variable metering, installer. */
const valveSuperheat: Band = { lowest: fahrenheitDifferenceK(4), highest: fahrenheitDifferenceK(25) };

interface Figures {
  readonly superheat: Place | undefined;
  readonly subcooling: Place | undefined;
  readonly split: Place | undefined;
  readonly said: Phrase;
}

/**
 * A valve holds superheat whatever the charge, so its faults show in pairs: superheat out of its band with the liquid before it
 * or not. The signs of capillary units do not hold for it.
 *
 * @source superheat band California RA3.2.2 (2013); subcooling and the pairs: common practice, no source
 */
export function valveDiagnosis(set: VisitSet, unit: UnitFacts, instruments: Instruments): Diagnosis {
  const found = figuresOf(set, unit, instruments);
  const cause = (name: string, confidence: JudgedCause['confidence']): Diagnosis => ({
    causes: [{ cause: name, confidence, inFavor: found.said }],
  });
  const { superheat, subcooling, split } = found;
  if (superheat === 'high') {
    if (subcooling === 'high' || subcooling === 'inside')
      return cause('restriction', subcooling === 'high' ? 'likely' : 'possible');
    if (subcooling === 'low') return cause('low charge', 'likely');
    return cause('low charge or restriction', 'possible');
  }
  if (superheat === 'low')
    return split === 'high' ? cause('low indoor airflow', 'possible') : cause('restriction', 'possible');
  if (subcooling === 'low') return cause('low charge', 'possible');
  if (subcooling === 'high') return cause('overcharge', 'possible');
  if (split === 'low' || superheat === undefined) return { causes: [], refusal: valveRefusal };
  if (split === 'high') return cause('low indoor airflow', 'possible');
  const both = superheat === 'inside' && split === 'inside';
  return cause('nothing wrong', both ? 'likely' : 'possible');
}

const valveRefusal = 'a valve holds superheat by itself: its charge is judged by subcooling and the split';

function figuresOf(set: VisitSet, unit: UnitFacts, instruments: Instruments): Figures {
  const said: Phrase[] = [];
  const superheat = lineOf('superheat', 'dew', valveSuperheat);
  const subcooling = lineOf('subcooling', 'bubble', usualSubcooling);
  const split = splitOf();
  return {
    superheat,
    subcooling,
    split,
    said: said.flatMap((one, index) => (index === 0 ? one : ['; ', ...one])),
  };

  function lineOf(name: string, curve: 'dew' | 'bubble', band: Band): Place | undefined {
    const pressurePa = curve === 'dew' ? set.suctionPa : set.liquidPa;
    const lineTemperatureK = curve === 'dew' ? set.suctionLineK : set.liquidLineK;
    if (unit.refrigerant === undefined || pressurePa === undefined || lineTemperatureK === undefined)
      return undefined;
    const line = { refrigerant: unit.refrigerant, pressurePa, lineTemperatureK };
    const gaugePa = curve === 'dew' ? instruments.suctionGaugePa : instruments.liquidGaugePa;
    try {
      const value = curve === 'dew' ? superheatK(line) : subcoolingK(line);
      const doubt = lineDoubtK({ ...line, curve }, { gaugePa, probeK: instruments.probeK });
      said.push(phrase`${name} ${figure(value, 'temperatureDifference', { doubt })}`);
      // The middle of the doubt decides: a valve hunts by more than the instruments are wrong.
      return placeInBand({ value, doubt: 0 }, band);
    } catch (error) {
      if (error instanceof CalcError) return undefined;
      throw error;
    }
  }

  function splitOf(): Place | undefined {
    const { returnK, supplyK, returnWetBulbK } = set;
    if (returnK === undefined || supplyK === undefined) return undefined;
    const value = temperatureSplitK({ returnTemperatureK: returnK, supplyTemperatureK: supplyK });
    const doubt = splitDoubtK(instruments.airProbeK);
    said.push(phrase`split ${figure(value, 'temperatureDifference', { doubt })}`);
    const { band } = splitBand({ returnTemperatureK: returnK, returnWetBulbK, role: 'installer' });
    return placeInBand({ value, doubt: 0 }, band);
  }
}
