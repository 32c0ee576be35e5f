import { describe, expect, it } from 'vitest';
import { call } from '../../../functions/catalogue/call.ts';
import type { Argument } from '../../../functions/runtime/cells.ts';
import { CalcError } from '../../../src/errors.ts';
import {
  chargeAtKg,
  checkIntervals,
  leakCheckKgCo2e,
  sealedLeakCheckKgCo2e,
} from '../../../src/leak/duties/european-union.ts';
import { gwpEuropeanUnion } from '../../../src/leak/duties/gas-kind.ts';
import { repairLimit } from '../../../src/leak/duties/united-states.ts';
import { annualShare, daysToLimit, decayPerDay } from '../../../src/leak/loss.ts';
import { findRefrigerant } from '../../../src/refrigerants/index.ts';
import { tradeRows } from '../trade-rows.ts';

const rows = tradeRows(new URL('./rows.csv', import.meta.url));

type Given = Readonly<Record<string, Argument>>;

function figureOf(id: string, given: Given): number {
  const result = call(id, given);
  if (typeof result !== 'number') throw new Error(`${id} gave ${JSON.stringify(result)}`);
  return result;
}

function errorOf(id: string, given: Given): CalcError {
  const result = call(id, given);
  if (!(result instanceof CalcError)) throw new Error(`${id} gave ${JSON.stringify(result)}`);
  return result;
}

/** Answer, reason and duty of one rule. */
function duty(rule: string, given: Given): string {
  const table = call('DUTYCHECK', given);
  if (!Array.isArray(table)) throw new Error(`DUTYCHECK gave ${JSON.stringify(table)}`);
  const row = table.find(([name]) => name === rule);
  if (!row) throw new Error(`no rule ${rule}`);
  return row
    .slice(1, 4)
    .map((cell) => (typeof cell === 'string' ? cell : ''))
    .join(' | ');
}

describe('leak rate', () => {
  const unit = { full_charge: 14 };
  rows.figure('LEAK-01', () => figureOf('LEAKRATE', { ...unit, added: 3, days: 200 }));
  rows.figure('LEAK-02', () => figureOf('LEAKRATE', { ...unit, added: 3, days: 700 }));
  rows.words('LEAK-03', ({ expected }) => {
    const [wrong, right] = expected.match(/[\d.]+/g)?.map(Number) ?? [];
    const rate = figureOf('LEAKRATE', { ...unit, added: 3, days: 700 });
    expect(rate).toBeCloseTo(right ?? NaN, 2);
    expect(Math.abs(rate - (wrong ?? NaN))).toBeGreaterThan(1);
  });
  const two = { ...unit, added: [[2], [3]], dates: [['2026-02-10'], ['2026-08-30']] };
  rows.figure('LEAK-04', () => figureOf('LEAKRATE', { ...two, method: 'rolling average' }));
  rows.figure('LEAK-05', () =>
    figureOf('LEAKRATE', { ...two, method: 'rolling average', verified_on: '2026-02-12' }),
  );
  rows.figure('LEAK-06', () => figureOf('LEAKRATE', { ...unit, added: [[1], [1.5]], days: 90 }));
  rows.figure('LEAK-07', () => figureOf('LEAKRATE', { full_charge: '52 lb', added: '6 lb', days: 120 }));
  rows.figure('LEAK-08', () => 100 * repairLimit['comfort cooling']);
  rows.figure('LEAK-09', () => 100 * repairLimit['commercial refrigeration']);
  rows.figure('LEAK-10', () => 100 * repairLimit['industrial process']);
  rows.words('LEAK-11', () => {
    const reasons = [['new charge'], ['seasonal correction']];
    expect(errorOf('LEAKRATE', { ...two, since: '2025-08-01', reasons }).code).toBe('not-available');
    const big = { refrigerant: 'R-22', full_charge: '60 lb', sealed: false };
    expect(duty('Leak rate and repair, ozone-depleting gas', big)).toMatch(/at every addition/);
  });
  rows.words('LEAK-12', () => {
    const big = { refrigerant: 'R-22', full_charge: '60 lb', sealed: false };
    expect(duty('Leak rate and repair, ozone-depleting gas', big)).toMatch(/125 % .* March 1/);
  });
  rows.words('LEAK-14', () => {
    expect(errorOf('LEAKRATE', { ...unit, added: 3, days: 0 }).message).toMatch(/add the two together/);
    const sameDay = {
      ...unit,
      added: [[1], [2]],
      dates: [['2026-08-01'], ['2026-08-01']],
      since: '2026-01-13',
    };
    expect(figureOf('LEAKRATE', sameDay)).toBeCloseTo(
      figureOf('LEAKRATE', { ...unit, added: 3, days: 200 }),
      9,
    );
  });
  rows.words('LEAK-16', () => {
    const first = { ...unit, added: 3, dates: '2026-08-01' };
    expect(errorOf('LEAKRATE', first).message).toMatch(
      /day of installation .* or days = 365 as an assumption/,
    );
    expect(figureOf('LEAKRATE', { ...first, since: '2026-01-13' })).toBeCloseTo(39.107, 3);
  });
});

