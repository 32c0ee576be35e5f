import { backwardInPlace, factorInPlace, forwardInPlace } from '../../numerics/cholesky.ts';
import { designClasses, responseSpread, responseVariancesOf } from './design-spread.ts';
import type { Expectation, Expectations } from './expectation.ts';
import { expectationsIn, spreadOf } from './expectation.ts';
import { observableCount as order } from './observables.ts';
import type { Observation } from './observe.ts';
import { frostLog, isFrostUnseen, plugged, pluggedLog, priorLog, standingLog } from './prior-odds.ts';
import type { ReadingSet } from './reading-set.ts';
import type { Hypothesis, ResponseTable } from './response-form.ts';
import { fittedStates, hypotheses } from './response-form.ts';
import { weatherOf } from './weather.ts';

/** Severities over which a fault is spread evenly, from hardly there to the worst that was fitted. Own choice. */
const severities = [0.1, 0.25, 0.42, 0.6, 0.78, 0.95] as const;
/** An iced coil lets less air through than the worst dirt that was fitted. Own choice. */
const icedSeverities = [1, 1.4, 1.8] as const;
/** Degrees of freedom of the likelihood: tails so heavy that no single reading rules. Own choice. */
const freedom = 6;

/** One hypothesis after all evidence. */
export interface WeighedCause {
  readonly hypothesis: Hypothesis;
  /** Share of belief; all of them add up to 1. */
  readonly belief: number;
  /** The severity that fits best on the average, 0 to 1. */
  readonly severity: number;
}

export interface Weighed {
  /** Likeliest first. */
  readonly causes: readonly WeighedCause[];
  readonly expectations: Expectations;
  /**
   * Logarithm of how many times likelier the likeliest cause makes the readings than a sound unit does, priors aside, when the one
   * reading that speaks most for it is left out. Below zero a single sign carries the cause.
   */
  readonly withoutStrongest: number;
}

/** What one hypothesis makes of the readings. */
interface Sheet {
  readonly hypothesis: Hypothesis;
  /** Logarithms of the likelihood of what was measured with clamps, thermometers and gauges, and of everything with the prior. */
  readonly log: number;
  readonly total: number;
  readonly severity: number;
}

/**
 * Beliefs in every cause: prior odds times the likelihood of all readings together, each held against what this weather lets
 * expect of such a fault, its size weighed by the doubt of instruments, the scatter of units and the spread of designs.
 *
 * @source Bayes' theorem; multivariate Student likelihood; means and covariances from the table (regression) and design-spread.ts
 */
export function weighCauses(set: ReadingSet, observation: Observation, table: ResponseTable): Weighed {
  const expectations = expectationsIn(weatherOf(set), observation.volts, table);
  const places = observation.values.flatMap((value, place) => (value === undefined ? [] : [place]));
  const evidence: Evidence = { set, observation, expectations, places, table, plugged: plugged(set) };
  // Ice is a question only while nobody looked for it.
  const asked = isFrostUnseen(set) ? hypotheses : fittedStates;
  const sheets = asked.map((hypothesis) => sheetOf(hypothesis, evidence));
  const highest = Math.max(...sheets.map(({ total }) => total));
  const sum = sheets.reduce((all, { total }) => all + Math.exp(total - highest), 0);
  const causes = sheets
    .map(({ hypothesis, total, severity }) => ({
      hypothesis,
      severity,
      belief: Math.exp(total - highest) / sum,
    }))
    .sort((one, other) => other.belief - one.belief);
  const leading = sheets.find(({ hypothesis }) => hypothesis === causes[0]!.hypothesis)!;
  return { causes, expectations, withoutStrongest: withoutStrongest(leading, sheets[0]!, evidence) };
}

