import { CalcError } from '../errors.ts';
import { catalogue } from '../data/catalogue.ts';
import { BuiltRefrigerant } from './build-refrigerant.ts';
import { designationKey, nearestDesignations } from './designation.ts';
import type { Refrigerant } from './refrigerant.ts';

let sorted: readonly Refrigerant[] | undefined;
let byKey: Map<string, Refrigerant> | undefined;
/** Spellings already seen, so that a column of thousands of cells costs one map lookup each. */
const seen = new Map<string, Refrigerant>();

/** Every refrigerant, in the order of the designations, … R-1270. */
export function refrigerants(): readonly Refrigerant[] {
  return (sorted ??= [...catalogue().pureFacts.values(), ...catalogue().blendFacts.values()]
    .map((facts) => new BuiltRefrigerant(facts, catalogue()))
    .sort((a, b) => a.designation.localeCompare(b.designation, 'en', { numeric: true })));
}

function keys(): Map<string, Refrigerant> {
  if (byKey !== undefined) return byKey;
  byKey = new Map();
  for (const refrigerant of refrigerants()) {
    for (const name of [refrigerant.designation, ...refrigerant.names]) {
      byKey.set(designationKey(name), refrigerant);
    }
    // R-1234ze(E) and R-1233zd(E): the E isomer is the one in trade, so the bare number means it.
    const isomer = /^(.*)\(E\)$/.exec(refrigerant.designation);
    if (isomer) byKey.set(designationKey(isomer[1]!), refrigerant);
  }
  return byKey;
}

/**
 * The refrigerant meant by a designation or name, written loosely: "410a", "R410A", "r-410a", "HFC-32", "propane".
 * @param parameter - what the user knows the name by
 * @throws CalcError invalid-argument with the designations that look most alike
 */
export function findRefrigerant(designation: string, parameter = 'refrigerant'): Refrigerant {
  const known = seen.get(designation);
  if (known !== undefined) return known;
  const found = keys().get(designationKey(designation));
  if (found === undefined) {
    const near = nearestDesignations(
      designation,
      refrigerants().map((r) => r.designation),
    );
    const limit =
      near.length > 0
        ? `did you mean ${near.join(' or ')}?`
        : `one of the ${refrigerants().length} listed, such as R-410A`;
    throw new CalcError(`${parameter} "${designation}" is not known; ${limit}`, {
      code: 'invalid-argument',
      parameter,
      received: designation,
      limit,
    });
  }
  if (seen.size < 2000) seen.set(designation, found);
  return found;
}
