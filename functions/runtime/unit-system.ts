import { CalcError } from '../../src/errors.ts';
import { findUnit } from '../../src/units/conversion.ts';
import type { Quantity, Unit } from '../../src/units/quantities.ts';
import { quantities } from '../../src/units/quantities.ts';

/** One unit for every quantity: what plain numbers are read in and results are written in. */
export type UnitSystem = Readonly<Record<Quantity, Unit>>;

const everyQuantity = Object.keys(quantities) as Quantity[];

function baseSystem(which: 'us' | 'metric'): Record<Quantity, Unit> {
  const system: Partial<Record<Quantity, Unit>> = {};
  for (const quantity of everyQuantity) {
    const unit = findUnit(quantity, quantities[quantity][which]);
    if (!unit) throw new Error(`no unit ${quantities[quantity][which]} for ${quantity}`);
    system[quantity] = unit;
  }
  return system as Record<Quantity, Unit>;
}

const us: UnitSystem = baseSystem('us');
const metric: UnitSystem = baseSystem('metric');

const systems = new Map<string, UnitSystem>();

/** A list longer than this names no units. */
const mostWords = 60;

/** How many different `units` texts are remembered; a worksheet uses a handful. */
const remembered = 200;

/**
 * The unit system a `units` argument asks for: "US", "SI", or a list of units that override the US ones,
 * such as "bar degC", "K", "SI, bar".
 *
 * @throws CalcError invalid-argument, parameter `units`
 */
export function unitSystem(text: string): UnitSystem {
  const known = systems.get(text);
  if (known) return known;
  const system = readUnitSystem(text);
  if (systems.size >= remembered) systems.clear();
  systems.set(text, system);
  return system;
}

function readUnitSystem(text: string): UnitSystem {
  const words = text
    .trim()
    .split(/[\s,;]+/)
    .filter((word) => word !== '');
  if (words.length === 0) return us;
  if (words.length > mostWords) throw unknownUnits(text);
  let system: Record<Quantity, Unit> = { ...us };
  let position = 0;
  while (position < words.length) {
    const word = words[position] ?? '';
    if (/^us$/i.test(word)) system = { ...us };
    else if (/^si$/i.test(word)) system = { ...metric };
    else {
      // "kPa abs" and "bar abs" are two words: the longer reading wins.
      const next = words[position + 1];
      if (next !== undefined && override(system, `${word} ${next}`)) position += 1;
      else if (!override(system, word)) throw unknownUnits(word);
    }
    position += 1;
  }
  return system;
}

/** Sets the unit for every quantity that can be written in it; false when none can. */
function override(system: Record<Quantity, Unit>, name: string): boolean {
  let found = false;
  for (const quantity of everyQuantity) {
    const unit = findUnit(quantity, name);
    if (unit) {
      system[quantity] = unit;
      found = true;
    }
  }
  return found;
}

function unknownUnits(received: string): CalcError {
  return new CalcError(
    `units is not known: received "${received}", allowed: US, SI, or units such as bar degC g`,
    {
      code: 'invalid-argument',
      parameter: 'units',
      received,
      limit: 'US, SI, or a list of units',
    },
  );
}
