import { foldHeading } from '../../../../src/records/index.ts';
import type { RecordRow } from '../../../../src/records/index.ts';
import type { GatheredRow } from '../gathered-row.ts';

function number(values: RecordRow, name: string): number | undefined {
  const value = values[name];
  return typeof value === 'number' ? value : undefined;
}

/** To a hundredth of an ounce: what other units and other programs leave of a weight. */
function rounded(massKg: number | undefined): string {
  return massKg === undefined ? '' : String(Math.round(massKg * 3500));
}

/**
 * What tells a weighing from all others: a cylinder that gave something up never shows the same two weights twice on a
 * day. Undefined for a set without such a weighing.
 */
export function weighingOf({ values }: GatheredRow): string | undefined {
  const [start, end] = [number(values, 'cyl_start'), number(values, 'cyl_end')];
  const moved = (number(values, 'added') ?? 0) + (number(values, 'recovered') ?? 0);
  const moment = number(values, 'date_time');
  if (moment === undefined || start === undefined || end === undefined || moved <= 0 || start === end) {
    return undefined;
  }
  const masses = [number(values, 'added'), number(values, 'recovered'), start, end].map(rounded);
  return [Math.floor(moment), ...masses].join('/');
}

/** Readings that a person takes; two sets that agree in fewer may do so by chance. */
const fewestReadings = 4;

/** A set without a weighing, by who read what and when. Undefined when too little was read to tell. */
export function readingOf({ values, from }: GatheredRow): string | undefined {
  const moment = number(values, 'date_time');
  if (moment === undefined) return undefined;
  const readings = from.table.fields.flatMap(({ name, kind, quantity }) => {
    const value = values[name];
    return kind === 'number' &&
      quantity !== undefined &&
      quantity !== 'count' &&
      typeof value === 'number' &&
      value !== 0
      ? [`${name}=${value.toPrecision(5)}`]
      : [];
  });
  if (readings.length < fewestReadings) return undefined;
  const who = foldHeading(String(values['technician_id'] ?? ''));
  return [Math.round(moment * 1440), who, ...readings].join('/');
}

/** A set of one unit, whatever the number of its visit: who added how much, and when. Undefined when nothing moved. */
export function additionOf({ values }: GatheredRow): string | undefined {
  const moment = number(values, 'date_time');
  const moved = [number(values, 'added') ?? 0, number(values, 'recovered') ?? 0];
  if (moment === undefined || moved.every((mass) => mass <= 0)) return undefined;
  const who = foldHeading(String(values['technician_id'] ?? ''));
  const set = String(values['set_no'] ?? '');
  return [Math.round(moment * 1440), who, set, ...moved.map(rounded)].join('/');
}
