import { describe, expect, it } from 'vitest';
import { renderPhrase } from '../../functions/runtime/render.ts';
import { unitSystem } from '../../functions/runtime/unit-system.ts';
import type { CylinderAnswer, CylinderQuestion, HoseFilling, PlanRequest } from '../../src/charge/index.ts';
import {
  chargeFoundKg,
  chargePlan,
  chargeRoomKg,
  cylinderFigure,
  cylinderNetKg,
  hoseContentKg,
  nextStepKg,
  weighInKg,
} from '../../src/charge/index.ts';
import { findRefrigerant, saturationPressurePa } from '../../src/refrigerants/index.ts';
import { errorOf } from '../error-of.ts';

const ounceKg = 0.45359237 / 16;
const poundKg = 0.45359237;
const fahrenheitK = (degF: number): number => (degF + 459.67) / 1.8;
const ounces = (count: number): number => count * ounceKg;

/** 1 oz is 28.3 g, 2 oz 56.7 g, 14 oz 396.9 g, 15 oz 425.2 g, 16 oz 453.6 g (definition of the pound). */
const unit = { nameplateKg: ounces(14), massBasis: 'nameplate weighed in', foundKg: 0, addedKg: 0 } as const;
const step = { ...unit, scaleStepKg: ounces(0.1) };

const recovery: CylinderQuestion = { refrigerant: findRefrigerant('R-22'), waterCapacityKg: 47.7 * poundKg };
const ask = (answer: CylinderAnswer, more: Partial<CylinderQuestion>) => () =>
  cylinderFigure(answer, { ...recovery, ...more });

const hose: HoseFilling = {
  refrigerant: findRefrigerant('R-22'),
  lengthM: 1,
  insideDiameterM: 0.005,
  state: 'vapor',
  temperatureK: fahrenheitK(77),
};

