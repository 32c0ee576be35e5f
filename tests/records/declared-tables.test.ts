import { describe, expect, it } from 'vitest';
import { limitsIn, limitsSi, recordTables, unitOfField, visitLog } from '../../src/records/index.ts';
import { findUnit } from '../../src/units/conversion.ts';
import type { Unit } from '../../src/units/quantities.ts';

const folded = (text: string): string => text.toLowerCase().replace(/[\s_-]+/g, ' ');

describe.each(recordTables)('the $name table', (table) => {
  it('names every field once, by name, heading and alias', () => {
    const owner = new Map<string, string>();
    for (const { name, heading, aliases = [] } of table.fields) {
      expect(name).toMatch(/^[a-z][a-z0-9_]*$/);
      for (const word of [name, heading, ...aliases]) {
        const holder = owner.get(folded(word));
        expect(holder === undefined || holder === name, `${word} means ${String(holder)} and ${name}`).toBe(
          true,
        );
        owner.set(folded(word), name);
      }
    }
  });

  it('keys on declared, required fields', () => {
    for (const key of table.key) expect(table.fields.map(({ name }) => name)).toContain(key);
  });

  it('gives every number a quantity and a known unit, and limits in order', () => {
    for (const field of table.fields) {
      expect(field.help).not.toBe('');
      if (field.kind !== 'number') continue;
      expect(unitOfField(field), field.name).toBeDefined();
      for (const which of ['reject', 'warn'] as const) {
        const { minimum = -Infinity, maximum = Infinity } = limitsSi(field, which, 101_325);
        expect(minimum, `${field.name} ${which}`).toBeLessThanOrEqual(maximum);
      }
    }
  });

  it('never asks for a computed field', () => {
    for (const field of table.fields.filter(({ origin }) => origin === 'computed')) {
      expect(field.required).toBe(false);
    }
  });

  it('gives every dropdown at least one word, each once', () => {
    for (const { kind, choices = [] } of table.fields) {
      if (kind !== 'choice') continue;
      expect(choices.length).toBeGreaterThan(0);
      expect(new Set(choices).size).toBe(choices.length);
    }
  });
});

describe('limits for the validation of a sheet', () => {
  const field = (name: string) => visitLog.fields.find((candidate) => candidate.name === name);

  it('come in the unit of the sheet', () => {
    const outdoor = field('outdoor_db');
    const suction = field('suction_pressure');
    if (!outdoor || !suction) throw new Error('fields are gone');
    // -20 and 135 degF by definition of the scales: (F - 32) / 1.8.
    const celsius = limitsIn(outdoor, 'reject', findUnit('temperature', 'degC') as Unit);
    expect(celsius.minimum).toBeCloseTo(-28.889, 3);
    expect(celsius.maximum).toBeCloseTo(57.222, 3);
    // Gauge stays gauge: 400 psi are 2757.903 kPa.
    const kilopascal = limitsIn(suction, 'reject', findUnit('pressure', 'kPa') as Unit);
    expect(kilopascal.maximum).toBeCloseTo(2757.903, 3);
    expect(kilopascal.minimum).toBeCloseTo(-101.353, 3);
  });
});
