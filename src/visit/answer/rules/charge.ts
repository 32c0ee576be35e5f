import { defaultScaleStepKg, largestStepKg, largestStepShare, stepKg } from '../../../charge/next-step.ts';
import type { Phrase } from '../../../phrase.ts';
import { figure, phrase } from '../../../phrase.ts';
import { fahrenheitDifferenceK } from '../../../units/trade.ts';
import { roughSuperheat } from '../../rough-bands.ts';
import { lineDoubtK } from '../../superheat.ts';
import { targetDoubtK, targetSuperheatIfAny } from '../../target-superheat.ts';
import type { Answer } from '../answer-form.ts';
import { answerOf } from '../answer-form.ts';
import { headings, openReadings, registerHeadings } from '../ask.ts';
import type { JudgedCause } from '../diagnosis.ts';
import type { Evidence, Rule } from '../evidence.ts';
import type { MassInside } from '../mass-inside.ts';
import { causeLine, isOutsideCharge, measureMore } from './cause.ts';
import { historyLine, leakBeforeTopUp, leaksByHistory } from './leak.ts';
import { massSum, roomKg } from './mass-limit.ts';

/** Room of less than this share of the nameplate is worth no ounce while the readings are right. Common practice, no source. */
const smallRoomShare = 0.1;

/** Ounces that ought to have shown, as a share of the nameplate, and the least that superheat moves by them. Common practice, no source. */
const tellingShare = 0.07;
export const leastResponseK = fahrenheitDifferenceK(1);

export function isLow({ cause }: JudgedCause): boolean {
  return cause === 'low charge' || cause === 'low charge or restriction';
}

/**
 * Superheat against what this weather lets expect: the published target with the doubt of the table, or the rough band where there
 * is none. Only a superheat above it lets gas in: a starved coil cannot hide from it, two faults together can.
 */
function superheatPlace({ superheatK, set, unit }: Evidence): 'high' | 'not high' | undefined {
  if (superheatK === undefined) return undefined;
  // A valve holds superheat by itself: there the liquid side has spoken already.
  if (unit.metering === 'valve') return 'high';
  const targetK =
    set.returnWetBulbK === undefined || set.outdoorK === undefined
      ? undefined
      : targetSuperheatIfAny({
          returnWetBulbK: set.returnWetBulbK,
          outdoorTemperatureK: set.outdoorK,
          metering: unit.metering ?? 'capillary',
        });
  const highestK = targetK === undefined ? roughSuperheat.highest : targetK + targetDoubtK;
  return superheatK > highestK ? 'high' : 'not high';
}

export function superheatLine({ superheatK, set, unit, instruments }: Evidence): readonly Phrase[] {
  if (superheatK === undefined || unit.refrigerant === undefined || set.suctionPa === undefined) return [];
  const doubt = lineDoubtK(
    { refrigerant: unit.refrigerant, pressurePa: set.suctionPa, curve: 'dew' },
    { gaugePa: instruments.suctionGaugePa, probeK: instruments.probeK },
  );
  const targetK =
    set.returnWetBulbK === undefined || set.outdoorK === undefined
      ? undefined
      : targetSuperheatIfAny({
          returnWetBulbK: set.returnWetBulbK,
          outdoorTemperatureK: set.outdoorK,
          metering: unit.metering ?? 'capillary',
        });
  const target =
    targetK === undefined ? phrase`` : phrase`, target ${figure(targetK, 'temperatureDifference')}`;
  return [phrase`superheat ${figure(superheatK, 'temperatureDifference', { doubt })}${target}`];
}

