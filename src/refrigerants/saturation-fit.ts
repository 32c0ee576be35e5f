import type { SaturationTable } from '../data/saturation-form.ts';
import { pressureQuantum, propertyQuantum } from '../data/saturation-form.ts';
import { chebyshevDerivative, chebyshevFit, chebyshevNodes, chebyshevValue } from '../numerics/chebyshev.ts';

function decode(counts: readonly number[], quantum: number): Float64Array {
  return Float64Array.from(counts, (count) => count * quantum);
}

/** ln p of one curve as a series in s, and its inverse s(p): a short series that only starts a Newton iteration. */
interface PressureSeries {
  readonly value: Float64Array;
  readonly inverse: Float64Array;
  /** ln p_s just above the top of the curve: the inverse is a series in q = √(top - ln p). */
  readonly top: number;
  /** q is mapped to [-1, 1] as q * inversePerHalf - inverseMiddle. */
  readonly inversePerHalf: number;
  readonly inverseMiddle: number;
  readonly lowestPressurePa: number;
  readonly highestPressurePa: number;
}

const inverseDegree = 16;

/** The derived saturation curves of one refrigerant, ready to evaluate. All SI and by mass. */
export class SaturationFit {
  readonly lowestTemperatureK: number;
  readonly highestTemperatureK: number;
  private readonly scaleK: number;
  private readonly logScalePressure: number;
  private readonly scaleDensity: number;
  private readonly scaleEnthalpy: number;
  private readonly middle: number;
  private readonly perHalf: number;
  private readonly low: number;
  private readonly high: number;
  private readonly bubble: PressureSeries;
  private readonly dew: PressureSeries;
  private readonly liquid: Float64Array;
  private readonly vapor: Float64Array;
  private readonly heat: Float64Array;

  constructor(table: SaturationTable) {
    const [scaleK, scalePressure, scaleDensity, scaleEnthalpy] = table.scale;
    this.scaleK = scaleK;
    this.logScalePressure = Math.log(scalePressure);
    this.scaleDensity = scaleDensity;
    this.scaleEnthalpy = scaleEnthalpy;
    this.low = table.low;
    this.high = table.high;
    this.middle = (table.low + table.high) / 2;
    this.perHalf = 2 / (table.high - table.low);
    this.lowestTemperatureK = scaleK * (1 - table.high * table.high);
    this.highestTemperatureK = scaleK * (1 - table.low * table.low);
    this.bubble = this.pressureSeries(decode(table.bubble, pressureQuantum));
    this.dew =
      table.dew === undefined ? this.bubble : this.pressureSeries(decode(table.dew, pressureQuantum));
    this.liquid = decode(table.liquid, propertyQuantum);
    this.vapor = decode(table.vapor, propertyQuantum);
    this.heat = decode(table.heat, propertyQuantum);
  }

  private pressureSeries(value: Float64Array): PressureSeries {
    const slope = chebyshevDerivative(value).map((c) => c * this.perHalf);
    const logPressure = (s: number) => this.logPressure(value, s);
    // Straight on in T from the end of the curve to T_s.
    const s = this.low;
    const y = chebyshevValue(value, -1);
    const rest = 1 - s * s;
    const perS = (chebyshevValue(slope, -1) * rest + y * 2 * s) / (rest * rest);
    const top = logPressure(s) - (perS * s) / 2 + 1e-6;
    const inverseLow = Math.sqrt(top - logPressure(this.low));
    const inverseHigh = Math.sqrt(top - logPressure(this.high));
    const inverse = chebyshevFit(
      chebyshevNodes(inverseDegree + 1).map((node) => {
        const q = (inverseLow + inverseHigh) / 2 + (node * (inverseHigh - inverseLow)) / 2;
        return this.bisect(value, top - q * q);
      }),
    );
    return {
      value,
      inverse,
      top,
      inversePerHalf: 2 / (inverseHigh - inverseLow),
      inverseMiddle: (inverseHigh + inverseLow) / (inverseHigh - inverseLow),
      lowestPressurePa: Math.exp(logPressure(this.high)),
      highestPressurePa: Math.exp(logPressure(this.low)),
    };
  }

