export { evapcheck } from './evapcheck.ts';
export { readycheck } from './readycheck.ts';
export { standingcheck } from './standingcheck.ts';
export { subcooling } from './subcooling.ts';
export { superheat } from './superheat.ts';
