export { annualcost } from './annualcost.ts';
export { breakevenrepair } from './breakevenrepair.ts';
export { costdrivers } from './costdrivers.ts';
export { costinputs } from './costinputs.ts';
export { payback } from './payback.ts';
export { repairorreplace } from './repairorreplace.ts';
export { runcost } from './runcost.ts';
export { topupcost } from './topupcost.ts';
