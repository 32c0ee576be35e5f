import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chargeFoundKg } from '../../src/charge/charge-found.ts';
import { chargeRoomKg } from '../../src/charge/charge-room.ts';
import { nextStepKg } from '../../src/charge/next-step.ts';
import type { StepRequest } from '../../src/charge/next-step.ts';
import { errorOf } from '../error-of.ts';

/** 1 lb = 0.45359237 kg exactly, 16 oz to the pound. */
const ounceKg = 0.453_592_37 / 16;
const fahrenheit = (value: number): number => (value + 459.67) / 1.8;

const request: StepRequest = {
  nameplateKg: 14 * ounceKg,
  massBasis: 'nameplate weighed in',
  // Emptied before: only then is nothing added yet a starting point.
  foundKg: 0,
  addedKg: 0,
  scaleStepKg: 0.1 * ounceKg,
};

/** Steps in ounces until the rule says 0. */
function walk(start: StepRequest): number[] {
  const steps: number[] = [];
  let addedKg = start.addedKg;
  for (let count = 0; count < 200; count += 1) {
    const stepKg = nextStepKg({ ...start, addedKg });
    if (stepKg === 0) return steps;
    steps.push(stepKg / ounceKg);
    addedKg += stepKg;
  }
  throw new Error('the steps do not come to an end');
}

describe('next step', () => {
  it('halves as the room closes in', () => {
    // Design rule, common practice without a source: room 4.8 oz on a 14 oz unit with a 0.1 oz scale.
    const steps = walk({ ...request, addedKg: 9.2 * ounceKg });
    expect(steps.map((step) => Number(step.toFixed(6)))).toEqual([1, 1, 1, 0.9, 0.4, 0.2, 0.1, 0.1]);
  });

  it('never passes the nameplate, whatever the unit, the start and the scale', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 80, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom(0.1, 0.2, 0.05, 0.5, 1 / 28.349_523_125),
        (nameplateOz, share, scaleOz) => {
          const addedOz = nameplateOz * share;
          const steps = walk({
            ...request,
            nameplateKg: nameplateOz * ounceKg,
            addedKg: addedOz * ounceKg,
            scaleStepKg: scaleOz * ounceKg,
          });
          const totalOz = addedOz + steps.reduce((sum, step) => sum + step, 0);
          expect(totalOz).toBeLessThanOrEqual(nameplateOz + 1e-9);
          // What is left over is less than two scale steps, or the scale could still have shown one.
          expect(nameplateOz - totalOz).toBeLessThan(2 * scaleOz + 1e-9);
        },
      ),
    );
  });

  it('takes a fifth of a very small charge at most', () => {
    // 0.2 x 3 oz = 0.6 oz, by the rule itself.
    expect(nextStepKg({ ...request, nameplateKg: 3 * ounceKg }) / ounceKg).toBeCloseTo(0.6, 9);
  });

  it('stops at the aim and goes on below it', () => {
    const reading = { ...request, addedKg: 5 * ounceKg, aimK: fahrenheit(40) };
    expect(nextStepKg({ ...reading, suctionSaturationK: fahrenheit(40) })).toBe(0);
    expect(nextStepKg({ ...reading, suctionSaturationK: fahrenheit(46) })).toBe(0);
    expect(nextStepKg({ ...reading, suctionSaturationK: fahrenheit(39) }) / ounceKg).toBeCloseTo(1, 9);
  });

  it('grants a stated margin after the aim, never past the nameplate', () => {
    const atAim = { ...request, suctionSaturationK: fahrenheit(41), marginKg: 0.8 * ounceKg };
    expect(nextStepKg({ ...atAim, addedKg: 11 * ounceKg }) / ounceKg).toBeCloseTo(0.4, 9);
    expect(nextStepKg({ ...atAim, addedKg: 13.8 * ounceKg }) / ounceKg).toBeCloseTo(0.1, 9);
    expect(nextStepKg({ ...atAim, addedKg: 14 * ounceKg })).toBe(0);
  });

  it('counts what the hoses hold as if it were inside', () => {
    const step = nextStepKg({ ...request, addedKg: 12 * ounceKg, hoseKg: 1 * ounceKg });
    expect(step / ounceKg).toBeCloseTo(0.5, 9);
  });

  it('refuses when the mass is unknown and offers the way out', () => {
    const error = errorOf(() => nextStepKg({ ...request, massBasis: 'unknown' }));
    expect(error).toMatchObject({ code: 'refused', parameter: 'mass_basis' });
    expect(error.message).toMatch(/recover .* weigh the nameplate charge in/);
  });

  it('refuses behind a closed gate and while settling', () => {
    const gate = errorOf(() => nextStepKg({ ...request, ready: 'Clean first: filter blocked' }));
    expect(gate).toMatchObject({ code: 'refused', parameter: 'ready' });
    expect(gate.message).toContain('filter blocked');
    const wait = errorOf(() => nextStepKg({ ...request, sinceChangeS: 6 * 60 }));
    expect(wait).toMatchObject({ code: 'refused', parameter: 'minutes_since_change' });
    expect(wait.message).toContain('wait 9 min');
    expect(nextStepKg({ ...request, ready: 'Ready: settled for 20 min', sinceChangeS: 900 })).toBeGreaterThan(
      0,
    );
  });

  it('does not take "Not ready" for ready', () => {
    expect(errorOf(() => nextStepKg({ ...request, ready: 'Not ready: ice' })).code).toBe('refused');
  });

  it('stops with an error above the nameplate', () => {
    const error = errorOf(() => nextStepKg({ ...request, addedKg: 14.2 * ounceKg }));
    expect(error).toMatchObject({ code: 'refused', parameter: 'added' });
    expect(error.message).toMatch(/^stop: .*0\.2 oz/);
  });

  it('does not dose with a scale coarser than a step', () => {
    expect(errorOf(() => nextStepKg({ ...request, scaleStepKg: 1.5 * ounceKg })).parameter).toBe(
      'scale_step',
    );
  });
});

describe('charge room', () => {
  it('is nameplate less found, added and hoses', () => {
    const roomKg = chargeRoomKg({
      nameplateKg: 14,
      massBasis: 'residual weighed',
      addedKg: 1.5,
      foundKg: 8,
      hoseKg: 0.5,
    });
    expect(roomKg).toBeCloseTo(4, 12); // mass balance
  });

  it('asks for the residual that was said to be weighed', () => {
    const error = errorOf(() => chargeRoomKg({ nameplateKg: 14, massBasis: 'residual weighed', addedKg: 0 }));
    expect(error).toMatchObject({ code: 'invalid-argument', parameter: 'found' });
  });
});

describe('charge found', () => {
  it('is what the additions leave of the nameplate', () => {
    expect(chargeFoundKg({ nameplateKg: 14, addedKg: 3 })).toBe(11); // mass balance
    expect(chargeFoundKg({ nameplateKg: 14, addedKg: 14 })).toBe(0);
    expect(errorOf(() => chargeFoundKg({ nameplateKg: 14, addedKg: 14.1 })).parameter).toBe('added');
  });
});
