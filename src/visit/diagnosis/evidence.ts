import type { Phrase } from '../../phrase.ts';
import { figure, phrase } from '../../phrase.ts';
import type { Expectations } from './expectation.ts';
import { spreadOf } from './expectation.ts';
import { ampsScale, observableCount as order, placeOf } from './observables.ts';
import type { Observation } from './observe.ts';
import { frostLog, plugged, pluggedLog, standingLog } from './prior-odds.ts';
import type { ReadingSet } from './reading-set.ts';
import type { Hypothesis, ResponseTable } from './response-form.ts';
import type { ReadingName, Symptom } from './symptoms.ts';
import { everySymptom, partsOf, supersededBy, symptoms } from './symptoms.ts';

/** One symptom that was measured, beside what a sound unit shows in this weather. */
export interface Finding {
  readonly symptom: Symptom | 'standing' | 'frost' | 'vacuum';
  readonly said: Phrase;
}

/** Findings of one cause, the strongest first; of a sound unit in the order of the symptoms. */
export interface Bearing {
  readonly inFavor: readonly Finding[];
  readonly against: readonly Finding[];
}

/** Everything known about one case, for the reasons behind a ranking. */
export interface Grounds {
  readonly set: ReadingSet;
  readonly observation: Observation;
  readonly expectations: Expectations;
  readonly table: ResponseTable;
  /** Readings that each symptom still lacks. */
  readonly lacking: ReadonlyMap<Symptom, readonly ReadingName[]>;
}

/** A symptom that was measured, in the scale of the observables. */
interface Measured {
  readonly symptom: Symptom;
  readonly value: number;
  /** Variance of the instruments. */
  readonly instrument: number;
  readonly isNormal: boolean;
  readonly said: Phrase;
}

/** What was measured is the same for every cause: worked out once for a case. */
const measuredOf = new WeakMap<Grounds, readonly Measured[]>();

/** A cause at the severity that fits it. */
export interface Suspect {
  readonly hypothesis: Hypothesis;
  readonly severity: number;
}

/** From this logarithm of a likelihood ratio on (about five to three) a finding is named. Own choice. */
const telling = 0.5;

/**
 * What speaks for a fault rather than for a sound unit, and against it; each symptom by itself. For a sound unit speaks what is normal, against it what is not.
 */
export function bearingOn(suspect: Suspect, rival: Suspect, grounds: Grounds): Bearing {
  const { set } = grounds;
  if (suspect.hypothesis === 'nothing wrong') return bearingOnSound(grounds);
  const weighed: { readonly finding: Finding; readonly log: number }[] = [];
  for (const measured of measuredSymptoms(grounds)) {
    const { symptom, said } = measured;
    const log = chanceOf(measured, suspect, grounds) - chanceOf(measured, rival, grounds);
    if (Math.abs(log) >= telling) weighed.push({ finding: { symptom, said }, log });
  }
  if (set.standing !== undefined) {
    weighed.push({
      finding: { symptom: 'standing', said: standingSaying[set.standing] },
      log: standingLog(suspect.hypothesis, set.standing) - standingLog(rival.hypothesis, set.standing),
    });
  }
  if (set.gates.frost === 'inlet only') {
    weighed.push({
      finding: { symptom: 'frost', said: phrase`frost at the coil inlet only` },
      log:
        frostLog(suspect.hypothesis, suspect.severity, 'inlet only') -
        frostLog(rival.hypothesis, rival.severity, 'inlet only'),
    });
  }
  const share = plugged(set);
  if (share > 0.5) {
    weighed.push({
      finding: { symptom: 'vacuum', said: phrase`suction in vacuum while liquid stands on the high side` },
      log: pluggedLog(suspect.hypothesis, share) - pluggedLog(rival.hypothesis, share),
    });
  }
  const strongest = weighed.sort((one, other) => Math.abs(other.log) - Math.abs(one.log));
  return {
    inFavor: strongest.filter(({ log }) => log >= telling).map(({ finding }) => finding),
    against: strongest.filter(({ log }) => log <= -telling).map(({ finding }) => finding),
  };
}

function bearingOnSound(grounds: Grounds): Bearing {
  const measured = measuredSymptoms(grounds);
  const { standing } = grounds.set;
  const stands: Finding[] =
    standing === undefined ? [] : [{ symptom: 'standing', said: standingSaying[standing] }];
  return {
    inFavor: [...measured.filter(({ isNormal }) => isNormal), ...(standing === 'matches' ? stands : [])],
    against: [...measured.filter(({ isNormal }) => !isNormal), ...(standing === 'matches' ? [] : stands)],
  };
}

const standingSaying = {
  matches: phrase`standing pressure matches the gas`,
  'within doubt': phrase`standing pressure at the edge of the gas`,
  'non-condensables': phrase`standing pressure above the gas`,
  mismatch: phrase`standing pressure below the gas`,
  empty: phrase`standing pressure that of the air outside`,
} as const;

/** A pipe whose gauge is on is told by superheat or subcooling. */
function measuredSymptoms(grounds: Grounds): readonly Measured[] {
  const known = measuredOf.get(grounds);
  if (known !== undefined) return known;
  const { set, observation } = grounds;
  const superseded = supersededBy(set);
  const measured = everySymptom
    .filter(
      (symptom) =>
        !superseded.includes(symptom) &&
        partsOf(symptom).every(
          (part) => part === undefined || observation.values[placeOf[part]] !== undefined,
        ),
    )
    .map((symptom) => {
      const value = valueOf(symptom, grounds);
      const instrument = quadratic(symptom, observation.instruments);
      return { symptom, value, instrument, ...saying(symptom, value, instrument, grounds) };
    });
  measuredOf.set(grounds, measured);
  return measured;
}

