import { nitrogenTest } from '../../../access/nitrogen-test.ts';
import { vacuumDecay } from '../../../access/vacuum.ts';
import type { Verdict } from '../../../phrase.ts';
import { figure, phrase } from '../../../phrase.ts';
import { answerOf } from '../answer-form.ts';
import { headings, registerHeadings } from '../ask.ts';
import type { Evidence, Rule } from '../evidence.ts';
import { leastOffS } from '../../standing-check.ts';
import { vacuumVerdictWord } from '../learn.ts';
import { massSum, roomKg } from './mass-limit.ts';

/** A pressure test with nitrogen: a leak comes before everything that would go in. */
export const pressureTest: Rule = (evidence) => {
  const verdict = testVerdict(evidence);
  if (verdict === undefined) return undefined;
  switch (verdict.word) {
    case 'Leak':
      return answerOf('find-leak-first', phrase`Find the leak first`, [
        phrase`the nitrogen test lost pressure: ${verdict.reason}`,
      ]);
    case 'Holds':
      if (vacuumVerdictWord(evidence.set) !== undefined) return undefined;
      return answerOf(
        'evacuate-further',
        phrase`Evacuate`,
        [phrase`the pressure test holds: ${verdict.reason}`, phrase`let the nitrogen out and evacuate`],
        [headings.vacuumStartPa, headings.vacuumEndPa, headings.vacuumS],
      );
    default:
      return answerOf(
        'read-again',
        phrase`Read again`,
        [phrase`pressure test: ${verdict.reason}`],
        [headings.testStartPa],
      );
  }
};

function testVerdict({ set, unit, instruments }: Evidence): Verdict | undefined {
  const { testStartPa: startPa, testStartK: startK, testEndPa: endPa, testEndK: endK } = set;
  if (startPa === undefined || startK === undefined || endPa === undefined || endK === undefined)
    return undefined;
  return nitrogenTest({
    startPa,
    startK,
    endPa,
    endK,
    gas: set.testGas ?? 'nitrogen',
    lowSidePa: unit.lowSideDesignPa ?? Infinity,
    atmospherePa: set.atmospherePa,
    gaugeDoubtPa: instruments.suctionGaugePa,
    probeDoubtK: instruments.probeK,
  });
}

/** A vacuum that was not reached, not held, or read at the pump says nothing of the unit. */
export const vacuum: Rule = ({ set }) => {
  const word = vacuumVerdictWord(set);
  if (word === undefined || word === 'Dry and tight') return undefined;
  const { vacuumStartPa: startPa, vacuumEndPa: endPa, vacuumS: waitS } = set;
  if (startPa === undefined || endPa === undefined || waitS === undefined) {
    const missing = (['vacuumStartPa', 'vacuumEndPa', 'vacuumS'] as const).filter(
      (name) => set[name] === undefined,
    );
    return answerOf(
      'evacuate-further',
      phrase`Evacuate further`,
      [phrase`the vacuum is not proved: it is not written down what it rose to in how many minutes`],
      missing.map((name) => headings[name]),
    );
  }
  const verdict = vacuumDecay({ startPa, endPa, waitS, gaugeAtFarEnd: set.vacuumFarEnd === true });
  if (verdict.word === 'Leak')
    return answerOf('find-leak-first', phrase`Find the leak first`, [phrase`vacuum: ${verdict.reason}`]);
  return answerOf(
    'evacuate-further',
    phrase`Evacuate further`,
    [phrase`vacuum: ${verdict.reason}`],
    [headings.vacuumStartPa, headings.vacuumEndPa],
  );
};

/** Emptied and not proved tight and dry: a gauge tells nothing of the gas now, and none goes in. */
export const notYetDry: Rule = ({ known }) => {
  if (!known.open) return undefined;
  return answerOf(
    'evacuate-further',
    phrase`Test and evacuate first`,
    [
      phrase`the gas was recovered and no vacuum has held since: find the leak, test with nitrogen, evacuate before any gas goes in`,
    ],
    [headings.testStartPa, headings.vacuumStartPa, headings.vacuumEndPa],
  );
};

