import type { ChoiceName } from './choices.ts';
import type { Values } from './inputs.ts';
import { firstYearLeak } from './unit-life.ts';

export const isUnderWarranty = ({ warrantyLeft = 0 }: Values): boolean => warrantyLeft > 0;

/** The history was asked, and tells of no loss. Without figures of a history nothing was asked. */
export function isLossUnknown(values: Values): boolean {
  return (
    firstYearLeak(values) === undefined &&
    (values.visitsOnRecord !== undefined || values.topUpsWeighed !== undefined)
  );
}

/** Class 1 does not burn; every other one does, and so may a gas that nobody knows. */
export const mayBurn = ({ flammability }: Values): boolean =>
  flammability !== undefined && flammability !== 1;

/** Older than the longest life expected of its kind; the assumptions keep the age only where that was asked. */
export const isBeyondLife = ({ age, expectedLife }: Values): boolean =>
  age !== undefined && expectedLife !== undefined && age >= expectedLife;

/**
 * Why a choice does not exist for this unit, in words for its owner; undefined where nothing stands against it.
 *
 * Replacing always exists. The first reason that holds is given: law and safety, then what is not known, then what the unit
 * is too old for.
 */
export function whyNot(values: Values, name: ChoiceName): string | undefined {
  if (name === 'replace') return undefined;
  if (name === 'do nothing') return whyNotLeft(values);
  if (isUnderWarranty(values)) return 'the warranty comes first, and opening the unit may end it';
  const gas = name === 'top up' ? whyNoGas(values) : whyNoRepair(values);
  if (gas !== undefined) return gas;
  if (isLossUnknown(values)) {
    return name === 'top up'
      ? 'no loss is known: nothing says that gas is missing'
      : 'no leak is known: there is nothing to repair yet';
  }
  return name === 'repair' && isBeyondLife(values)
    ? `at ${String(values.age)} years it is older than such units are expected to get (${String(values.expectedLife)})`
    : undefined;
}

function whyNoGas({ flammability, gasObtainable }: Values): string | undefined {
  if (flammability === 0) return 'its gas is not known: nothing goes in before the label has been read';
  if (flammability !== undefined && flammability > 1) return 'its gas burns: no tap and no topping up';
  return gasObtainable === 0 ? 'its gas may not be filled in here, or cannot be bought' : undefined;
}

function whyNoRepair({ flammability, gasObtainable }: Values): string | undefined {
  if (flammability === 0) return 'its gas is not known: it is opened after the label has been read';
  return gasObtainable === 0
    ? 'the gas to fill it again may not be filled in here, or cannot be bought'
    : undefined;
}

function whyNotLeft(values: Values): string | undefined {
  const leaks = (firstYearLeak(values) ?? 0) > 0;
  if (!leaks || !mayBurn(values) || isUnderWarranty(values)) return undefined;
  return values.flammability === 0
    ? 'it leaks and its gas is not known: it stays off until the label has been read'
    : 'its gas burns and it leaks: it stays off until it is repaired or replaced';
}
