/**
 * Reduced residual Helmholtz energy α and its derivatives, each multiplied by the powers of δ and τ that make it
 * dimensionless: δ∂/∂δ, δ²∂²/∂δ², τ∂/∂τ. Terms add into one of these.
 */
export interface Derivatives {
  value: number;
  delta: number;
  deltaDelta: number;
  tau: number;
}

export function zeroDerivatives(): Derivatives {
  return { value: 0, delta: 0, deltaDelta: 0, tau: 0 };
}

export function clear(sum: Derivatives): void {
  sum.value = sum.delta = sum.deltaDelta = sum.tau = 0;
}

/** sum += factor * part */
export function accumulate(sum: Derivatives, part: Derivatives, factor: number): void {
  sum.value += factor * part.value;
  sum.delta += factor * part.delta;
  sum.deltaDelta += factor * part.deltaDelta;
  sum.tau += factor * part.tau;
}
