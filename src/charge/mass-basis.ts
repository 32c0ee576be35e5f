import { CalcError } from '../errors.ts';
import { figure } from '../phrase.ts';
import type { Figure } from '../phrase.ts';

/** How it is known what the unit holds. The words are those of the visit log. */
export const massBases = ['nameplate weighed in', 'residual weighed', 'unknown'] as const;

export type MassBasis = (typeof massBases)[number];

/** What the charging so far rests on. Masses in kg. */
export interface ChargeState {
  /** Full charge printed on the unit. */
  readonly nameplateKg: number;
  readonly massBasis: MassBasis;
  /** Weighed in since the start of this charging. */
  readonly addedKg: number;
  /** In the unit before this charging; needed when the residual was weighed. */
  readonly foundKg?: number | undefined;
  /** Held in hoses that may still drain into the unit; counted as if it were inside already. */
  readonly hoseKg?: number | undefined;
}

/** The offer made wherever a mass would have to be guessed. */
export const weighInOffer =
  'recover what is left, weigh it or pump the unit out, then weigh the nameplate charge in';

export function massFigure(massKg: number): Figure {
  return figure(massKg, 'mass');
}

/**
 * Refrigerant that is in the unit or about to run into it.
 *
 * m = found + added + hose
 *
 * @throws CalcError refused when nobody knows the starting mass, since a pressure does not tell it; also when nothing was
 *   added and nobody says that the unit was emptied: a full unit would get its charge twice
 * @throws CalcError invalid-argument when the residual is said to be weighed but not given
 */
export function massInUnitKg(state: ChargeState): number {
  const { massBasis, addedKg, foundKg, hoseKg = 0 } = state;
  if (massBasis === 'unknown') {
    throw new CalcError(`the mass in the unit is unknown and no gauge reading tells it; ${weighInOffer}`, {
      code: 'refused',
      parameter: 'mass_basis',
      received: massBasis,
      limit: massBases.slice(0, 2).join(' or '),
    });
  }
  if (massBasis === 'residual weighed' && foundKg === undefined) {
    throw new CalcError('the residual is said to be weighed, but its mass is not given', {
      code: 'invalid-argument',
      parameter: 'found',
      received: 'blank',
      limit: 'the weighed mass, 0 for an empty unit',
    });
  }
  if (massBasis === 'nameplate weighed in' && addedKg === 0 && foundKg === undefined) {
    throw new CalcError(
      `the nameplate is said to be weighed in, but nothing was added and nobody says that the unit was emptied; ${weighInOffer}`,
      {
        code: 'refused',
        parameter: 'found',
        received: 'blank',
        limit: '0 for a unit that was emptied and evacuated',
      },
    );
  }
  return (foundKg ?? 0) + addedKg + hoseKg;
}
