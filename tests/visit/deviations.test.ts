import { describe, expect, it } from 'vitest';
import { findRefrigerant, saturationPressurePa } from '../../src/refrigerants/index.ts';
import { fahrenheitDifferenceK, fahrenheitK } from '../../src/units/trade.ts';
import type { Deviation } from '../../src/visit/diagnosis/deviation.ts';
import { deviations } from '../../src/visit/diagnosis/deviations.ts';
import type { ReadingSet } from '../../src/visit/diagnosis/reading-set.ts';
import type { StandingFinding } from '../../src/visit/diagnosis/standing-finding.ts';
import { standingFinding } from '../../src/visit/diagnosis/standing-finding.ts';
import type { Sign, Symptom } from '../../src/visit/diagnosis/symptoms.ts';
import { missingReadings, supersededBy } from '../../src/visit/diagnosis/symptoms.ts';
import { expectedCondensingK, expectedEvaporatorK } from '../../src/visit/expected-temperatures.ts';
import { idealDischargeK } from '../../src/visit/ideal-discharge.ts';
import { nothingMeasured } from './calls.ts';
import { sentence } from './words.ts';

/**
 * Bands of a healthy unit and which readings each symptom needs. The bands are common practice, no source; a value on a
 * band's end is inside it. No doubt here: what doubt does is tested with the ranking.
 */
const r410a = findRefrigerant('R-410A');
const f = fahrenheitK;

const outdoors = (degF: number): Pick<ReadingSet, 'gates'> => ({ gates: { outdoorTemperatureK: f(degF) } });
const saturated = (degF: number, curve: 'dew' | 'bubble'): number =>
  saturationPressurePa(r410a, f(degF), curve);

function found(symptom: Symptom, readings: Partial<ReadingSet>): Deviation | undefined {
  return deviations({ ...nothingMeasured, ...readings }).find((each) => each.symptom === symptom);
}

describe.each<{
  symptom: Symptom;
  readings: Partial<ReadingSet>;
  /** The figure varied, in degF. */
  at: (degF: number) => Partial<ReadingSet>;
  band: readonly [number, number];
  said: string;
}>([
  {
    symptom: 'evaporator',
    readings: { refrigerant: r410a, returnTemperatureK: f(75), ...outdoors(90) },
    at: (degF) => ({ suctionPa: (saturated(degF, 'dew') + saturated(degF, 'bubble')) / 2 }),
    band: [35, 45],
    said: 'evaporator 40.0 ± 0.0 degF normal (35.0 degF to 45.0 degF)',
  },
  {
    symptom: 'superheat',
    readings: { refrigerant: r410a, suctionPa: saturated(40, 'dew') },
    at: (degF) => ({ suctionLineK: f(40 + degF) }),
    band: [5, 25],
    said: 'superheat 15.0 ± 0.0 degF normal (5.0 degF to 25.0 degF)',
  },
  {
    symptom: 'condensing',
    readings: { refrigerant: r410a, ...outdoors(90) },
    at: (degF) => ({ liquidPa: saturated(degF, 'bubble') }),
    band: [110, 120],
    said: 'condensing 115.0 ± 0.0 degF normal (110.0 degF to 120.0 degF)',
  },
  {
    symptom: 'subcooling',
    readings: { refrigerant: r410a, liquidPa: saturated(115, 'bubble') },
    at: (degF) => ({ liquidLineK: f(115 - degF) }),
    band: [5, 15],
    said: 'subcooling 10.0 ± 0.0 degF normal (5.0 degF to 15.0 degF)',
  },
  {
    symptom: 'condenserRise',
    readings: outdoors(90),
    at: (degF) => ({ condenserAirK: f(90 + degF) }),
    band: [12, 32],
    said: 'condenser air rise 22.0 ± 0.0 degF normal (12.0 degF to 32.0 degF)',
  },
  {
    symptom: 'split',
    readings: { returnTemperatureK: f(76) },
    at: (degF) => ({ supplyTemperatureK: f(76 - degF) }),
    band: [15, 22],
    said: 'air split 18.5 ± 0.0 degF normal (15.0 degF to 22.0 degF)',
  },
  {
    symptom: 'suctionLine',
    readings: { returnTemperatureK: f(76) },
    at: (degF) => ({ suctionLineK: f(76 + degF) }),
    // 5 to 25 degF of superheat over a coil 35 degF below the air.
    band: [-30, -10],
    said: 'suction line against return air -20.0 ± 0.0 degF normal (-30.0 degF to -10.0 degF)',
  },
  {
    symptom: 'liquidLine',
    readings: outdoors(90),
    at: (degF) => ({ liquidLineK: f(90 + degF) }),
    // Condensing 20 to 30 degF over the air, less 15 to 5 degF of subcooling.
    band: [5, 25],
    said: 'liquid line over outdoor 15.0 ± 0.0 degF normal (5.0 degF to 25.0 degF)',
  },
])('$symptom', ({ symptom, readings, at, band: [lowest, highest], said }) => {
  // The middle of bubble and dew pressure is the middle of their temperatures to a few thousandths of a degree.
  // Bubble pressure and temperature are each other's inverse to a few millionths.
  const near = symptom === 'evaporator' ? 0.05 : 1e-4;
  const sign = (degF: number): Sign | 'within doubt' | undefined =>
    found(symptom, { ...readings, ...at(degF) })?.sign;

  it(`is normal from ${lowest} to ${highest} degF`, () => {
    expect(sign(lowest - near)).toBe('-');
    expect(sign(lowest + near)).toBe('0');
    expect(sign(highest - near)).toBe('0');
    expect(sign(highest + near)).toBe('+');
  });

  it('says its figure, its doubt and the band', () => {
    const middle = (lowest + highest) / 2;
    const deviation = found(symptom, { ...readings, ...at(middle) });
    expect(sentence(deviation?.said ?? [])).toBe(said);
    const low = found(symptom, { ...readings, ...at(lowest - 1) });
    expect(sentence(low?.said ?? [])).toContain(' low (');
    const high = found(symptom, { ...readings, ...at(highest + 1) });
    expect(sentence(high?.said ?? [])).toContain(' high (');
  });

  it('is not there without each of its readings, and then they are called missing', () => {
    const whole = { ...nothingMeasured, ...readings, ...at((lowest + highest) / 2) };
    expect(missingReadings(symptom, whole)).toEqual([]);
    const given = Object.keys({ ...readings, ...at(0) }).filter((name) => name !== 'gates');
    const without: Partial<ReadingSet>[] = given.map((name) => ({ [name]: undefined }));
    if (readings.gates !== undefined && symptom !== 'evaporator') without.push({ gates: {} });
    expect(without.length).toBeGreaterThan(1);
    for (const left of without) {
      expect(found(symptom, { ...whole, ...left }), JSON.stringify(left)).toBeUndefined();
      expect(missingReadings(symptom, { ...whole, ...left })).toHaveLength(1);
    }
  });
});

