/** Mole fractions from mass fractions: (w_i/M_i) / Σ (w_k/M_k). */
export function moleFractions(masses: readonly number[], molarMasses: readonly number[]): number[] {
  const moles = masses.map((mass, i) => mass / molarMasses[i]!);
  const total = moles.reduce((sum, n) => sum + n, 0);
  return moles.map((n) => n / total);
}
