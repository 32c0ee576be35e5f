import { CalcError } from '../errors.ts';
import { spellMass } from './spell-mass.ts';

/**
 * What a cylinder holds.
 *
 * net = gross - tare
 *
 * @returns mass [kg]
 * @throws CalcError out-of-range when the scale shows less than the empty cylinder
 */
export function cylinderNetKg(weights: { readonly grossKg: number; readonly tareKg: number }): number {
  const { grossKg, tareKg } = weights;
  // A hundredth of a gram: the same weight typed in two units is still the same weight.
  if (grossKg < tareKg - 1e-5) {
    throw new CalcError('the cylinder weighs less than its tare: wrong tare, or the scale was not zeroed', {
      code: 'out-of-range',
      parameter: 'gross',
      received: spellMass(grossKg),
      limit: `${spellMass(tareKg)} or more`,
    });
  }
  return Math.max(0, grossKg - tareKg);
}
