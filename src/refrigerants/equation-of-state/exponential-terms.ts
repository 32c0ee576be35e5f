import type { ExponentialTerms } from '../../data/equation-form.ts';
import type { Derivatives } from './derivatives.ts';

/**
 * Adds Σ n δ^d τ^t exp(-δ^l) exp(-τ^m).
 * With g = δ∂ln/∂δ = d - l δ^l and k = τ∂ln/∂τ = t - m τ^m every derivative is the term times a polynomial in g and k.
 */
export function addExponentialTerms(
  terms: ExponentialTerms,
  delta: number,
  tau: number,
  sum: Derivatives,
): void {
  const { n, d, t, l, m } = terms;
  const lnDelta = Math.log(delta);
  const lnTau = Math.log(tau);
  for (let i = 0; i < n.length; i++) {
    let exponent = d[i]! * lnDelta + t[i]! * lnTau;
    let g = d[i]!;
    let gSlope = 0;
    const power = l[i]!;
    if (power !== 0) {
      const deltaPower = Math.pow(delta, power);
      exponent -= deltaPower;
      g -= power * deltaPower;
      gSlope = -power * power * deltaPower;
    }
    let k = t[i]!;
    const tauExponent = m === undefined ? 0 : m[i]!;
    if (tauExponent !== 0) {
      const tauPower = Math.pow(tau, tauExponent);
      exponent -= tauPower;
      k -= tauExponent * tauPower;
    }
    const term = n[i]! * Math.exp(exponent);
    sum.value += term;
    sum.delta += term * g;
    sum.deltaDelta += term * (g * g - g + gSlope);
    sum.tau += term * k;
  }
}
