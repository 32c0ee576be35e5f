/** Of a small unit at its rated load. Common practice, no source. */
export const usualPowerFactor = 0.97;

/**
 * Running amps of a unit from what its label says it delivers: W = capacity / efficiency, I = W / (V x power factor).
 *
 * @param label - capacity [W of cooling], efficiency [W/W], single phase [V]
 * @returns [A]
 * @source definition of efficiency and power factor
 */
export function expectedAmps(label: {
  readonly capacityW: number;
  readonly efficiency: number;
  readonly volts: number;
  readonly powerFactor: number;
}): number {
  return label.capacityW / label.efficiency / (label.volts * label.powerFactor);
}
