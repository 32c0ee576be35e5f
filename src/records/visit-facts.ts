import { massBases } from '../charge/mass-basis.ts';
import { CalcError } from '../errors.ts';
import { findRefrigerant } from '../refrigerants/index.ts';
import type { Refrigerant } from '../refrigerants/index.ts';
import type { Certificate, Impossible, Person, UnitFacts, VisitSet } from '../visit/answer/index.ts';
import { cleanlinessChoices, frostChoices, readRatedVolts } from '../visit/index.ts';
import type { RatedVolts } from '../visit/index.ts';
import { meteringChoices } from '../visit/target-superheat.ts';
import { checkRow } from './check-row.ts';
import type { Finding, RecordRow } from './field.ts';
import { atmosphereOfRow } from './row-atmosphere.ts';
import { visitLog } from './tables/index.ts';
import { certificates, compressorStates } from './tables/words.ts';

function number(row: RecordRow, name: string): number | undefined {
  const value = row[name];
  return typeof value === 'number' ? value : undefined;
}

function text(row: RecordRow, name: string): string | undefined {
  const value = row[name];
  return typeof value === 'string' && value !== '' ? value : undefined;
}

function yesNo(row: RecordRow, name: string): boolean | undefined {
  const value = row[name];
  return typeof value === 'boolean' ? value : undefined;
}

function choice<Word extends string>(row: RecordRow, name: string, words: readonly Word[]): Word | undefined {
  const value = row[name];
  return words.find((word) => word === value);
}

/** A row of the unit register as the answer hears it. */
export function unitFactsOf(row: RecordRow): UnitFacts {
  return {
    refrigerant: gasOf(text(row, 'refrigerant')),
    nameplateKg: number(row, 'nameplate'),
    ratedVolts: voltsOf(text(row, 'rated_volts')),
    ratedAmps: number(row, 'rated_amps'),
    metering: choice(row, 'metering', meteringChoices),
    tapsFitted: number(row, 'taps_fitted'),
    warrantyEndDay: number(row, 'warranty_end'),
    status: text(row, 'status'),
    lowSideDesignPa: number(row, 'low_side_design'),
  };
}

/** A gas by its designation; undefined for none or one that is not listed. */
export function gasOf(designation: string | undefined): Refrigerant | undefined {
  if (designation === undefined) return undefined;
  try {
    return findRefrigerant(designation);
  } catch (error) {
    if (error instanceof CalcError) return undefined;
    throw error;
  }
}

function voltsOf(written: string | undefined): RatedVolts | undefined {
  if (written === undefined) return undefined;
  try {
    return readRatedVolts(written);
  } catch (error) {
    if (error instanceof CalcError) return undefined;
    throw error;
  }
}

/**
 * Who took the readings of a row.
 *
 * @param staff - the person's row of the staff list; undefined when there is none
 * @param hasStaffList - whether there is a list at all: without one nobody is missing from it
 */
export function personOf(row: RecordRow, staff: RecordRow | undefined, hasStaffList: boolean): Person {
  const written = choice(row, 'cert_type', certificates);
  return {
    name: text(row, 'technician_id'),
    onStaffList: hasStaffList ? staff !== undefined : undefined,
    certificate: (staff && choice(staff, 'cert_type', certificates)) ?? (hasStaffList ? undefined : written),
    flammableTrained: staff && yesNo(staff, 'flammable_trained'),
  } satisfies Person & { readonly certificate: Certificate | undefined };
}

