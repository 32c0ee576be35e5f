import type { Refrigerant } from '../../refrigerants/index.ts';
import type { GateReadings } from '../gates.ts';
import type { Metering } from '../target-superheat.ts';
import type { StandingFinding } from './standing-finding.ts';

/** Everything that may have been measured at one time; what was not measured is left out, never zero. */
export interface ReadingSet {
  readonly gates: GateReadings;
  readonly metering: Metering;
  readonly returnTemperatureK?: number | undefined;
  readonly returnWetBulbK?: number | undefined;
  readonly supplyTemperatureK?: number | undefined;
  /** Air that leaves the outdoor coil [K]. */
  readonly condenserAirK?: number | undefined;
  readonly suctionLineK?: number | undefined;
  readonly liquidLineK?: number | undefined;
  readonly dischargeLineK?: number | undefined;
  readonly amps?: number | undefined;
  readonly ratedAmps?: number | undefined;
  readonly refrigerant?: Refrigerant | undefined;
  /** Absolute, running [Pa]. */
  readonly suctionPa?: number | undefined;
  readonly liquidPa?: number | undefined;
  /** What the standing pressure of this circuit showed; left out when it was not taken or the check was refused. */
  readonly standing?: StandingFinding | undefined;
  /** Whether this circuit has been opened since the factory; left out when nobody knows. Air gets in only through an opening. */
  readonly openedBefore?: boolean | undefined;
  /** Of the atmosphere at the site; sea level when left out [Pa]. */
  readonly atmospherePa?: number | undefined;
  readonly suctionGaugePa: number;
  readonly liquidGaugePa: number;
  readonly probeK: number;
  readonly airProbeK: number;
}