describe('what a refusal names', () => {
  it.each<[string, () => unknown, object]>([
    [
      'more in the unit than the nameplate says',
      () => chargeRoomKg({ ...unit, addedKg: ounces(16) }),
      {
        code: 'refused',
        parameter: 'added',
        received: '16 oz (453.6 g) in the unit',
        limit: 'the nameplate, 14 oz (396.9 g)',
        message: expect.stringMatching(/holds 2 oz \(56\.7 g\) more than its nameplate/) as string,
      },
    ],
    [
      'more found than the nameplate says',
      () => chargeRoomKg({ ...unit, massBasis: 'residual weighed', foundKg: ounces(15) }),
      { code: 'refused', parameter: 'found', received: '15 oz (425.2 g) in the unit' },
    ],
    [
      'found within the nameplate, too much added',
      () => chargeRoomKg({ ...unit, massBasis: 'residual weighed', foundKg: ounces(10), addedKg: ounces(5) }),
      { parameter: 'added', received: '15 oz (425.2 g) in the unit' },
    ],
    [
      'a mass that nobody knows',
      () => chargeRoomKg({ ...unit, massBasis: 'unknown' }),
      {
        code: 'refused',
        parameter: 'mass_basis',
        received: 'unknown',
        limit: 'nameplate weighed in or residual weighed',
      },
    ],
    [
      'a residual without its mass',
      () => chargeRoomKg({ ...unit, foundKg: undefined, massBasis: 'residual weighed' }),
      {
        code: 'invalid-argument',
        parameter: 'found',
        received: 'blank',
        limit: 'the weighed mass, 0 for an empty unit',
      },
    ],
    [
      'more added than the nameplate says',
      () => chargeFoundKg({ nameplateKg: ounces(14), addedKg: ounces(15) }),
      {
        code: 'out-of-range',
        parameter: 'added',
        received: '15 oz (425.2 g)',
        limit: '0 to 14 oz (396.9 g)',
      },
    ],
    [
      'a unit that is not ready',
      () => nextStepKg({ ...step, ready: ' Wait: 5 min more ' }),
      {
        code: 'refused',
        parameter: 'ready',
        received: 'Wait: 5 min more',
        limit: 'a readiness verdict that begins with "Ready"',
        message: expect.stringMatching(/not ready: Wait: 5 min more$/) as string,
      },
    ],
    [
      'a unit that has not settled',
      // 15 minutes of settling are the rule of the trade; 400 s are 6.7 min, 8.3 min are left.
      () => nextStepKg({ ...step, ready: 'Ready: all gates open', sinceChangeS: 400 }),
      {
        code: 'refused',
        parameter: 'minutes_since_change',
        received: '6.7 min',
        limit: '15 min or more',
        message: expect.stringMatching(/wait 9 min more/) as string,
      },
    ],
    [
      'a coarse scale',
      () => nextStepKg({ ...step, nameplateKg: ounces(4), scaleStepKg: ounces(1) }),
      {
        code: 'out-of-range',
        parameter: 'scale_step',
        received: '1 oz (28.3 g)',
        limit: '0.8 oz (22.7 g) at most; 1 % of the charge is good', // a fifth of 4 oz
      },
    ],
    [
      'a deduction larger than the charge',
      () =>
        weighInKg({ nameplateKg: ounces(14), lineLengthM: 1, includedLengthM: 8, adderKgPerM: ounces(2) }),
      { code: 'out-of-range', parameter: 'adder', limit: 'an adder from the maker of the unit' },
    ],
    [
      'a deduction that leaves nothing',
      () => weighInKg({ nameplateKg: 1, lineLengthM: 1, includedLengthM: 2, adderKgPerM: 1 }),
      { parameter: 'adder' },
    ],
    ...(['lineLengthM', 'includedLengthM', 'adderKgPerM'] as const).map(
      (name): [string, () => unknown, object] => [
        `a line without ${name}`,
        () =>
          weighInKg({
            nameplateKg: 1,
            lineLengthM: 5,
            includedLengthM: 4,
            adderKgPerM: 0.02,
            [name]: undefined,
          }),
        {
          code: 'invalid-argument',
          parameter: { lineLengthM: 'line_length', includedLengthM: 'included_length', adderKgPerM: 'adder' }[
            name
          ],
          received: 'blank',
          limit: 'all three, or none for a self-contained unit',
        },
      ],
    ),
    [
      'a liquid with a pressure',
      () => hoseContentKg({ ...hose, state: 'liquid', pressurePa: 5e5 }),
      { code: 'invalid-argument', parameter: 'pressure', limit: 'blank for a liquid' },
    ],
    [
      'a vapor that would condense',
      // R-22 at 40 degF stands at 83.2 psia (published tables); a hose at 32 degF, 0 degC, is colder.
      () =>
        hoseContentKg({
          ...hose,
          temperatureK: 273.15,
          pressurePa: saturationPressurePa(hose.refrigerant, fahrenheitK(40), 'dew'),
        }),
      {
        code: 'out-of-range',
        parameter: 'temperature',
        received: '32.0 degF (0.0 degC)',
        limit: '40.0 degF (4.4 degC) or more',
      },
    ],
    [
      'a cylinder lighter than its tare',
      () => cylinderNetKg({ grossKg: ounces(14), tareKg: ounces(15) }),
      {
        code: 'out-of-range',
        parameter: 'gross',
        received: '14 oz (396.9 g)',
        limit: '15 oz (425.2 g) or more',
      },
    ],
    [
      'a tare that is missing',
      ask('gross', {}),
      {
        code: 'invalid-argument',
        parameter: 'tare',
        received: 'blank',
        limit: 'a weight',
        message: 'tare is needed for this answer',
      },
    ],
    ['a weight that is missing', ask('room', { tareKg: 10 }), { parameter: 'gross', received: 'blank' }],
    [
      'a gas without a listed density',
      ask('regulation', { refrigerant: findRefrigerant('R-410A') }),
      { code: 'not-available', parameter: 'refrigerant', received: 'R-410A', limit: 'R-22 or R-12' },
    ],
    [
      'a virgin cylinder',
      ask('net', { kind: 'virgin' }),
      {
        code: 'refused',
        parameter: 'kind',
        received: 'virgin',
        limit: 'recovery',
        message: expect.stringMatching(/^a virgin cylinder is not filled/) as string,
      },
    ],
    [
      'another gas in it',
      ask('net', { contains: findRefrigerant('R-410A') }),
      {
        code: 'refused',
        parameter: 'contains',
        received: 'R-410A',
        limit: 'R-22, or an empty evacuated cylinder',
        message: expect.stringMatching(/holds R-410A/) as string,
      },
    ],
    [
      'a test date without a day',
      ask('net', { testDue: 20_000 }),
      {
        code: 'invalid-argument',
        parameter: 'on_date',
        received: 'blank',
        limit: 'a date, such as 2026-07-14',
      },
    ],
    [
      'a test that is due on the day',
      // Day 20000 is 2024-10-04 (calendar).
      ask('net', { testDue: 20_000, onDate: 20_000 }),
      { code: 'refused', parameter: 'test_due', received: '2024-10-04', limit: 'after 2024-10-04' },
    ],
    [
      'a cylinder too weak for the gas',
      // R-410A at 131 degF stands at 34.3 bar (published tables, from memory: 497 psia); 482 / 1.25 = 386 psig are asked for.
      ask('net', { refrigerant: findRefrigerant('R-410A'), servicePressurePa: 260 * 6894.757 }),
      {
        code: 'refused',
        parameter: 'service_pressure',
        received: '260 psig (1793 kPa)',
        limit: expect.stringMatching(/^38\d psig \(26\d\d kPa\) or more$/) as string,
        message: expect.stringMatching(/^R-410A reaches 48\d psig \(33\d\d kPa\) at 131 degF/) as string,
      },
    ],
  ])('%s', (_, run, expected) => {
    expect(errorOf(run)).toMatchObject(expected);
  });

  it('an overfilled cylinder, by how much and to what it may weigh', () => {
    const limitKg = cylinderFigure('net', recovery).value;
    const tareKg = ounces(300);
    const full = { tareKg, grossKg: tareKg + limitKg };
    expect(cylinderFigure('room', { ...recovery, ...full }).value).toBeCloseTo(0, 9);
    const over = errorOf(ask('room', { tareKg, grossKg: tareKg + limitKg + ounces(2) }));
    expect(over.message).toMatch(/overfilled by 2 oz \(56\.7 g\)/);
    const inOunces = (text: string | undefined): number => parseFloat(text ?? '');
    expect(inOunces(over.received) - inOunces(over.limit)).toBeCloseTo(2, 1);
    expect(inOunces(over.limit)).toBeCloseTo((tareKg + limitKg) / ounceKg, 1);
  });
});