/** A row of the visit log as the answer hears it. */
export function visitSetOf(row: RecordRow, unreadable: readonly Finding[] = []): VisitSet {
  return {
    visit: text(row, 'visit_id'),
    set: number(row, 'set_no'),
    at: number(row, 'date_time'),
    stage: text(row, 'stage'),
    reason: text(row, 'reason'),
    compressor: choice(row, 'compressor_state', compressorStates),
    settledS: number(row, 'minutes_since_change'),
    filter: choice(row, 'filter', cleanlinessChoices),
    indoorCoil: choice(row, 'evap_coil', cleanlinessChoices),
    outdoorCoil: choice(row, 'cond_coil', cleanlinessChoices),
    vents: choice(row, 'vents', cleanlinessChoices),
    fan: choice(row, 'fan', cleanlinessChoices),
    frost: choice(row, 'frost', frostChoices),
    volts: number(row, 'volts_run'),
    idleVolts: number(row, 'volts_idle'),
    secondLegV: number(row, 'volts_leg2'),
    atmospherePa: atmosphereOfRow(row),
    elevationM: number(row, 'elevation'),
    outdoorK: number(row, 'outdoor_db'),
    returnK: number(row, 'return_db'),
    returnWetBulbK: number(row, 'return_wb'),
    supplyK: number(row, 'supply_db'),
    condenserAirK: number(row, 'condenser_air'),
    suctionLineK: number(row, 'suction_line'),
    liquidLineK: number(row, 'liquid_line'),
    dischargeLineK: number(row, 'discharge_line'),
    suctionPa: number(row, 'suction_pressure'),
    liquidPa: number(row, 'liquid_pressure'),
    offS: number(row, 'standing_off'),
    partsSpreadK: number(row, 'parts_spread'),
    compressorAmps: number(row, 'amps_comp'),
    capacitorMeasuredF: number(row, 'cap_measured'),
    capacitorLabelF: number(row, 'cap_label'),
    gasInUnit: text(row, 'gas_in_unit'),
    gasAdded: text(row, 'gas_added'),
    massBasis: choice(row, 'mass_basis', massBases),
    foundKg: number(row, 'found'),
    addedKg: number(row, 'added'),
    addedReason: text(row, 'added_reason'),
    recoveredKg: number(row, 'recovered'),
    scaleStepKg: number(row, 'scale_step'),
    leakFound: yesNo(row, 'leak_found'),
    leakPlace: text(row, 'leak_place'),
    leakFixed: yesNo(row, 'leak_fixed'),
    repairVerifiedDay: number(row, 'verified_on'),
    testGas: text(row, 'test_gas'),
    testStartPa: number(row, 'test_start_pressure'),
    testStartK: number(row, 'test_start_temperature'),
    testEndPa: number(row, 'test_end_pressure'),
    testEndK: number(row, 'test_end_temperature'),
    vacuumStartPa: number(row, 'vacuum_start'),
    vacuumEndPa: number(row, 'vacuum_end'),
    vacuumS: number(row, 'vacuum_minutes'),
    vacuumFarEnd: yesNo(row, 'vacuum_far_end'),
    tapsAdded: number(row, 'tap_added'),
    customerAgrees: yesNo(row, 'customer_agrees'),
    impossible: impossibleIn(row, unreadable),
  };
}

/** Fields that the answer judges itself, with its own words, or that bear on nothing it says. */
export const judgedElsewhere: ReadonlySet<string> = new Set([
  'cert_type',
  'standing_off',
  'minutes_since_change',
  'gas_added',
  'tap_added',
  'test_start_pressure',
  'vacuum_end',
]);

/** Rejected findings that are readings; every other one is a matter of the record. */
export const readingGroups: ReadonlySet<string> = new Set([
  'Air',
  'Pipes and pressures',
  'Electrical',
  'Condition',
]);

/** Papers and notes cannot make a reading impossible. */
const papers = 'Papers';

function impossibleIn(row: RecordRow, unreadable: readonly Finding[]): readonly Impossible[] {
  return checkRow(visitLog, row, {}, unreadable).flatMap((finding): Impossible[] => {
    if (finding.severity !== 'reject' || judgedElsewhere.has(finding.field)) return [];
    const field = visitLog.fields.find(({ name }) => name === finding.field);
    if (field === undefined || field.group === papers) return [];
    return [
      {
        what: readingGroups.has(field.group) ? 'reading' : 'record',
        said: finding.message,
        heading: field.heading,
      },
    ];
  });
}
