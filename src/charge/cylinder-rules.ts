import { CalcError } from '../errors.ts';
import type { Refrigerant } from '../refrigerants/index.ts';
import { saturationPressurePa } from '../refrigerants/index.ts';
import { hottestK, requireLiquidAt } from './cylinder-limit.ts';
import type { CylinderKind } from './cylinder-kinds.ts';

/** A cylinder may see this multiple of its service pressure at 131 degF. 49 CFR 173.301a(d), as carried by a compliance network in 2024. */
const hotPressureFactor = 1.25;

export interface CylinderFacts {
  readonly refrigerant: Refrigerant;
  /** What is in it already. */
  readonly contains?: Refrigerant | undefined;
  readonly kind?: CylinderKind | undefined;
  /** As stamped, counted from the atmosphere [Pa]. */
  readonly servicePressurePa?: number | undefined;
  /** Days since 1970-01-01. */
  readonly testDue?: number | undefined;
  readonly onDate?: number | undefined;
}

/**
 * Refuses a fill that no amount could make right.
 *
 * @throws CalcError refused: not refillable, another gas inside, test overdue, pressure class too low
 * @throws CalcError invalid-argument when the day of the fill is needed and missing
 * @source 49 CFR 178.65(i)(2)(viii)(B) by PHMSA interpretation 19-0021 (non-refillable), 180.209(a) (requalification; the periods
 *   by specification were not seen), 173.301a(d) (pressure)
 */
export function requireFillable(cylinder: CylinderFacts): void {
  requireRecoveryCylinder(cylinder);
  requireSameGas(cylinder);
  requireTestInDate(cylinder);
  requirePressureClass(cylinder);
}

function requireRecoveryCylinder({ kind }: CylinderFacts): void {
  if (kind === undefined || kind === 'recovery') return;
  throw new CalcError(`a ${kind} cylinder is not filled: only a recovery cylinder takes refrigerant`, {
    code: 'refused',
    parameter: 'kind',
    received: kind,
    limit: 'recovery',
  });
}

function requireSameGas({ refrigerant, contains }: CylinderFacts): void {
  if (contains === undefined || contains.designation === refrigerant.designation) return;
  throw new CalcError(
    `the cylinder holds ${contains.designation}: gases are never mixed, a mixture cannot be reclaimed`,
    {
      code: 'refused',
      parameter: 'contains',
      received: contains.designation,
      limit: `${refrigerant.designation}, or an empty evacuated cylinder`,
    },
  );
}

function requireTestInDate({ testDue, onDate }: CylinderFacts): void {
  if (testDue === undefined) return;
  if (onDate === undefined) {
    throw new CalcError('the day of the fill is needed to compare with the test date', {
      code: 'invalid-argument',
      parameter: 'on_date',
      received: 'blank',
      limit: 'a date, such as 2026-07-14',
    });
  }
  if (onDate < testDue) return;
  throw new CalcError('the pressure test of the cylinder is overdue: do not fill it', {
    code: 'refused',
    parameter: 'test_due',
    received: isoDay(testDue),
    limit: `after ${isoDay(onDate)}`,
  });
}

function requirePressureClass({ refrigerant, servicePressurePa }: CylinderFacts): void {
  if (servicePressurePa === undefined) return;
  requireLiquidAt(hottestK, '131 degF', refrigerant);
  const atmospherePa = 101_325;
  const hotPa = saturationPressurePa(refrigerant, hottestK, 'bubble') - atmospherePa;
  if (hotPa <= hotPressureFactor * servicePressurePa) return;
  throw new CalcError(
    `${refrigerant.designation} reaches ${spellPressure(hotPa)} at 131 degF: this cylinder is too weak for it`,
    {
      code: 'refused',
      parameter: 'service_pressure',
      received: spellPressure(servicePressurePa),
      limit: `${spellPressure(hotPa / hotPressureFactor)} or more`,
    },
  );
}

function spellPressure(gaugePa: number): string {
  return `${String(Math.ceil(gaugePa / 6894.757_293))} psig (${String(Math.ceil(gaugePa / 1000))} kPa)`;
}

function isoDay(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}
