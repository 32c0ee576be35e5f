import { describe, expect, it } from 'vitest';
import type { Given } from './calls.ts';
import { causesOf } from './calls.ts';
import { slowFan, starvedRoofUnit } from './scenarios.ts';

/** What stands in each line and column. Expected words follow from the sign table and the rules in causes.ts. */
const starved = starvedRoofUnit;
const line = (given: Given, cause: string): string[] => {
  const found = causesOf(given).find((row) => row[1] === cause);
  if (found === undefined) throw new Error(`no line for ${cause}`);
  return found;
};

describe('lines of the answer', () => {
  it('evidence for and against, each with figure and range of a sound unit, parted by semicolons', () => {
    const [rank, , confidence, inFavor, against] = line(starved, 'low charge');
    expect([rank, confidence]).toEqual(['1', 'likely']);
    expect(inFavor).toMatch(/^evaporator 23\.2 ± 2\.2 degF low \(\d\d\.\d degF to \d\d\.\d degF\); /);
    expect(inFavor).toMatch(/superheat 38\.8 ± \d\.\d degF high \(/);
    expect(inFavor).toMatch(/air split 10\.0 ± 1\.4 degF low \(/);
    expect(inFavor).toMatch(/amps 7\.0 ± 0\.2 A low \(\d+\.\d A to \d+\.\d A\)/);
    expect(against).toBe('');
    expect(line(starved, 'overcharge')[4]).toContain('superheat 38.8');
    // For a sound unit speaks what is normal, against it what is not.
    expect(line(starved, 'nothing wrong')[4]).toContain('superheat 38.8');
  });

  it('names what is open; a pipe with a gauge on it is told by the gauge', () => {
    const open = line(starved, 'low charge')[5];
    expect(open).toContain('subcooling');
    expect(open).not.toContain('suction line');
  });

  it('ranks from 1 on without gaps, and the supply and the source stand below without a rank', () => {
    const lines = causesOf(starved);
    expect(lines.map(([rank]) => rank)).toEqual(['1', '2', '3', '4', '5', '6', '7', '8', '', '']);
    expect(lines.at(-2)).toEqual(['', 'supply fault', 'excluded', '', 'volts inside the band', '', '']);
    expect(lines.at(-1)?.slice(0, 3)).toEqual(['', 'source', '']);
    expect(lines.at(-1)?.slice(4)).toEqual(['', '', '']);
  });

  it('a starved coil is one line while its two causes are not told apart', () => {
    const given = { ...starved, liquid_line: 88 };
    const [first, second] = causesOf(given);
    expect(first?.slice(0, 3)).toEqual(['1', 'low charge or restriction', 'likely']);
    expect(second?.[1]).not.toMatch(/low charge|restriction/);
    expect(causesOf({ ...starved, liquid_line: 104 })[0]?.slice(1, 3)).toEqual(['low charge', 'likely']);
    const withGauge = { ...starved, liquid_pressure: 366, liquid_line: 86 };
    expect(causesOf(withGauge)[0]?.slice(1, 3)).toEqual(['restriction', 'likely']);
  });

  it('a supply nobody measured stays open and is to be looked at', () => {
    const given = { ...starved, volts: '', rated_volts: '' };
    const supply = causesOf(given).at(-2) ?? [];
    expect(supply.slice(0, 5)).toEqual(['', 'supply fault', 'not judged', '', '']);
    expect(supply[5]).not.toBe('');
    expect(supply[6]).toBe(`look at ${supply[5] ?? ''}`);
  });

  it('sends to the frost first where ice is the question, and to the first gate not seen elsewhere', () => {
    const given = { ...starved, volts: '', frost: 'not seen' };
    for (const row of causesOf(given).filter(([rank]) => rank !== '')) {
      expect(row[6], row[1]).toMatch(
        row[1] === 'ice' ? /^look at .*for frost$/ : /^look at the (supply|volts)/,
      );
    }
  });

  it('what is unlikely stays so behind a gate not seen; what lies outside the circuit keeps its word', () => {
    expect(line(slowFan, 'low indoor airflow')[2]).toBe('likely');
    expect(line({ ...slowFan, vents: 'not seen' }, 'low indoor airflow')[2]).toBe('likely');
    expect(line({ ...slowFan, vents: 'not seen' }, 'overcharge')[2]).toBe('unlikely');
    expect(line({ ...starved, vents: 'not seen' }, 'low charge')[2]).toBe('unproven');
  });

  it('one sign makes nothing likely', () => {
    const words = causesOf({ return_temperature: 76, supply_temperature: 66, outdoor_temperature: 90 }).map(
      (row) => row[2],
    );
    expect(words).not.toContain('likely');
    expect(words).toContain('possible');
  });

  it('a restriction that leads and has nothing more to measure gets the test for moisture; others end', () => {
    const restricted: Given = {
      ...starved,
      supply_temperature: 69,
      liquid_pressure: 366,
      liquid_line: 86,
      amps: 8,
      condenser_air: 102,
      discharge_line: 215,
      standing: 'Matches: 2 psi',
    };
    const [first] = causesOf(restricted);
    expect(first?.slice(0, 2)).toEqual(['1', 'restriction']);
    expect(first?.[6]).toBe(
      'run again after a rest: one that works, then starves, has moisture freezing in the capillary tube',
    );
    const short: Given = {
      ...restricted,
      supply_temperature: 68,
      liquid_pressure: 320,
      liquid_line: 101,
      amps: 7,
    };
    const [shortOne] = causesOf(short);
    expect(shortOne?.slice(0, 2)).toEqual(['1', 'low charge']);
    expect(shortOne?.[6]).toBe('nothing more to measure tells it apart');
  });
});

describe('what was seen at the gates', () => {
  it.each<[string, Given, string[]]>([
    [
      'filter',
      { filter: 'dirty' },
      ['1', 'low indoor airflow', 'seen', 'filter dirty', '', '', 'clean, settle 15 min, read again'],
    ],
    [
      'indoor coil and fan',
      { indoor_coil: 'blocked', fan: 'dirty' },
      [
        '1',
        'low indoor airflow',
        'seen',
        'indoor coil blocked, fan dirty',
        '',
        '',
        'clean, settle 15 min, read again',
      ],
    ],
    [
      'vents',
      { vents: 'blocked' },
      [
        '1',
        'low indoor airflow',
        'seen',
        'vents or ducts blocked',
        '',
        '',
        'clean, settle 15 min, read again',
      ],
    ],
    [
      'outdoor coil',
      { outdoor_coil: 'dirty' },
      ['1', 'dirty condenser', 'seen', 'outdoor coil dirty', '', '', 'clean, settle 15 min, read again'],
    ],
  ])('%s', (_what, gate, expected) => {
    expect(causesOf({ ...starved, ...gate })[0]).toEqual(expected);
  });

  it('are worked off in order: supply, ice, indoor air, outdoor coil; the circuit waits for all of them', () => {
    const lines = causesOf({
      ...starved,
      volts: 90,
      frost: 'part',
      filter: 'dirty',
      outdoor_coil: 'blocked',
    });
    expect(lines.slice(0, 4).map(([rank, cause]) => `${rank ?? ''} ${cause ?? ''}`)).toEqual([
      '1 supply fault',
      '2 ice',
      '3 low indoor airflow',
      '4 dirty condenser',
    ]);
    expect(lines[0]?.[6]).toBe('volts at the source, idle and running');
    expect(lines[1]?.[6]).toBe('thaw, then look at filter, coil, fan and vents');
    for (const row of lines.slice(4, -1)) {
      expect([row[0], row[2], row[3], row[4], row[6]]).toEqual(['', 'not judged', '', '', '']);
      expect(row[5]).toMatch(/^gate closed: supply, /);
    }
    expect(lines).toHaveLength(4 + 5 + 1);
  });
});
