import { describe, expect, it } from 'vitest';
import {
  findRefrigerant,
  saturationPressurePa,
  saturationTemperatureK,
} from '../../src/refrigerants/index.ts';
import { fahrenheitDifferenceK, fahrenheitK } from '../../src/units/trade.ts';
import { ampsCheck } from '../../src/visit/amps-check.ts';
import { capacitorCheck, readLabel } from '../../src/visit/capacitor-check.ts';
import { compressionRatio } from '../../src/visit/compression-ratio.ts';
import { idealDischargeK } from '../../src/visit/ideal-discharge.ts';
import { nearestRatedV, readRatedVolts, supplyState } from '../../src/visit/supply-band.ts';
import { targetSplitIfAny, targetSplitK } from '../../src/visit/target-split.ts';
import { targetSuperheatIfAny, targetSuperheatK } from '../../src/visit/target-superheat.ts';
import { voltageCheck } from '../../src/visit/voltage-check.ts';
import { errorOf } from '../error-of.ts';
import { words } from './words.ts';

const r22 = findRefrigerant('R-22');

describe('rated volts as a nameplate writes them', () => {
  it.each<[string, number, number]>([
    ['115', 115, 115],
    [' 115 V ', 115, 115],
    ['115V', 115, 115],
    ['115 volts', 115, 115],
    ['115 VAC.', 115, 115],
    ['208/230', 208, 230],
    ['230 / 208', 208, 230],
    ['208-230V', 208, 230],
    ['12.5/115.5', 12.5, 115.5],
    ['220.25', 220.25, 220.25],
    ['80', 80, 80],
    ['600', 600, 600],
  ])('%s', (text, lowerV, upperV) => {
    if (lowerV < 80) expect(errorOf(() => readRatedVolts(text)).code).toBe('out-of-range');
    else expect(readRatedVolts(text)).toEqual({ lowerV, upperV });
  });

  it.each(['', 'about 115', '115 or so', '115/', '115//230', 'x115', '115 W', '1.2.3'])(
    'not "%s"',
    (text) => {
      expect(errorOf(() => readRatedVolts(text))).toMatchObject({
        code: 'invalid-argument',
        parameter: 'rated_volts',
        received: text,
        limit: 'such as 115 or 208/230',
        message: expect.stringContaining(`received "${text}"`) as string,
      });
    },
  );

  it.each(['79', '601', '115/601', '79/115'])('nor %s, which no unit here runs on', (text) => {
    expect(errorOf(() => readRatedVolts(text))).toMatchObject({
      code: 'out-of-range',
      parameter: 'rated_volts',
      received: text,
      limit: '80 to 600 V',
      message: expect.stringContaining(`80 to 600 V; received "${text}"`) as string,
    });
  });

  it('allows a tenth to both sides, the limits inside (NEMA MG 1 12.44.1: 115 V, 103.5 to 126.5)', () => {
    const rated = readRatedVolts('115');
    expect([103.4, 103.5, 126.5, 126.6].map((volts) => supplyState(volts, rated))).toEqual([
      'low',
      'in band',
      'in band',
      'high',
    ]);
  });

  it('takes a voltage between two ratings as rated, and the nearer end outside them (definition of a range)', () => {
    const rated = readRatedVolts('208/230');
    expect([190, 208, 219, 230, 240].map((volts) => nearestRatedV(volts, rated))).toEqual([
      208, 208, 219, 230, 230,
    ]);
  });
});

describe('amps', () => {
  const check = (amps: number, volts: number | undefined = 115): string =>
    words(ampsCheck({ amps, ratedAmps: 10, volts, rated: readRatedVolts('115') }));

  it('70 to 110 % of the rated load, the limits inside (common practice, no source)', () => {
    expect(check(6.9)).toMatch(
      /^Low: 6\.9 A is 6\.9 A at rated volts, 69% of the rated 10\.0 A; little load/,
    );
    expect(check(7)).toMatch(/^Normal/);
    expect(check(11)).toMatch(/^Normal/);
    expect(check(11.1)).toMatch(/^High: .*111% of the rated 10\.0 A; outdoor coil/);
  });

  it('moves with the volts without a jump, at constant power outside the ratings (W = V A)', () => {
    const rated = readRatedVolts('208/230');
    const share = (volts: number): number =>
      Number(/([\d.]+)% of/.exec(words(ampsCheck({ amps: 9, ratedAmps: 10, volts, rated })))?.[1]);
    expect(share(218.9)).toBe(90);
    expect(share(219.1)).toBe(90);
    expect(share(242)).toBe(Math.round((90 * 242) / 230));
    expect(share(195)).toBe(Math.round((90 * 195) / 208));
    for (let volts = 188; volts <= 252; volts += 0.1)
      expect(Math.abs(share(volts + 0.1) - share(volts))).toBeLessThanOrEqual(1);
  });

  it('nothing without volts or with bad ones (NEMA MG 1 12.44.1)', () => {
    expect(
      words(ampsCheck({ amps: 10, ratedAmps: 10, volts: undefined, rated: readRatedVolts('115') })),
    ).toMatch(/^Refused: amps say nothing without the volts/);
    expect(words(ampsCheck({ amps: 10, ratedAmps: 10, volts: 115, rated: undefined }))).toMatch(
      /^Refused: amps say/,
    );
    expect(check(10, 100)).toMatch(/^Refused: 100\.0 V is outside 103\.5 V to 126\.5 V/);
  });
});

