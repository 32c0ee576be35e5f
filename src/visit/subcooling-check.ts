import type { Figure, Phrase, Verdict } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import { fahrenheitDifferenceK } from '../units/trade.ts';
import { withinDoubtWord } from '../verdict-words.ts';
import type { InstrumentAccuracy } from './instrument-accuracy.ts';
import { onlyWhenOpen, refusalOfGate } from './ready-text.ts';
import type { Role } from './superheat-check.ts';
import type { LineReading } from './superheat.ts';
import { lineDoubtK, subcoolingK } from './superheat.ts';
import type { Band } from './within-doubt.ts';
import { placeInBand } from './within-doubt.ts';

/** Actual less the maker's target, plus or minus. Source: California RA3.2.2 (2008), variable metering, from memory. */
const toleranceK: Readonly<Record<Role, number>> = {
  installer: fahrenheitDifferenceK(3),
  verifier: fahrenheitDifferenceK(4),
};

/** Without the maker's figure. Common practice, no source: 10 degF, within 5. */
const usualBand: Band = { lowest: fahrenheitDifferenceK(5), highest: fahrenheitDifferenceK(15) };

export interface SubcoolingReading extends LineReading {
  /** The maker's subcooling [K]; without it the usual band of small units. */
  readonly targetK: number | undefined;
  readonly role: Role;
  readonly ready: string | undefined;
  readonly accuracy: InstrumentAccuracy;
}

/**
 * Subcooling with its doubt against the maker's target, or against the usual band. One piece of evidence: it names what gives
 * such a subcooling and never what to do with gas. Below zero it says flash gas or a bad reading.
 *
 * @throws CalcError out-of-range outside the saturation curve
 * @source tolerance California RA3.2.2 (2008), from memory; band common practice, no source
 */
export function subcoolingCheck(reading: SubcoolingReading): Verdict {
  return refusalOfGate(reading.ready) ?? judge(reading);
}

function judge(reading: SubcoolingReading): Verdict {
  const actualK = subcoolingK(reading);
  const doubtK = lineDoubtK(
    { refrigerant: reading.refrigerant, pressurePa: reading.pressurePa, curve: 'bubble' },
    reading.accuracy,
  );
  const actual = phrase`subcooling ${figure(actualK, 'temperatureDifference', { doubt: doubtK })}`;
  if (actualK < 0) {
    return {
      word: 'Flash gas or probe',
      reason: phrase`${actual}, below zero: gas is in the liquid line, or the probe is loose or the gauge wrong. Strap and insulate the probe, read again`,
    };
  }
  const { band, against } = bandOf(reading);
  const found = phrase`${actual}, ${against}`;
  const hint = (words: Phrase): Phrase => onlyWhenOpen(reading.ready, words);
  switch (placeInBand({ value: actualK, doubt: doubtK }, band)) {
    case 'inside':
      return { word: reading.targetK === undefined ? 'In range' : 'On target', reason: found };
    case 'low':
      return {
        word: 'Low',
        reason: phrase`${found}${hint(phrase`; little liquid stands in the condenser: short of charge or a weak compressor, superheat and amps tell which`)}`,
      };
    case 'high':
      return {
        word: 'High',
        reason: phrase`${found}${hint(phrase`; liquid stands in the condenser: a restriction, too much charge or air inside, superheat and a standing pressure tell which`)}`,
      };
    case 'within doubt':
      return {
        word: withinDoubtWord,
        reason: phrase`${found}; the instruments cannot tell on which side of the limit it is`,
      };
  }
}

function bandOf({ targetK, role }: SubcoolingReading): { readonly band: Band; readonly against: Phrase } {
  if (targetK === undefined) {
    return {
      band: usualBand,
      against: phrase`usual ${whole(usualBand.lowest)} to ${whole(usualBand.highest)} (no target of the maker given)`,
    };
  }
  const limitK = toleranceK[role];
  return {
    band: { lowest: targetK - limitK, highest: targetK + limitK },
    against: phrase`target ${figure(targetK, 'temperatureDifference', { doubt: limitK })}`,
  };
}

function whole(value: number): Figure {
  return figure(value, 'temperatureDifference', { decimals: 0 });
}
