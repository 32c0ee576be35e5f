import type { GaussianTerms } from '../../data/equation-form.ts';
import type { Derivatives } from './derivatives.ts';

/**
 * Adds Σ n δ^d τ^t exp(-η (δ-ε)² - β (τ-γ)²).
 * g = d - 2ηδ(δ-ε), k = t - 2βτ(τ-γ); δ∂g/∂δ - g = -d - 2ηδ².
 */
export function addGaussianTerms(terms: GaussianTerms, delta: number, tau: number, sum: Derivatives): void {
  const { n, d, t, eta, epsilon, beta, gamma } = terms;
  const lnDelta = Math.log(delta);
  const lnTau = Math.log(tau);
  for (let i = 0; i < n.length; i++) {
    const offDelta = delta - epsilon[i]!;
    const offTau = tau - gamma[i]!;
    const term =
      n[i]! *
      Math.exp(d[i]! * lnDelta + t[i]! * lnTau - eta[i]! * offDelta * offDelta - beta[i]! * offTau * offTau);
    const g = d[i]! - 2 * eta[i]! * delta * offDelta;
    const k = t[i]! - 2 * beta[i]! * tau * offTau;
    sum.value += term;
    sum.delta += term * g;
    sum.deltaDelta += term * (g * g - d[i]! - 2 * eta[i]! * delta * delta);
    sum.tau += term * k;
  }
}