describe('capacitor labels', () => {
  it.each<[string, number, number]>([
    ['35', 32.9, 37.1], // 6 % to both sides
    ['35 uF', 32.9, 37.1],
    ['35µF.', 32.9, 37.1],
    ['35 MFD', 32.9, 37.1],
    ['35 microfarads', 32.9, 37.1],
    ['7.25', 6.815, 7.685],
    ['88-108 uF', 88, 108],
    ['108 to 88', 88, 108],
    ['88.25 - 108.75', 88.25, 108.75],
  ])('%s', (text, lowest, highest) => {
    const band = readLabel(text, 0.06);
    expect(band.lowest * 1e6).toBeCloseTo(lowest, 9);
    expect(band.highest * 1e6).toBeCloseTo(highest, 9);
  });

  it.each(['', '0', '35+5', 'about 35', '35/5 uF', '-35'])('not "%s"', (text) => {
    expect(errorOf(() => readLabel(text, 0.06))).toMatchObject({
      code: 'invalid-argument',
      parameter: 'label',
      received: text,
      limit: 'such as 35 or 88-108 uF',
    });
  });

  const judge = (measured: number | undefined, more: { amps?: number; volts?: number } = {}): string =>
    words(
      capacitorCheck({
        label: readLabel('35', 0.06),
        measuredF: measured === undefined ? undefined : measured * 1e-6,
        amps: more.amps,
        volts: more.volts,
        frequencyHz: 60,
      }),
    );

  it('judge by the band, its limits inside', () => {
    expect(judge(32.8)).toMatch(/^Weak: 32\.8 uF, label allows 32\.9 uF to 37\.1 uF; replace it before/);
    expect(judge(32.9)).toMatch(/^Good/);
    expect(judge(37.1)).toMatch(/^Good/);
    expect(judge(37.2)).toMatch(/^High: .*wrong part or a failing one, replace it$/);
  });

  it('need a reading: the meter, or amps and volts together', () => {
    // 2652.6 x 5 / 370 = 35.8 uF at 60 Hz (definition of reactance)
    expect(judge(undefined, { amps: 5, volts: 370 })).toMatch(/^Good: 35\.8 uF from amps and volts, label/);
    for (const half of [{}, { amps: 5 }, { volts: 370 }]) expect(judge(undefined, half)).toMatch(/^Refused/);
  });
});

describe('supply under load', () => {
  const base = { volts: 115, rated: readRatedVolts('115'), ratedFrequencyHz: 60 };
  const check = (more: object): string =>
    words(voltageCheck({ ...base, ...more } as Parameters<typeof voltageCheck>[0]));

  it('may drop 5 % from idle, not more (common practice, no source)', () => {
    expect(check({ idleVolts: 115 / 0.95 })).toMatch(
      /^In band: 115\.0 V, allowed .* drops 6\.1 V under load$/,
    );
    expect(check({ idleVolts: 115 / 0.949 })).toMatch(
      /^Drop: drops 6\.2 V under load, more than 5%; shorter or thicker/,
    );
  });

  it('two legs may differ by 5 %, three by 1 % before derating (NEMA MG 1 14.36, from memory)', () => {
    const rated = { volts: 230, rated: readRatedVolts('230') };
    // Legs a and b: (a - b) / (a + b). 230 and 208.1 differ by 5.0 % of the average.
    expect(check({ ...rated, secondLegV: (230 * 0.95) / 1.05 })).toMatch(/^In band: .*, legs within 5/);
    expect(check({ ...rated, secondLegV: 230 * 0.9 })).toMatch(
      /^Unbalanced: legs differ by 5\.3%; above 5% do not run it/,
    );
    // 230, 230 and 226: average 228.67, the farthest 2.67 off: 1.2 %.
    expect(check({ ...rated, secondLegV: 230, thirdLegV: 226 })).toMatch(
      /^Unbalanced: legs differ by 1\.2%; a three-phase motor is derated above 1%/,
    );
    // 230, 230 and 200: average 220, 20 off: 9.1 %.
    expect(check({ ...rated, secondLegV: 230, thirdLegV: 200 })).toMatch(
      /legs differ by 9\.1%; above 5% do not run it/,
    );
    expect(check({ ...rated, secondLegV: 230, thirdLegV: 229 })).toMatch(/^In band: .*legs within 0\.3%$/);
    expect(check({})).toBe('In band: 115.0 V, allowed 103.5 V to 126.5 V');
  });
});

