import { quantities } from '../../../../src/units/quantities.ts';
import { libraryUnit } from '../../../../src/units/unit-library.ts';

/**
 * A stand-in for `src/units/unit-library.ts` as program text: the answers the unit library gives for the units of the
 * quantities, and nothing else. The library itself is half of what a body of 100 KB may hold.
 */
export function unitTableModule(): string {
  const table: Record<string, number | readonly [number, number]> = {};
  for (const expression of everyExpression()) {
    for (const token of expression.match(/[^\s*/()]+/g) ?? []) {
      if (Number.isFinite(Number(token))) continue;
      // The two scales that do not begin at zero are asked for at 0 and at 1000 degrees.
      table[token] = /^deg[FC]$/.test(token)
        ? [libraryUnit(0, token).toNumber('K'), libraryUnit(1000, token).toNumber('K')]
        : libraryUnit(1, token).toSI().toNumber(null);
    }
  }
  return `const table = ${JSON.stringify(table)};
export function libraryUnit(value, unit) {
  const known = table[unit];
  if (known === undefined) throw new Error('no unit ' + unit);
  const found = {
    toSI: () => found,
    toNumber: () => (typeof known === 'number' ? value * known : value === 0 ? known[0] : known[1]),
  };
  return found;
}
`;
}

function everyExpression(): string[] {
  return Object.values(quantities).flatMap(({ units }) => units.map(({ expression }) => expression));
}