describe('duties in the United States', () => {
  const window = { refrigerant: 'R-410A', full_charge: 14 };
  rows.words('REG-01', ({ expected }) => {
    expect(expected).toMatch(/^5 lb or less/);
    expect(duty('Recovery before opening or disposal', { ...window, full_charge: '5 lb' })).toMatch(
      /small appliance/,
    );
    expect(duty('Recovery before opening or disposal', { ...window, full_charge: '5.1 lb' })).toMatch(
      /above the 5 lb/,
    );
    expect(duty('Recovery before opening or disposal', { ...window, sealed: false })).toMatch(/not sealed/);
  });
  rows.words('REG-03', () => {
    expect(duty('No venting', { refrigerant: 'R-744', full_charge: 14 })).toMatch(/^Check .*exempt/);
  });
  rows.words('REG-04', () => {
    expect(duty('No venting', { refrigerant: 'R-290', full_charge: 5 })).toMatch(
      /R-290 in self-contained .*it burns/,
    );
  });
  rows.words('REG-05', () => {
    expect(duty('Certified technician', window)).toMatch(/^Applies .*Type I or Universal/);
  });
  rows.words('REG-06', () => {
    expect(duty('Certified technician', window)).toMatch(/keep a copy at the place of business/);
  });
  rows.words('REG-07', () => {
    expect(duty('Recovery before opening or disposal', window)).toMatch(/Recover 90 %.*4 inHg/);
  });
  const recovered = (share: RegExp): number =>
    Number(share.exec(duty('Recovery before opening or disposal', window))?.[1]);
  rows.words('REG-09', ({ expected }) => {
    expect(recovered(/90 %, ([\d.]+) oz/)).toBe(parseFloat(expected));
  });
  rows.words('REG-10', ({ expected }) => {
    expect(recovered(/80 %, ([\d.]+) oz/)).toBe(parseFloat(expected));
  });
  rows.words('REG-13', () => {
    const invoice = (full_charge: string): string =>
      duty('Invoice with the amount added', { refrigerant: 'R-22', full_charge });
    expect(invoice('50 lb')).toMatch(/^Applies .*invoice/);
    expect(invoice('49 lb')).toMatch(/^Does not apply/);
  });
  rows.words('REG-14', () => {
    const record = (full_charge: string): string => duty('Disposal record', { ...window, full_charge });
    expect(record('20 lb')).toMatch(/^Applies .*place, date, kind, monthly/);
    expect(record('14 oz')).toMatch(/^Does not apply/);
    expect(record('50 lb')).toMatch(/^Does not apply/);
  });
  rows.words('REG-16', () => {
    expect(duty('Disposal record', { ...window, full_charge: '20 lb' })).toMatch(/three years/);
  });
  const ozoneRule = 'Leak rate and repair, ozone-depleting gas';
  const hfcRule = 'Leak rate and repair, HFC';
  rows.words('REG-17', () => {
    expect(duty(ozoneRule, { refrigerant: 'R-22', full_charge: '50 lb' })).toMatch(/^Applies/);
    expect(duty(ozoneRule, { refrigerant: 'R-22', full_charge: '49.9 lb' })).toMatch(/^Does not apply/);
    expect(duty(ozoneRule, { refrigerant: 'R-410A', full_charge: '50 lb' })).toMatch(/10 April 2020/);
  });
  rows.words('REG-18', () => {
    const shop = { refrigerant: 'R-410A', full_charge: '15 lb', residential: false };
    expect(duty(hfcRule, { ...shop, on_date: '2026-01-01' })).toMatch(/^Applies/);
    expect(duty(hfcRule, { ...shop, on_date: '2025-12-31' })).toMatch(/not in force before 2026-01-01/);
    expect(duty(hfcRule, { ...shop, full_charge: '14.9 lb' })).toMatch(/^Does not apply/);
    expect(duty(hfcRule, { ...shop, refrigerant: 'R-1234yf' })).toMatch(/^Does not apply .*GWP of 53/);
  });
  rows.words('REG-19', () => {
    expect(duty(hfcRule, { refrigerant: 'R-410A', full_charge: '15 lb' })).toMatch(
      /light-commercial .* left out/,
    );
  });
  rows.words('REG-20', () => {
    for (const full_charge of [5, 14, 40]) {
      const unit = { ...window, full_charge };
      for (const rule of [ozoneRule, hfcRule]) expect(duty(rule, unit)).toMatch(/^Does not apply/);
      for (const rule of [
        'No venting',
        'Certified technician',
        'Sales restriction',
        'Recovery before opening or disposal',
      ]) {
        expect(duty(rule, unit)).toMatch(/^Applies/);
      }
    }
  });
  rows.words('REG-21', () => {
    expect(duty('GWP below 700 in new units', window)).toMatch(/^Does not apply .*1 January 2025/);
  });
  rows.words('REG-39', () => {
    expect(duty('No flammable gas in a unit built for another', window)).toMatch(/Never charge an A2L or A3/);
  });
});

