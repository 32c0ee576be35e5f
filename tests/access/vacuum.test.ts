import { describe, expect, it } from 'vitest';
import { call } from '../../functions/catalogue/call.ts';
import type { VacuumDecay } from '../../src/access/index.ts';
import {
  decayLimitPa,
  decayS,
  targetVacuumPa,
  vacuumDecay,
  vacuumRisePaPerS,
} from '../../src/access/index.ts';
import { inUsUnits } from './verdict-text.ts';

const micronPa = 101_325 / 760_000;

interface InMicrons {
  readonly start: number;
  readonly end: number;
  readonly halfway?: number;
  readonly minutes?: number;
  readonly farEnd?: boolean;
  readonly coldestF?: number;
}

function verdict({ start, end, halfway, minutes = 10, farEnd = true, coldestF }: InMicrons): string {
  const decay: VacuumDecay = {
    startPa: start * micronPa,
    endPa: end * micronPa,
    waitS: minutes * 60,
    gaugeAtFarEnd: farEnd,
    halfwayPa: halfway === undefined ? undefined : halfway * micronPa,
    coldestPartK: coldestF === undefined ? undefined : (coldestF + 459.67) / 1.8,
  };
  return inUsUnits(vacuumDecay(decay));
}

const practice = 'trade practice (the maker governs), common practice without source';
const argument = 'vapor-pressure argument, common practice without source';

describe('vacuum decay', () => {
  it('VAC-23 aims at 500 microns or lower (trade practice, common practice)', () => {
    expect(targetVacuumPa / micronPa).toBeCloseTo(500, 9);
    expect(verdict({ start: 501, end: 520 })).toMatch(/^Keep pumping: 501 micron/);
  });

  it('VAC-24 holds 1000 microns for ten minutes (trade practice, common practice)', () => {
    expect(decayLimitPa / micronPa).toBeCloseTo(1000, 9);
    expect(decayS).toBe(600);
  });

  it('VAC-30 rises 36 microns a minute from 420 to 780 in ten minutes (difference over time, computed)', () => {
    const rise = vacuumRisePaPerS({ startPa: 420 * micronPa, endPa: 780 * micronPa, waitS: 600 });
    expect((rise / micronPa) * 60).toBeCloseTo(36, 9);
  });

  it.each<[string, InMicrons, RegExp, string]>([
    ['VAC-24 passes', { start: 480, end: 860, halfway: 790 }, /^Dry and tight/, practice],
    [
      'VAC-24 levels off above the limit',
      { start: 480, end: 990, halfway: 850 },
      /^Wait: .*on its way to 1075/,
      'arithmetic: 990 + 140 x 0.378 / 0.622',
    ],
    ['VAC-24 passes flat', { start: 300, end: 310, halfway: 305 }, /^Dry and tight/, practice],
    ['VAC-24 without a halfway reading', { start: 420, end: 780 }, /^Dry and tight/, practice],
    [
      'still climbing below the limit',
      { start: 300, end: 900, halfway: 600 },
      /^Wait: .*still rising/,
      practice,
    ],
    ['too short', { start: 300, end: 310, minutes: 4 }, /^Wait: .*hold 6 min more/, practice],
    ['VAC-25 moisture', { start: 450, end: 3100, halfway: 2800 }, /^Moisture: /, argument],
    ['VAC-26 leak', { start: 450, end: 4500, halfway: 2400 }, /^Leak: .*without levelling/, argument],
    ['more than water makes', { start: 450, end: 9000 }, /^Leak: .*more than water/, argument],
    [
      'levelled above cold water',
      { start: 450, end: 4900, halfway: 4700, coldestF: 20 },
      /^Leak: /,
      argument,
    ],
    [
      'levelled below warm water',
      { start: 450, end: 9000, halfway: 8800, coldestF: 75 },
      /^Moisture: /,
      argument,
    ],
    ['two readings', { start: 450, end: 2500 }, /^Moisture or leak: .*halfway/, argument],
    [
      'VAC-28 microns at 5000 ft',
      { start: 500, end: 500, halfway: 500 },
      /^Dry and tight/,
      'absolute scale, computed',
    ],
    [
      'gauge at the pump',
      { start: 200, end: 210, farEnd: false },
      /^Refused: the gauge at the pump/,
      practice,
    ],
    [
      'deeper by itself',
      { start: 500, end: 400 },
      /^Refused: a vacuum does not get deeper/,
      'physical identity',
    ],
  ])('%s', (_, reading, expected) => {
    expect(verdict(reading)).toMatch(expected);
  });

  it.each<[string, InMicrons, RegExp]>([
    [
      'lower halfway than at isolation',
      { start: 400, halfway: 350, end: 450 },
      /^Refused: .*400 micron at isolation/,
    ],
    ['as low halfway as at isolation', { start: 400, halfway: 400, end: 400 }, /^Dry and tight/],
    ['1000 microns themselves', { start: 450, halfway: 900, end: 1000 }, /^Wait: .*too near to 1000 micron/],
    ['500 microns themselves', { start: 500, halfway: 505, end: 510 }, /^Dry and tight/],
    ['5000 microns without a temperature', { start: 450, end: 5000 }, /^Moisture or leak/],
    ['small rises one after the other', { start: 300, halfway: 305, end: 315 }, /^Dry and tight/],
    [
      'a rise that only begins in the second half',
      { start: 300, halfway: 310, end: 340 },
      /^Wait: .*still rising/,
    ],
    [
      'a second half of more than half the first',
      { start: 300, halfway: 330, end: 346 },
      /^Wait: .*still rising/,
    ],
  ])('at the edge: %s (the levels above)', (_, reading, expected) => {
    expect(verdict(reading)).toMatch(expected);
  });

  it('says what was read, the halfway reading too when there is one, and the temperature of the water', () => {
    expect(verdict({ start: 420, end: 780 })).toMatch(
      /^Dry and tight: 420 micron to 780 micron in 10 min: stays/,
    );
    expect(verdict({ start: 420, halfway: 700, end: 780 })).toMatch(
      / in 10 min \(700 micron halfway\): stays/,
    );
    expect(verdict({ start: 450, end: 9000 })).toMatch(/more than water can make, 5000 micron/);
    // Over ice at 20 degF: 0.0505 psia (ASHRAE handbook, from memory) = 2612 microns.
    expect(verdict({ start: 450, end: 4900, coldestF: 20 })).toMatch(
      /more than water can make at 20\.0 degF, 26\d\d micron/,
    );
  });

  // VAC-28 also says that a vacuum gauge in inHg bottoms out at 24.9 at 5000 ft: microns are counted from zero here,
  // so elevation is not a parameter; the gauge reading itself is SATTEMP's and AIRPRESSURE's matter.
  it('VAC-28 full-scale vacuum at 5000 ft is 24.9 inHg (standard atmosphere, computed)', async () => {
    const { standardAtmospherePa } = await import('../../src/air/index.ts');
    expect(standardAtmospherePa(5000 * 0.3048) / 3386.389).toBeCloseTo(24.9, 1);
  });
});

