import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isFlammable } from '../../../src/access/gas-safety.ts';
import { actions, answerSet, defaultInstruments } from '../../../src/visit/answer/index.ts';
import type { Answered, VisitSet } from '../../../src/visit/answer/index.ts';
import { judgeGates } from '../../../src/visit/index.ts';
import { rankedBeliefs } from '../../../src/visit/index.ts';
import { CalcError } from '../../../src/errors.ts';
import { ounceKg, randomQuestion } from './random-sets.ts';

/*
 * What holds for every set of readings, whatever they are. Rules of the trade: common practice, no source; the order in which they
 * decide is written down in src/visit/answer/answer.ts.
 */

const runs = Number(process.env['OUNCEWISE_ANSWER_RUNS'] ?? 1500);
const seed = Number(process.env['OUNCEWISE_ANSWER_SEED'] ?? 20_261_129);
const setting = { numRuns: runs, seed };

type Question = Omit<Parameters<typeof answerSet>[0], 'instruments'>;

function answered(question: Question): Answered {
  return answerSet({ ...question, instruments: defaultInstruments });
}

function gatesOf(set: VisitSet) {
  return judgeGates({
    filter: set.filter,
    indoorCoil: set.indoorCoil,
    outdoorCoil: set.outdoorCoil,
    vents: set.vents,
    fan: set.fan,
    frost: set.frost,
    settledS: set.settledS,
    volts: set.volts,
    ratedVolts: { lowerV: 115, upperV: 115 },
    outdoorTemperatureK: set.outdoorK,
  });
}

describe('the answer, over random sets of readings', () => {
  it('always answers, with a reason, and asks where it says that something is missing', () => {
    fc.assert(
      fc.property(randomQuestion, (question) => {
        const { answer } = answered(question);
        expect(answer.because.length).toBeGreaterThan(0);
        expect(answer.because.every((sentence) => sentence.length > 0)).toBe(true);
        if (['look-first', 'measure-more', 'read-again'].includes(answer.action))
          expect(answer.ask.length).toBeGreaterThan(0);
        expect(answer.ouncesKg !== undefined).toBe(answer.action === 'add');
      }),
      setting,
    );
  });

  it('never adds when the mass is unknown, a gate is closed, the nameplate is reached or the person is not permitted', () => {
    let added = 0;
    fc.assert(
      fc.property(randomQuestion, (question) => {
        const { answer, known } = answered(question);
        if (answer.action !== 'add') return;
        added += 1;
        const { set, unit, person } = question;
        expect(
          known.basis === 'residual weighed' || known.basis === 'nameplate weighed in' || known.emptied,
        ).toBe(true);
        expect(known.addedUnknown).toBe(false);
        if (set.compressor !== 'off')
          expect(gatesOf(set).filter(({ state }) => state !== 'open')).toEqual([]);
        const nameplateKg = unit.nameplateKg ?? 0;
        const foundKg =
          known.emptied || known.basis === 'nameplate weighed in' ? 0 : (known.foundKg ?? Infinity);
        expect(foundKg + known.addedKg + (answer.ouncesKg ?? 0)).toBeLessThanOrEqual(nameplateKg + 1e-9);
        expect(['I', 'Universal']).toContain(person.certificate);
        if (unit.refrigerant !== undefined && isFlammable(unit.refrigerant))
          expect(person.flammableTrained).toBe(true);
        expect(known.leakOpen).toBe(false);
        expect(['non-condensables', 'mismatch', 'empty']).not.toContain(known.standing);
      }),
      setting,
    );
    // The property must have been put to the test.
    expect(added).toBeGreaterThan(runs / 200);
  });

  it('never adds while a cause that gas does not cure is likely', () => {
    fc.assert(
      fc.property(randomQuestion, (question) => {
        const { answer, known } = answered(question);
        const { set, unit } = question;
        if (answer.action !== 'add' || set.compressor === 'off' || unit.metering === 'valve') return;
        try {
          const [first] = rankedBeliefs({
            gates: {
              filter: set.filter,
              indoorCoil: set.indoorCoil,
              outdoorCoil: set.outdoorCoil,
              vents: set.vents,
              fan: set.fan,
              frost: set.frost,
              settledS: set.settledS,
              volts: set.volts,
              ratedVolts: unit.ratedVolts,
              outdoorTemperatureK: set.outdoorK,
            },
            metering: unit.metering ?? 'capillary',
            returnTemperatureK: set.returnK,
            returnWetBulbK: set.returnWetBulbK,
            supplyTemperatureK: set.supplyK,
            suctionLineK: set.suctionLineK,
            liquidLineK: set.liquidLineK,
            dischargeLineK: set.dischargeLineK,
            amps: set.compressorAmps,
            ratedAmps: unit.ratedAmps,
            refrigerant: unit.refrigerant,
            suctionPa: set.suctionPa,
            liquidPa: set.liquidPa,
            standing: known.standing,
            openedBefore: true,
            atmospherePa: set.atmospherePa,
            suctionGaugePa: defaultInstruments.suctionGaugePa,
            liquidGaugePa: defaultInstruments.liquidGaugePa,
            probeK: defaultInstruments.probeK,
            airProbeK: defaultInstruments.airProbeK,
          }).causes;
          if (first?.confidence === 'likely')
            expect(['low charge', 'restriction', 'nothing wrong']).toContain(first.cause);
        } catch (error) {
          if (!(error instanceof CalcError)) throw error;
        }
      }),
      setting,
    );
  });

  it('gives no more ounces when more was found', () => {
    fc.assert(
      fc.property(randomQuestion, fc.integer({ min: 1, max: 80 }), (question, tenths) => {
        const { foundKg } = question.set;
        if (foundKg === undefined) return;
        const more = { ...question, set: { ...question.set, foundKg: foundKg + (tenths / 10) * ounceKg } };
        const one = answered(question).answer.ouncesKg;
        const other = answered(more).answer.ouncesKg;
        if (one !== undefined && other !== undefined) expect(other).toBeLessThanOrEqual(one + 1e-9);
      }),
      setting,
    );
  });

  /** What opens gates, tells the mass, or says who stands there; evidence of a fault is another matter: without it there is none. */
  const blanked = [
    'filter',
    'indoorCoil',
    'outdoorCoil',
    'vents',
    'fan',
    'frost',
    'settledS',
    'volts',
    'idleVolts',
    'outdoorK',
    'compressor',
    'massBasis',
    'foundKg',
    'addedKg',
    'suctionLineK',
    'suctionPa',
  ] as const satisfies readonly (keyof VisitSet)[];

  it('adds nothing because a field is blank', () => {
    fc.assert(
      fc.property(randomQuestion, fc.constantFrom(...blanked), (question, name) => {
        // An emptied unit is weighed in by the scale alone: there the coil has no say, measured or not.
        if (question.set.massBasis === 'nameplate weighed in' && name.startsWith('suction')) return;
        const blank = { ...question, set: { ...question.set, [name]: undefined } };
        if (answered(blank).answer.action === 'add') expect(answered(question).answer.action).toBe('add');
      }),
      setting,
    );
  });

  it('opens nothing when the certificate or the training is not known', () => {
    fc.assert(
      fc.property(randomQuestion, (question) => {
        const unknown = { ...question, person: { name: 'KB' } };
        expect(actions[answered(unknown).answer.action].touchesCircuit).toBe(false);
      }),
      setting,
    );
  });
});
