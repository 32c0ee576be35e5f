import { highestDryBulbK, lowestDryBulbK } from '../../../src/air/moist-air.ts';

export const dryBulbParameter = {
  kind: 'number',
  quantity: 'temperature',
  description: 'Air temperature on a dry, shaded probe.',
  minimum: lowestDryBulbK,
  maximum: highestDryBulbK,
} as const;

export const wetBulbParameter = {
  kind: 'number',
  quantity: 'temperature',
  description:
    'Wet-bulb temperature of the same air, never above the dry bulb. Not the reading of a humidity sensor.',
  minimum: lowestDryBulbK,
  maximum: highestDryBulbK,
} as const;

export const airflowParameter = {
  kind: 'number',
  quantity: 'airflow',
  description: 'Air over the indoor coil.',
  above: 0,
} as const;

export const returnDryBulbParameter = {
  ...dryBulbParameter,
  description: 'Dry bulb of the return air.',
} as const;
export const returnWetBulbParameter = {
  ...wetBulbParameter,
  description: 'Wet bulb of the return air.',
} as const;
export const supplyDryBulbParameter = {
  ...dryBulbParameter,
  description: 'Dry bulb of the supply air.',
} as const;
export const supplyWetBulbParameter = {
  ...wetBulbParameter,
  description: 'Wet bulb of the supply air.',
} as const;

export const fundamentals = 'ASHRAE Handbook Fundamentals 2017, chapter 1';
export const fundamentalsEquations = `${fundamentals} equations, computed with an open psychrometric library`;