/** Why no ounces can be told, and what would tell. */
const whyUnknown: Readonly<Record<NonNullable<MassInside['unknown']>, readonly [Phrase, readonly string[]]>> =
  {
    'basis blank': [
      phrase`it is not written how the mass in the unit is known, and a pressure does not tell it`,
      [headings.massBasis],
    ],
    'basis unknown': [
      phrase`the mass in the unit is unknown: nobody weighed it, and a pressure does not tell it`,
      [],
    ],
    'found blank': [
      phrase`the residual is said to be weighed, but what was found is blank: the mass in the unit is not known`,
      [headings.foundKg],
    ],
    'added blank': [
      phrase`what was added is blank in a row of this visit, and blank is not zero: weigh or write it down before any more`,
      [headings.addedKg],
    ],
    'nothing weighed in': [
      phrase`the nameplate is said to be weighed in, but nothing was added in this visit: the mass in the unit is not known`,
      [headings.massBasis, headings.addedKg],
    ],
  };

/** Short of gas by the readings: ounces when the scale knows what is inside, else weighing. */
export const lowCharge: Rule = (evidence) => {
  const { causes } = evidence.diagnosis();
  const [lead] = causes;
  if (lead === undefined || !isLow(lead) || lead.confidence === 'unlikely') return undefined;
  if (onTargetAfterAll(evidence)) return undefined;
  const said = [causeLine(lead), ...superheatLine(evidence)];
  if (evidence.unit.nameplateKg === undefined) return noLabel(said);
  if (isEmptiedAndWeighed(evidence)) return addStep(evidence, said);
  const leak = leakBeforeTopUp(evidence, said);
  if (leak) return leak;
  const doubtful = tellApart(evidence, lead);
  if (doubtful) return doubtful;
  const unchanged = unresponsive(evidence, lead);
  if (unchanged) return unchanged;
  if (evidence.inside.unknown !== undefined) return weighFirst(evidence, lead, said);
  if (superheatPlace(evidence) !== 'high') return superheatDisagrees(evidence, lead);
  const weak = weakCase(evidence, lead, said);
  if (weak) return weak;
  return addStep(evidence, said);
};

/**
 * Low charge no more than possible, nothing wrong possible too, and superheat where the published target puts it: that is no reason
 * to open or to add.
 */
function onTargetAfterAll(evidence: Evidence): boolean {
  const [lead, second] = evidence.diagnosis().causes;
  return (
    lead !== undefined &&
    isLow(lead) &&
    lead.confidence === 'possible' &&
    second?.cause === 'nothing wrong' &&
    second.confidence === 'possible' &&
    superheatPlace(evidence) === 'not high'
  );
}

/**
 * Low charge or a restriction, and the readings cannot tell which: a small step by weight is a fair test where the signs are strong,
 * never of a valve; where they are weak, a reading is wanted and not an ounce.
 */
function weakCase(evidence: Evidence, lead: JudgedCause, said: readonly Phrase[]): Answer | undefined {
  if (lead.cause === 'low charge' || evidence.set.liquidPa !== undefined) return undefined;
  if (lead.confidence === 'likely' && evidence.unit.metering !== 'valve') return undefined;
  const open = openReadings(evidence);
  if (open.length > 0) return measureMore(evidence, lead, open);
  if (lead.confidence === 'likely') {
    return answerOf('recover-and-weigh-in', phrase`Recover and weigh in`, [
      ...said,
      phrase`low charge or a restriction: with the nameplate charge weighed in, a unit that still starves is restricted`,
      ...massLine(evidence),
    ]);
  }
  return answerOf(
    'measure-more',
    phrase`Measure again`,
    [...said, phrase`every reading is there and none decides: let it settle and take the set again`],
    [headings.suctionLineK, headings.liquidLineK, headings.dischargeLineK],
  );
}

function noLabel(said: readonly Phrase[]): Answer {
  return answerOf(
    'look-first',
    phrase`Look first: the label`,
    [
      phrase`the nameplate charge is not in the register: no legible label, no charging by weight; find the maker's figure`,
      ...said,
    ],
    [registerHeadings.nameplate],
  );
}

function isEmptiedAndWeighed({ known, inside }: Evidence): boolean {
  return inside.unknown === undefined && (known.emptied || known.basis === 'nameplate weighed in');
}

const liquidSide: readonly string[] = [headings.liquidLineK, headings.liquidPa];

