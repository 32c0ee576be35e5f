import { findUnit, fromSi, toSi } from '../units/conversion.ts';
import type { Unit } from '../units/quantities.ts';
import type { Field, Limits } from './field.ts';

/** Sea level: the offset of a gauge limit cancels when it goes there and back. */
const seaLevelPa = 101_325;

/** The unit in which the limits of a number field are written. */
export function unitOfField(field: Field): Unit | undefined {
  return field.quantity === undefined ? undefined : findUnit(field.quantity, field.unit ?? '');
}

/** Limits of a field in SI; gauge limits become absolute with the given atmosphere [Pa]. */
export function limitsSi(field: Field, which: 'reject' | 'warn', atmospherePa: number): Limits {
  const unit = unitOfField(field);
  return convert(field[which], (value) => (unit ? toSi(value, unit, atmospherePa) : value));
}

/** Limits of a field in another unit of the same quantity, for the validation of a sheet. */
export function limitsIn(field: Field, which: 'reject' | 'warn', unit: Unit): Limits {
  return convert(limitsSi(field, which, seaLevelPa), (value) => fromSi(value, unit, seaLevelPa));
}

function convert(limits: Limits | undefined, change: (value: number) => number): Limits {
  if (!limits) return {};
  const { minimum, maximum } = limits;
  return {
    ...(minimum !== undefined && { minimum: change(minimum) }),
    ...(maximum !== undefined && { maximum: change(maximum) }),
  };
}
