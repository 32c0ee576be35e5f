export { readmass } from './readmass.ts';
export { chargefound } from './chargefound.ts';
export { chargeroom } from './chargeroom.ts';
export { nextstep } from './nextstep.ts';
