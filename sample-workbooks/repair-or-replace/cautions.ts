import { cautions as everywhere } from '../visit-log/cautions.ts';
import type { Caution } from '../visit-log/cautions.ts';

/** What every result prints, and what an estimate adds. */
export const cautions: readonly Caution[] = [
  ...everywhere,
  {
    number: '6',
    title: 'Local codes come first',
    text: 'Building, fire and electrical codes of the place decide over this sheet; some places ask for a permit to replace a unit.',
  },
];
