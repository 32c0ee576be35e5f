import fc from 'fast-check';
import { massBases } from '../../../src/charge/mass-basis.ts';
import { findRefrigerant, saturationPressurePa } from '../../../src/refrigerants/index.ts';
import { fahrenheitDifferenceK, fahrenheitK, minutesS } from '../../../src/units/trade.ts';
import type { Knowledge, Person, UnitFacts, VisitSet } from '../../../src/visit/answer/index.ts';
import { nothingKnown } from '../../../src/visit/answer/index.ts';
import { cleanlinessChoices, frostChoices } from '../../../src/visit/index.ts';

/** Ounces of weight in kilograms, by definition of the pound. */
export const ounceKg = 0.028_349_523_125;

const seaLevelPa = 101_325;

function maybe<Value>(value: fc.Arbitrary<Value>, blankWeight = 1): fc.Arbitrary<Value | undefined> {
  return fc.oneof(
    { weight: 80, arbitrary: value },
    { weight: Math.round(10 * blankWeight), arbitrary: fc.constant(undefined) },
  );
}

/** Mostly clean, so that the random sets reach the rules behind the gates. */
const look = maybe(
  fc.oneof(
    { weight: 24, arbitrary: fc.constant('clean' as const) },
    { weight: 1, arbitrary: fc.constantFrom(...cleanlinessChoices) },
  ),
  0.3,
);

const gases = ['R-410A', 'R-22', 'R-32', 'R-290', 'R-407C', 'R-134a'] as const;

const unit = fc.record({
  gas: maybe(fc.constantFrom(...gases), 0.3),
  nameplateOz: maybe(
    fc.integer({ min: 80, max: 250 }).map((tenths) => tenths / 10),
    0.5,
  ),
  metering: maybe(
    fc.constantFrom('capillary' as const, 'capillary' as const, 'orifice' as const, 'valve' as const),
    0.3,
  ),
  taps: maybe(fc.constantFrom(0, 1, 1, 1, 2)),
});

const offset = (low: number, high: number): fc.Arbitrary<number> =>
  fc.double({ min: low, max: high, noNaN: true }).map(fahrenheitDifferenceK);

/** Half of the sets look like a unit short of charge whose residual was weighed: without them hardly any would ask for ounces. */
const shortOfCharge = fc.oneof(
  fc.constant(undefined),
  fc.record({
    returnF: fc.integer({ min: 76, max: 82 }),
    outdoorF: fc.integer({ min: 85, max: 100 }),
    wetBelow: offset(12, 14),
    split: offset(6, 12),
    coilBelow: offset(42, 50),
    superheat: offset(26, 40),
    condensingOver: maybe(offset(12, 18)),
    liquidOver: maybe(offset(9, 13), 0.5),
    amps: fc.integer({ min: 60, max: 74 }).map((percent) => (9.4 * percent) / 100),
    discharge: fc.integer({ min: 176, max: 190 }),
    basis: fc.constantFrom(
      'residual weighed' as const,
      'residual weighed' as const,
      'nameplate weighed in' as const,
    ),
    foundOz: fc.integer({ min: 40, max: 90 }).map((tenths) => tenths / 10),
    compressor: fc.constant('running' as const),
    certificate: fc.constantFrom('I' as const, 'Universal' as const, 'II' as const),
    topUps: fc.constantFrom(0, 0, 0, 1),
  }),
);

/** Prints without the tables of its refrigerant. */
export class RandomQuestion {
  readonly unit: UnitFacts;
  readonly person: Person;
  readonly set: VisitSet;
  readonly before: Knowledge;

  constructor(unit: UnitFacts, person: Person, set: VisitSet, before: Knowledge) {
    this.unit = unit;
    this.person = person;
    this.set = set;
    this.before = before;
  }

  [fc.toStringMethod](): string {
    const { refrigerant, ...unit } = this.unit;
    return JSON.stringify({ gas: refrigerant?.designation, unit, person: this.person, set: this.set });
  }
}

