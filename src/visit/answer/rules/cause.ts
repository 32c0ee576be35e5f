import type { Phrase } from '../../../phrase.ts';
import { phrase } from '../../../phrase.ts';
import { capacitorCheck, labelTolerance } from '../../capacitor-check.ts';
import type { Answer } from '../answer-form.ts';
import { answerOf } from '../answer-form.ts';
import { headings, openReadings } from '../ask.ts';
import type { JudgedCause } from '../diagnosis.ts';
import type { Evidence, Rule } from '../evidence.ts';
import { massSum } from './mass-limit.ts';

/** A run capacitor off its label explains much that looks like a weak unit, and costs less than any gas. */
export const weakCapacitor: Rule = ({ set }) => {
  const { capacitorMeasuredF: measuredF, capacitorLabelF: labelF } = set;
  if (measuredF === undefined || labelF === undefined) return undefined;
  const verdict = capacitorCheck({
    label: { lowest: labelF * (1 - labelTolerance), highest: labelF * (1 + labelTolerance) },
    measuredF,
    amps: undefined,
    volts: undefined,
    frequencyHz: 60,
  });
  if (verdict.word === 'Good') return undefined;
  return answerOf('refer', phrase`Not a charge fault: capacitor`, [
    phrase`run capacitor off its label: ${verdict.reason}`,
    phrase`replace it, let the unit settle, read again before anything is said of the charge`,
  ]);
};

/** What a cause outside the charge asks for. */
const outsideCharge: Readonly<Record<string, { readonly word: Phrase; readonly advice: Phrase }>> = {
  'low indoor airflow': {
    word: phrase`Not a charge fault: indoor air`,
    advice: phrase`too little air over the indoor coil though the parts look clean: fan speed, blower wheel, ducts, a second filter, ice inside the coil`,
  },
  'dirty condenser': {
    word: phrase`Not a charge fault: outdoor coil`,
    advice: phrase`the outdoor coil does not get rid of its heat: fan, fins from the inside, air drawn in again, shrouds`,
  },
  'weak compressor': {
    word: phrase`Not a charge fault: compressor`,
    advice: phrase`the compressor does not pump: test it and quote a new one or a new unit`,
  },
  restriction: {
    word: phrase`Not a charge fault: restriction`,
    advice: phrase`the capillary tube or the filter before it is restricted: more gas only raises the high side; quote the repair, or weigh the charge to prove it`,
  },
  ice: {
    word: phrase`Not a charge fault: ice`,
    advice: phrase`look into the coil for ice`,
  },
};

/** True for a cause that gas does not cure. */
export function isOutsideCharge({ cause }: JudgedCause): boolean {
  return cause in outsideCharge;
}

/** "restriction, likely: superheat 35 degF high …". */
export function causeLine({ cause, confidence, inFavor }: JudgedCause): Phrase {
  return phrase`${cause}, ${confidence}${inFavor.length === 0 ? phrase`` : phrase`: ${inFavor}`}`;
}

/** A likely cause outside the charge: gas is not the cure. A possible one wants the reading that decides, while there is one. */
export const outsideTheCharge: Rule = (evidence) => {
  const [lead] = evidence.diagnosis().causes;
  if (lead === undefined || lead.confidence === 'unlikely') return undefined;
  const known = outsideCharge[lead.cause];
  if (known === undefined) return undefined;
  if (lead.confidence === 'possible') {
    const open = openReadings(evidence);
    if (open.length > 0) return measureMore(evidence, lead, open);
  }
  const advice =
    lead.cause === 'restriction' && evidence.unit.metering === 'valve' ? valveAdvice : known.advice;
  return answerOf('refer', known.word, [causeLine(lead), advice]);
};

const valveAdvice = phrase`the valve or the filter before it is restricted, or its bulb is loose: more gas only raises the high side`;

export function measureMore(evidence: Evidence, lead: JudgedCause, open: readonly string[]): Answer {
  const [, second] = evidence.diagnosis().causes;
  const rival =
    second === undefined || second.confidence === 'unlikely' ? phrase`` : phrase`; or ${causeLine(second)}`;
  return answerOf(
    'measure-more',
    phrase`Measure more`,
    [
      phrase`${causeLine(lead)}${rival}; ${open[0] ?? ''} would tell more, and comes before anything is added or opened`,
    ],
    open.slice(0, 3),
  );
}

/** Air inside is proved by a standing pressure, never by a running set alone. */
export const maybeAir: Rule = (evidence) => {
  const [lead] = evidence.diagnosis().causes;
  if (lead?.cause !== 'non-condensables' || lead.confidence === 'unlikely') return undefined;
  if (isUnweighed(evidence)) {
    return answerOf('recover-and-weigh-in', phrase`Recover and weigh in`, [
      phrase`air inside or an overcharge, more than the nameplate: ${causeLine(lead)}`,
      phrase`the mass is unknown, and both are cured alike: recover all of it, have it identified, evacuate, weigh the nameplate charge in; a standing pressure before that tells which`,
    ]);
  }
  if (!evidence.hasWayIn) {
    return answerOf(
      'measure-more',
      phrase`Measure more`,
      [
        phrase`${causeLine(lead)}; in a circuit that nobody opened that is rare, and proving it would need a hole`,
        phrase`look at the outdoor coil from the inside and at its fan first`,
      ],
      openReadings(evidence).slice(0, 3).concat('Outdoor coil'),
    );
  }
  return answerOf(
    'measure-more',
    phrase`Measure the standing pressure`,
    [
      phrase`${causeLine(lead)}; only a standing pressure proves air or another gas: switch off for 30 min, all parts at one temperature, and read`,
    ],
    [headings.suctionPa, headings.offS, headings.partsSpreadK],
  );
};

/** Gas went in that nobody weighed against what was there. */
function isUnweighed({ inside, known, hasWayIn }: Evidence): boolean {
  return hasWayIn && !Number.isFinite(inside.highKg) && (known.topUps > 0 || known.addedInVisitKg > 0);
}

/** Signs of too much gas. A weighed mass below the nameplate outranks them. */
export const overcharge: Rule = (evidence) => {
  const { inside, unit, known } = evidence;
  const [lead] = evidence.diagnosis().causes;
  if (lead?.cause !== 'overcharge' || lead.confidence === 'unlikely') return undefined;
  if (Number.isFinite(inside.highKg) && unit.nameplateKg !== undefined) {
    return answerOf(
      'measure-more',
      phrase`Measure the standing pressure`,
      [
        phrase`the readings look like an overcharge, yet the scale says there is room: ${massSum(evidence)}. A weighed mass outranks them: air inside, a dirty outdoor coil or a wrong weight`,
        causeLine(lead),
      ],
      [headings.suctionPa, headings.offS, headings.foundKg],
    );
  }
  const open = openReadings(evidence);
  if (lead.confidence === 'possible' && open.length > 0) return measureMore(evidence, lead, open);
  if (!evidence.hasWayIn && known.topUps === 0) {
    return answerOf('do-not-open', phrase`Do not open`, [
      phrase`the readings look like too much gas, but nobody ever added any to this sealed circuit: outdoor coil, its fan, or a very warm room`,
      causeLine(lead),
    ]);
  }
  return answerOf('recover-and-weigh-in', phrase`Recover and weigh in`, [
    phrase`signs of an overcharge, more inside than the nameplate: ${causeLine(lead)}`,
    phrase`how much is inside is unknown: recover all of it, weigh it, evacuate, weigh the nameplate charge in; never vent`,
  ]);
};