/** Standard deviations by which two suspects lie apart in one symptom that was not measured. */
export function apart(symptom: Symptom, one: Suspect, other: Suspect, grounds: Grounds): number {
  const deviation = Math.sqrt(varianceOf(symptom, one, grounds) + expectedInstrument(symptom, grounds));
  return Math.abs(meanOf(symptom, one, grounds) - meanOf(symptom, other, grounds)) / deviation;
}

/** A reading that is still to come will have about the doubt of a clamp. */
function expectedInstrument(symptom: Symptom, { set }: Grounds): number {
  return symptom === 'amps' ? 0.02 : (set.probeK ** 2 + set.airProbeK ** 2) / 4;
}

/** Logarithm of the density of one symptom by itself, with heavy tails. */
function chanceOf({ symptom, value, instrument }: Measured, suspect: Suspect, grounds: Grounds): number {
  const variance = varianceOf(symptom, suspect, grounds) + instrument;
  const residual = value - meanOf(symptom, suspect, grounds);
  const freedom = 6;
  return -0.5 * (Math.log(variance) + (freedom + 1) * Math.log1p(residual ** 2 / (freedom * variance)));
}

function valueOf(symptom: Symptom, { observation }: Grounds): number {
  const [first, second] = partsOf(symptom);
  return (
    observation.values[placeOf[first]]! - (second === undefined ? 0 : observation.values[placeOf[second]]!)
  );
}

function meanOf(symptom: Symptom, suspect: Suspect, { expectations }: Grounds): number {
  const [one, other] = partsOf(symptom);
  const first = meanAt(placeOf[one], suspect, expectations);
  return other === undefined ? first : first - meanAt(placeOf[other], suspect, expectations);
}

function meanAt(place: number, { hypothesis, severity }: Suspect, { sound: mean, of }: Expectations): number {
  const { first, square } = of.get(hypothesis)!;
  return mean[place]! + severity * (first[place]! + severity * square[place]!);
}

function varianceOf(symptom: Symptom, { hypothesis }: Suspect, grounds: Grounds): number {
  let variance = quadratic(symptom, spreadOf(hypothesis, grounds.table));
  const [one, other] = partsOf(symptom);
  for (const drift of grounds.expectations.soundDrift)
    variance += (drift[placeOf[one]]! - (other === undefined ? 0 : drift[placeOf[other]]!)) ** 2;
  return variance + (grounds.observation.voltsDoubt * grounds.expectations.volts[placeOf[one]]!) ** 2;
}

function quadratic(symptom: Symptom, matrix: Float64Array): number {
  const [first, second] = partsOf(symptom);
  const one = placeOf[first];
  if (second === undefined) return matrix[one * order + one]!;
  const other = placeOf[second];
  return matrix[one * order + one]! + matrix[other * order + other]! - 2 * matrix[one * order + other]!;
}

const sound: Suspect = { hypothesis: 'nothing wrong', severity: 0 };

/** "superheat 31.6 ± 2.1 degF high (2.0 degF to 20.0 degF)": the reading, its doubt, and the range of sound units in this weather. */
function saying(
  symptom: Symptom,
  value: number,
  instrument: number,
  grounds: Grounds,
): Pick<Measured, 'said' | 'isNormal'> {
  const mean = meanOf(symptom, sound, grounds);
  const range = 2 * Math.sqrt(varianceOf(symptom, sound, grounds));
  const doubt = 2 * Math.sqrt(instrument);
  const word = wordFor((value - mean) / (0.5 * Math.hypot(range, doubt)));
  const isNormal = word === normalWord;
  const { name } = symptoms[symptom];
  if (symptom === 'amps') {
    const rated = grounds.set.ratedAmps ?? 1;
    const amps = rated * Math.exp(value / ampsScale);
    const least = rated * Math.exp((mean - range) / ampsScale);
    const most = rated * Math.exp((mean + range) / ampsScale);
    const said = phrase`${name} ${figure(amps, 'current', { doubt: (amps * doubt) / ampsScale })} ${word} (${figure(least, 'current')} to ${figure(most, 'current')})`;
    return { said, isNormal };
  }
  const from = baseOf(symptom, grounds);
  const quantity = from === undefined ? 'temperatureDifference' : 'temperature';
  const base = from ?? 0;
  const said = phrase`${name} ${figure(base + value, quantity, { doubt })} ${word} (${figure(base + mean - range, quantity)} to ${figure(base + mean + range, quantity)})`;
  return { said, isNormal };
}

/** A difference is told as such, a pipe or a saturation as its own temperature: over the air it was held against. */
function baseOf(symptom: Symptom, { set, observation }: Grounds): number | undefined {
  switch (symptom) {
    case 'discharge':
      return set.dischargeLineK! - observation.values[placeOf.discharge]!;
    case 'evaporator':
    case 'suctionLine':
      return set.returnTemperatureK;
    case 'condensing':
    case 'liquidLine':
      return set.gates.outdoorTemperatureK;
    default:
      return undefined;
  }
}

const normalWord = 'normal';

function wordFor(deviations: number): string {
  const side = deviations > 0 ? 'high' : 'low';
  if (Math.abs(deviations) <= 1) return normalWord;
  return Math.abs(deviations) <= 2 ? `slightly ${side}` : side;
}
