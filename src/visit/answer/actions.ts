import type { Asks } from '../../verdict-words.ts';

interface ActionDescription {
  /** What it tells the reader, in a line. */
  readonly meaning: string;
  /** Sheets and page colour by it, never by words. */
  readonly asks: Asks;
  /** True when carrying it out opens the circuit or moves gas. */
  readonly touchesCircuit: boolean;
}

/** Everything that a visit can ask for next. A closed list: names are never renamed or reused. */
export const actions = {
  'look-first': {
    meaning: 'Something that decides was not looked at or not measured.',
    asks: 'care',
    touchesCircuit: false,
  },
  'fix-supply-first': { meaning: 'Put the supply right first.', asks: 'stop', touchesCircuit: false },
  'thaw-first': {
    meaning: 'Thaw the coil, then look for the reason of the ice.',
    asks: 'stop',
    touchesCircuit: false,
  },
  'clean-first': {
    meaning: 'Clean or free the air path, then start again.',
    asks: 'stop',
    touchesCircuit: false,
  },
  wait: { meaning: 'Not settled, or not off for long enough.', asks: 'care', touchesCircuit: false },
  'too-cold': {
    meaning: 'Too cold outdoors for a verdict on a running unit.',
    asks: 'care',
    touchesCircuit: false,
  },
  'read-again': {
    meaning: 'Readings are impossible or contradict each other.',
    asks: 'care',
    touchesCircuit: false,
  },
  'measure-more': {
    meaning: 'Readings are possible but do not decide.',
    asks: 'care',
    touchesCircuit: false,
  },
  'open-with-consent': {
    meaning: 'The signs point into a sealed circuit: open it only when the customer agrees.',
    asks: 'care',
    touchesCircuit: true,
  },
  'find-leak-first': {
    meaning: 'Find and mend the leak; no top-up before.',
    asks: 'stop',
    touchesCircuit: true,
  },
  'recover-and-weigh-in': {
    meaning: 'Recover and weigh what is inside, evacuate, weigh the nameplate charge in.',
    asks: 'care',
    touchesCircuit: true,
  },
  'recover-and-identify': {
    meaning: 'Air or another gas is inside: recover all of it apart, have it identified.',
    asks: 'stop',
    touchesCircuit: true,
  },
  'recover-excess': {
    meaning: 'More is inside than the nameplate allows: take the excess out on a scale.',
    asks: 'stop',
    touchesCircuit: true,
  },
  'evacuate-further': {
    meaning: 'The circuit is open, empty, or not tight and dry: no gas goes in.',
    asks: 'stop',
    touchesCircuit: true,
  },
  add: { meaning: 'Weigh the next ounces in.', asks: 'care', touchesCircuit: true },
  'stop-enough': {
    meaning: 'Nothing more goes in: the readings have come to their aim.',
    asks: 'go',
    touchesCircuit: false,
  },
  'stop-mass-limit': {
    meaning: 'Nothing more goes in: the nameplate charge is in the unit.',
    asks: 'stop',
    touchesCircuit: false,
  },
  'wrong-gas': {
    meaning: 'The gas of the cylinder is not the gas of the unit.',
    asks: 'stop',
    touchesCircuit: false,
  },
  'not-permitted': {
    meaning: 'This person, or this way in, is not allowed.',
    asks: 'stop',
    touchesCircuit: false,
  },
  'do-not-open': {
    meaning: 'Leave the circuit sealed; a fault or a question stays.',
    asks: 'go',
    touchesCircuit: false,
  },
  refer: {
    meaning: 'Not a charge fault: mend or quote fan, part, capillary, valve or compressor.',
    asks: 'care',
    touchesCircuit: false,
  },
  'shut-down': {
    meaning: 'Stop the unit now: running on harms it or people.',
    asks: 'stop',
    touchesCircuit: false,
  },
  'correct-record': {
    meaning: 'The record cannot be right: put it right before relying on it.',
    asks: 'care',
    touchesCircuit: false,
  },
  done: { meaning: 'Nothing left to do on the circuit: close up.', asks: 'go', touchesCircuit: false },
} as const satisfies Record<string, ActionDescription>;

export type Action = keyof typeof actions;

export const everyAction = Object.keys(actions) as readonly Action[];