/** Signs that are no number each count as one reading. */
function withoutStrongest(leading: Sheet, sound: Sheet, evidence: Evidence): number {
  const { standing, gates } = evidence.set;
  const signs = [
    standingLog(leading.hypothesis, standing) - standingLog('nothing wrong', standing),
    frostLog(leading.hypothesis, leading.severity, gates.frost) - frostLog('nothing wrong', 0, gates.frost),
    pluggedLog(leading.hypothesis, evidence.plugged) - pluggedLog('nothing wrong', evidence.plugged),
  ];
  const seen = signs.reduce((sum, sign) => sum + sign, 0);
  let least = leading.log - sound.log + seen - Math.max(0, ...signs);
  if (leading === sound) return least;
  const without = withoutEach(leading.hypothesis, evidence);
  const soundWithout = withoutEach('nothing wrong', evidence);
  for (let index = 0; index < without.length; index += 1)
    least = Math.min(least, without[index]! - soundWithout[index]! + seen);
  return least;
}

interface Evidence {
  readonly set: ReadingSet;
  readonly observation: Observation;
  readonly expectations: Expectations;
  readonly places: readonly number[];
  readonly table: ResponseTable;
  /** See plugged. */
  readonly plugged: number;
}

// Written anew by every call and never kept: one call is some hundred small matrices.
const matrix = new Float64Array(order * order);
const residual = new Float64Array(order);
const solved = new Float64Array(order);
const mean = new Float64Array(order);
const unit = new Float64Array(order);
const inverseDiagonal = new Float64Array(order);
const classLogs = Float64Array.from(designClasses, ({ share }) => Math.log(share));

function severitiesOf(hypothesis: Hypothesis): readonly number[] {
  if (hypothesis === 'nothing wrong') return [0];
  return hypothesis === 'ice' ? icedSeverities : severities;
}

function sheetOf(hypothesis: Hypothesis, evidence: Evidence): Sheet {
  const { set } = evidence;
  const measured = new LogSum();
  const withFrost = new LogSum();
  const grid = severitiesOf(hypothesis);
  const even = -Math.log(grid.length);
  for (const severity of grid) {
    const count = prepare(hypothesis, severity, evidence);
    const frost = frostLog(hypothesis, severity, set.gates.frost);
    for (let index = 0; index < designClasses.length; index += 1) {
      const distance = distanceTo(designClasses[index]!.shift, evidence);
      const log = even + classLogs[index]! + studentLog(distance, logDeterminant, count);
      measured.add(log, severity);
      withFrost.add(log + frost, severity);
    }
  }
  return {
    hypothesis,
    log: measured.log(),
    total:
      withFrost.log() +
      priorLog(hypothesis, set) +
      standingLog(hypothesis, set.standing) +
      pluggedLog(hypothesis, evidence.plugged),
    severity: withFrost.mean(),
  };
}

/** Logarithm of the likelihood without each of the measured readings in turn: it follows from the inverse of the whole. */
function withoutEach(hypothesis: Hypothesis, evidence: Evidence): readonly number[] {
  const sums = evidence.places.map(() => new LogSum());
  const grid = severitiesOf(hypothesis);
  const even = -Math.log(grid.length);
  for (const severity of grid) {
    const count = prepare(hypothesis, severity, evidence);
    fillInverseDiagonal(count);
    for (let index = 0; index < designClasses.length; index += 1) {
      const distance = distanceTo(designClasses[index]!.shift, evidence);
      for (let left = 0; left < count; left += 1) {
        const precision = inverseDiagonal[left]!;
        const shorter = distance - solved[left]! ** 2 / precision;
        const log = studentLog(shorter, logDeterminant + Math.log(precision), count - 1);
        sums[left]!.add(even + classLogs[index]! + log, severity);
      }
    }
  }
  return sums.map((sum) => sum.log());
}

let logDeterminant = 0;

/** Mean and factored covariances of one hypothesis at one severity. @returns how many readings there are */
function prepare(hypothesis: Hypothesis, severity: number, evidence: Evidence): number {
  fillMean(evidence.expectations, evidence.expectations.of.get(hypothesis)!, severity);
  fillMatrix(hypothesis, severity, evidence);
  logDeterminant = factorInPlace(matrix, evidence.places.length);
  return evidence.places.length;
}

