import { figure, phrase } from '../../phrase.ts';
import { coilTemperature } from '../coil-temperature.ts';
import { freezingK } from '../evap-check.ts';
import { saturationDoubtK } from '../instrument-accuracy.ts';
import { placeInBand } from '../within-doubt.ts';
import type { Deviation } from './deviation.ts';
import type { ReadingSet } from './reading-set.ts';

/** Whether the coil is cold enough to gather ice. */
export function freezing(r: ReadingSet): Deviation | undefined {
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
