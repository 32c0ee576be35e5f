export { roomcheck } from './roomcheck.ts';
export { tapsize } from './tapsize.ts';
export { testcheck } from './testcheck.ts';
export { testpressure } from './testpressure.ts';
export { vacuumcheck } from './vacuumcheck.ts';
export { waterboils } from './waterboils.ts';
