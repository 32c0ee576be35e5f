const overridden =
  'Stands in for the likely value of the row, whose range moves in proportion; a range here makes a sensitivity grid in one formula.';

export const hoursOverride = {
  kind: 'number',
  quantity: 'hours',
  description: `Full-load running hours a year. ${overridden}`,
  minimum: 0,
  optional: true,
} as const;

export const powerPriceOverride = {
  kind: 'number',
  quantity: 'energyPrice',
  description: `Price of electricity. ${overridden}`,
  minimum: 0,
  optional: true,
} as const;