/** A question to the answer: what was typed, and what was known before it. Temperatures hang together as those of a unit do. */
export const randomQuestion = fc
  .record({
    unit,
    certificate: maybe(
      fc.constantFrom('I', 'II', 'Universal', 'Universal', 'Universal') as fc.Arbitrary<
        Person['certificate']
      >,
      0.3,
    ),
    trained: maybe(fc.boolean()),
    compressor: maybe(
      fc.constantFrom('running', 'running', 'running', 'running', 'off', 'short cycling') as fc.Arbitrary<
        VisitSet['compressor']
      >,
      0.2,
    ),
    looks: fc.tuple(look, look, look, look, look),
    frost: maybe(
      fc.oneof(
        { weight: 20, arbitrary: fc.constant('none' as const) },
        { weight: 1, arbitrary: fc.constantFrom(...frostChoices) },
      ),
      0.3,
    ),
    minutes: maybe(fc.integer({ min: 10, max: 60 }), 0.3),
    volts: maybe(fc.integer({ min: 101, max: 128 }), 0.3),
    outdoorF: maybe(fc.integer({ min: 52, max: 115 }), 0.3),
    returnF: maybe(fc.integer({ min: 68, max: 90 }), 0.5),
    wetBelow: maybe(offset(6, 18)),
    split: maybe(offset(2, 30)),
    coilBelow: maybe(offset(20, 62)),
    superheat: maybe(offset(-3, 60)),
    condensingOver: maybe(offset(8, 50), 3),
    liquidOver: maybe(offset(0, 35), 2),
    discharge: maybe(fc.integer({ min: 120, max: 240 }), 2),
    amps: maybe(fc.integer({ min: 30, max: 130 }).map((percent) => (9.4 * percent) / 100)),
    basis: maybe(fc.constantFrom(...massBases)),
    foundOz: maybe(
      fc.integer({ min: 0, max: 260 }).map((tenths) => tenths / 10),
      2,
    ),
    addedOz: maybe(fc.constantFrom(0, 0, 0, 0.5, 1, 2, 6, 14), 0.5),
    recoveredOz: maybe(fc.constantFrom(0, 0, 0, 0, 0, 8)),
    standing: maybe(
      fc.constantFrom('matches', 'matches', 'non-condensables', 'mismatch', 'empty') as fc.Arbitrary<
        Knowledge['standing']
      >,
      6,
    ),
    topUps: fc.constantFrom(0, 0, 0, 1, 2),
    leakOpen: fc.constantFrom(false, false, false, false, true),
  })
  .chain((drawn) => shortOfCharge.map((low) => (low === undefined ? drawn : { ...drawn, ...low })))
  .map((drawn) => {
    const kelvin = (degF: number | undefined): number | undefined =>
      degF === undefined ? undefined : fahrenheitK(degF);
    const less = (from: number | undefined, by: number | undefined): number | undefined =>
      from === undefined || by === undefined ? undefined : from - by;
    const returnK = kelvin(drawn.returnF);
    const outdoorK = kelvin(drawn.outdoorF);
    const coilK = less(returnK, drawn.coilBelow);
    const refrigerant = drawn.unit.gas === undefined ? undefined : findRefrigerant(drawn.unit.gas);
    const condensingK = less(
      outdoorK,
      drawn.condensingOver === undefined ? undefined : -drawn.condensingOver,
    );
    const facts: UnitFacts = {
      refrigerant,
      nameplateKg: drawn.unit.nameplateOz === undefined ? undefined : drawn.unit.nameplateOz * ounceKg,
      ratedVolts: { lowerV: 115, upperV: 115 },
      ratedAmps: 9.4,
      metering: drawn.unit.metering,
      tapsFitted: drawn.unit.taps,
    };
    const mass = (oz: number | undefined): number | undefined =>
      oz === undefined ? undefined : oz * ounceKg;
    const pressure = (temperatureK: number | undefined, side: 'dew' | 'bubble'): number | undefined =>
      refrigerant === undefined ||
      temperatureK === undefined ||
      temperatureK > refrigerant.saturation.highestTemperatureK
        ? undefined
        : saturationPressurePa(refrigerant, temperatureK, side);
    const [filter, indoorCoil, outdoorCoil, vents, fan] = drawn.looks;
    const set: VisitSet = {
      visit: 'V-1',
      set: 2,
      at: 20_000.4,
      stage: 'after step 1',
      reason: 'weak cool',
      compressor: drawn.compressor,
      settledS: drawn.minutes === undefined ? undefined : minutesS(drawn.minutes),
      filter,
      indoorCoil,
      outdoorCoil,
      vents,
      fan,
      frost: drawn.frost,
      volts: drawn.volts,
      idleVolts: drawn.volts === undefined ? undefined : drawn.volts + 2,
      atmospherePa: seaLevelPa,
      outdoorK,
      returnK,
      returnWetBulbK: less(returnK, drawn.wetBelow),
      supplyK: less(returnK, drawn.split),
      suctionLineK: less(coilK, drawn.superheat === undefined ? undefined : -drawn.superheat),
      liquidLineK: less(outdoorK, drawn.liquidOver === undefined ? undefined : -drawn.liquidOver),
      dischargeLineK: kelvin(drawn.discharge),
      suctionPa: pressure(coilK, 'dew'),
      liquidPa: pressure(condensingK, 'bubble'),
      offS: minutesS(45),
      partsSpreadK: 1,
      compressorAmps: drawn.amps,
      gasInUnit: drawn.unit.gas,
      massBasis: drawn.basis,
      foundKg: mass(drawn.foundOz),
      addedKg: mass(drawn.addedOz),
      recoveredKg: mass(drawn.recoveredOz),
      impossible: [],
    };
    const person: Person = { name: 'KB', certificate: drawn.certificate, flammableTrained: drawn.trained };
    const before: Knowledge = {
      ...nothingKnown,
      visit: 'V-1',
      sets: [1],
      lastDay: 20_000,
      standing: drawn.standing,
      topUps: drawn.topUps,
      toppedUpKg: drawn.topUps * 2 * ounceKg,
      leakOpen: drawn.leakOpen,
    };
    return new RandomQuestion(facts, person, set, before);
  });
