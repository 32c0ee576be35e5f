import { CalcError } from '../errors.ts';
import { spellMass } from './spell-mass.ts';

/**
 * What had been left in a unit that was topped up to a right charge.
 *
 * found = nameplate - added
 *
 * Holds only where the additions were weighed and the final charge is the nameplate charge.
 *
 * @param masses.nameplateKg - full charge on the label [kg], above 0
 * @param masses.addedKg - weighed in until the charge was right [kg], 0 to the nameplate charge
 * @returns mass before topping up [kg]
 * @throws CalcError out-of-range
 * @source mass balance
 */
export function chargeFoundKg(masses: { readonly nameplateKg: number; readonly addedKg: number }): number {
  const { nameplateKg, addedKg } = masses;
  if (addedKg > nameplateKg) {
    throw new CalcError(
      'more was added than the unit holds by its nameplate: it is overcharged, or a mass is wrong',
      {
        code: 'out-of-range',
        parameter: 'added',
        received: spellMass(addedKg),
        limit: `0 to ${spellMass(nameplateKg)}`,
      },
    );
  }
  return nameplateKg - addedKg;
}