describe('what one reading does to another', () => {
  it('a mild day lets the coil run 5 degF colder', () => {
    const at = (outdoorF: number, coilF: number): string | undefined =>
      found('evaporator', {
        refrigerant: r410a,
        returnTemperatureK: f(75),
        suctionPa: (saturated(coilF, 'dew') + saturated(coilF, 'bubble')) / 2,
        ...outdoors(outdoorF),
      })?.sign;
    expect(at(75, 34)).toBe('-');
    expect(at(74, 34)).toBe('0');
    expect(at(74, 29)).toBe('-');
    expect(at(74, 46)).toBe('+');
  });

  it('weather and wet bulb replace the rough band of superheat by the target within 5 degF', () => {
    const at = (superheatF: number, returnWetBulbK: number | undefined): string | undefined =>
      found('superheat', {
        refrigerant: r410a,
        suctionPa: saturated(40, 'dew'),
        suctionLineK: f(40 + superheatF),
        returnWetBulbK,
        ...outdoors(85),
      })?.sign;
    // Makers’ table at 85 degF outdoors: 15 at 66 degF wet bulb, 19 at 68.
    expect([11.9, 12.1, 21.9, 22.1].map((each) => at(each, f(67)))).toEqual(['-', '0', '0', '+']);
    expect([6, 24].map((each) => at(each, undefined))).toEqual(['0', '0']);
    // No target below 5 degF: the table holds a dash, the rough band stays.
    expect([6, 24].map((each) => at(each, f(50)))).toEqual(['0', '0']);
  });

  it('a gauge on a pipe makes the pipe alone superfluous', () => {
    const pipes = { returnTemperatureK: f(76), suctionLineK: f(56), liquidLineK: f(100), ...outdoors(90) };
    expect(found('suctionLine', pipes)?.sign).toBe('0');
    expect(found('suctionLine', { ...pipes, suctionPa: 9e5 })).toBeUndefined();
    expect(found('liquidLine', pipes)?.sign).toBe('0');
    expect(found('liquidLine', { ...pipes, liquidPa: 3e6 })).toBeUndefined();
    expect(supersededBy({ ...nothingMeasured, ...pipes })).toEqual([]);
    expect(supersededBy({ ...nothingMeasured, suctionPa: 9e5 })).toEqual(['suctionLine']);
    expect(supersededBy({ ...nothingMeasured, liquidPa: 3e6 })).toEqual(['liquidLine']);
  });

  it('amps count at rated volts, and only with volts, rated volts and rated amps', () => {
    const gates = { volts: 120, ratedVolts: { lowerV: 115, upperV: 115 } };
    const at = (share: number, more: Partial<ReadingSet> = {}): string | undefined =>
      found('amps', { gates, amps: (share * 10 * 115) / 120, ratedAmps: 10, ...more })?.sign;
    // 0.7 to 1.1 of the rated load, meters 3 % of the figure.
    expect([0.67, 0.69, 0.73, 1.06, 1.09, 1.14].map((share) => at(share))).toEqual([
      '-',
      'within doubt',
      '0',
      '0',
      'within doubt',
      '+',
    ]);
    expect(at(1, { ratedAmps: undefined })).toBeUndefined();
    expect(at(1, { amps: undefined })).toBeUndefined();
    expect(at(1, { gates: { volts: 120 } })).toBeUndefined();
    expect(at(1, { gates: { ratedVolts: gates.ratedVolts } })).toBeUndefined();
    expect(sentence(found('amps', { gates, amps: 9, ratedAmps: 10 })?.said ?? [])).toBe(
      'amps of the rated load 93.9 ± 2.8% normal (70.0% to 110.0%)',
    );
  });
});