/** Without the liquid side a starved coil may be short of gas or plugged; a step by weight is the second-best test. */
function tellApart(evidence: Evidence, lead: JudgedCause): Answer | undefined {
  const rival = evidence.diagnosis().causes.find(({ cause }) => cause === 'restriction');
  const together = lead.cause !== 'low charge' || (rival !== undefined && rival.confidence !== 'unlikely');
  if (!together && evidence.set.liquidLineK !== undefined) return undefined;
  const open = openReadings(evidence);
  const liquid = open.filter((name) => liquidSide.includes(name));
  if (liquid.length === 0) return undefined;
  return answerOf(
    'measure-more',
    phrase`Measure the liquid side`,
    [
      phrase`${causeLine(lead)}; low charge and a restricted capillary tube starve the coil alike, only the liquid side tells them apart`,
      ...superheatLine(evidence),
      ...massLine(evidence),
    ],
    [...liquid, ...open.filter((name) => !liquid.includes(name)).slice(0, 2)],
  );
}

/** Ounces that changed nothing did not go where they were missing. */
function unresponsive(evidence: Evidence, lead: JudgedCause): Answer | undefined {
  const { before, known, superheatK, unit } = evidence;
  if (before.visit !== known.visit || before.lastSuperheatK === undefined || superheatK === undefined)
    return undefined;
  const addedKg = known.addedInVisitKg - before.addedAtLastKg;
  if (addedKg < tellingShare * (unit.nameplateKg ?? Infinity)) return undefined;
  if (before.lastSuperheatK - superheatK >= leastResponseK) return undefined;
  return answerOf(
    'measure-more',
    phrase`Measure more: the ounces changed nothing`,
    [
      phrase`${figure(addedKg, 'mass')} went in and superheat did not fall: a restricted capillary tube, a wrong weight, or not settled; add nothing until it is known`,
      causeLine(lead),
    ],
    [headings.liquidLineK, headings.dischargeLineK, headings.suctionLineK],
  );
}

/** What the scale knows of the unit, or why it knows nothing. */
function massLine(evidence: Evidence): readonly Phrase[] {
  const { unknown } = evidence.inside;
  return unknown === undefined ? [phrase`by the scale: ${massSum(evidence)}`] : [whyUnknown[unknown][0]];
}

/** A figure that the mass rests on is blank: asked for before anything is called enough. A mass that was never weighed is no gap. */
function massGap({ inside, known }: Evidence): Answer | undefined {
  const { unknown } = inside;
  if (unknown === undefined || unknown === 'basis unknown') return undefined;
  if (unknown === 'basis blank' && known.addedInVisitKg <= 0) return undefined;
  const [why, ask] = whyUnknown[unknown];
  return answerOf('measure-more', phrase`Measure more: the mass`, [why], ask);
}

function weighFirst(evidence: Evidence, lead: JudgedCause, said: readonly Phrase[]): Answer {
  const { inside } = evidence;
  const [why, ask] = whyUnknown[inside.unknown ?? 'basis unknown'];
  if (inside.unknown !== 'basis unknown') {
    return answerOf(
      'measure-more',
      phrase`Measure more: the mass`,
      [why, phrase`or recover what is inside, weigh it, and weigh the nameplate charge in`, ...said],
      ask,
    );
  }
  const open = openReadings(evidence);
  if (lead.confidence !== 'likely' && open.length > 0) {
    const more = measureMore(evidence, lead, open);
    return { ...more, because: [...more.because, why] };
  }
  return answerOf('recover-and-weigh-in', phrase`Recover and weigh in`, [
    ...said,
    why,
    phrase`find the leak, recover and weigh what is left, evacuate, weigh the nameplate charge in`,
  ]);
}

