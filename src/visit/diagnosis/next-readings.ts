import type { Grounds, Suspect } from './evidence.ts';
import { apart } from './evidence.ts';
import { placeOf } from './observables.ts';
import type { Hypothesis } from './response-form.ts';
import type { ReadingName, Symptom } from './symptoms.ts';
import { partsOf, supersededBy, withoutGauges } from './symptoms.ts';

/** Standard deviations from which on a reading is worth taking, and from which on it is worth a hole. Own choices. */
const worthTaking = 0.5;
const worthAHole = 1;
/** A second reading is asked together with the best one when it tells almost as much. Own choice. */
const almostAsGood = 0.75;
/** A fault that is asked about before it is known is taken for one of middle size. */
const middleSeverity = 0.5;

/** Causes that no hole in the circuit helps to find. */
const outsideTheCircuit: readonly Hypothesis[] = ['nothing wrong', 'low indoor airflow', 'dirty condenser'];

/**
 * Readings that would best tell one suspect from its rival: those of clamps and thermometers first. Only when none of them is left may the
 * first gauge be asked for, where the suspect lies inside the circuit; a second hole is never asked for, and the standing pressure
 * only through a gauge that is on.
 */
export function nextReadings(suspect: Suspect, rival: Suspect, grounds: Grounds): readonly ReadingName[] {
  const { set } = grounds;
  const outside = mostTelling(withoutGauges, suspect, rival, grounds);
  if (outside.length > 0) return outside;
  const gaugeIsOn = set.suctionPa !== undefined || set.liquidPa !== undefined;
  const airInQuestion = [suspect, rival].some(({ hypothesis }) => hypothesis === 'non-condensables');
  if (gaugeIsOn)
    return airInQuestion && set.standing === undefined ? ['standing pressure after 30 min off'] : [];
  if (outsideTheCircuit.includes(suspect.hypothesis)) return [];
  return mostTelling(['evaporator'], suspect, rival, grounds, worthAHole);
}

function mostTelling(
  symptoms: readonly Symptom[],
  suspect: Suspect,
  rival: Suspect,
  grounds: Grounds,
  least = worthTaking,
): readonly ReadingName[] {
  const worth = symptoms
    .filter((symptom) => isOpen(symptom, grounds))
    .map((symptom) => ({ symptom, apart: apart(symptom, middling(suspect), middling(rival), grounds) }))
    .filter(({ apart: deviations }) => deviations >= least)
    .sort((one, other) => other.apart - one.apart);
  const best = worth[0]?.apart ?? 0;
  const asked = worth.filter(({ apart: deviations }) => deviations >= almostAsGood * best).slice(0, 2);
  return [...new Set(asked.flatMap(({ symptom }) => grounds.lacking.get(symptom)!))];
}

function middling({ hypothesis, severity }: Suspect): Suspect {
  return { hypothesis, severity: hypothesis === 'nothing wrong' ? 0 : Math.max(severity, middleSeverity) };
}

/** Not measured, and not one of those that were given and cannot be worked out. */
function isOpen(symptom: Symptom, { observation, lacking }: Grounds): boolean {
  const [observable] = partsOf(symptom);
  return (
    observation.values[placeOf[observable]] === undefined &&
    observation.notWorkedOut.every((each) => each.observable !== observable) &&
    lacking.get(symptom)!.length > 0
  );
}

const gauged: readonly Symptom[] = ['evaporator', 'superheat', 'condensing', 'subcooling'];

/** Symptoms nobody measured that this suspect would move: named as open, whether or not they are asked for. */
export function openSymptoms(suspect: Suspect, rival: Suspect, grounds: Grounds): readonly Symptom[] {
  const superseded = supersededBy(grounds.set);
  return [...gauged, ...withoutGauges].filter(
    (symptom) =>
      grounds.lacking.get(symptom)!.length > 0 &&
      !superseded.includes(symptom) &&
      apart(symptom, middling(suspect), middling(rival), grounds) >= worthTaking,
  );
}
