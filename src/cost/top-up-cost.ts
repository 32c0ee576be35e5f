export interface ToppingUp {
  /** Share of nameplate lost a year. */
  readonly leakPerYear: number;
  readonly nameplateKg: number;
  /** One call: trip and labor. */
  readonly visitPrice: number;
  readonly refrigerantPricePerKg: number;
  /** Share of nameplate at which the customer calls again. */
  readonly refillAt: number;
}

/** Calls a year: what leaks in a year over what may leak between two calls. */
export function visitsPerYear({
  leakPerYear,
  refillAt,
}: Pick<ToppingUp, 'leakPerYear' | 'refillAt'>): number {
  return leakPerYear / (1 - refillAt);
}

/** Money a year for calls and refrigerant when a leaking unit is topped up to nameplate again and again. */
export function topUpCostPerYear(unit: ToppingUp): number {
  return (
    visitsPerYear(unit) * unit.visitPrice + unit.leakPerYear * unit.nameplateKg * unit.refrigerantPricePerKg
  );
}
