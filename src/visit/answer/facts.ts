import type { Phrase } from '../../phrase.ts';
import type { MassBasis } from '../../charge/mass-basis.ts';
import type { Refrigerant } from '../../refrigerants/index.ts';
import type { Cleanliness, Frost } from '../gates.ts';
import type { RatedVolts } from '../supply-band.ts';
import type { Metering } from '../target-superheat.ts';

/** What the register knows of a unit. Undefined is "not known", never "none". */
export interface UnitFacts {
  readonly refrigerant?: Refrigerant | undefined;
  readonly nameplateKg?: number | undefined;
  readonly ratedVolts?: RatedVolts | undefined;
  readonly ratedAmps?: number | undefined;
  readonly metering?: Metering | undefined;
  /** Before this visit. */
  readonly tapsFitted?: number | undefined;
  /** Last day, days since 1970-01-01. */
  readonly warrantyEndDay?: number | undefined;
  readonly status?: string | undefined;
  /** Absolute [Pa]. */
  readonly lowSideDesignPa?: number | undefined;
}

export type Certificate = 'I' | 'II' | 'III' | 'Universal';

/** Who took the readings. */
export interface Person {
  readonly name?: string | undefined;
  /** False only when there is a staff list and the person is not on it. */
  readonly onStaffList?: boolean | undefined;
  readonly certificate?: Certificate | undefined;
  /** Undefined: not known, which does not permit work on flammable gas. */
  readonly flammableTrained?: boolean | undefined;
}

export interface Instruments {
  readonly suctionGaugePa: number;
  readonly liquidGaugePa: number;
  readonly probeK: number;
  readonly airProbeK: number;
}

/** Something in the row that cannot be right. */
export interface Impossible {
  /** Whether a reading is to be taken again or what was written put right. */
  readonly what: 'reading' | 'record';
  readonly said: Phrase;
  /** The heading under which it stands. */
  readonly heading: string;
}

/** One set of readings: a row of the visit log in SI. Undefined is "not measured, not looked at". */
export interface VisitSet {
  readonly visit?: string | undefined;
  readonly set?: number | undefined;
  /** Days since 1970-01-01 with a fraction. */
  readonly at?: number | undefined;
  readonly stage?: string | undefined;
  readonly reason?: string | undefined;
  readonly compressor?: 'running' | 'off' | 'short cycling' | undefined;
  readonly settledS?: number | undefined;
  readonly filter?: Cleanliness | undefined;
  readonly indoorCoil?: Cleanliness | undefined;
  readonly outdoorCoil?: Cleanliness | undefined;
  readonly vents?: Cleanliness | undefined;
  readonly fan?: Cleanliness | undefined;
  readonly frost?: Frost | undefined;
  readonly volts?: number | undefined;
  readonly idleVolts?: number | undefined;
  readonly secondLegV?: number | undefined;
  readonly atmospherePa: number;
  /** Above sea level [m]. */
  readonly elevationM?: number | undefined;
  readonly outdoorK?: number | undefined;
  readonly returnK?: number | undefined;
  readonly returnWetBulbK?: number | undefined;
  readonly supplyK?: number | undefined;
  readonly condenserAirK?: number | undefined;
  readonly suctionLineK?: number | undefined;
  readonly liquidLineK?: number | undefined;
  readonly dischargeLineK?: number | undefined;
  /** Absolute [Pa]; with the compressor off, the standing pressure. */
  readonly suctionPa?: number | undefined;
  readonly liquidPa?: number | undefined;
  readonly offS?: number | undefined;
  readonly partsSpreadK?: number | undefined;
  readonly compressorAmps?: number | undefined;
  readonly capacitorMeasuredF?: number | undefined;
  readonly capacitorLabelF?: number | undefined;
  /** Designation of what the row says is in the unit. */
  readonly gasInUnit?: string | undefined;
  readonly gasAdded?: string | undefined;
  readonly massBasis?: MassBasis | undefined;
  readonly foundKg?: number | undefined;
  readonly addedKg?: number | undefined;
  readonly addedReason?: string | undefined;
  readonly recoveredKg?: number | undefined;
  readonly scaleStepKg?: number | undefined;
  readonly leakFound?: boolean | undefined;
  readonly leakPlace?: string | undefined;
  readonly leakFixed?: boolean | undefined;
  readonly repairVerifiedDay?: number | undefined;
  readonly testGas?: string | undefined;
  readonly testStartPa?: number | undefined;
  readonly testStartK?: number | undefined;
  readonly testEndPa?: number | undefined;
  readonly testEndK?: number | undefined;
  readonly vacuumStartPa?: number | undefined;
  readonly vacuumEndPa?: number | undefined;
  readonly vacuumS?: number | undefined;
  readonly vacuumFarEnd?: boolean | undefined;
  readonly tapsAdded?: number | undefined;
  readonly customerAgrees?: boolean | undefined;
  readonly impossible: readonly Impossible[];
}
