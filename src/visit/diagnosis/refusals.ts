import { CalcError } from '../../errors.ts';
import type { Gate } from '../gates.ts';
import { refuseWetBulbAbove } from '../target-split.ts';
import type { ReadingSet } from './reading-set.ts';

/** @throws CalcError refused: valve-fed, wet bulb above dry bulb; out-of-range: liquid pressure not above suction */
export function refuseUnjudgeable(readings: ReadingSet): void {
  refuseValve(readings);
  refuseImpossible(readings);
}

function refuseValve({ metering }: ReadingSet): void {
  if (metering !== 'valve') return;
  throw new CalcError('the fault signs are those of capillary tubes and orifices; a valve hides them', {
    code: 'refused',
    parameter: 'metering',
    received: 'valve',
    limit: 'capillary or orifice',
  });
}

function refuseImpossible({ returnTemperatureK, returnWetBulbK, suctionPa, liquidPa }: ReadingSet): void {
  if (returnTemperatureK !== undefined && returnWetBulbK !== undefined) {
    refuseWetBulbAbove({ returnTemperatureK, returnWetBulbK });
  }
  if (suctionPa !== undefined && liquidPa !== undefined && liquidPa <= suctionPa) {
    throw new CalcError('liquid_pressure must be above suction_pressure while the unit runs', {
      code: 'out-of-range',
      parameter: 'liquid_pressure',
      limit: 'more than suction_pressure',
    });
  }
}

/** Weather and settling time are no causes: they only forbid the answer. */
export function refuseClosed(gates: readonly Gate[]): void {
  const closed = gates.find(
    ({ name, state }) => state === 'closed' && (name === 'outdoor temperature' || name === 'settling'),
  );
  if (!closed) return;
  const cold = closed.name === 'outdoor temperature';
  throw new CalcError(
    cold
      ? 'below 55 degF outdoors the readings of a running unit mean nothing; weigh in or come back'
      : 'not settled: read again 15 min after the start or the last change',
    {
      code: 'refused',
      parameter: cold ? 'outdoor_temperature' : 'minutes_since_change',
      limit: cold ? '55 degF or more' : '15 min or more',
    },
  );
}
