import type { RecordTable } from '../field.ts';
import { cylinderMovements, cylinderRegister } from './cylinders.ts';
import { instrumentList, priceList, staffList, thresholdList } from './office.ts';
import { unitRegister } from './unit-register.ts';
import { visitLog } from './visit-log.ts';

export {
  cylinderMovements,
  cylinderRegister,
  instrumentList,
  priceList,
  staffList,
  thresholdList,
  unitRegister,
  visitLog,
};

/** Every declared table, in the order of the sheets. */
export const recordTables: readonly RecordTable[] = [
  visitLog,
  unitRegister,
  cylinderRegister,
  cylinderMovements,
  staffList,
  instrumentList,
  priceList,
  thresholdList,
];