describe('what is not refused', () => {
  it('a unit filled to its nameplate, a cylinder at its tare, a test due tomorrow, an own kind of cylinder', () => {
    expect(chargeRoomKg({ ...unit, addedKg: ounces(14) })).toBe(0);
    expect(chargeRoomKg({ ...unit, addedKg: ounces(14) + 5e-7 })).toBe(0);
    expect(cylinderNetKg({ grossKg: 10, tareKg: 10 })).toBe(0);
    expect(cylinderNetKg({ grossKg: 10 - 5e-6, tareKg: 10 })).toBe(0);
    const open = {
      testDue: 20_001,
      onDate: 20_000,
      kind: 'recovery',
      contains: recovery.refrigerant,
    } as const;
    expect(ask('net', open)()).toEqual(ask('net', {})());
  });

  it('a self-contained unit needs no line; hoses are weighed in on top (by addition)', () => {
    expect(weighInKg({ nameplateKg: 1 })).toBe(1);
    expect(weighInKg({ nameplateKg: 1, hoseKg: 0.25 })).toBe(1.25);
    const line = { lineLengthM: 10, includedLengthM: 5, adderKgPerM: 0.02 };
    expect(weighInKg({ nameplateKg: 1, ...line, hoseKg: 0.25 })).toBeCloseTo(1.35, 12);
  });

  it('a ready unit that has settled, and one of which nothing is said', () => {
    const given = nextStepKg(step);
    expect(given).toBeCloseTo(ounces(1), 9); // the largest step, 1 oz
    expect(nextStepKg({ ...step, ready: 'Ready', sinceChangeS: 900 })).toBe(given);
  });

  it('a scale that shows just a fifth of the charge, or 1 oz', () => {
    expect(nextStepKg({ ...step, nameplateKg: ounces(4), scaleStepKg: ounces(0.8) })).toBeCloseTo(
      ounces(0.8),
      9,
    );
    expect(nextStepKg({ ...step, scaleStepKg: ounces(1) })).toBeCloseTo(ounces(1), 9);
  });

  it('vapor in a hose is saturated near the curve and thinner above it', () => {
    const saturatedPa = saturationPressurePa(hose.refrigerant, hose.temperatureK, 'dew');
    const saturated = hoseContentKg(hose);
    expect(hoseContentKg({ ...hose, pressurePa: saturatedPa })).toBeCloseTo(saturated, 9);
    expect(
      hoseContentKg({ ...hose, pressurePa: saturatedPa, temperatureK: hose.temperatureK + 30 }),
    ).toBeLessThan(saturated);
    // Ideal gas at a tenth of the pressure, R-22 86.47 g/mol: within 3 %.
    const thin = (saturatedPa / 10) * 0.08647 * (Math.PI / 4) * 0.005 ** 2;
    const ideal = thin / (8.314462618 * hose.temperatureK);
    expect(hoseContentKg({ ...hose, pressurePa: saturatedPa / 10 }) / ideal).toBeCloseTo(1, 1);
  });

  it('a cylinder fills up with liquid where its density says so', () => {
    // Liquid R-22 at 77 degF has 1190.7 kg/m3 (published tables): a cylinder filled so far is full at 77 degF.
    const volumeM3 = recovery.waterCapacityKg / (0.45359237 / (27.737 * 0.0254 ** 3));
    const full = cylinderFigure('liquid full', { ...recovery, grossKg: 1190.7 * volumeM3, tareKg: 0 });
    expect(full.value).toBeCloseTo(fahrenheitK(77), 0);
    // Without a weight the question is asked for the net limit, which leaves room beyond 131 degF.
    expect(cylinderFigure('liquid full', recovery).value).toBeGreaterThanOrEqual(328.15 - 1e-3);
    expect(errorOf(ask('liquid full', { grossKg: 1450 * volumeM3, tareKg: 0 }))).toMatchObject({
      code: 'out-of-range',
      parameter: 'gross',
      limit: 'the net limit of the cylinder',
    });
    expect(errorOf(ask('liquid full', { grossKg: 300 * volumeM3, tareKg: 0 }))).toMatchObject({
      code: 'not-available',
      parameter: 'refrigerant',
      received: 'R-22',
    });
  });
});

