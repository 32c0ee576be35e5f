import { describe, expect, it } from 'vitest';
import { causes } from '../../src/visit/diagnosis/causes.ts';
import { rankedBeliefs } from '../../src/visit/diagnosis/diagnose.ts';
import type { RankedBeliefs } from '../../src/visit/diagnosis/ranked-beliefs.ts';
import type { ReadingSet } from '../../src/visit/diagnosis/reading-set.ts';
import { simulatedSets } from '../../src/visit/diagnosis/tools/simulated-sets.ts';
import { fahrenheitDifferenceK, fahrenheitK, psiPa } from '../../src/units/trade.ts';
import { findRefrigerant, saturationPressurePa } from '../../src/refrigerants/index.ts';
import type { Given } from './calls.ts';
import { causesOf } from './calls.ts';
import { soundSet } from './sound-set.ts';
import { sentence } from './words.ts';

const beliefIn = (answer: RankedBeliefs, cause: string): number =>
  answer.causes.find((each) => each.cause === cause)?.belief ?? 0;
const likely = (answer: RankedBeliefs): readonly string[] =>
  answer.causes.filter(({ confidence }) => confidence === 'likely').map(({ cause }) => cause);

describe('published readings (tests/visit/simulated/README.md)', () => {
  const published = simulatedSets(new URL('simulated/published-measurements.csv', import.meta.url)).map(
    (set) => ({
      ...set,
      readings: {
        ...set.readings,
        gates: { ...soundSet.gates, outdoorTemperatureK: set.readings.gates.outdoorTemperatureK },
      },
    }),
  );
  const of = (key: string): readonly (typeof published)[number][] =>
    published.filter(({ row }) => row['source_key'] === key);

  it.each(of('F'))(
    'a unit better than its bands is no faulty one: $unit at $row.outdoor_temperature degF',
    ({ readings }) => {
      const answer = rankedBeliefs(readings);
      expect(answer.causes[0]?.cause).toBe('nothing wrong');
      expect(likely(answer).filter((cause) => cause !== 'nothing wrong')).toEqual([]);
    },
  );

  it('the plugged filter leads in its case; the normal figures named beside it raise no alarm', () => {
    const [starved, normal] = of('D');
    expect(rankedBeliefs(starved!.readings).causes[0]?.cause).toBe('low indoor airflow');
    expect(likely(rankedBeliefs(normal!.readings))).toEqual([]);
  });

  // Two are written teaching cases: a high side too high for a dirty coil alone is all the figures say of either.
  it.each([...of('A'), ...of('C')])(
    'nothing false is called likely: $row.truth_cause, $unit',
    ({ readings, causes: [cause] }) => {
      const answer = rankedBeliefs(readings);
      expect(likely(answer)).toEqual([]);
      expect(beliefIn(answer, cause!)).toBeGreaterThan(0.05);
      // Known to have been opened, air inside is no stranger than dirt.
      const opened = rankedBeliefs({ ...readings, openedBefore: true });
      expect(beliefIn(opened, 'non-condensables')).toBeGreaterThan(2 * beliefIn(answer, 'non-condensables'));
    },
  );
});

