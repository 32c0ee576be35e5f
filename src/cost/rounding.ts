/**
 * To what a cost a year is rounded wherever one is shown: ones below a hundred, tens below ten thousand, then hundreds, and so
 * on. One step for all choices of an estimate, from the dearest: no range is narrower than it, and nothing hangs on less.
 */
export function yearlyStep(costs: readonly number[]): number {
  const dearest = Math.max(1, ...costs.filter(Number.isFinite));
  const digits = Math.floor(Math.log10(dearest));
  return digits < 2 ? 1 : 10 ** Math.max(1, digits - 2);
}

export function roundedTo(step: number, cost: number): number {
  return Math.round(cost / step) * step;
}
