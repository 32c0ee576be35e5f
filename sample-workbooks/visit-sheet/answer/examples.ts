import { standardAtmospherePa } from '../../../src/air/standard-atmosphere.ts';
import { findRefrigerant, saturationPressurePa } from '../../../src/refrigerants/index.ts';
import { fahrenheitK, minutesS, psiPa } from '../../../src/units/trade.ts';
import type { Person, Question, UnitFacts, VisitSet } from '../../../src/visit/answer/index.ts';
import { defaultInstruments, nothingKnown } from '../../../src/visit/answer/index.ts';
import type { Knowledge } from '../../../src/visit/answer/index.ts';

const atmospherePa = standardAtmospherePa(0);
const gas = findRefrigerant('R-410A');
const burning = findRefrigerant('R-32');
const micronPa = 101_325 / 760_000;

const unit: UnitFacts = {
  refrigerant: gas,
  nameplateKg: 0.4,
  ratedVolts: { lowerV: 115, upperV: 115 },
  metering: 'capillary',
  tapsFitted: 1,
  lowSideDesignPa: psiPa(250),
  status: 'in use',
};
const person: Person = { name: 'the technician', certificate: 'Universal', flammableTrained: false };
const running: VisitSet = {
  visit: 'V',
  set: 1,
  atmospherePa,
  compressor: 'running',
  settledS: minutesS(20),
  filter: 'clean',
  indoorCoil: 'clean',
  outdoorCoil: 'clean',
  vents: 'clean',
  fan: 'clean',
  frost: 'none',
  volts: 115,
  idleVolts: 117,
  outdoorK: fahrenheitK(95),
  addedKg: 0,
  impossible: [],
};
const standing: VisitSet = {
  ...running,
  compressor: 'off',
  settledS: undefined,
  volts: undefined,
  idleVolts: undefined,
};
const outdoorPa = saturationPressurePa(gas, fahrenheitK(95), 'bubble');
const inVisit: Knowledge = { ...nothingKnown, visit: 'V' };

interface Parts {
  readonly unit?: Partial<UnitFacts>;
  readonly person?: Partial<Person>;
  readonly set?: Partial<VisitSet>;
  readonly before?: Partial<Knowledge>;
  readonly off?: true;
}

function question(parts: Parts): Question {
  return {
    unit: { ...unit, ...parts.unit },
    person: { ...person, ...parts.person },
    set: { ...(parts.off === true ? standing : running), ...parts.set },
    before: { ...inVisit, ...parts.before },
    instruments: defaultInstruments,
  };
}

const nitrogen = {
  testGas: 'nitrogen',
  testStartPa: psiPa(150),
  testStartK: fahrenheitK(80),
  testEndK: fahrenheitK(80),
} as const;
const vacuum = { vacuumStartPa: 300 * micronPa, vacuumS: minutesS(10), vacuumFarEnd: true } as const;
const offLong = { offS: minutesS(45), suctionPa: outdoorPa } as const;
const impossible = (what: 'reading' | 'record'): Partial<VisitSet> => ({
  impossible: [{ what, said: ['a figure is outside what a unit or a record can show'], heading: 'Set' }],
});
const opening: Parts = { before: { leakOpen: true } };

