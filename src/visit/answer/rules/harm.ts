import { figure, phrase } from '../../../phrase.ts';
import { psiPa } from '../../../units/trade.ts';
import { answerOf } from '../answer-form.ts';
import type { Rule } from '../evidence.ts';

/** A gauge's own zero may be off by this much; below it the suction side draws. Common practice, no source. */
export const zeroDoubtPa = psiPa(1);

/** A compressor that runs in a vacuum draws air in through any leak and ruins its windings. Common practice, no source. */
export const runsInVacuum: Rule = ({ set }) => {
  const { suctionPa, atmospherePa } = set;
  if (set.compressor === 'off' || suctionPa === undefined || suctionPa >= atmospherePa - zeroDoubtPa)
    return undefined;
  return answerOf('shut-down', phrase`Shut it down`, [
    phrase`suction ${figure(suctionPa, 'pressure')} lies below the air outside: running in a vacuum draws air in and burns the windings`,
    phrase`nearly all gas has leaked out, or the capillary tube is plugged: with the unit off, find the leak first`,
  ]);
};

/** Nitrogen above what the low side is made for may burst it. */
export const testBeyondDesign: Rule = ({ set, unit }) => {
  const { testStartPa } = set;
  const { lowSideDesignPa } = unit;
  if (testStartPa === undefined || lowSideDesignPa === undefined || testStartPa <= lowSideDesignPa + 1)
    return undefined;
  return answerOf('shut-down', phrase`Let the pressure down`, [
    phrase`test pressure ${figure(testStartPa, 'pressure')} is above the low-side pressure of the nameplate, ${figure(lowSideDesignPa, 'pressure')}`,
  ]);
};
