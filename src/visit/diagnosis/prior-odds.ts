import { standardAtmospherePa } from '../../air/index.ts';
import { CalcError } from '../../errors.ts';
import { saturationPressurePa } from '../../refrigerants/index.ts';
import { coilTemperature } from '../coil-temperature.ts';
import { freezingK } from '../evap-check.ts';
import type { Frost } from '../gates.ts';
import type { ReadingSet } from './reading-set.ts';
import type { Hypothesis } from './response-form.ts';
import type { StandingFinding } from './standing-finding.ts';

/**
 * How common each is among small sealed units somebody is called to. Own estimate, no source: leaks and dirt are common, air inside a circuit
 * nobody opened is not. Only the order matters much: the readings outweigh it.
 */
const shares: Readonly<Record<Hypothesis, number>> = {
  'nothing wrong': 0.22,
  'low charge': 0.2,
  'low indoor airflow': 0.13,
  'dirty condenser': 0.13,
  overcharge: 0.11,
  restriction: 0.09,
  'weak compressor': 0.07,
  'non-condensables': 0.03,
  ice: 0.05,
};

/** Air gets in through an opening: known to be sealed, or known to have been opened. Own estimate. */
const airInside = { sealed: 0.01, opened: 0.1 } as const;

/** Whether ice is still a question. */
export function isFrostUnseen({ gates: { frost } }: ReadingSet): boolean {
  return frost === undefined || frost === 'not seen';
}

/** Kelvins over which a coil passes from ice being out of the question to ice being no wonder. Own choice. */
const icingSlopeK = 1.5;

/** Logarithm of how far the coil is cold enough to gather ice: by the gauge, without one by the suction line, which is warmer. */
function coldEnoughLog({ refrigerant, suctionPa, suctionLineK }: ReadingSet): number {
  let coilK = suctionLineK;
  if (refrigerant !== undefined && suctionPa !== undefined) {
    try {
      coilK = coilTemperature(refrigerant, suctionPa).inletK;
    } catch (error) {
      if (!(error instanceof CalcError)) throw error;
    }
  }
  return coilK === undefined ? -1 : -Math.log1p(Math.exp((coilK - freezingK) / icingSlopeK));
}

/** Logarithm of the share before any reading of the running unit. */
export function priorLog(hypothesis: Hypothesis, set: ReadingSet): number {
  const { openedBefore } = set;
  if (hypothesis === 'ice') return Math.log(shares.ice) + coldEnoughLog(set);
  if (hypothesis === 'non-condensables' && openedBefore !== undefined)
    return Math.log(openedBefore ? airInside.opened : airInside.sealed);
  return Math.log(shares[hypothesis]);
}

/** How often each finding of the standing pressure comes with air inside, with little left inside, and with anything else. Own estimate. */
const standingChances: Readonly<
  Record<StandingFinding, { readonly air: number; readonly short: number; readonly other: number }>
> = {
  matches: { air: 0.2, short: 0.95, other: 0.97 },
  'within doubt': { air: 0.3, short: 0.02, other: 0.02 },
  'non-condensables': { air: 0.5, short: 0.004, other: 0.004 },
  mismatch: { air: 0.004, short: 0.02, other: 0.004 },
  empty: { air: 0.0005, short: 0.006, other: 0.0005 },
};

/** Logarithm of the chance of what the standing pressure showed; 0 when it was not taken. */
export function standingLog(hypothesis: Hypothesis, finding: StandingFinding | undefined): number {
  if (finding === undefined) return 0;
  const { air, short, other } = standingChances[finding];
  if (hypothesis === 'non-condensables') return Math.log(air);
  return Math.log(hypothesis === 'low charge' ? short : other);
}

/**
 * Logarithm of the chance of frost at the inlet alone: a starved coil freezes where the little liquid enters, and the worse the more.
 * A coil short of air freezes all over. Common practice; chances own.
 */
export function frostLog(hypothesis: Hypothesis, severity: number, frost: Frost | undefined): number {
  if (frost !== 'inlet only') return 0;
  if (hypothesis === 'low charge' || hypothesis === 'restriction') return Math.log(0.01 + 0.2 * severity);
  return Math.log(hypothesis === 'low indoor airflow' ? 0.01 : 0.003);
}

/** Chance that a low charge shows what only a plugged tube should: readings and gauges err. Own estimate. */
const vacuumChance = 0.05;

/**
 * Whether the suction side is in vacuum while liquid stands on the high side, 0 to 1. Through an open tube that liquid would flow and lift the suction:
 * only a plugged one leaves both so. An almost empty circuit has no liquid, its high side lies below the saturation of the air outside.
 *
 * @source mass flow through an open tube grows with the pressure of the liquid before it; slopes of the passage own
 */
export function plugged({ refrigerant, suctionPa, liquidPa, gates, atmospherePa }: ReadingSet): number {
  const outsidePa = atmospherePa ?? standardAtmospherePa(0);
  const outdoorK = gates.outdoorTemperatureK;
  if (!refrigerant || suctionPa === undefined || liquidPa === undefined || outdoorK === undefined) return 0;
  if (suctionPa > 1.2 * outsidePa || outdoorK > refrigerant.saturation.highestTemperatureK) return 0;
  const saturationPa = saturationPressurePa(refrigerant, outdoorK, 'bubble');
  const inVacuum = 1 / (1 + Math.exp((suctionPa / outsidePa - 0.9) / 0.04));
  const holdsLiquid = 1 / (1 + Math.exp((0.95 - liquidPa / saturationPa) / 0.01));
  return inVacuum * holdsLiquid;
}

/** Logarithm of the chance of a vacuum before which liquid stands. */
export function pluggedLog(hypothesis: Hypothesis, share: number): number {
  return hypothesis === 'restriction' || share === 0 ? 0 : Math.log(1 - share * (1 - vacuumChance));
}