describe('near the limit', () => {
  it('never calls 300 to 990 microns dry, whatever the wait and the halfway reading (issue 14)', () => {
    for (const minutes of [10, 20, 60, 600]) {
      expect(verdict({ start: 300, end: 990, minutes })).toMatch(/^Wait/);
      for (let halfway = 300; halfway <= 990; halfway += 5)
        expect(verdict({ start: 300, end: 990, halfway, minutes })).toMatch(/^Wait/);
    }
  });

  it('takes the maker’s limit of 270 Pa (2025 micron by definition of the torr), half of it at isolation', () => {
    const inPascal = (start: number, end: number, limitPa = 270): string =>
      inUsUnits(vacuumDecay({ startPa: start, endPa: end, waitS: 600, gaugeAtFarEnd: true, limitPa }));
    expect(inPascal(130, 200)).toMatch(/^Dry and tight: .*at or below 2025 micron/);
    expect(inPascal(136, 140)).toMatch(/^Keep pumping: .*1013 micron or lower wanted/);
    expect(inPascal(130, 275)).toMatch(/^Moisture or leak: .*above 2025 micron/);
    expect(inPascal(130, 260)).toMatch(/^Wait/);
    expect(inPascal(30, 45, 66.66)).toMatch(/^Dry and tight: .*at or below 500 micron/);
  });

  it('reads inches of mercury from zero: 0.0165 inHg are 419 micron (1 inHg = 3386.389 Pa)', () => {
    const given = { minutes: 10, far_end: 'yes', vacuum_start: '0.0165 inHg' };
    expect(call('VACUUMCHECK', { ...given, vacuum_end: '0.0200 inHg' })).toMatch(
      /^Dry and tight: 419 micron to 508 micron/,
    );
    // A dial that counts down from the air never shows a deep vacuum.
    expect(call('VACUUMCHECK', { ...given, vacuum_start: '29.8 inHg', vacuum_end: '29.9 inHg' })).toMatch(
      /^Keep pumping/,
    );
  });
});
