import { standardAtmospherePa } from '../../../src/air/standard-atmosphere.ts';
import { limitsIn } from '../../../src/records/index.ts';
import type { Check } from '../../writing/recipe.ts';
import type { OnceLine, SetLine } from '../lines/line.ts';
import type { SheetUnits } from '../sheet-units.ts';
import { unitSign } from './words.ts';

/** Steps that the list of stages offers; more may be typed. */
const offeredSteps = [1, 2, 3, 4, 5, 6];

/** List or limits of a typed cell, from the record; what no list and no limit binds has none. */
export function entryCheck(
  line: OnceLine | SetLine,
  units: SheetUnits,
  named: ReadonlyMap<string, string>,
): Omit<Check, 'range'> | undefined {
  const base = { title: line.label.slice(0, 32), strict: true, prompt: line.help.slice(0, 250) } as const;
  if (line.field?.kind === 'refrigerant') {
    return {
      ...base,
      allow: { kind: 'list', from: named.get('gases') ?? '' },
      message: 'Pick the gas from the list.',
    };
  }
  if (line.choices !== undefined) {
    const choices = line.choices.flatMap((word) =>
      line.field?.numbered?.includes(word) === true
        ? offeredSteps.map((step) => `${word} ${String(step)}`)
        : [word],
    );
    return {
      ...base,
      strict: line.field?.numbered === undefined,
      allow: { kind: 'choices', choices },
      message: `One of: ${choices.join(', ')}.`.slice(0, 220),
    };
  }
  const limits = limitsOfLine(line, units);
  if (limits === undefined) return undefined;
  const [low, high] = limits;
  const symbol = line.quantity === undefined ? '' : unitSign(units.unit(line.quantity).symbol);
  const said = high >= farOut ? `${String(low)} or more` : `${String(low)} to ${String(high)}`;
  return {
    ...base,
    allow: { kind: 'between', minimum: String(low), maximum: String(high) },
    message: `${`${said} ${symbol}`.trim()}. Leave blank what was not measured; 0 is a reading.`,
  };
}

const farOut = 1_000_000;

function limitsOfLine(line: OnceLine | SetLine, units: SheetUnits): readonly [number, number] | undefined {
  if (line.limits !== undefined) return line.limits;
  const { field } = line;
  if (field?.quantity === undefined || field.reject === undefined) return undefined;
  const { minimum, maximum } = limitsIn(field, 'reject', units.unit(field.quantity));
  // A gauge that reads from vacuum goes an atmosphere further up.
  const above = field.quantity === 'pressure' ? units.value(seaLevelPa, 'pressureDifference') : 0;
  return [tidy(minimum ?? -farOut), tidy((maximum ?? farOut) + above)];
}

const seaLevelPa = standardAtmospherePa(0);

const tidy = (value: number): number => Math.round(value * 1000) / 1000;
