import { CalcError } from '../errors.ts';

export interface WeighInRequest {
  readonly nameplateKg: number;
  /** Connecting line [m]; undefined for a self-contained unit, which has none. */
  readonly lineLengthM?: number | undefined;
  /** Line that the nameplate charge already covers [m]. */
  readonly includedLengthM?: number | undefined;
  /** The maker's allowance [kg/m]. */
  readonly adderKgPerM?: number | undefined;
  /** Held in the hoses when the cylinder is closed, and not reaching the unit [kg]. */
  readonly hoseKg?: number | undefined;
}

/**
 * What must leave the cylinder to charge an empty unit.
 *
 * m = nameplate + (line length - included length) x adder + hoses
 *
 * A self-contained unit has no line and no adder.
 *
 * @throws CalcError invalid-argument when only a part of the line is described
 * @throws CalcError out-of-range when the deduction for a short line leaves nothing
 * @source mass balance; the adder is the maker's
 */
export function weighInKg(request: WeighInRequest): number {
  const { nameplateKg, hoseKg = 0 } = request;
  const totalKg = nameplateKg + lineKg(request) + hoseKg;
  if (totalKg > 0) return totalKg;
  throw new CalcError('the deduction for a short line is larger than the nameplate charge', {
    code: 'out-of-range',
    parameter: 'adder',
    limit: 'an adder from the maker of the unit',
  });
}

function lineKg({ lineLengthM, includedLengthM, adderKgPerM }: WeighInRequest): number {
  const given = [lineLengthM, includedLengthM, adderKgPerM];
  if (given.every((value) => value === undefined)) return 0;
  if (lineLengthM === undefined || includedLengthM === undefined || adderKgPerM === undefined) {
    const names = ['line_length', 'included_length', 'adder'];
    const missing = names[given.indexOf(undefined)];
    throw new CalcError('a line needs its length, the length in the nameplate charge and the adder', {
      code: 'invalid-argument',
      parameter: missing,
      received: 'blank',
      limit: 'all three, or none for a self-contained unit',
    });
  }
  return (lineLengthM - includedLengthM) * adderKgPerM;
}