/** One question for every rule that plain formulas follow: what the answer says to it is what the sheet says. */
export const examples = {
  'runs in a vacuum': question({ set: { suctionPa: atmospherePa / 2 } }),
  'test beyond the nameplate': question({ off: true, set: { ...nitrogen, testStartPa: psiPa(300) } }),
  'tap on a flammable unit': question({ unit: { refrigerant: burning }, set: { tapsAdded: 1 } }),
  'second tap': question({ set: { tapsAdded: 1 } }),
  'gauges without training': question({ unit: { refrigerant: burning }, set: { suctionPa: psiPa(120) } }),
  'unit out of use': question({ unit: { status: 'retired' } }),
  'impossible reading': question({ set: impossible('reading') }),
  'impossible record': question({ set: impossible('record') }),
  'wrong gas': question({ set: { gasAdded: 'R-22' } }),
  empty: question({ before: { standing: 'empty' } }),
  'other gas inside': question({ before: { standing: 'non-condensables' } }),
  'above the nameplate': question({ set: { massBasis: 'nameplate weighed in', addedKg: 0.5 } }),
  'pressure test leaks': question({ off: true, set: { ...nitrogen, testEndPa: psiPa(120) } }),
  'pressure test holds': question({ off: true, set: { ...nitrogen, testEndPa: psiPa(150) } }),
  'pressure test unclear': question({ off: true, set: { ...nitrogen, testEndPa: psiPa(190) } }),
  'vacuum leaks': question({ off: true, set: { ...vacuum, vacuumEndPa: 9000 * micronPa } }),
  'vacuum not written down': question({ off: true, set: { vacuumStartPa: 300 * micronPa } }),
  'vacuum not reached': question({ off: true, set: { ...vacuum, vacuumEndPa: 2000 * micronPa } }),
  'not yet dry': question({ off: true, before: { open: true, accessed: true } }),
  'leak behind a vacuum': question({
    off: true,
    before: { vacuumHeld: true, emptied: true, leakOpen: true },
  }),
  'weigh in without a label': question({
    off: true,
    unit: { nameplateKg: undefined },
    before: { vacuumHeld: true, emptied: true },
  }),
  'runs empty': question({ before: { vacuumHeld: true, emptied: true } }),
  'weigh in': question({ off: true, before: { vacuumHeld: true, emptied: true } }),
  'at the nameplate': question({ off: true, set: { massBasis: 'nameplate weighed in', addedKg: 0.4 } }),
  'off without a pressure': question({ off: true }),
  'standing pressure incomplete': question({ off: true, set: { suctionPa: outdoorPa } }),
  'wait for the parts': question({ off: true, set: { ...offLong, offS: minutesS(10) } }),
  'standing pressure in doubt': question({ off: true, set: { ...offLong, suctionPa: outdoorPa * 1.06 } }),
  'standing pressure matches': question({ off: true, set: offLong }),
  'supply out of band': question({ set: { volts: 90 } }),
  'weak supply': question({ set: { idleVolts: 125 } }),
  frost: question({ set: { frost: 'part' } }),
  dirt: question({ set: { filter: 'dirty' } }),
  'short cycling': question({ set: { compressor: 'short cycling' } }),
  'cold outdoors': question({ set: { outdoorK: fahrenheitK(45) } }),
  'compressor not written': question({ set: { compressor: undefined } }),
  'not looked at': question({ set: { filter: undefined } }),
  'not settled': question({ set: { settledS: minutesS(5) } }),
  'known leak': question({ before: { leakOpen: true } }),
  contradiction: question({ set: { liquidLineK: fahrenheitK(60) } }),
  capacitor: question({ set: { capacitorLabelF: 35e-6, capacitorMeasuredF: 20e-6 } }),
  'nothing measured': question({}),
  'add a step': question({ set: { massBasis: 'nameplate weighed in', addedKg: 0.2 } }),
  'volts idle': question({ set: { massBasis: 'nameplate weighed in', addedKg: 0.2, idleVolts: undefined } }),
  'finer scale': question({ set: { massBasis: 'nameplate weighed in', addedKg: 0.2, scaleStepKg: 0.05 } }),
  'low again': question({ before: { leakOpen: true } }),
  'which gas': question({ unit: { refrigerant: undefined }, before: { leakOpen: true } }),
  untrained: question({ unit: { refrigerant: burning }, before: { leakOpen: true } }),
  certificate: question({ person: { certificate: 'II' }, ...opening }),
  'no certificate': question({ person: { certificate: undefined }, ...opening }),
  warranty: question({ unit: { warrantyEndDay: 90_000 }, ...opening }),
  'customer declines': question({ set: { customerAgrees: false }, ...opening }),
  'ask the customer': question({ unit: { tapsFitted: 0 }, ...opening }),
} as const satisfies Record<string, Question>;

export type FollowedRule = keyof typeof examples;
