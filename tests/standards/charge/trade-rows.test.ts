import { describe, expect, it } from 'vitest';
import { call } from '../../../functions/catalogue/call.ts';
import type { CellInput } from '../../../functions/runtime/cells.ts';
import { CalcError } from '../../../src/errors.ts';
import { eightyPercentKg, hottestK } from '../../../src/charge/cylinder-limit.ts';
import { hoseVolumeM3 } from '../../../src/charge/hose-content.ts';
import {
  findRefrigerant,
  saturatedLiquidDensity,
  saturationPressurePa,
} from '../../../src/refrigerants/index.ts';
import { checkRow, visitLog } from '../../../src/records/index.ts';
import { fahrenheitK } from '../../../src/units/trade.ts';
import { tradeRows } from '../trade-rows.ts';

const rows = tradeRows(new URL('./rows.csv', import.meta.url));

type Given = Readonly<Record<string, CellInput>>;

function figureOf(id: string, given: Given): number {
  const result = call(id, given);
  if (typeof result !== 'number') throw new Error(`${id} gave ${JSON.stringify(result)}`);
  return result;
}

function refusalOf(id: string, given: Given): CalcError {
  const result = call(id, given);
  if (!(result instanceof CalcError)) throw new Error(`${id} gave ${JSON.stringify(result)}`);
  return result;
}

const sealed = { nameplate: 14, mass_basis: 'nameplate weighed in' };

describe('weighed charge', () => {
  rows.figure('CHG-01', () => figureOf('READMASS', { text: '14.5 oz', units: 'g' }));
  rows.figure('CHG-02', () => figureOf('READMASS', { text: '411 g' }));
  rows.figure('CHG-03', () => figureOf('READMASS', { text: '150 g' }));
  rows.figure('CHG-04', () => {
    // A fluid ounce of liquid weighs more than an ounce, which is why the unit is refused.
    const kg = 29.5735e-6 * saturatedLiquidDensity(findRefrigerant('R-410A'), fahrenheitK(77));
    expect(refusalOf('READMASS', { text: '1 fl oz' }).code).toBe('invalid-argument');
    return figureOf('READMASS', { text: `${String(kg)} kg` });
  });
  rows.words('CHG-08', () => {
    const error = refusalOf('NEXTSTEP', { nameplate: 14, mass_basis: 'unknown', added: 0 });
    expect(error.code).toBe('refused');
    expect(error.message).toMatch(/recover/);
    expect(refusalOf('CHARGEROOM', { nameplate: 14, mass_basis: 'unknown', added: 0 }).code).toBe('refused');
  });
  rows.words('CHG-09', ({ expected }) => {
    const steps: number[] = [];
    let added = 9.2;
    for (;;) {
      const step = figureOf('NEXTSTEP', { ...sealed, added });
      if (step === 0) break;
      steps.push(step);
      added += step;
    }
    const [list = '', total] = expected.split(' then stop (total ');
    expect(steps.map((step) => step.toFixed(1)).join(', ')).toBe(list);
    expect(added - 9.2).toBeCloseTo(parseFloat(total ?? ''), 9);
  });
  rows.figure('CHG-10', () =>
    figureOf('WEIGHIN', { nameplate: 64, line_length: 27, included_length: 15, adder: 0.6 }),
  );
  const tube = { refrigerant: 'R-410A', length: 1, state: 'liquid', temperature: 100 };
  rows.figure('CHG-11', () => figureOf('HOSECONTENT', { ...tube, inside_diameter: 0.19 }));
  rows.figure('CHG-12', () => figureOf('HOSECONTENT', { ...tube, inside_diameter: 0.248 }));
  rows.figure('CHG-14', () => figureOf('WEIGHIN', { nameplate: 14 }) - 14);
  rows.figure('CHG-16', () => {
    // A 0.5 oz scale on a 14 oz charge: warned of in the log.
    const ounceKg = 0.453_592_37 / 16;
    const row = { scale_step: 0.5 * ounceKg };
    const warning = checkRow(visitLog, row, { nameplateKg: 14 * ounceKg }).find(
      ({ message }) => message[0] === 'Scale step is ',
    );
    const share = warning?.message[1];
    return typeof share === 'object' ? 100 * share.value : Number.NaN;
  });
  rows.words('CHG-17', () => {
    for (const refrigerant of ['R-410A', 'R-407C', 'R-454B']) {
      const plan = call('CHARGEPLAN', { ...sealed, added: 9.2, refrigerant });
      expect(JSON.stringify(plan)).toContain('draw liquid from the cylinder and throttle it to vapor');
    }
    expect(JSON.stringify(call('CHARGEPLAN', { ...sealed, added: 9.2, refrigerant: 'R-22' }))).not.toContain(
      'Blend',
    );
  });
  rows.words('CHG-18', () => {
    const error = refusalOf('NEXTSTEP', { ...sealed, added: 14.1 });
    expect(error.code).toBe('refused');
    expect(error.message).toMatch(/^stop/);
  });
});

