import type { GateReadings } from '../gates.ts';
import type { UnitFacts, VisitSet } from './facts.ts';

/** The looks and measurements that open the gates. */
export function gateReadingsOf(set: VisitSet, unit: UnitFacts): GateReadings {
  return {
    filter: set.filter,
    indoorCoil: set.indoorCoil,
    outdoorCoil: set.outdoorCoil,
    vents: set.vents,
    fan: set.fan,
    frost: set.frost,
    settledS: set.settledS,
    volts: set.volts,
    ratedVolts: unit.ratedVolts,
    outdoorTemperatureK: set.outdoorK,
  };
}
