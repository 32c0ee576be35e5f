import { describe, expect, it } from 'vitest';
import { standardAtmospherePa } from '../../src/air/index.ts';
import { findRefrigerant, saturationPressurePa } from '../../src/refrigerants/index.ts';
import { diagnose } from '../../src/visit/diagnosis/diagnose.ts';
import type { RankedCause } from '../../src/visit/diagnosis/rank-causes.ts';
import type { ReadingSet } from '../../src/visit/diagnosis/reading-set.ts';
import { simulatedSets } from '../../src/visit/diagnosis/tools/simulated-sets.ts';
import { isExamined } from './simulated/exam.ts';
import { soundSet } from './sound-set.ts';

/** Readings that are swept, from far below to far above what they were; steps are a tenth of what an instrument tells. */
const sweeps: Readonly<
  Record<
    string,
    {
      readonly half: number;
      readonly step: number;
      readonly moved: (set: ReadingSet, by: number) => ReadingSet;
    }
  >
> = {
  'return air': {
    half: 6,
    step: 0.05,
    moved: (set, by) => ({ ...set, returnTemperatureK: plus(set.returnTemperatureK, by) }),
  },
  'supply air': {
    half: 10,
    step: 0.05,
    moved: (set, by) => ({ ...set, supplyTemperatureK: plus(set.supplyTemperatureK, by) }),
  },
  'suction line': {
    half: 20,
    step: 0.1,
    moved: (set, by) => ({ ...set, suctionLineK: plus(set.suctionLineK, by) }),
  },
  'liquid line': {
    half: 12,
    step: 0.1,
    moved: (set, by) => ({ ...set, liquidLineK: plus(set.liquidLineK, by) }),
  },
  'discharge line': {
    half: 40,
    step: 0.2,
    moved: (set, by) => ({ ...set, dischargeLineK: plus(set.dischargeLineK, by) }),
  },
  'condenser air': {
    half: 12,
    step: 0.05,
    moved: (set, by) => ({ ...set, condenserAirK: plus(set.condenserAirK, by) }),
  },
  'outdoor air': {
    half: 8,
    step: 0.05,
    moved: (set, by) => ({
      ...set,
      gates: { ...set.gates, outdoorTemperatureK: plus(set.gates.outdoorTemperatureK, by) },
    }),
  },
  'suction pressure': {
    half: 250_000,
    step: 1500,
    moved: (set, by) => ({ ...set, suctionPa: plus(set.suctionPa, by) }),
  },
  'liquid pressure': {
    half: 700_000,
    step: 4000,
    moved: (set, by) => ({ ...set, liquidPa: plus(set.liquidPa, by) }),
  },
  amps: {
    half: 0.5,
    step: 0.005,
    moved: (set, by) => ({ ...set, amps: set.amps === undefined ? undefined : set.amps * Math.exp(by) }),
  },
  volts: {
    half: 8,
    step: 0.1,
    moved: (set, by) => ({ ...set, gates: { ...set.gates, volts: plus(set.gates.volts, by) } }),
  },
};

function plus(value: number | undefined, by: number): number | undefined {
  return value === undefined ? undefined : value + by;
}

/** Sets of every cause, weather and mask: eleven of them. */
const sets = simulatedSets()
  .filter(isExamined)
  .filter((_, index) => index % 140 === 0);

/** Answers along one sweep; gates and impossible readings leave a gap. */
function along(
  set: ReadingSet,
  name: string,
): ({ readonly first: RankedCause; readonly beliefs: ReadonlyMap<string, number> } | undefined)[] {
  const { half, step, moved } = sweeps[name]!;
  const answers = [];
  for (let by = -half; by <= half; by += step) {
    try {
      const diagnosis = diagnose(moved(set, by));
      if (diagnosis.basis === 'seen') answers.push(undefined);
      else
        answers.push({
          first: diagnosis.grouped[0]!,
          beliefs: new Map(diagnosis.single.map(({ causes, belief }) => [causes[0]!, belief])),
        });
    } catch {
      answers.push(undefined);
    }
  }
  return answers;
}