describe('compression', () => {
  it('counts from absolute zero, and names what is wrong', () => {
    expect(compressionRatio({ suctionPa: 5e5, dischargePa: 5e5 })).toBe(1);
    expect(compressionRatio({ suctionPa: 5e5, dischargePa: 15e5 })).toBe(3);
    expect(errorOf(() => compressionRatio({ suctionPa: 0, dischargePa: 1 }))).toMatchObject({
      code: 'out-of-range',
      parameter: 'suction_pressure',
      limit: 'above absolute zero pressure',
    });
    expect(errorOf(() => compressionRatio({ suctionPa: 2, dischargePa: 1 }))).toMatchObject({
      code: 'out-of-range',
      parameter: 'discharge_pressure',
      limit: 'suction_pressure or more',
    });
  });

  const suctionPa = saturationPressurePa(r22, fahrenheitK(40), 'dew');
  const states = {
    refrigerant: r22,
    suctionPa,
    suctionTemperatureK: fahrenheitK(60),
    dischargePa: 3 * suctionPa,
    efficiency: 0.7,
  };

  it('heats more the worse the compressor, and not at all without compression', () => {
    const ideal = idealDischargeK({ ...states, efficiency: 1 });
    const usual = idealDischargeK(states);
    expect(usual).toBeGreaterThan(ideal);
    expect(ideal).toBeGreaterThan(saturationTemperatureK(r22, states.dischargePa, 'dew'));
    // Ideal gas with k = 1.17 for R-22 vapor (handbooks, from memory): T2 = T1 3^(0.17 / 1.17). The real gas is within 8 K.
    expect(Math.abs(ideal - states.suctionTemperatureK * 3 ** (0.17 / 1.17))).toBeLessThan(8);
    expect(idealDischargeK({ ...states, dischargePa: suctionPa })).toBeCloseTo(states.suctionTemperatureK, 6);
  });

  it.each([0, -0.1, 1.01, Number.NaN])('refuses an efficiency of %d', (efficiency) => {
    expect(errorOf(() => idealDischargeK({ ...states, efficiency }))).toMatchObject({
      code: 'out-of-range',
      parameter: 'efficiency',
      received: String(efficiency),
      limit: 'above 0 to 100 %',
    });
  });

  it('says which end is out of reach: the saturation curve, or the equation on the way', () => {
    expect(errorOf(() => idealDischargeK({ ...states, suctionPa: 1e8 }))).toMatchObject({
      code: 'out-of-range',
      parameter: 'suction_pressure',
    });
    expect(errorOf(() => idealDischargeK({ ...states, dischargePa: 1e8 }))).toMatchObject({
      parameter: 'discharge_pressure',
    });
    const hot = { ...states, suctionTemperatureK: 390, efficiency: 0.3, dischargePa: 8 * suctionPa };
    const error = errorOf(() => idealDischargeK(hot));
    expect(error).toMatchObject({ code: 'out-of-range', parameter: 'discharge_pressure' });
    expect(error.message).toMatch(/^discharge_pressure is out of reach: on the way there the temperature/);
  });

  it('refuses wet suction', () => {
    expect(errorOf(() => idealDischargeK({ ...states, suctionTemperatureK: fahrenheitK(39) }))).toMatchObject(
      {
        code: 'out-of-range',
        parameter: 'suction_line',
        limit: 'the dew point at suction_pressure or more',
      },
    );
  });
});

