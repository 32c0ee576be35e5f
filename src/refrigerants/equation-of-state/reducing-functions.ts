import type { FluidEquation } from '../../data/equation-form.ts';

export interface ReducingPair {
  readonly i: number;
  readonly j: number;
  readonly betaT: number;
  readonly gammaT: number;
  readonly betaV: number;
  readonly gammaV: number;
}

export interface ReducingPoint {
  readonly temperatureK: number;
  readonly densityMolPerM3: number;
}

export interface ReducingDerivatives extends ReducingPoint {
  /** n ∂T_r/∂n_i / T_r */
  readonly temperatureShift: readonly number[];
  /** n ∂ρ_r/∂n_i / ρ_r */
  readonly densityShift: readonly number[];
}

/**
 * Reducing temperature and density of a mixture and how they move with composition:
 *   Y(x) = Σ x_i² Y_i + Σ_{i<j} 2 x_i x_j β γ (x_i + x_j)/(β² x_i + x_j) Y_ij
 * with Y = T, Y_ij = √(T_i T_j), and Y = v = 1/ρ, Y_ij = (v_i^⅓ + v_j^⅓)³/8.
 * The mole fractions are treated as independent; n∂Y/∂n_i = ∂Y/∂x_i - Σ x_k ∂Y/∂x_k.
 * @source Kunz-JCED-2012
 */
export function reducingDerivatives(
  components: readonly FluidEquation[],
  pairs: readonly ReducingPair[],
  x: readonly number[],
): ReducingDerivatives {
  let temperature = 0;
  let volume = 0;
  const temperatureSlope = components.map((c, i) => {
    temperature += x[i]! * x[i]! * c.reducingTemperatureK;
    return 2 * x[i]! * c.reducingTemperatureK;
  });
  const volumeSlope = components.map((c, i) => {
    volume += (x[i]! * x[i]!) / c.reducingDensityMolPerM3;
    return (2 * x[i]!) / c.reducingDensityMolPerM3;
  });
  for (const { i, j, betaT, gammaT, betaV, gammaV } of pairs) {
    const [one, other] = [components[i]!, components[j]!];
    const pairT = Math.sqrt(one.reducingTemperatureK * other.reducingTemperatureK);
    const vi = 1 / one.reducingDensityMolPerM3;
    const vj = 1 / other.reducingDensityMolPerM3;
    const pairV = Math.pow(Math.cbrt(vi) + Math.cbrt(vj), 3) / 8;
    temperature += addPair(x, i, j, betaT, 2 * betaT * gammaT * pairT, temperatureSlope);
    volume += addPair(x, i, j, betaV, 2 * betaV * gammaV * pairV, volumeSlope);
  }
  const meanT = temperatureSlope.reduce((sum, slope, k) => sum + x[k]! * slope, 0);
  const meanV = volumeSlope.reduce((sum, slope, k) => sum + x[k]! * slope, 0);
  return {
    temperatureK: temperature,
    densityMolPerM3: 1 / volume,
    temperatureShift: temperatureSlope.map((slope) => (slope - meanT) / temperature),
    densityShift: volumeSlope.map((slope) => -(slope - meanV) / volume),
  };
}

/** Adds the slopes of c x_i x_j (x_i + x_j)/(β² x_i + x_j) and returns its value. */
function addPair(
  x: readonly number[],
  i: number,
  j: number,
  beta: number,
  c: number,
  slopes: number[],
): number {
  const [xi, xj] = [x[i]!, x[j]!];
  const below = beta * beta * xi + xj;
  if (below === 0) return 0;
  const ratio = (xi + xj) / below;
  slopes[i]! += c * xj * (ratio + (xi * (below - (xi + xj) * beta * beta)) / (below * below));
  slopes[j]! += c * xi * (ratio + (xj * (below - (xi + xj))) / (below * below));
  return c * xi * xj * ratio;
}

/** Only the reducing point. */
export function reducingPoint(
  components: readonly FluidEquation[],
  pairs: readonly ReducingPair[],
  x: readonly number[],
): ReducingPoint {
  const { temperatureK, densityMolPerM3 } = reducingDerivatives(components, pairs, x);
  return { temperatureK, densityMolPerM3 };
}
