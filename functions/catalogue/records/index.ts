export { rowcheck } from './rowcheck.ts';
export { completeness } from './completeness.ts';
export { fleetsummary } from './fleetsummary.ts';
export { cylinderbalance } from './cylinderbalance.ts';
