import { CalcError } from '../errors.ts';
import { settlingS } from '../visit/gates.ts';
import { gateWord } from '../visit/ready-text.ts';

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
  if (ready !== undefined && gateWord(ready) === 'closed') {
    throw new CalcError(`no charge while the unit is not ready: ${ready.trim()}`, {
      code: 'refused',
      parameter: 'ready',
      received: ready.trim(),
      limit: 'a readiness verdict that begins with "Ready"',
    });
  }
  if (sinceChangeS !== undefined && sinceChangeS < settlingS) {
    const leftMinutes = Math.ceil((settlingS - sinceChangeS) / 60);
    throw new CalcError(`not settled: wait ${String(leftMinutes)} min more, then read again`, {
      code: 'refused',
      parameter: 'minutes_since_change',
      received: `${String(Math.round(sinceChangeS / 6) / 10)} min`,
      limit: `${String(settlingS / 60)} min or more`,
    });
  }
}
