export interface Running {
  /** Cooling at full charge [W]. */
  readonly capacityW: number;
  /** Cooling over electric power at full charge [W/W]. */
  readonly efficiency: number;
  /** Full-load running time a year [s]. */
  readonly runS: number;
  /** Money per joule. */
  readonly powerPricePerJ: number;
  /** Share of the efficiency that is lost, 0 to 1. */
  readonly efficiencyLoss: number;
}

/**
 * Money a year for electricity when the same cooling is delivered.
 * cost = capacity x time / (efficiency (1 - loss)) x price
 */
export function runCostPerYear({
  capacityW,
  efficiency,
  runS,
  powerPricePerJ,
  efficiencyLoss,
}: Running): number {
  return ((capacityW * runS) / (efficiency * (1 - efficiencyLoss))) * powerPricePerJ;
}