describe('answers change gradually with the readings', () => {
  it.each(Object.keys(sweeps).map((name) => ({ name })))('$name', ({ name }) => {
    let compared = 0;
    let largest = 0;
    for (const { readings, row } of sets) {
      const answers = along(readings, name);
      for (let index = 1; index < answers.length; index += 1) {
        const before = answers[index - 1];
        const after = answers[index];
        if (before === undefined || after === undefined) continue;
        compared += 1;
        const where = `set ${row['set_no'] ?? ''}, ${name}, step ${String(index)}`;
        const changed = !after.first.causes.some((cause) => before.first.causes.includes(cause));
        if (changed && before.first.word === 'likely' && after.first.word === 'likely')
          throw new Error(
            `${where}: ${before.first.causes.join()} likely, then ${after.first.causes.join()} likely`,
          );
        for (const [cause, belief] of after.beliefs)
          largest = Math.max(largest, Math.abs(belief - before.beliefs.get(cause)!));
      }
    }
    expect(compared).toBeGreaterThan(500);
    // Regression: 0.02 to 0.06. A step is a tenth of what an instrument tells.
    expect(largest).toBeLessThan(0.08);
  });
});

describe('one sign alone', () => {
  it.each(Object.keys(sweeps).map((name) => ({ name })))('makes nothing likely: $name', ({ name }) => {
    // Air and volts move several readings at once: a wrong thermometer in the return air is several signs.
    if (['return air', 'outdoor air', 'volts'].includes(name)) return;
    for (const answer of along(soundSet, name)) {
      if (answer === undefined || answer.first.word !== 'likely') continue;
      expect(answer.first.causes, name).toEqual(['nothing wrong']);
    }
  });

  it('no single reading makes a fault likely either, whatever it reads', () => {
    const {
      gates,
      metering,
      returnTemperatureK,
      returnWetBulbK,
      suctionGaugePa,
      liquidGaugePa,
      probeK,
      airProbeK,
    } = soundSet;
    const bare: ReadingSet = {
      gates,
      metering,
      returnTemperatureK,
      returnWetBulbK,
      suctionGaugePa,
      liquidGaugePa,
      probeK,
      airProbeK,
    };
    const alone: ReadingSet[] = [];
    for (let by = -25; by <= 25; by += 1) {
      alone.push({ ...bare, supplyTemperatureK: soundSet.supplyTemperatureK! + by });
      alone.push({ ...bare, suctionLineK: soundSet.suctionLineK! + by });
      alone.push({ ...bare, liquidLineK: soundSet.liquidLineK! + by });
      alone.push({ ...bare, condenserAirK: soundSet.condenserAirK! + by });
      alone.push({
        ...bare,
        refrigerant: soundSet.refrigerant,
        dischargeLineK: soundSet.dischargeLineK! + by,
      });
      alone.push({ ...bare, refrigerant: soundSet.refrigerant, liquidPa: soundSet.liquidPa! + by * 40_000 });
      alone.push({
        ...bare,
        refrigerant: soundSet.refrigerant,
        suctionPa: soundSet.suctionPa! + by * 15_000,
      });
    }
    for (const set of alone) {
      const diagnosis = diagnose(set);
      if (diagnosis.basis === 'seen') throw new Error('a gate is closed');
      expect(diagnosis.grouped[0]!.word).not.toBe('likely');
    }
  });
});

describe('what issue 14 saw jump', () => {
  it('3.7 psi more on the liquid side change no cause', () => {
    const more = { ...soundSet, liquidPa: soundSet.liquidPa! + 3.7 * 6894.757 };
    const first = (set: ReadingSet): string => {
      const diagnosis = diagnose(set);
      return diagnosis.basis === 'seen' ? '' : diagnosis.grouped[0]!.causes.join();
    };
    expect(first(soundSet)).toBe('nothing wrong');
    expect(first(more)).toBe('nothing wrong');
  });

  it('the same readings at 7,000 ft as at sea level are not the same evidence', () => {
    const gas = findRefrigerant('R-410A');
    expect(saturationPressurePa(gas, 280, 'dew')).toBeGreaterThan(0);
    const belief = (atmospherePa: number): number => {
      const diagnosis = diagnose({
        ...soundSet,
        supplyTemperatureK: soundSet.supplyTemperatureK! - 2.5,
        atmospherePa,
      });
      if (diagnosis.basis === 'seen') throw new Error('a gate is closed');
      return diagnosis.single.find(({ causes }) => causes[0] === 'low indoor airflow')!.belief;
    };
    expect(belief(standardAtmospherePa(2133.6))).toBeLessThan(belief(standardAtmospherePa(0)));
  });
});