/** Squared distance of the readings from the mean of one class of design, in standard deviations; leaves the solution in `solved`. */
function distanceTo(shift: Float64Array, { observation, places }: Evidence): number {
  const count = places.length;
  for (let index = 0; index < count; index += 1) {
    const place = places[index]!;
    residual[index] = observation.values[place]! - mean[place]! - shift[place]!;
    solved[index] = residual[index]!;
  }
  forwardInPlace(matrix, count, solved);
  backwardInPlace(matrix, count, solved);
  let distance = 0;
  for (let index = 0; index < count; index += 1) distance += residual[index]! * solved[index]!;
  return distance;
}

/** Logarithm of the multivariate Student density; what depends on the count alone is the same for every hypothesis and is left out. */
function studentLog(distance: number, determinantLog: number, count: number): number {
  return -0.5 * (determinantLog + (freedom + count) * Math.log1p(Math.max(distance, 0) / freedom));
}

function fillMean({ sound }: Expectations, { first, square }: Expectation, severity: number): void {
  for (let place = 0; place < order; place += 1)
    mean[place] = sound[place]! + severity * (first[place]! + severity * square[place]!);
}

/** Covariances of what was measured: spread and scatter, instruments, response of the design, weather and volts in doubt. */
function fillMatrix(hypothesis: Hypothesis, severity: number, evidence: Evidence): void {
  const { observation, expectations, places, table } = evidence;
  const spread = spreadOf(hypothesis, table);
  const count = places.length;
  const { drift } = expectations.of.get(hypothesis)!;
  const voltsVariance = observation.voltsDoubt ** 2;
  const response = responseVariancesOf(hypothesis);
  for (let i = 0; i < count; i += 1) {
    const row = places[i]!;
    for (let j = 0; j <= i; j += 1) {
      const column = places[j]!;
      let value = spread[row * order + column]! + observation.instruments[row * order + column]!;
      for (let part = 0; part < drift.length; part += 1) {
        const { first, square } = drift[part]!;
        const base = expectations.soundDrift[part]!;
        value +=
          (base[row]! + severity * (first[row]! + severity * square[row]!)) *
          (base[column]! + severity * (first[column]! + severity * square[column]!));
      }
      if (voltsVariance > 0) value += voltsVariance * expectations.volts[row]! * expectations.volts[column]!;
      if (i === j)
        value +=
          (responseSpread * (mean[row]! - expectations.sound[row]!)) ** 2 + severity ** 2 * response[row]!;
      matrix[i * count + j] = value;
    }
  }
}

/** Diagonal of the inverse, from the factor: a column of the unit matrix solved forward, and its sum of squares. */
function fillInverseDiagonal(count: number): void {
  for (let column = 0; column < count; column += 1) {
    unit.fill(0);
    unit[column] = 1;
    forwardInPlace(matrix, count, unit);
    let sum = 0;
    for (let index = column; index < count; index += 1) sum += unit[index]! ** 2;
    inverseDiagonal[column] = sum;
  }
}

/** A sum of exponentials that would overflow or vanish, and the mean of what belongs to them, kept beside the highest. */
class LogSum {
  private highest = -Infinity;
  private sum = 0;
  private weighted = 0;

  add(log: number, severity: number): void {
    if (log > this.highest) {
      const shrink = Math.exp(this.highest - log);
      this.sum = this.sum * shrink + 1;
      this.weighted = this.weighted * shrink + severity;
      this.highest = log;
    } else {
      const weight = Math.exp(log - this.highest);
      this.sum += weight;
      this.weighted += weight * severity;
    }
  }

  log(): number {
    return this.highest + Math.log(this.sum);
  }

  mean(): number {
    return this.weighted / this.sum;
  }
}
