export { leakrate } from './leakrate.ts';
export { lossperyear } from './lossperyear.ts';
export { leakhistory } from './leakhistory.ts';
export { leaktrend } from './leaktrend.ts';
export { nextdue } from './nextdue.ts';
export { dutycheck } from './dutycheck.ts';
export { co2e } from './co2e.ts';
