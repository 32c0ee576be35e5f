import { describe, expect, it } from 'vitest';
import type { Given } from '../../../visit/calls.ts';
import { figureOf, textOf } from '../../../visit/calls.ts';

/** Bubble point of R-22 at 226.4 psig is 110 degF (CoolProp 8.0.0). */
const at = (subcooling: number, more: Given = {}): string =>
  textOf('SUBCOOLINGCHECK', {
    refrigerant: 'R-22',
    pressure: 226.4,
    line_temperature:
      figureOf('SATTEMP', { refrigerant: 'R-22', pressure: 226.4, curve: 'bubble' }) - subcooling,
    gauge_accuracy: 0,
    probe_accuracy: 0,
    ...more,
  });

describe('SUBCOOLINGCHECK', () => {
  it('places it in the usual 5 to 15 degF (common practice, no source)', () => {
    for (const inside of [5, 10, 15]) expect(at(inside)).toMatch(/^In range/);
    expect(at(4.9)).toMatch(/^Low/);
    expect(at(15.1)).toMatch(/^High/);
    expect(at(6, { gauge_accuracy: 7 })).toMatch(/^Within doubt/);
  });

  it('holds the maker’s target within 3 degF, a verifier within 4 (California RA3.2.2, from memory)', () => {
    const target = 12;
    for (const inside of [9, 12, 15]) expect(at(inside, { target })).toMatch(/^On target/);
    expect(at(8.5, { target })).toMatch(/^Low/);
    expect(at(8.5, { target, role: 'verifier' })).toMatch(/^On target/);
    expect(at(15.5, { target })).toMatch(/^High/);
  });

  it('names flash gas or a bad probe below zero (definition)', () => {
    expect(at(-2)).toMatch(/^Flash gas or probe: subcooling -2\.0/);
    expect(at(-2, { target: 10, ready: 'Ready' })).toMatch(/^Flash gas or probe/);
  });

  it('is refused behind a closed gate, and tells nobody to add, recover or stop', () => {
    expect(at(10, { ready: 'Thaw first: frost part' })).toMatch(/^Refused/);
    for (const subcooling of [-5, 1, 10, 30])
      expect(at(subcooling, { ready: 'Ready' })).not.toMatch(/\b(add|adding|recover|stop)\b/i);
  });
});