describe('duties in the European Union', () => {
  const inEurope = { region: 'EU', residential: false };
  const checks = (given: Given): string => duty('Leak checks', { ...inEurope, ...given });
  rows.words('REG-23', () => {
    // 10 t of R-410A are 4.79 kg (row CO2E-08).
    expect(checks({ refrigerant: 'R-410A', full_charge: '4.7 kg' })).toMatch(/^Does not apply/);
    expect(checks({ refrigerant: 'R-410A', full_charge: '4.8 kg' })).toMatch(/^Applies/);
    expect(checks({ refrigerant: 'R-410A', full_charge: '4.7 kg', sealed: 'no' })).toMatch(/^Applies/);
  });
  rows.words('REG-24', () => {
    expect(checks({ refrigerant: 'R-1234yf', full_charge: '1.9 kg' })).toMatch(/^Does not apply/);
    expect(checks({ refrigerant: 'R-1234yf', full_charge: '2 kg' })).toMatch(/^Applies/);
  });
  rows.words('REG-25', () => {
    const home = { refrigerant: 'R-404A', residential: 'yes' };
    expect(checks({ ...home, full_charge: '2.9 kg' })).toMatch(/^Does not apply .*residential/);
    expect(checks({ ...home, full_charge: '3 kg' })).toMatch(/^Applies/);
  });
  const months = (tonnes: number): number =>
    checkIntervals.find(({ belowKgCo2e }) => 1000 * tonnes < belowKgCo2e)?.months ?? NaN;
  rows.words('REG-27', ({ expected }) => {
    expect(months(49.9)).toBe(parseFloat(expected));
    expect(checks({ refrigerant: 'R-410A', full_charge: '5 kg' })).toMatch(/every 12 months, 24 with/);
  });
  rows.words('REG-28', ({ expected }) => {
    expect(months(50)).toBe(parseFloat(expected));
    expect(checks({ refrigerant: 'R-410A', full_charge: '30 kg' })).toMatch(/every 6 months, 12 with/);
  });
  rows.words('REG-30', () => {
    expect(duty('No intentional release', { ...inEurope, refrigerant: 'R-32', full_charge: 14 })).toMatch(
      /check again within one month/,
    );
  });
  rows.words('REG-32', () => {
    expect(
      duty('Records of leak checks', { ...inEurope, refrigerant: 'R-410A', full_charge: '5 kg' }),
    ).toMatch(/five years/);
  });
  const newUnits = (): string =>
    duty('GWP limits of new units', { ...inEurope, refrigerant: 'R-32', full_charge: 14 });
  rows.words('REG-33', () => {
    expect(newUnits()).toMatch(/up to 12 kW below 150 from 2027 \(750 where safety needs it\)/);
  });
  rows.words('REG-34', () => {
    expect(newUnits()).toMatch(/movable ones below 150 since 2020/);
  });
});

