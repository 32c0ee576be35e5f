import { decayLimitPa, vacuumDecay } from '../../../src/access/vacuum.ts';
import { defineFunction } from '../../runtime/define.ts';

const practice = 'common practice, no source: 500 microns or lower, then 10 minutes at or below 1000';

export const vacuumcheck = defineFunction({
  id: 'VACUUMCHECK',
  family: 'access',
  summary: 'What an isolated vacuum says: dry and tight, moisture, a leak, or wait.',
  parameters: {
    vacuum_start: {
      kind: 'number',
      quantity: 'vacuum',
      description: 'Level when the pump was isolated. Counted from zero in any unit, inHg included.',
      above: 0,
    },
    vacuum_end: {
      kind: 'number',
      quantity: 'vacuum',
      description: 'Level at the end of the wait, pump still isolated.',
      above: 0,
    },
    minutes: { kind: 'number', quantity: 'minutes', description: 'How long it was isolated.', above: 0 },
    far_end: {
      kind: 'yesNo',
      description: 'Yes when the gauge sits on the unit, away from the pump. A gauge at the pump is refused.',
    },
    vacuum_halfway: {
      kind: 'number',
      quantity: 'vacuum',
      description: 'Level in the middle of the wait: it tells moisture from a leak.',
      above: 0,
      optional: true,
    },
    coldest_part: {
      kind: 'number',
      quantity: 'temperature',
      description:
        'Temperature of the coldest part of the unit: water cannot make more than its pressure there.',
      minimum: 193.15,
      maximum: 353.15,
      optional: true,
    },
    limit: {
      kind: 'number',
      quantity: 'vacuum',
      description:
        'Level of the unit’s maker that it stays at or below, such as 270 Pa; half of it is wanted at isolation. 1000 micron if left out.',
      above: 0,
      maximum: 700,
      default: decayLimitPa,
    },
  },
  returns: {
    kind: 'verdict',
    description: 'Dry and tight, Moisture, Leak, Moisture or leak, Keep pumping, Wait or Refused',
  },
  source:
    'Common practice, no source, for the levels; the maker governs. Common practice passes any level at or below the limit after ten minutes; here it must also stay there, by a tenth more than the gauge may be wrong. Water curve: Hyland and Wexler 1983.',
  examples: [
    {
      arguments: { vacuum_start: 420, vacuum_end: 780, minutes: 10, far_end: 'yes' },
      gives: 'Dry and tight: 420 micron to 780 micron',
      source: practice,
    },
    {
      arguments: { vacuum_start: 300, vacuum_end: 990, minutes: 10, far_end: 'yes' },
      gives: 'Wait: 300 micron to 990 micron',
      source: 'common practice, no source: a rise of 690 micron does not stay below 1000',
    },
    {
      arguments: {
        vacuum_start: '130 Pa',
        vacuum_end: '180 Pa',
        minutes: 10,
        far_end: 'yes',
        limit: '270 Pa',
        units: 'SI',
      },
      gives: 'Dry and tight: 130.0 Pa to 180.0 Pa',
      source: 'definition: a maker’s limit of 270 Pa',
    },
    {
      arguments: { vacuum_start: 420, vacuum_halfway: 2400, vacuum_end: 2700, minutes: 10, far_end: 'yes' },
      gives: 'Moisture: 420 micron to 2700 micron',
      source: 'vapor-pressure argument: rises, then levels off',
    },
    {
      arguments: { vacuum_start: 420, vacuum_halfway: 2400, vacuum_end: 4400, minutes: 10, far_end: 'yes' },
      gives: 'Leak: 420 micron to 4400 micron',
      source: 'vapor-pressure argument: rises without levelling off',
    },
    {
      arguments: { vacuum_start: 200, vacuum_end: 300, minutes: 10, far_end: 'no' },
      gives: 'Refused: the gauge at the pump',
      source: 'common practice, no source',
    },
  ],
  compute: (given) =>
    vacuumDecay({
      startPa: given.vacuum_start,
      endPa: given.vacuum_end,
      waitS: given.minutes,
      gaugeAtFarEnd: given.far_end,
      halfwayPa: given.vacuum_halfway,
      coldestPartK: given.coldest_part,
      limitPa: given.limit,
    }),
});