/** A starved coil shows in the superheat; where it does not, something hides or mimics it. */
function superheatDisagrees(evidence: Evidence, lead: JudgedCause): Answer {
  if (evidence.superheatK === undefined) {
    return answerOf(
      'measure-more',
      phrase`Measure more`,
      [
        phrase`${causeLine(lead)}; superheat was not measured, and no ounces are told without it`,
        phrase`by the scale: ${massSum(evidence)}`,
      ],
      openReadings(evidence).filter((name) => name === headings.suctionLineK || name === headings.suctionPa),
    );
  }
  return answerOf(
    'measure-more',
    phrase`Measure more`,
    [
      phrase`${causeLine(lead)}, yet superheat is not high: two faults may hide each other, low charge with too little air; look at the airflow again`,
      ...superheatLine(evidence),
    ],
    [headings.supplyK, headings.suctionLineK, headings.liquidLineK],
  );
}

/** The next ounces by the step rule; the scale ends them. */
function addStep(evidence: Evidence, said: readonly Phrase[]): Answer | undefined {
  const { unit, set } = evidence;
  const left = roomKg(evidence);
  if (left === undefined || unit.nameplateKg === undefined) return undefined;
  const scaleStepKg = set.scaleStepKg ?? defaultScaleStepKg;
  if (unit.metering === undefined) {
    return answerOf(
      'look-first',
      phrase`Look first: capillary or valve`,
      [
        phrase`the register does not say how this unit meters its liquid, and superheat means nothing before it is known`,
        ...said,
      ],
      [registerHeadings.metering],
    );
  }
  if (set.idleVolts === undefined) {
    return answerOf(
      'look-first',
      phrase`Look first: volts idle`,
      [
        phrase`the volts before the compressor starts were not measured: a weak cord shows only in the drop, and looks like a weak unit`,
        ...said,
      ],
      [headings.idleVolts],
    );
  }
  const coarsestKg = Math.min(largestStepKg, largestStepShare * unit.nameplateKg);
  const nextKg = stepKg({ permittedKg: left, nameplateKg: unit.nameplateKg, scaleStepKg });
  if (scaleStepKg > coarsestKg * 1.0001 || nextKg <= 0) {
    return answerOf(
      'measure-more',
      phrase`Measure more: a finer scale`,
      [
        phrase`the scale shows steps of ${figure(scaleStepKg, 'mass')}, too coarse to weigh ${figure(left, 'mass')} of room`,
        ...said,
      ],
      [headings.scaleStepKg],
    );
  }
  return {
    action: 'add',
    word: phrase`Add ${figure(nextKg, 'mass')}`,
    ouncesKg: nextKg,
    because: [
      phrase`${figure(left, 'mass')} of room: ${massSum(evidence)}`,
      ...said,
      phrase`weigh it in, wait 15 min, read again; stop at the nameplate`,
    ],
    ask: [],
  };
}

/** An emptied unit that is being weighed in is not full before the scale says so, whatever the coil shows. */
export const weighInGoesOn: Rule = (evidence) => {
  if (!isEmptiedAndWeighed(evidence)) return undefined;
  const left = roomKg(evidence);
  if (left === undefined || left <= 0) return undefined;
  const [lead] = evidence.diagnosis().causes;
  if (lead !== undefined && lead.confidence === 'likely' && !isLow(lead) && lead.cause !== 'nothing wrong')
    return undefined;
  return addStep(evidence, [
    phrase`only the scale ends a weighed-in charge, whatever the coil shows`,
    ...superheatLine(evidence),
  ]);
};

