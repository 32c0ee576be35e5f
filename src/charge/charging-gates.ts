import { CalcError } from '../errors.ts';

/** Time a small unit needs after a start or a change before a reading means something. Common practice, no source. */
export const settlingTimeS = 15 * 60;

export interface GateState {
  /** The readiness verdict as it stands in the log; undefined when it was not asked for. */
  readonly ready?: string | undefined;
  /** Since the start, or since anything was changed [s]. */
  readonly sinceChangeS?: number | undefined;
}

/**
 * Lets charging go on only when the readiness verdict begins with "Ready" and the unit has settled.
 *
 * @throws CalcError refused, with the verdict or the minutes left
 */
export function requireOpenGates(state: GateState): void {
  const { ready, sinceChangeS } = state;
  if (ready !== undefined && !/^\s*ready\b/i.test(ready)) {
    throw new CalcError(`no charge while the unit is not ready: ${ready.trim()}`, {
      code: 'refused',
      parameter: 'ready',
      received: ready.trim(),
      limit: 'a readiness verdict that begins with "Ready"',
    });
  }
  if (sinceChangeS !== undefined && sinceChangeS < settlingTimeS) {
    const leftMinutes = Math.ceil((settlingTimeS - sinceChangeS) / 60);
    throw new CalcError(`not settled: wait ${String(leftMinutes)} min more, then read again`, {
      code: 'refused',
      parameter: 'minutes_since_change',
      received: `${String(Math.round(sinceChangeS / 6) / 10)} min`,
      limit: `${String(settlingTimeS / 60)} min or more`,
    });
  }
}