describe('cylinders', () => {
  const eighty = (refrigerant: string, waterCapacityLb: number): number =>
    eightyPercentKg({
      refrigerant: findRefrigerant(refrigerant),
      waterCapacityKg: waterCapacityLb * 0.453_592_37,
    }) / 0.453_592_37;
  rows.figure('CYL-01', () => eighty('R-22', 47.7));
  rows.figure('CYL-02', () => eighty('R-410A', 47.7));
  rows.figure('CYL-03', () => eighty('R-134a', 47.7));
  rows.figure('CYL-04', () => eighty('R-407C', 47.7));
  rows.figure('CYL-05', () => eighty('R-32', 47.7));
  rows.figure('CYL-07', () => eighty('R-410A', 26.2));
  rows.figure('CYL-08', () => eighty('R-454B', 26.2));
  rows.figure('CYL-09', () => eighty('R-290', 26.2));
  const r22 = { refrigerant: 'R-22', water_capacity: 47.7 };
  rows.figure('CYL-10', () => figureOf('CYLINDERLIMIT', { ...r22, give: 'gross', tare: 27.6 }));
  const listedShare = (refrigerant: string): number =>
    figureOf('CYLINDERLIMIT', { refrigerant, water_capacity: 100, give: 'regulation' });
  rows.figure('CYL-13', () => listedShare('R-22'));
  rows.figure('CYL-14', () => {
    const listed = figureOf('CYLINDERLIMIT', { ...r22, give: 'regulation' });
    expect(figureOf('CYLINDERLIMIT', r22)).toBeLessThan(listed);
    return listed;
  });
  rows.figure('CYL-15', () => listedShare('R-12'));
  rows.words('CYL-16', () => {
    // 27.737 cubic inches a pound: a WC of one pound is that volume, so 0.8 of it at the liquid density is the limit.
    const refrigerant = findRefrigerant('R-134a');
    const volumeM3 = 27.737 * 0.0254 ** 3;
    expect(eightyPercentKg({ refrigerant, waterCapacityKg: 0.453_592_37 })).toBeCloseTo(
      0.8 * volumeM3 * saturatedLiquidDensity(refrigerant, fahrenheitK(77)),
      12,
    );
  });
  rows.words('CYL-17', ({ expected, unit }) => {
    expect(unit).toContain('55 C');
    expect(hottestK).toBeCloseTo(fahrenheitK(Number(expected)), 6);
    for (const refrigerant of ['R-22', 'R-32', 'R-410A', 'R-454B', 'R-290']) {
      const full = figureOf('CYLINDERLIMIT', { refrigerant, water_capacity: 47.7, give: 'liquid full' });
      expect(full, refrigerant).toBeGreaterThanOrEqual(Number(expected) - 1e-6);
    }
  });
  const liquidFull = (refrigerant: string): number =>
    figureOf('CYLINDERLIMIT', { refrigerant, water_capacity: 47.7, give: 'liquid full' });
  rows.figure('CYL-19', () => liquidFull('R-22'));
  rows.figure('CYL-20', () => liquidFull('R-134a'));
  rows.figure('CYL-23', () => liquidFull('R-407C'));
  rows.figure('CYL-24', () => liquidFull('R-290'));
  rows.figure('CYL-27', () => {
    const r32 = findRefrigerant('R-32');
    const cold = saturatedLiquidDensity(r32, fahrenheitK(77));
    return (80 * cold) / saturatedLiquidDensity(r32, fahrenheitK(131));
  });
  const onTheRoof = (refrigerant: string): number =>
    (saturationPressurePa(findRefrigerant(refrigerant), fahrenheitK(130), 'bubble') - 101_325) / 6894.757_293;
  rows.figure('CYL-28', () => onTheRoof('R-22'));
  rows.figure('CYL-29', () => onTheRoof('R-410A'));
  rows.figure('CYL-30', () => onTheRoof('R-32'));
  it('takes R-410A and R-32 into the 400 psi class only (49 CFR 173.301a, from memory)', () => {
    for (const refrigerant of ['R-410A', 'R-32']) {
      const cylinder = { refrigerant, water_capacity: 47.7 };
      expect(refusalOf('CYLINDERLIMIT', { ...cylinder, service_pressure: 260 }).parameter).toBe(
        'service_pressure',
      );
      expect(refusalOf('CYLINDERLIMIT', { ...cylinder, service_pressure: 350 }).parameter).toBe(
        'service_pressure',
      );
      expect(figureOf('CYLINDERLIMIT', { ...cylinder, service_pressure: 400 })).toBeGreaterThan(0);
    }
    expect(figureOf('CYLINDERLIMIT', { ...r22, service_pressure: 260 })).toBeGreaterThan(0);
  });
  rows.words('CYL-31', () => {
    // The interval is the register's; a fill on the due day or later is refused.
    const due = { ...r22, test_due: '2026-07-01' };
    expect(refusalOf('CYLINDERLIMIT', { ...due, on_date: '2026-07-01' }).parameter).toBe('test_due');
    expect(figureOf('CYLINDERLIMIT', { ...due, on_date: '2026-06-30' })).toBeGreaterThan(0);
    expect(refusalOf('CYLINDERLIMIT', due).parameter).toBe('on_date');
  });
  rows.words('CYL-32', ({ expected }) => {
    expect(expected).toBe('prohibited');
    const error = refusalOf('CYLINDERLIMIT', { ...r22, kind: 'virgin' });
    expect(error).toMatchObject({ code: 'refused', parameter: 'kind' });
  });
  rows.setAside({
    'CYL-18':
      'a way of working: no figure to compute; the weights before and after are fields of the records',
    'CYL-33': 'a ban on selling: nothing a technician or a sheet decides',
    'CYL-34': 'a color: nothing to compute',
  });
});