/** Nothing in the readings is wrong: stop, close up or leave it sealed, and say what stays open. */
export const nothingWrong: Rule = (evidence) => {
  const { known, inside, unit } = evidence;
  const onTarget = onTargetAfterAll(evidence);
  const lead = evidence.diagnosis().causes[onTarget ? 1 : 0];
  if (lead?.cause !== 'nothing wrong' || lead.confidence === 'unlikely') return undefined;
  const open = onTarget ? [] : openReadings(evidence);
  if (known.addedInVisitKg > 0 && unit.nameplateKg === undefined) return noLabel([causeLine(lead)]);
  const gap = massGap(evidence);
  if (gap && known.accessed) return gap;
  const left = roomKg(evidence);
  if (left !== undefined && unit.nameplateKg !== undefined && left > smallRoomShare * unit.nameplateKg)
    return roomLeft(evidence, lead);
  if (lead.confidence === 'possible' && open.length > 0) return measureMore(evidence, lead, open);
  const said = [causeLine(lead), ...superheatLine(evidence), ...historyLine(evidence)];
  if (known.addedInVisitKg > 0) {
    const mass =
      inside.unknown === undefined
        ? phrase`by the scale: ${massSum(evidence)}`
        : phrase`how much is inside is unknown: only recovering and weighing in would tell; find the leak that made it necessary`;
    return answerOf('stop-enough', phrase`Stop: enough in`, [
      phrase`the readings have come to where a right charge puts them: nothing more goes in`,
      mass,
      ...said,
    ]);
  }
  if (lead.confidence === 'possible' || leaksByHistory(evidence) || hasComplaint(evidence)) {
    return answerOf('do-not-open', phrase`Do not open`, [
      phrase`nothing in the circuit explains the complaint: leave it as it is`,
      ...said,
      ...(hasComplaint(evidence)
        ? [phrase`look at the load, the control, ducts and how the unit is used`]
        : []),
    ]);
  }
  return answerOf('done', phrase`Done: close up`, [
    phrase`every reading lies where a right charge puts it in this weather`,
    ...said,
  ]);
};

/** The scale says that gas is missing, though the readings do not show it. */
function roomLeft(evidence: Evidence, lead: JudgedCause): Answer {
  const leak = leakBeforeTopUp(evidence, [phrase`by the scale: ${massSum(evidence)}`, causeLine(lead)]);
  if (leak) return leak;
  const place = superheatPlace(evidence);
  if (place === undefined) return superheatDisagrees(evidence, lead);
  if (place === 'high') {
    const step = addStep(evidence, [
      phrase`a weighed mass outranks a rule of thumb about the coil`,
      causeLine(lead),
      ...superheatLine(evidence),
    ]);
    if (step) return step;
  }
  return answerOf(
    'measure-more',
    phrase`Measure more: scale and readings disagree`,
    [
      phrase`the readings show nothing wrong and superheat is not high, yet by the scale gas is missing: ${massSum(evidence)}. A rule of thumb does not close a visit, and no ounce goes in against it: was all of it recovered when it was weighed?`,
      ...superheatLine(evidence),
    ],
    [...openReadings(evidence), headings.foundKg].slice(0, 3),
  );
}

const complaints: readonly string[] = ['no cool', 'weak cool', 'ice', 'trips', 'noise', 'leak', 'warranty'];

/** A complaint that nothing explained yet; cleaning or mending before this set explains it. */
function hasComplaint({ set, known }: Evidence): boolean {
  if (set.stage === 'final' || set.stage === 'after cleaning' || known.leakMended) return false;
  return set.reason !== undefined && complaints.includes(set.reason);
}

/** The last word when nothing above has one: no cause leads, so nothing is opened and nothing added. */
export const undecided: Rule = (evidence) => {
  const { causes, refusal } = evidence.diagnosis();
  const open = openReadings(evidence);
  const [lead] = causes;
  if (lead !== undefined && open.length > 0) return measureMore(evidence, lead, open);
  const said = refusal === undefined ? phrase`no cause stands out` : phrase`${refusal}`;
  if (open.length > 0) return answerOf('measure-more', phrase`Measure more`, [said], open.slice(0, 3));
  const fault = causes.some((cause) => isOutsideCharge(cause) && cause.confidence !== 'unlikely');
  return answerOf(
    'measure-more',
    phrase`Measure again`,
    [
      said,
      phrase`every reading is there and none decides${fault ? '; the unit may have two faults' : ''}: take the set again, or weigh the charge`,
    ],
    [headings.suctionLineK, headings.liquidLineK, headings.dischargeLineK],
  );
};
