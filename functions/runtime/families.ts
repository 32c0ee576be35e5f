/** The families in which the guide and the hosts group the functions, in the order of a visit. */
export const families = {
  refrigerant: 'Refrigerant properties',
  visit: 'Readings and verdicts',
  charge: 'Weighed charge',
  access: 'Access, pressure test and vacuum',
  air: 'Air side',
  leak: 'Leak history and duties',
  records: 'Records and fleet',
  cost: 'Repair or replace',
} as const;

export type Family = keyof typeof families;
