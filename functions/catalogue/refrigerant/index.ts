export { sattemp } from './sattemp.ts';
export { satpressure } from './satpressure.ts';
export { glide } from './glide.ts';
