import { phrase } from '../../../phrase.ts';
import { isOtherGasFound } from '../../diagnosis/standing-finding.ts';
import { answerOf } from '../answer-form.ts';
import type { Rule } from '../evidence.ts';

/** The gas of the cylinder must be that of the nameplate. */
export const wrongGas: Rule = ({ set, unit }) => {
  const gas = unit.refrigerant?.designation ?? set.gasInUnit;
  if (gas === undefined || set.gasAdded === undefined || set.gasAdded === gas) return undefined;
  return answerOf('wrong-gas', phrase`Stop: wrong gas`, [
    phrase`the cylinder holds ${set.gasAdded}, the unit takes ${gas}: a mixture spoils both and may not be reused`,
  ]);
};

/** Air or another gas inside is not cured by more gas. */
export const otherGas: Rule = ({ known, standing }) => {
  if (known.standing === 'empty') {
    return answerOf('find-leak-first', phrase`Find the leak first`, [
      standing?.reason ?? phrase`the standing pressure of this visit was that of the air outside`,
      phrase`the unit is empty or open: nothing goes in before the leak is found and mended, the circuit evacuated`,
    ]);
  }
  if (!isOtherGasFound(known.standing)) return undefined;
  const why = standing?.reason;
  return answerOf('recover-and-identify', phrase`Recover and identify`, [
    why === undefined
      ? phrase`the standing pressure of this visit showed air (non-condensables) or another gas inside; nothing since has taken it out`
      : phrase`standing pressure ${why}`,
    phrase`recover all of it into a cylinder of its own, have it identified, evacuate, weigh the nameplate charge in`,
  ]);
};
