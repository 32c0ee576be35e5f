import { call } from '../../functions/catalogue/call.ts';
import type { CellInput } from '../../functions/runtime/cells.ts';
import { CalcError } from '../../src/errors.ts';
import type { ReadingSet } from '../../src/visit/diagnosis/reading-set.ts';

export type Given = Readonly<Record<string, CellInput>>;

export function figureOf(id: string, given: Given): number {
  const result = call(id, given);
  if (typeof result !== 'number') throw new Error(`${id} gave ${JSON.stringify(result)}`);
  return result;
}

export function textOf(id: string, given: Given): string {
  const result = call(id, given);
  if (typeof result !== 'string') throw new Error(`${id} gave ${JSON.stringify(result)}`);
  return result;
}

export function refusalOf(id: string, given: Given): CalcError {
  const result = call(id, given);
  if (!(result instanceof CalcError)) throw new Error(`${id} gave ${JSON.stringify(result)}`);
  return result;
}

/** Everything looked at and in order, so that a verdict is allowed. */
export const looked: Given = {
  filter: 'clean',
  indoor_coil: 'clean',
  outdoor_coil: 'clean',
  vents: 'clean',
  fan: 'clean',
  frost: 'none',
  minutes_since_change: 25,
  volts: 116,
  rated_volts: '115',
};

/** Rows under the heading of CAUSES: rank, cause, confidence, for, against, not measured, next reading. */
export function causesOf(given: Given): string[][] {
  const result = call('CAUSES', { ...looked, ...given });
  if (!Array.isArray(result)) throw new Error(`CAUSES gave ${JSON.stringify(result)}`);
  return result.slice(1).map((row) => row.map(String));
}

/** Instruments without doubt, and not one reading. */
export const nothingMeasured: ReadingSet = {
  gates: {},
  metering: 'capillary',
  suctionGaugePa: 0,
  liquidGaugePa: 0,
  probeK: 0,
  airProbeK: 0,
};