describe('the standing pressure', () => {
  it.each<[StandingFinding | undefined, string | undefined, string]>([
    ['matches', '0', 'standing pressure matches the gas'],
    ['non-condensables', '+', 'standing pressure above the gas'],
    ['mismatch', '-', 'standing pressure below the gas'],
    ['empty', '-', 'standing pressure below the gas'],
    ['within doubt', undefined, ''],
    [undefined, undefined, ''],
  ])('%s', (standing, sign, said) => {
    const deviation = found('standing', { standing });
    expect(deviation?.sign).toBe(sign);
    expect(sentence(deviation?.said ?? [])).toBe(said);
  });

  it.each<[string | undefined, StandingFinding | undefined]>([
    ['Matches: this says what is inside', 'matches'],
    [' matches', 'matches'],
    ['Non-condensables: 30 psi above', 'non-condensables'],
    ['Mismatch: 60 psi below', 'mismatch'],
    ['empty: 0 psi', 'empty'],
    ['Within doubt: 8 psi', 'within doubt'],
    ['Refused: off for 5 min', undefined],
    ['', undefined],
    [undefined, undefined],
  ])('as text in a cell: "%s"', (text, finding) => {
    expect(standingFinding(text)).toBe(finding);
  });
});

describe('freezing', () => {
  it('is judged by the coil inlet on a gauge: 20 % of the glide above the bubble point', () => {
    const at = (degF: number): string | undefined =>
      found('freezing', { refrigerant: r410a, suctionPa: saturated(degF, 'bubble') })?.sign;
    expect(at(31.9)).toBe('+');
    expect(at(32.1)).toBe('0');
    const said = found('freezing', { refrigerant: r410a, suctionPa: saturated(20, 'dew') })?.said ?? [];
    expect(sentence(said)).toMatch(/^coil 19\.\d ± 0\.0 degF below freezing$/);
  });

  it('without a gauge is proven by a suction line below 32 degF; a warmer one proves nothing', () => {
    expect(found('freezing', { suctionLineK: f(31.9) })?.sign).toBe('+');
    expect(found('freezing', { suctionLineK: f(31.9), probeK: 1 })?.sign).toBe('within doubt');
    expect(sentence(found('freezing', { suctionLineK: f(31.9), probeK: 1 })?.said ?? [])).toBe(
      'coil 31.9 ± 1.8 degF about freezing',
    );
    expect(found('freezing', { suctionLineK: f(32) })).toBeUndefined();
    expect(found('freezing', { suctionPa: 9e5 })).toBeUndefined();
    expect(found('freezing', { refrigerant: r410a, suctionPa: saturated(45, 'dew') })?.sign).toBe('0');
  });
});

describe('the discharge line', () => {
  const expectedK = idealDischargeK({
    refrigerant: r410a,
    suctionPa: saturationPressurePa(
      r410a,
      expectedEvaporatorK({ returnTemperatureK: f(75), differenceK: fahrenheitDifferenceK(35) }),
      'dew',
    ),
    suctionTemperatureK: f(40 + 12),
    dischargePa: saturationPressurePa(
      r410a,
      expectedCondensingK({ outdoorTemperatureK: f(90), differenceK: fahrenheitDifferenceK(25) }),
      'bubble',
    ),
    efficiency: 0.7,
  });
  const at = (lineK: number, more: Partial<ReadingSet> = {}): string | undefined =>
    found('discharge', {
      refrigerant: r410a,
      returnTemperatureK: f(75),
      dischargeLineK: lineK,
      ...outdoors(90),
      ...more,
    })?.sign;

  it('is compared with the ideal cycle of this weather: 45 degF under to 10 degF over', () => {
    const under = expectedK - fahrenheitDifferenceK(45);
    const over = expectedK + fahrenheitDifferenceK(10);
    expect([under - 0.01, under + 0.01, over - 0.01, over + 0.01].map((each) => at(each))).toEqual([
      '-',
      '0',
      '0',
      '+',
    ]);
  });

  it.each<[string, Partial<ReadingSet>]>([
    ['the refrigerant', { refrigerant: undefined }],
    ['return air', { returnTemperatureK: undefined }],
    ['outdoor air', { gates: {} }],
    ['a cycle below the critical point', outdoors(140)],
  ])('without %s only too much is a sign: above 225 degF', (_what, left) => {
    expect(at(f(150), left)).toBeUndefined();
    expect(at(f(225), left)).toBeUndefined();
    expect(at(f(225.1), left)).toBe('+');
  });

  it('is never normal above 225 degF, however hot the day', () => {
    expect(at(f(226), outdoors(128))).toBe('+');
  });
});