  /** s at a pressure, slowly and safely: only used while the inverse series is set up. */
  private bisect(value: Float64Array, target: number): number {
    let [low, high] = [this.low, this.high];
    for (let k = 0; k < 60; k++) {
      const s = (low + high) / 2;
      if (this.logPressure(value, s) > target) low = s;
      else high = s;
    }
    return (low + high) / 2;
  }

  private logPressure(value: Float64Array, s: number): number {
    return this.logScalePressure + chebyshevValue(value, (s - this.middle) * this.perHalf) / (1 - s * s);
  }

  private variable(temperatureK: number): number {
    const square = 1 - temperatureK / this.scaleK;
    return square > 0 ? Math.sqrt(square) : 0;
  }

  private series(curve: 'dew' | 'bubble'): PressureSeries {
    return curve === 'dew' ? this.dew : this.bubble;
  }

  lowestPressurePa(curve: 'dew' | 'bubble'): number {
    return this.series(curve).lowestPressurePa;
  }

  highestPressurePa(curve: 'dew' | 'bubble'): number {
    return this.series(curve).highestPressurePa;
  }

  pressurePa(temperatureK: number, curve: 'dew' | 'bubble'): number {
    return Math.exp(this.logPressure(this.series(curve).value, this.variable(temperatureK)));
  }

  /**
   * Newton in s, started from the inverse series and kept inside the table: y(s) = (1 - s²) ln(p/p_s). The start is good
   * enough for one step; the value and the slope of y come out of one backward recurrence.
   */
  temperatureK(pressurePa: number, curve: 'dew' | 'bubble'): number {
    const series = curve === 'dew' ? this.dew : this.bubble;
    const target = Math.log(pressurePa);
    const fromTop = series.top - target;
    const q = fromTop > 0 ? Math.sqrt(fromTop) : 0;
    let s = chebyshevValue(series.inverse, q * series.inversePerHalf - series.inverseMiddle);
    const reduced = target - this.logScalePressure;
    const value = series.value;
    for (let step = 0; step < 6; step++) {
      if (s < this.low) s = this.low;
      else if (s > this.high) s = this.high;
      const x = (s - this.middle) * this.perHalf;
      const twice = 2 * x;
      let b = 0;
      let afterB = 0;
      let d = 0;
      let afterD = 0;
      for (let k = value.length - 1; k > 0; k--) {
        const nextD = 2 * b + twice * d - afterD;
        afterD = d;
        d = nextD;
        const nextB = value[k]! + twice * b - afterB;
        afterB = b;
        b = nextB;
      }
      const y = value[0]! + x * b - afterB;
      const slope = (b + x * d - afterD) * this.perHalf;
      const change = (y - reduced * (1 - s * s)) / (slope + 2 * s * reduced);
      s -= change;
      if (change < 1e-6 && change > -1e-6) break;
    }
    return this.scaleK * (1 - s * s);
  }

  /** Where the two phases meet: the end of the curves, a little above the highest temperature of the table. */
  get criticalTemperatureK(): number {
    return this.scaleK;
  }

  /** The bubble pressure carried on to the critical temperature. */
  get criticalPressurePa(): number {
    return Math.exp(this.bubble.top);
  }

  liquidDensity(temperatureK: number): number {
    const x = (this.variable(temperatureK) - this.middle) * this.perHalf;
    return this.scaleDensity * chebyshevValue(this.liquid, x);
  }

  vaporDensity(temperatureK: number): number {
    const x = (this.variable(temperatureK) - this.middle) * this.perHalf;
    return this.scaleDensity * Math.exp((chebyshevValue(this.vapor, x) * this.scaleK) / temperatureK);
  }

  latentHeat(temperatureK: number): number {
    const x = (this.variable(temperatureK) - this.middle) * this.perHalf;
    return this.scaleEnthalpy * chebyshevValue(this.heat, x);
  }
}
