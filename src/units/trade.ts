/** The units in which the trade states its limits, for constants inside the calculations. */

/** Degrees Fahrenheit → kelvin. */
export function fahrenheitK(degF: number): number {
  return ((degF + 459.67) * 5) / 9;
}

/** A difference in degrees Fahrenheit → kelvin. */
export function fahrenheitDifferenceK(degF: number): number {
  return (degF * 5) / 9;
}

/** Pound-force per square inch → pascal, a difference or an absolute pressure. */
export function psiPa(psi: number): number {
  return psi * 6894.757293168361;
}

export function minutesS(minutes: number): number {
  return minutes * 60;
}
