import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call } from '../../functions/catalogue/call.ts';
import { verdictWords } from '../../src/verdict-words.ts';

/** A unit of 14 oz in which 8 oz were found on a scale. */
const short = { nameplate: 14, mass_basis: 'residual weighed', found: 8, added: 0 };
const next = (more: Readonly<Record<string, unknown>>): unknown => call('NEXTSTEP', { ...short, ...more });

describe('what other checks said is heard before any ounce (issue 14: never ounces against a cause)', () => {
  it('lets gas in where all of it agrees, and where nothing was handed over', () => {
    expect(next({})).toBeCloseTo(1, 9);
    expect(
      next({
        superheat: 'High: superheat 28 ± 2.4 degF',
        split: 'Low: split 12 ± 1.4 degF',
        standing: 'Matches: 0.2 ± 5 psi',
        cause: 'low charge, likely',
      }),
    ).toBeCloseTo(1, 9);
  });

  it.each([
    ['standing', 'Non-condensables: 17.8 ± 5.3 psi above'],
    ['standing', 'Mismatch: 40 psi below'],
    ['standing', 'Within doubt: 7 ± 5 psi'],
    ['standing', 'Refused: off for 12 min'],
    ['cause', 'overcharge, likely'],
    ['cause', 'restriction'],
    ['cause', 'nothing wrong, likely'],
    ['cause', 'low charge, unlikely'],
    ['cause', 'low indoor airflow'],
    ['split', 'High: split 26.0 ± 1.4 degF'],
    ['split', 'Refused: supply_temperature must be below'],
    ['superheat', 'Low: superheat 2.0 ± 2.4 degF'],
    ['superheat', 'Floodback or probe: superheat -4.8 ± 2.4 degF'],
    ['superheat', 'Within doubt: superheat 9 ± 2.4 degF'],
    ['superheat', 'Refused: the target is below 5 degF'],
  ])('is refused against %s "%s"', (parameter, text) => {
    expect(next({ [parameter]: text })).toMatchObject({ code: 'refused', parameter, received: text });
    expect(call('CHARGEPLAN', { ...short, [parameter]: text })).toMatchObject({ code: 'refused', parameter });
  });

  it('stops when the superheat is on target, in the step and in the plan', () => {
    const superheat = 'On target: superheat 13.0 ± 2.4 degF';
    expect(next({ superheat })).toBe(0);
    expect(JSON.stringify(call('CHARGEPLAN', { ...short, superheat }))).toMatch(/superheat is on target/);
  });

  it('says in the plan what it has not heard, and is silent once it has', () => {
    const plan = (more: Readonly<Record<string, string>>): string =>
      JSON.stringify(call('CHARGEPLAN', { ...short, ...more }));
    expect(plan({})).toMatch(/Not heard: standing pressure, cause, split, superheat/);
    expect(
      plan({ superheat: 'High: 28', split: 'Normal: 19', standing: 'Matches: 0', cause: 'low charge' }),
    ).not.toMatch(/Not heard/);
  });

  it('never becomes bolder by hearing more (property, any words of any check)', () => {
    const text = fc.option(
      fc.oneof(
        fc.constantFrom(...verdictWords.map(({ word }) => word)),
        fc.constantFrom('low charge, likely', 'overcharge', 'low charge or restriction', 'anything'),
      ),
      { nil: undefined },
    );
    fc.assert(
      fc.property(text, text, text, text, (superheat, split, standing, cause) => {
        const ounces = next({ superheat, split, standing, cause });
        if (typeof ounces === 'number') expect(ounces).toBeLessThanOrEqual(1);
        if (typeof ounces === 'number' && ounces > 0) {
          expect([undefined, 'High']).toContain(superheat);
          expect([undefined, 'Matches']).toContain(standing);
          expect(cause ?? 'low charge').toMatch(/^low charge/);
        }
      }),
      { seed: 20_261_129, numRuns: 2000 },
    );
  });
});

describe('a unit that was never emptied', () => {
  it('is no plan of 14 oz: "nameplate weighed in" with nothing added is refused until found says 0', () => {
    const full = { nameplate: 14, mass_basis: 'nameplate weighed in', added: 0 };
    for (const id of ['NEXTSTEP', 'CHARGEPLAN', 'CHARGEROOM'])
      expect(call(id, full)).toMatchObject({ code: 'refused', parameter: 'found' });
    expect(call('CHARGEROOM', { ...full, found: 0 })).toBeCloseTo(14, 9);
    expect(call('NEXTSTEP', { ...full, found: 0 })).toBeCloseTo(1, 9);
  });

  it('a charge found above the nameplate is an error, also by a crumb more than the scale leaves', () => {
    expect(call('CHARGEFOUND', { nameplate: 14, added: 14.1 })).toMatchObject({
      code: 'out-of-range',
      parameter: 'added',
    });
    expect(
      call('CHARGEROOM', { nameplate: 14, mass_basis: 'residual weighed', found: 14.1, added: 0 }),
    ).toMatchObject({
      code: 'refused',
      parameter: 'found',
    });
    expect(call('NEXTSTEP', { ...short, found: 14.1 })).toMatchObject({
      code: 'refused',
      parameter: 'found',
    });
  });
});
