import { describe, expect, it } from 'vitest';
import type { GateReadings } from '../../src/visit/gates.ts';
import { readiness } from '../../src/visit/readiness.ts';
import { gateWord } from '../../src/visit/ready-text.ts';
import { readRatedVolts } from '../../src/visit/supply-band.ts';
import { fahrenheitK, minutesS } from '../../src/units/trade.ts';
import { errorOf } from '../error-of.ts';
import { words } from './words.ts';

const ready: GateReadings = {
  filter: 'clean',
  indoorCoil: 'clean',
  outdoorCoil: 'clean',
  vents: 'clean',
  fan: 'clean',
  frost: 'none',
  settledS: minutesS(15),
  volts: 115,
  ratedVolts: readRatedVolts('115'),
  outdoorTemperatureK: fahrenheitK(55),
};
const verdict = (change: GateReadings): string => words(readiness({ ...ready, ...change }).verdict);

describe('gates before a verdict', () => {
  it('opens at exactly 15 min and 55 degF (California RA3.2)', () => {
    expect(verdict({})).toMatch(/^Ready/);
  });

  it.each<[string, GateReadings, RegExp]>([
    ['a minute too early', { settledS: minutesS(14) }, /^Wait: 1 min left of 15 min/],
    ['seconds left count as a minute', { settledS: minutesS(14.5) }, /^Wait: 1 min left/],
    ['just started', { settledS: 0 }, /^Wait: 15 min left/],
    ['dirty filter', { filter: 'dirty' }, /^Clean first: filter dirty/],
    [
      'two things dirty',
      { outdoorCoil: 'blocked', fan: 'dirty' },
      /^Clean first: outdoor coil blocked, fan dirty/,
    ],
    ['frost at the inlet', { frost: 'inlet only' }, /^Thaw first: frost at the coil inlet/],
    ['volts below 103.5', { volts: 103.4 }, /^Fix supply: 103\.4 V is low.*103\.5 V to 126\.5 V/],
    ['volts above 126.5', { volts: 126.6 }, /^Fix supply: 126\.6 V is high/],
    [
      'hot outdoors (52 degC: hottest test of ISO 5151, from memory)',
      { outdoorTemperatureK: fahrenheitK(126) },
      /^Hot outdoors: 126\.0 degF outdoors is above 126 degF.*weigh in/,
    ],
    ['cold outdoors', { outdoorTemperatureK: fahrenheitK(54.9) }, /^Cold outdoors: 54\.9 degF.*weigh in/],
  ])('closed: %s', (_, change, expected) => {
    expect(verdict(change)).toMatch(expected);
  });

  it('names first what burns a compressor, then ice, then dirt, and the rest after it', () => {
    const all: GateReadings = { volts: 98, frost: 'full', filter: 'blocked', settledS: 0 };
    expect(verdict(all)).toMatch(/^Fix supply: .*then: frost all over the coil, filter blocked, 15 min left/);
    expect(verdict({ ...all, volts: 115 })).toMatch(/^Thaw first: .*then: filter blocked/);
    expect(verdict({ ...all, volts: 115, frost: 'none' })).toMatch(/^Clean first/);
  });

  it('does not take "not looked at" for "clean"', () => {
    expect(verdict({ filter: undefined })).toMatch(/^Look first: not looked at: the filter$/);
    expect(verdict({ filter: 'not seen', frost: undefined })).toMatch(/^Look first: .*frost, the filter$/);
    expect(verdict({ volts: undefined })).toMatch(/^Look first: .*supply volts/);
    expect(verdict({ ratedVolts: undefined })).toMatch(/^Look first: .*rated volts/);
    expect(verdict({ outdoorTemperatureK: undefined })).toMatch(/^Look first: .*outdoor temperature/);
    expect(verdict({ settledS: undefined })).toMatch(/^Look first: .*minutes since start/);
  });

  it('sends to look at what is missing while the unit settles', () => {
    expect(verdict({ vents: undefined, settledS: minutesS(5) })).toMatch(
      /^Look first: not looked at: the vents or ducts; then: 10 min left/,
    );
  });

  it('knows a closed gate before an unseen one', () => {
    expect(verdict({ filter: undefined, frost: 'part' })).toMatch(/^Thaw first/);
  });
});

describe('the readiness text in a cell', () => {
  it.each([
    ['Ready: supply, coils, air path and settling time allow a verdict', 'open'],
    ['ready', 'open'],
    ['Wait: 6 min left of 15 min', 'closed'],
    ['Not ready', 'closed'],
    ['Readyish', 'closed'],
    ['', 'not stated'],
    [undefined, 'not stated'],
  ])('%s', (text, expected) => {
    expect(gateWord(text)).toBe(expected);
  });

  it.each(['63', ' -1.5 ', '2026-11-25', '%'])('%s is no answer of the readiness check', (text) => {
    expect(errorOf(() => gateWord(text))).toMatchObject({ code: 'invalid-argument', parameter: 'ready' });
    expect(errorOf(() => gateWord(text)).message).toContain(`received "${text.trim()}"`);
  });
});