describe('hoses', () => {
  const hose = { length: 5, inside_diameter: 0.19 };
  rows.figure('HOSE-01', () => 1e6 * hoseVolumeM3({ lengthM: 60 * 0.0254, insideDiameterM: 0.19 * 0.0254 }));
  const liquid = { ...hose, state: 'liquid' };
  rows.figure('HOSE-02', () => figureOf('HOSECONTENT', { ...liquid, refrigerant: 'R-22' }));
  rows.figure('HOSE-04', () => figureOf('HOSECONTENT', { ...liquid, refrigerant: 'R-32' }));
  rows.figure('HOSE-05', () => figureOf('HOSECONTENT', { ...liquid, refrigerant: 'R-290' }));
  const vapor = { ...hose, state: 'vapor', refrigerant: 'R-410A' };
  rows.figure('HOSE-07', () => figureOf('HOSECONTENT', { ...vapor, pressure: 118.4, temperature: 40 }));
  rows.figure('HOSE-08', () => figureOf('HOSECONTENT', vapor));
  rows.figure('HOSE-09', () => (100 / 14) * figureOf('HOSECONTENT', { ...liquid, refrigerant: 'R-410A' }));
  it('weighs warm vapor lighter than saturated vapor of the same pressure (physics: it expands)', () => {
    const cold = figureOf('HOSECONTENT', { ...vapor, pressure: 118.4, temperature: 40 });
    const warm = figureOf('HOSECONTENT', { ...vapor, pressure: 118.4, temperature: 75 });
    expect(warm).toBeLessThan(cold);
    expect(warm).toBeGreaterThan(0.8 * cold);
  });
});

rows.nothingForgotten();