rows.setAside({
  'REG-15': 'binds the seller of refrigerant, not the unit or the technician',
  'REG-22': 'a national phase-down of supply: nothing follows for one unit',
  'REG-35': 'binds the reclaimer',
  'REG-36': 'binds the disposer of cylinders from 2028, recalled only',
  'REG-37': 'a rating condition: used as words on capacity, no figure of ours rests on it',
  'REG-38': 'a rating condition, recalled only: no figure of ours rests on it',
  'REG-40': 'a charge limit for self-contained ice machines: no such units here',
});

describe('CO2-equivalent', () => {
  rows.figure('CO2E-03', () => figureOf('CO2E', { refrigerant: 'R-32', mass: 18 }));
  rows.figure('CO2E-04', () => figureOf('CO2E', { refrigerant: 'R-454B', mass: 17, basis: 'EU 2024/573' }));
  rows.figure('CO2E-05', () => figureOf('CO2E', { refrigerant: 'R-290', mass: 5.29, basis: 'AR6' }));
  const threshold = (refrigerant: string, kgCo2e: number): number =>
    chargeAtKg(kgCo2e, gwpEuropeanUnion(findRefrigerant(refrigerant)) ?? NaN);
  rows.figure('CO2E-07', () => threshold('R-410A', leakCheckKgCo2e));
  rows.figure('CO2E-08', () => threshold('R-410A', sealedLeakCheckKgCo2e));
  rows.figure('CO2E-11', () => threshold('R-134a', leakCheckKgCo2e));
  rows.figure('CO2E-12', () => threshold('R-407C', leakCheckKgCo2e));
});

describe('forecast', () => {
  const losses = [{ massKg: 3, days: 200 }];
  const unit = { losses, fullChargeKg: 14, limitShare: 0.85 };
  rows.figure('FCST-01', () => daysToLimit({ ...unit, model: 'linear' }));
  it('FCST-01 as a date: 2026-06-01 and 140 days are 2026-10-19 (calendar)', () => {
    const given = { full_charge: 14, added: 3, days: 200, filled_on: '2026-06-01' };
    const day = figureOf('NEXTDUE', given) - 25_569;
    expect(new Date(day * 86_400_000).toISOString().slice(0, 10)).toBe('2026-10-19');
  });
  rows.figure('FCST-03', () => daysToLimit({ ...unit, model: 'exponential' }));
  rows.figure('FCST-04', () => 100 * annualShare(decayPerDay(losses, 14)));
  const growing = { added: [[3], [3]], dates: [['2026-04-20'], ['2026-06-19']], since: '2025-10-02' };
  rows.words('FCST-05', () => {
    expect(call('LEAKTREND', growing)).toMatch(/^Growing: .*repair it now/);
    // 0.05 oz a day, 365 days a year, by arithmetic.
    expect(call('LEAKTREND', growing)).toContain('18.3 oz/year after 5.5 oz/year');
  });
  const daysBetween = (since: string, until: string): number =>
    365 / figureOf('LOSSPERYEAR', { added: 1, dates: until, since });
  rows.figure('FCST-06', () => daysBetween('2026-03-01', '2026-11-25'));
  rows.figure('FCST-07', () => daysBetween('2028-02-28', '2028-03-01'));
});

rows.nothingForgotten();
