import { CalcError } from '../errors.ts';
import type { ChargeState } from './mass-basis.ts';
import { massInUnitKg } from './mass-basis.ts';
import { spellMass } from './spell-mass.ts';

/** Below what a small scale can show; keeps a sum of weighed steps from reading as an overcharge. */
export const massNoiseKg = 1e-6;

/**
 * What may still go in before the nameplate charge is reached.
 *
 * room = nameplate - found - added - hose, never above the nameplate
 *
 * @param state - nameplate, how the mass is known, and the masses [kg]
 * @returns mass [kg], 0 at the nameplate
 * @throws CalcError refused when the mass is unknown or already above the nameplate
 * @source mass balance; the nameplate as the stop is common practice for factory-sealed units
 */
export function chargeRoomKg(state: ChargeState): number {
  const insideKg = massInUnitKg(state);
  const roomKg = state.nameplateKg - insideKg;
  if (roomKg < -massNoiseKg) {
    throw new CalcError(
      `stop: the unit holds ${spellMass(-roomKg)} more than its nameplate; recover the excess on a scale`,
      {
        code: 'refused',
        parameter: state.foundKg !== undefined && state.foundKg > state.nameplateKg ? 'found' : 'added',
        received: `${spellMass(insideKg)} in the unit`,
        limit: `the nameplate, ${spellMass(state.nameplateKg)}`,
      },
    );
  }
  return Math.max(0, roomKg);
}