describe('what a charging plan says', () => {
  const reader = { units: unitSystem('US'), atmospherePa: 101_325 };
  const plan = (more: Partial<PlanRequest>): string[] =>
    chargePlan({ ...step, addedKg: ounces(13), ...more }).map(({ what }) => renderPhrase(what, reader));
  const stop =
    /^Stop: the nameplate, 14\.0 oz, is reached as near as the scale can show\. If the coil is still colder/;

  it('at each step, and cautions only at the first', () => {
    const lines = plan({ leavesAsLiquid: true, marginKg: ounces(0.5) });
    expect(lines[0]).toMatch(
      /^Weigh in, wait 15 min, read again; stop at 40\.0 degF coil saturation\. Blend: draw liquid .* suction side\. A capillary-tube unit suffers/,
    );
    expect(lines[1]).toBe('Weigh in, wait 15 min, read again; stop at 40.0 degF coil saturation');
    expect(lines.at(-1)).toMatch(stop);
  });

  it('without a blend and a margin nothing of either', () => {
    expect(plan({ aimK: fahrenheitK(42) })[0]).toBe(
      'Weigh in, wait 15 min, read again; stop at 42.0 degF coil saturation. Not heard: standing pressure, cause, split, superheat; each may forbid it',
    );
    expect(plan({ marginKg: 0 })[0]).not.toMatch(/capillary/);
  });

  it('at the aim only the margin is left', () => {
    const atAim = { suctionSaturationK: fahrenheitK(40) };
    expect(plan(atAim)).toEqual(['Stop: the coil is at the aim; more charge does not cool better']);
    const lines = plan({ ...atAim, marginKg: ounces(0.5) });
    expect(lines[0]).toMatch(/^Weigh in, wait 15 min, read again; margin for a slow leak\. A capillary-tube/);
    expect(lines.at(-1)).toBe('Stop: the margin is used up');
    expect(plan({ suctionSaturationK: fahrenheitK(39) }).at(-1)).toMatch(stop);
  });

  it('ends at 200 steps where the scale is finer than the charge deserves (limit of ours)', () => {
    const rows = chargePlan({ ...unit, nameplateKg: 30, scaleStepKg: 1e-4 });
    expect(rows).toHaveLength(201);
    expect(rows.at(-1)?.step).toBeUndefined();
  });
});
