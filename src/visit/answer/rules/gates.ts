import type { Phrase } from '../../../phrase.ts';
import { figure, phrase } from '../../../phrase.ts';
import type { Gate, GateName } from '../../gates.ts';
import { settlingS } from '../../gates.ts';
import { voltageCheck } from '../../voltage-check.ts';
import type { Action } from '../actions.ts';
import type { Answer } from '../answer-form.ts';
import { answerOf } from '../answer-form.ts';
import { headings, registerHeadings } from '../ask.ts';
import type { Evidence, Rule } from '../evidence.ts';

/** Supply, frost, dirt: what must be put right before a running unit is judged. */
export const closedGate: Rule = (evidence) => {
  if (evidence.set.compressor === 'off') return undefined;
  return (
    gateAnswer(evidence, 'supply', 'fix-supply-first', 'Fix supply first') ??
    weakSupply(evidence) ??
    gateAnswer(evidence, 'frost', 'thaw-first', 'Thaw first') ??
    gateAnswer(evidence, 'dirt', 'clean-first', 'Clean first')
  );
};

const advice: Readonly<Partial<Record<GateName, Phrase>>> = {
  supply: phrase`stop the unit and put the supply right: every other reading is spoilt by it`,
  frost: phrase`ice hides the cause: run the fan alone until it is gone, then look for the reason`,
  dirt: phrase`dirt looks like a charge fault: clean, let it settle, read again`,
};

function gateAnswer(evidence: Evidence, name: GateName, action: Action, word: string): Answer | undefined {
  const gate = evidence.gates.find((one) => one.name === name);
  if (gate?.state !== 'closed') return undefined;
  const others = evidence.gates.filter((one) => one !== gate && one.state === 'closed');
  return answerOf(action, phrase`${word}`, [
    phrase`${name === 'supply' ? 'supply ' : ''}${gate.finding}`,
    ...(advice[name] === undefined ? [] : [advice[name]]),
    ...(others.length === 0 ? [] : [phrase`then: ${joined(others)}`]),
  ]);
}

function joined(gates: readonly Gate[]): Phrase {
  return gates.flatMap(({ finding }, index) => (index === 0 ? finding : [', ', ...finding]));
}

/** In the band, but the legs differ or the volts drop when the compressor starts. */
function weakSupply({ set, unit }: Evidence): Answer | undefined {
  if (set.volts === undefined || unit.ratedVolts === undefined) return undefined;
  const verdict = voltageCheck({
    volts: set.volts,
    rated: unit.ratedVolts,
    idleVolts: set.idleVolts,
    secondLegV: set.secondLegV,
    thirdLegV: undefined,
    frequencyHz: undefined,
    ratedFrequencyHz: 60,
  });
  if (verdict.word === 'In band') return undefined;
  return answerOf('fix-supply-first', phrase`Fix supply first`, [phrase`volts: ${verdict.reason}`]);
}

/** Nothing settles while a unit cuts in and out. */
export const shortCycling: Rule = ({ set }) => {
  if (set.compressor !== 'short cycling') return undefined;
  return answerOf(
    'refer',
    phrase`Not a charge fault yet: it short cycles`,
    [
      phrase`the compressor is cycling on its overload or control: nothing settles, no reading of the circuit counts`,
      phrase`look at volts at the start, capacitor, outdoor fan, thermostat and overload first`,
    ],
    [headings.volts, headings.compressorAmps],
  );
};

/** Below the limit a running unit tells nothing about its charge. */
export const coldOutdoors: Rule = ({ set, gates }) => {
  if (set.compressor === 'off') return undefined;
  const gate = gates.find(({ name }) => name === 'outdoor temperature');
  if (gate?.state !== 'closed') return undefined;
  if (gate.word === 'Hot outdoors') {
    return answerOf(
      'wait',
      phrase`Too hot outdoors: come back`,
      [phrase`${gate.finding}: a running unit tells nothing about its charge in this heat`],
      [headings.outdoorK],
    );
  }
  return answerOf('too-cold', phrase`Too cold outdoors`, [
    phrase`${gate.finding}: a running unit tells nothing about its charge`,
    phrase`come back on a warmer day, or recover and weigh the nameplate charge in: the scale needs no weather`,
  ]);
};

const gateHeadings: Readonly<Record<GateName, readonly string[]>> = {
  supply: [headings.volts],
  frost: ['Frost'],
  dirt: [],
  'outdoor temperature': [headings.outdoorK],
  settling: [headings.settledS],
};

const partHeadings = [
  ['filter', 'Filter'],
  ['indoorCoil', 'Indoor coil'],
  ['outdoorCoil', 'Outdoor coil'],
  ['vents', 'Vents and ducts'],
  ['fan', 'Fan'],
] as const;

/** Whether it ran decides what its pressures mean: a standing pressure, or a running one. */
export const compressorNotWritten: Rule = (evidence) => {
  if (evidence.set.compressor !== undefined) return undefined;
  // Dirt, ice and a wrong supply stand there whether it ran or not.
  const gate = closedGate(evidence);
  if (gate) return gate;
  return answerOf(
    'look-first',
    phrase`Look first: did it run`,
    [
      phrase`it is not written whether the compressor was running: the same pressure means one thing running and another off`,
    ],
    [headings.compressor],
  );
};

/** What was not looked at is not clean, and what was not measured is not right. */
export const notLookedAt: Rule = ({ set, unit, gates }) => {
  if (set.compressor === 'off') return undefined;
  const unseen = gates.filter(({ state }) => state === 'not seen');
  if (unseen.length === 0) return undefined;
  const said = [phrase`not looked at or not measured: ${joined(unseen)}`];
  const parts = partHeadings.filter(([name]) => set[name] === undefined || set[name] === 'not seen');
  const ask = [
    ...unseen.flatMap(({ name }) => gateHeadings[name]),
    ...(unseen.some(({ name }) => name === 'dirt') ? parts.map(([, heading]) => heading) : []),
    ...(unseen.some(({ name }) => name === 'supply') && unit.ratedVolts === undefined
      ? [registerHeadings.ratedVolts]
      : []),
  ];
  return answerOf('look-first', phrase`Look first`, said, ask);
};

/** A reading before the unit has settled is one of the start, not of the unit. */
export const notSettled: Rule = ({ set, gates }) => {
  if (set.compressor === 'off') return undefined;
  const gate = gates.find(({ name }) => name === 'settling');
  if (gate?.state !== 'closed') return undefined;
  const leftS = Math.ceil((settlingS - (set.settledS ?? 0)) / 60 - 1e-9) * 60;
  return answerOf(
    'wait',
    phrase`Wait ${figure(leftS, 'minutes')}`,
    [phrase`${gate.finding}: a reading before that is one of the start, not of the unit`],
    [headings.settledS],
  );
};
