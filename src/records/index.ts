export { checkRow, isRequiredHere } from './check-row.ts';
export { completenessOf } from './completeness.ts';
export type { Completeness } from './completeness.ts';
export type * from './field.ts';
export { limitsIn, limitsSi, unitOfField } from './field-limits.ts';
export { atmosphereOfRow } from './row-atmosphere.ts';
export * from './tables/index.ts';