/** Tight, dry and empty: the whole nameplate goes in by the scale, whatever the weather. */
export const weighIn: Rule = (evidence) => {
  const { known, unit, set } = evidence;
  if (!known.vacuumHeld) return undefined;
  if (known.leakOpen) {
    return answerOf('find-leak-first', phrase`Find the leak first`, [
      phrase`a leak was found and is not mended: a vacuum that held does not mend it`,
    ]);
  }
  if (unit.nameplateKg === undefined || unit.refrigerant === undefined) {
    return answerOf(
      'look-first',
      phrase`Look first`,
      [
        phrase`tight and dry, but the nameplate charge or its gas is not known: no legible label, no charging by weight`,
      ],
      [registerHeadings.nameplate],
    );
  }
  if (set.compressor === 'running') {
    return answerOf(
      'correct-record',
      phrase`Correct the record`,
      [phrase`evacuated and nothing weighed in, yet it runs: what went in since?`],
      [headings.addedKg],
    );
  }
  const left = roomKg(evidence);
  if (left === undefined || left <= 0) return undefined;
  return {
    action: 'add',
    word: phrase`Add ${figure(left, 'mass')}`,
    ouncesKg: left,
    because: [
      phrase`tight, dry and empty: weigh the nameplate charge in, ${massSum(evidence)}`,
      phrase`the scale tells, not the weather; a blend leaves the cylinder as liquid, throttled before the suction side`,
    ],
    ask: [],
  };
};

/** A standing pressure that was read and cannot be judged yet: what it lacks, or how long to wait. */
export const standingNotJudged: Rule = ({ set, unit, standing, known }) => {
  const pressurePa = set.suctionPa ?? set.liquidPa;
  if (set.compressor !== 'off' || pressurePa === undefined) return undefined;
  const missing = [
    ...(set.offS === undefined ? [headings.offS] : []),
    ...(set.outdoorK === undefined ? [headings.outdoorK] : []),
    ...(unit.refrigerant === undefined ? [registerHeadings.refrigerant] : []),
  ];
  if (missing.length > 0) {
    return answerOf(
      'measure-more',
      phrase`Measure more`,
      [phrase`a standing pressure says nothing without ${missing.join(', ')}`],
      missing,
    );
  }
  if (standing === undefined) {
    return answerOf(
      'read-again',
      phrase`Read again`,
      [phrase`the standing pressure lies off the curve of this gas: gauge, thermometer or gas`],
      [headings.suctionPa, headings.outdoorK],
    );
  }
  const leftS = leastOffS - (set.offS ?? 0);
  if (leftS > 0) {
    return answerOf(
      'wait',
      phrase`Wait ${figure(leftS, 'minutes')}`,
      [phrase`standing pressure: ${standing.reason}`],
      [headings.suctionPa, headings.offS],
    );
  }
  if (known.standing === 'matches') return undefined;
  return answerOf(
    'measure-more',
    phrase`Measure again`,
    [phrase`standing pressure: ${standing.reason}`],
    [headings.suctionPa, headings.outdoorK, headings.partsSpreadK],
  );
};

/** With the compressor off only the gas is known, or nothing yet: the rest takes a running set. */
export const compressorOff: Rule = ({ set, standing }) => {
  if (set.compressor !== 'off') return undefined;
  const running = [headings.returnK, headings.supplyK, headings.suctionLineK, headings.settledS];
  if (standing === undefined) {
    return answerOf(
      'measure-more',
      phrase`Run it and measure`,
      [phrase`the compressor is off and no pressure was read: run it for 15 min and take a set`],
      running,
    );
  }
  return answerOf(
    'measure-more',
    phrase`Run it and measure`,
    [
      phrase`standing pressure: ${standing.reason}`,
      phrase`the gas is what the label says; how much of it is inside only a running set or the scale tells`,
    ],
    running,
  );
};
