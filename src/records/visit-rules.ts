import { figure, phrase } from '../phrase.ts';
import type { Phrase } from '../phrase.ts';
import type { Finding, RecordRow, RowRule, Severity } from './field.ts';

function number(row: RecordRow, name: string): number | undefined {
  const value = row[name];
  return typeof value === 'number' ? value : undefined;
}

function found(field: string, severity: Severity, message: Phrase): Finding {
  return { field, severity, message };
}

/** True power cannot exceed apparent power; two percent for the meters. */
export const meterAllowance = 1.02;

/** A run capacitor within this share of its label is good. Common practice, no source. */
const capacitorTolerance = 0.06;

/** A scale should resolve this share of the charge. Common practice, no source. */
const scaleShare = 0.01;

const calibrationDays = 366;

function notAbove(field: string, other: string, names: readonly [string, string]): RowRule {
  return (row) => {
    const value = number(row, field);
    const limit = number(row, other);
    if (value === undefined || limit === undefined || value <= limit + 1e-9) return undefined;
    const [what, than] = names;
    return found(
      field,
      'reject',
      phrase`${what} ${figure(value, 'temperature')} is above ${than} ${figure(limit, 'temperature')}`,
    );
  };
}

const isRunning = (row: RecordRow): boolean => row['compressor_state'] === 'running';

const supplyWarmerThanReturn: RowRule = (row) => {
  const supply = number(row, 'supply_db');
  const back = number(row, 'return_db');
  if (!isRunning(row) || supply === undefined || back === undefined || supply < back) return undefined;
  return found(
    'supply_db',
    'warn',
    phrase`Supply air is no cooler than return air while the compressor runs`,
  );
};

const suctionAboveLiquid: RowRule = (row) => {
  const suction = number(row, 'suction_pressure');
  const liquid = number(row, 'liquid_pressure');
  if (!isRunning(row) || suction === undefined || liquid === undefined || suction < liquid) return undefined;
  return found(
    'suction_pressure',
    'reject',
    phrase`Suction pressure is not below liquid pressure while running`,
  );
};

const moreThanVoltAmperes: RowRule = (row) => {
  const watts = number(row, 'watts');
  const volts = number(row, 'volts_run');
  const amps = number(row, 'amps_total');
  if (watts === undefined || volts === undefined || amps === undefined) return undefined;
  const mostW = volts * amps * meterAllowance;
  if (watts <= mostW) return undefined;
  return found(
    'watts',
    'reject',
    phrase`Watts ${figure(watts, 'power')} exceed volts times amps, ${figure(volts * amps, 'power')}`,
  );
};

const anotherGas: RowRule = (row) => {
  const unit = row['gas_in_unit'];
  const added = row['gas_added'];
  if (typeof unit !== 'string' || typeof added !== 'string' || unit === added) return undefined;
  return found('gas_added', 'reject', phrase`Gas added ${added} is not the gas in the unit, ${unit}: stop`);
};

const tapOnFlammable: RowRule = (row, { flammable }) => {
  if (flammable !== true || (number(row, 'tap_added') ?? 0) === 0) return undefined;
  return found('tap_added', 'reject', phrase`A line tap must not be fitted to a unit with a flammable gas`);
};

/** Two weighings, each within one step. */
const cylinderAgainstAdded: RowRule = (row) => {
  const start = number(row, 'cyl_start');
  const end = number(row, 'cyl_end');
  const added = number(row, 'added') ?? 0;
  const recovered = number(row, 'recovered') ?? 0;
  const hose = number(row, 'hose') ?? 0;
  const step = number(row, 'scale_step');
  // One cylinder pair cannot tell charging and recovering of one row apart.
  if (start === undefined || end === undefined || step === undefined || (added > 0 && recovered > 0)) {
    return undefined;
  }
  const left = recovered > 0 ? end - start : start - end;
  const booked = recovered > 0 ? recovered : added + hose;
  const gap = left - booked;
  if (Math.abs(gap) <= 2 * step + 1e-9) return undefined;
  return found(
    'cyl_end',
    'reject',
    phrase`Cylinder weights differ by ${figure(left, 'mass')}, booked are ${figure(booked, 'mass')}: ${figure(Math.abs(gap), 'mass')} unexplained`,
  );
};

