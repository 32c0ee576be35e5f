import type { NonAnalyticTerms } from '../../data/equation-form.ts';
import type { Derivatives } from './derivatives.ts';

/**
 * Adds Σ n Δ^b δ ψ with ψ = exp(-C(δ-1)² - D(τ-1)²), Δ = θ² + B[(δ-1)²]^a, θ = (1-τ) + A[(δ-1)²]^(1/(2β)).
 * The second derivatives are singular exactly at δ = 1, so δ is moved off it by a hair.
 */
export function addNonAnalyticTerms(
  terms: NonAnalyticTerms,
  delta: number,
  tau: number,
  sum: Derivatives,
): void {
  const x = Math.abs(delta - 1) < 1e-10 ? 1e-10 : delta - 1;
  const square = x * x;
  const y = tau - 1;
  for (let i = 0; i < terms.n.length; i++) {
    const [n, a, b] = [terms.n[i]!, terms.a[i]!, terms.b[i]!];
    const [A, B, C, D] = [terms.A[i]!, terms.B[i]!, terms.C[i]!, terms.D[i]!];
    const inverse = 1 / (2 * terms.beta[i]!);

    const theta = -y + A * Math.pow(square, inverse);
    const thetaD = 2 * A * inverse * Math.pow(square, inverse - 1) * x;
    const thetaDD = 2 * A * inverse * (2 * inverse - 1) * Math.pow(square, inverse - 1);
    const distance = theta * theta + B * Math.pow(square, a);
    const distanceD = 2 * theta * thetaD + 2 * B * a * Math.pow(square, a - 1) * x;
    const distanceDD =
      2 * thetaD * thetaD + 2 * theta * thetaDD + 2 * B * a * (2 * a - 1) * Math.pow(square, a - 1);

    const F = Math.pow(distance, b);
    const slope = b * Math.pow(distance, b - 1);
    const curvature = b * (b - 1) * Math.pow(distance, b - 2);
    const FD = slope * distanceD;
    const FDD = slope * distanceDD + curvature * distanceD * distanceD;
    const FT = -2 * theta * slope;

    const psi = n * Math.exp(-C * square - D * y * y);
    const p = -2 * C * x;
    const q = -2 * D * y;
    // f = F δ ψ; along δ: f' = ψ [F + δ (F' + p F)]
    const inner = FD + p * F;
    const innerD = FDD + p * FD - 2 * C * F + p * inner;
    const alongT = FT + q * F;
    sum.value += psi * delta * F;
    sum.delta += psi * delta * (F + delta * inner);
    sum.deltaDelta += psi * delta * delta * (2 * inner + delta * innerD);
    sum.tau += psi * delta * tau * alongT;
  }
}