describe('target split', () => {
  const split = (dry: number, wet: number): number =>
    targetSplitK({ returnTemperatureK: fahrenheitK(dry), returnWetBulbK: fahrenheitK(wet) }) * 1.8;
  const refusal = (dry: number, wet: number) => errorOf(() => split(dry, wet));

  it('has the corners of the published table (California RA3.2-3, from memory)', () => {
    expect(split(70, 50)).toBeCloseTo(20.9, 9);
    expect(split(75, 75)).toBeCloseTo(7.2, 9);
    expect(split(76, 76)).toBeCloseTo(6.5, 9);
    expect(split(84, 76)).toBeCloseTo(10.8, 9);
    expect(split(84, 59)).toBeCloseTo(25.9, 9);
    expect(split(80, 67)).toBeCloseTo(18.3, 9);
  });

  it('lies between the four points around it (definition of bilinear)', () => {
    for (const [dry, wet] of [
      [72, 60],
      [75, 62],
      [79, 66],
      [83, 70],
    ] as const) {
      const mean =
        (split(dry, wet) + split(dry + 1, wet) + split(dry, wet + 1) + split(dry + 1, wet + 1)) / 4;
      expect(split(dry + 0.5, wet + 0.5)).toBeCloseTo(mean, 9);
      const along = 0.75 * split(dry, wet) + 0.25 * split(dry, wet + 1);
      expect(split(dry, wet + 0.25)).toBeCloseTo(along, 9);
      const across = 0.75 * split(dry, wet) + 0.25 * split(dry + 1, wet);
      expect(split(dry + 0.25, wet)).toBeCloseTo(across, 9);
    }
  });

  it('names what is outside', () => {
    const dry = { code: 'out-of-range', parameter: 'return_temperature', limit: '70 to 84 degF' };
    expect(refusal(69.9, 60)).toMatchObject({ ...dry, received: '69.9 degF' });
    expect(refusal(84.1, 60)).toMatchObject({ ...dry, received: '84.1 degF' });
    const wet = {
      code: 'out-of-range',
      parameter: 'return_wet_bulb',
      limit: 'the published table for this dry bulb, up to 76 degF',
    };
    expect(refusal(80, 76.5)).toMatchObject({ ...wet, received: '76.5 degF' });
    expect(refusal(80, 54)).toMatchObject({ ...wet, received: '54.0 degF' });
    // At 78 degF the table begins at 53 degF, one row lower at 51: between the rows both are needed.
    expect(refusal(77.5, 51.5)).toMatchObject(wet);
    expect(split(77, 51.5)).toBeGreaterThan(20);
    expect(refusal(75, 75.5)).toMatchObject({
      code: 'refused',
      parameter: 'return_wet_bulb',
      received: '75.5 degF',
      limit: 'at most the dry bulb, 75.0 degF',
    });
  });

  it('is none outside the table for a verdict that goes on without it, but never above the dry bulb', () => {
    const air = (dry: number, wet: number) => ({
      returnTemperatureK: fahrenheitK(dry),
      returnWetBulbK: fahrenheitK(wet),
    });
    expect(targetSplitIfAny(air(90, 70))).toBeUndefined();
    expect(errorOf(() => targetSplitIfAny(air(70, 71))).code).toBe('refused');
  });
});

describe('target superheat', () => {
  const target = (wet: number, outdoor: number, metering: 'capillary' | 'valve' = 'capillary') => ({
    returnWetBulbK: fahrenheitK(wet),
    outdoorTemperatureK: fahrenheitK(outdoor),
    metering,
  });

  it('names why there is none', () => {
    expect(errorOf(() => targetSuperheatK(target(67, 85, 'valve')))).toMatchObject({
      code: 'refused',
      parameter: 'metering',
      received: 'valve',
      limit: 'capillary or orifice',
    });
    expect(errorOf(() => targetSuperheatK(target(60, 54.9)))).toMatchObject({
      code: 'refused',
      parameter: 'outdoor_temperature',
      received: '54.9 degF',
      limit: '55 degF or more',
    });
    expect(errorOf(() => targetSuperheatK(target(62, 95)))).toMatchObject({
      code: 'refused',
      parameter: 'return_wet_bulb',
      received: '62.0 degF',
      limit: 'conditions with a target of 5 degF or more',
    });
    expect(targetSuperheatIfAny(target(62, 95))).toBeUndefined();
    expect(targetSuperheatIfAny(target(67, 85, 'valve'))).toBeUndefined();
    expect(targetSuperheatIfAny(target(68, 85))).toBeCloseTo(fahrenheitDifferenceK(19), 9);
  });
});
