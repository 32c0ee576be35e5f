import type { SampleVisit } from './reading-set.ts';
import { julyVisits } from './visits-july.ts';
import { juneVisits } from './visits-june.ts';
import { lateVisits } from './visits-august.ts';
import { mayVisits } from './visits-may.ts';

/** The season in the order in which it was lived. */
export const visits: readonly SampleVisit[] = [...mayVisits, ...juneVisits, ...julyVisits, ...lateVisits];