const addedAboveNameplate: RowRule = (row, { nameplateKg }) => {
  const added = number(row, 'added');
  if (added === undefined || nameplateKg === undefined || added <= nameplateKg + 1e-9) return undefined;
  return found(
    'added',
    'reject',
    phrase`Added ${figure(added, 'mass')} is above the nameplate, ${figure(nameplateKg, 'mass')}`,
  );
};

const addedToUnknown: RowRule = (row) => {
  if (row['mass_basis'] !== 'unknown' || (number(row, 'added') ?? 0) <= 0) return undefined;
  return found('mass_basis', 'warn', phrase`Refrigerant was added without knowing what the unit held`);
};

const coarseScale: RowRule = (row, { nameplateKg }) => {
  const step = number(row, 'scale_step');
  if (step === undefined || nameplateKg === undefined || step <= scaleShare * nameplateKg) return undefined;
  return found(
    'scale_step',
    'warn',
    phrase`Scale step is ${figure(step / nameplateKg, 'percent')} of the charge; 1 % or less is good`,
  );
};

const scaleOutOfCalibration: RowRule = (row) => {
  const calibrated = number(row, 'cal_date');
  const day = number(row, 'date_time');
  if (calibrated === undefined || day === undefined || day - calibrated <= calibrationDays) return undefined;
  return found('cal_date', 'warn', phrase`Scale was calibrated more than 12 months before the visit`);
};

const inTheFuture: RowRule = (row, { today }) => {
  const day = number(row, 'date_time');
  if (day === undefined || today === undefined || Math.floor(day) <= today) return undefined;
  return found('date_time', 'reject', phrase`Date is in the future`);
};

const beforeInstallation: RowRule = (row, { installedOn }) => {
  const day = number(row, 'date_time');
  if (day === undefined || installedOn === undefined || Math.floor(day) >= installedOn) return undefined;
  return found('date_time', 'reject', phrase`Date is before the unit was installed`);
};

const vacuumImproves: RowRule = (row) => {
  const start = number(row, 'vacuum_start');
  const end = number(row, 'vacuum_end');
  if (start === undefined || end === undefined || end >= start) return undefined;
  return found('vacuum_end', 'reject', phrase`Vacuum cannot get deeper with the pump shut off`);
};

const testAboveLowSide: RowRule = (row, { lowSideDesignPa }) => {
  const pressure = number(row, 'test_start_pressure');
  if (pressure === undefined || lowSideDesignPa === undefined || pressure <= lowSideDesignPa + 1) {
    return undefined;
  }
  return found(
    'test_start_pressure',
    'reject',
    phrase`Test pressure is above the low-side pressure of the nameplate`,
  );
};

const capacitorOff: RowRule = (row) => {
  const measured = number(row, 'cap_measured');
  const label = number(row, 'cap_label');
  if (measured === undefined || label === undefined) return undefined;
  if (Math.abs(measured - label) <= capacitorTolerance * label * (1 + 1e-9)) return undefined;
  return found('cap_measured', 'warn', phrase`Run capacitor is more than 6 % off its label`);
};

/** What the fields of a reading set must fulfil together. */
export const visitRules: readonly RowRule[] = [
  inTheFuture,
  beforeInstallation,
  notAbove('return_wb', 'return_db', ['Return wet bulb', 'return dry bulb']),
  notAbove('supply_wb', 'supply_db', ['Supply wet bulb', 'supply dry bulb']),
  supplyWarmerThanReturn,
  suctionAboveLiquid,
  moreThanVoltAmperes,
  capacitorOff,
  anotherGas,
  addedAboveNameplate,
  addedToUnknown,
  cylinderAgainstAdded,
  coarseScale,
  scaleOutOfCalibration,
  testAboveLowSide,
  vacuumImproves,
  tapOnFlammable,
];
