import type { ResidualTerms } from '../../data/equation-form.ts';
import type { Derivatives } from './derivatives.ts';
import { addExponentialTerms } from './exponential-terms.ts';
import { addGaussianTerms } from './gaussian-terms.ts';
import { addNonAnalyticTerms } from './non-analytic-terms.ts';

/** Adds a fluid's residual Helmholtz energy at (δ, τ) to `sum`. */
export function addResidual(terms: ResidualTerms, delta: number, tau: number, sum: Derivatives): void {
  addExponentialTerms(terms.exponential, delta, tau, sum);
  if (terms.gaussian) addGaussianTerms(terms.gaussian, delta, tau, sum);
  if (terms.nonAnalytic) addNonAnalyticTerms(terms.nonAnalytic, delta, tau, sum);
}
