import { phrase } from '../../phrase.ts';
import { fahrenheitDifferenceK } from '../../units/trade.ts';
import { ampsAtRatedVolts, ampsBand } from '../amps-check.ts';
import { condenserBandK, condenserDifferenceK, evaporatorDifferenceK } from '../expected-temperatures.ts';
import { combinedDoubt } from '../instrument-accuracy.ts';
import { splitBand, splitDoubtK } from '../split-check.ts';
import { supplyState } from '../supply-band.ts';
import type { Band } from '../within-doubt.ts';
import type { Deviation } from './deviation.ts';
import { judged, roughSuperheat, usualSubcooling } from './deviation.ts';
import type { ReadingSet } from './reading-set.ts';

/** Air leaving less air entering the outdoor coil. Common practice, no source. */
const usualCondenserRise: Band = { lowest: fahrenheitDifferenceK(12), highest: fahrenheitDifferenceK(32) };

/** What a clamp meter and a voltmeter may be wrong by together, as a share. Common figure, no source. */
const ampsDoubtShare = 0.03;

/** Deviations that air, amps, pipes and the standing pressure show: no gauge on a running circuit is needed. */
export function outsideDeviations(r: ReadingSet): readonly (Deviation | undefined)[] {
  return [condenserRise(r), split(r), amps(r), standing(r), suctionLine(r), liquidLine(r)];
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
    band: splitBand({ returnTemperatureK, returnWetBulbK, role: 'installer' }).band,
  });
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

function standing({ standing: finding }: ReadingSet): Deviation | undefined {
  if (finding === 'matches')
    return { symptom: 'standing', sign: '0', said: phrase`standing pressure matches the gas` };
  if (finding === 'non-condensables')
    return { symptom: 'standing', sign: '+', said: phrase`standing pressure above the gas` };
  if (finding === 'mismatch' || finding === 'empty')
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