describe('what issue 14 saw go wrong', () => {
  it('a plugged capillary tube is a restriction: suction in vacuum, high side at the saturation of the air outside', () => {
    const gas = findRefrigerant('R-410A');
    const plugged: ReadingSet = {
      ...soundSet,
      refrigerant: gas,
      supplyTemperatureK: soundSet.returnTemperatureK! - fahrenheitDifferenceK(2),
      suctionLineK: soundSet.returnTemperatureK! - fahrenheitDifferenceK(3),
      suctionPa: psiPa(14.7 - 7),
      liquidPa: saturationPressurePa(gas, fahrenheitK(97), 'bubble'),
      liquidLineK: fahrenheitK(95),
      condenserAirK: fahrenheitK(97),
      dischargeLineK: fahrenheitK(190),
      amps: 4.5,
    };
    const answer = rankedBeliefs(plugged);
    expect(answer.causes[0]).toMatchObject({ cause: 'restriction', confidence: 'likely' });
    expect(sentence(causes(plugged)[0]!.inFavor)).toContain('suction in vacuum while liquid stands');
    // Without liquid on the high side the circuit may as well be almost empty.
    const empty = rankedBeliefs({
      ...plugged,
      liquidPa: saturationPressurePa(gas, fahrenheitK(70), 'bubble'),
    });
    expect(beliefIn(empty, 'low charge')).toBeGreaterThan(beliefIn(answer, 'low charge'));
  });

  it('frost at the inlet only is a starved coil, no ice that hides the readings', () => {
    const starved: Given = {
      refrigerant: 'R-410A',
      return_temperature: 78,
      return_wet_bulb: 65,
      supply_temperature: 72,
      outdoor_temperature: 92,
      suction_line: 70,
      amps: 7,
      rated_amps: 11,
    };
    const [first] = causesOf({ ...starved, frost: 'inlet only' });
    expect(first?.[1]).toMatch(/low charge|restriction/);
    expect(first?.[2]).toBe('likely');
    expect(first?.[3]).toContain('frost at the coil inlet only');
    expect(causesOf({ ...starved, frost: 'part' })[0]?.slice(1, 3)).toEqual(['ice', 'seen']);
  });

  it('an optional reading that cannot be worked out leaves the others standing, and is named', () => {
    // Above the critical pressure of R-410A there is no saturation.
    const off: ReadingSet = { ...soundSet, liquidPa: psiPa(900) };
    const [first] = causes(off);
    expect(first?.cause).toBe('nothing wrong');
    expect(sentence(first?.notMeasured ?? [])).toMatch(/condensing \(not worked out: .*\)/);
  });

  it.each([115, 120])(
    'R-32 at %d degF outdoors is answered, with its discharge line',
    (outdoor_temperature) => {
      const lines = causesOf({
        refrigerant: 'R-32',
        return_temperature: 80,
        return_wet_bulb: 66,
        supply_temperature: 62,
        outdoor_temperature,
        suction_line: 56,
        liquid_line: 128,
        discharge_line: 225,
        amps: 10,
        rated_amps: 9,
      });
      expect(lines[0]?.[0]).toBe('1');
      expect(lines.map((row) => `${row[3] ?? ''}${row[4] ?? ''}`).join()).toContain('discharge line');
    },
  );

  it('air that leaves the outdoor coil above 140 degF is the unit that needs an answer most', () => {
    const [first] = causesOf({
      refrigerant: 'R-410A',
      return_temperature: 80,
      return_wet_bulb: 67,
      supply_temperature: 63,
      outdoor_temperature: 100,
      suction_line: 58,
      liquid_line: 142,
      condenser_air: 148,
      amps: 12.5,
      rated_amps: 10,
    });
    expect(first?.slice(1, 3)).toEqual(['dirty condenser', 'likely']);
    expect(first?.[3]).toContain('condenser air rise 48.0');
  });

  it('high amps of a hot day are no sign, the same amps of a mild day are one', () => {
    const at = (outdoorF: number): number => {
      const outdoorTemperatureK = fahrenheitK(outdoorF);
      const { amps, ratedAmps, refrigerant, liquidGaugePa, suctionGaugePa, probeK, airProbeK, metering } =
        soundSet;
      const answer = rankedBeliefs({
        gates: { ...soundSet.gates, outdoorTemperatureK },
        returnTemperatureK: soundSet.returnTemperatureK,
        returnWetBulbK: soundSet.returnWetBulbK,
        amps: amps! * 1.18,
        ratedAmps,
        refrigerant,
        metering,
        liquidGaugePa,
        suctionGaugePa,
        probeK,
        airProbeK,
      });
      return beliefIn(answer, 'nothing wrong');
    };
    expect(at(113)).toBeGreaterThan(at(75) + 0.05);
  });

  it('air inside is never likely in a circuit known to be sealed unless the standing pressure says so', () => {
    const high: ReadingSet = {
      ...soundSet,
      liquidPa: soundSet.liquidPa! + psiPa(45),
      dischargeLineK: soundSet.dischargeLineK! - 2,
      amps: soundSet.amps! * 1.1,
    };
    expect(likely(rankedBeliefs({ ...high, openedBefore: false }))).not.toContain('non-condensables');
    const said = rankedBeliefs({ ...high, standing: 'non-condensables' });
    expect(said.causes[0]).toMatchObject({ cause: 'non-condensables', confidence: 'likely' });
    expect(beliefIn(rankedBeliefs({ ...high, standing: 'matches' }), 'non-condensables')).toBeLessThan(
      beliefIn(rankedBeliefs(high), 'non-condensables'),
    );
  });
});

describe('the reading to take next', () => {
  const air: Given = {
    refrigerant: 'R-410A',
    return_temperature: 78,
    return_wet_bulb: 65,
    supply_temperature: 68,
    outdoor_temperature: 92,
  };
  const outside =
    /^(suction line temperature|liquid line temperature|discharge line temperature|air that leaves the outdoor coil|amps|rated amps| and )+$/;

  it('needs no hole while a clamp or a thermometer is left', () => {
    expect(causesOf(air)[0]?.[6]).toMatch(outside);
    expect(causesOf({ ...air, suction_line: 62, amps: 7, rated_amps: 12 })[0]?.[6]).toMatch(outside);
  });

  it('then may be the first gauge where the cause lies inside, never a second hole', () => {
    const clamped: Given = {
      ...air,
      suction_line: 52,
      liquid_line: 112,
      discharge_line: 158,
      condenser_air: 112,
      amps: 9.4,
      rated_amps: 12,
    };
    const said = causesOf(clamped).map((row) => row[6] ?? '');
    expect(said.join()).not.toMatch(/liquid-side pressure/);
    for (const gauge of [{ suction_pressure: 110 }, { liquid_pressure: 340 }])
      for (const row of causesOf({ ...clamped, ...gauge }))
        expect(row[6]).not.toMatch(/(suction|liquid-side) pressure/);
  });

  it('is the standing pressure when air inside is the question and a gauge is on', () => {
    const [first] = causesOf({
      ...air,
      supply_temperature: 60,
      suction_line: 54,
      liquid_line: 104,
      discharge_line: 150,
      condenser_air: 109,
      amps: 12.6,
      rated_amps: 11,
      liquid_pressure: 470,
    });
    expect(first?.[1]).toBe('non-condensables');
    expect(first?.[2]).not.toBe('unlikely');
    expect(first?.[6]).toMatch(/standing pressure/);
  });
});
