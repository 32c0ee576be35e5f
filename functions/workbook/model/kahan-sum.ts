/** A running sum that keeps what rounding would lose (Neumaier's variant of Kahan summation). */
export interface RunningSum {
  total: number;
  lost: number;
}

export function startSum(): RunningSum {
  return { total: 0, lost: 0 };
}

export function addTo(sum: RunningSum, value: number): void {
  const total = sum.total + value;
  sum.lost += Math.abs(sum.total) >= Math.abs(value) ? sum.total - total + value : value - total + sum.total;
  sum.total = total;
}

export function sumOf(sum: RunningSum): number {
  return sum.total + sum.lost;
}
