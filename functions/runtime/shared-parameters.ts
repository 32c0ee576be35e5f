import { highestElevationM, lowestElevationM } from '../../src/air/standard-atmosphere.ts';

/** Where the unit stands; gauge pressures are counted from the atmosphere there. */
export const elevationParameter = {
  kind: 'number',
  quantity: 'altitude',
  description:
    'Elevation of the site above sea level, or a barometer read there with its unit, such as "24.9 inHg" (not reduced to sea level). A gauge reads from the local atmosphere. Sea level if left out.',
  minimum: lowestElevationM,
  maximum: highestElevationM,
  default: 0,
} as const;

/** Appended to every function by the runtime. */
export const unitsParameter = {
  kind: 'text',
  description:
    'US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.',
  default: 'US',
} as const;

export const refrigerantParameter = {
  kind: 'refrigerant',
  description: 'Refrigerant on the nameplate, such as R-410A, 410a or propane.',
} as const;
