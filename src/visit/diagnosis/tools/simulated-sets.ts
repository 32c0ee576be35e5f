import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { standardAtmospherePa } from '../../../air/index.ts';
import { CalcError } from '../../../errors.ts';
import { findRefrigerant } from '../../../refrigerants/index.ts';
import { fahrenheitK, minutesS, psiPa } from '../../../units/trade.ts';
import type { Cleanliness, Frost } from '../../gates.ts';
import { airProbeK, liquidGaugePa, probeK, suctionGaugePa } from '../../instrument-accuracy.ts';
import { standingCheck } from '../../standing-check.ts';
import { readRatedVolts } from '../../supply-band.ts';
import type { Metering } from '../../target-superheat.ts';
import type { ReadingSet } from '../reading-set.ts';
import { standingFinding } from '../standing-finding.ts';

/** Readings of simulated units with their true causes; tests/visit/simulated/README.md says what stands behind them. */
export const simulatedFile = new URL(
  '../../../../tests/visit/simulated/simulated-units.csv.gz',
  import.meta.url,
);

/** One set as the file has it, and as CAUSES reads it. */
export interface SimulatedSet {
  readonly row: Readonly<Record<string, string>>;
  readonly unit: string;
  readonly causes: readonly string[];
  readonly severities: readonly number[];
  readonly readings: ReadingSet;
}

/** The sets of a file, plain or compressed. */
export function simulatedSets(file: URL = simulatedFile): SimulatedSet[] {
  const bytes = readFileSync(file);
  const text = (file.pathname.endsWith('.gz') ? gunzipSync(bytes) : bytes).toString('utf8');
  const [heading = '', ...lines] = text.trim().split('\n');
  const names = heading.split(',');
  return lines.map((line) => {
    const cells = cellsOf(line);
    return simulatedSet(Object.fromEntries(names.map((name, place) => [name, cells[place] ?? ''])));
  });
}

/** Cells of one line; a quoted cell may hold commas. */
function cellsOf(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map((match) => match[1] ?? match[2] ?? '');
}

function simulatedSet(row: Readonly<Record<string, string>>): SimulatedSet {
  return {
    row,
    unit: row['unit'] ?? '',
    causes: (row['truth_cause'] ?? '').split(' + '),
    severities: [number(row, 'severity') ?? 0, number(row, 'second_severity') ?? 0],
    readings: readingsOf(row),
  };
}

function number(row: Readonly<Record<string, string>>, name: string): number | undefined {
  const text = row[name] ?? '';
  return text === '' ? undefined : Number(text);
}

function readingsOf(row: Readonly<Record<string, string>>): ReadingSet {
  const degF = (name: string): number | undefined => mapped(number(row, name), fahrenheitK);
  const atmospherePa = standardAtmospherePa((number(row, 'elevation') ?? 0) * 0.3048);
  const psig = (name: string): number | undefined =>
    mapped(number(row, name), (gauge) => psiPa(gauge) + atmospherePa);
  const word = <Word extends string>(name: string): Word | undefined =>
    (row[name] || undefined) as Word | undefined;
  const ratedVolts = row['rated_volts'];
  const readings: ReadingSet = {
    gates: {
      filter: word<Cleanliness>('filter'),
      indoorCoil: word<Cleanliness>('indoor_coil'),
      outdoorCoil: word<Cleanliness>('outdoor_coil'),
      vents: word<Cleanliness>('vents'),
      fan: word<Cleanliness>('fan'),
      frost: word<Frost>('frost'),
      settledS: mapped(number(row, 'minutes_since_change'), minutesS),
      volts: number(row, 'volts'),
      ratedVolts: ratedVolts ? readRatedVolts(ratedVolts) : undefined,
      outdoorTemperatureK: degF('outdoor_temperature'),
    },
    metering: word<Metering>('metering') ?? 'capillary',
    returnTemperatureK: degF('return_temperature'),
    returnWetBulbK: degF('return_wet_bulb'),
    supplyTemperatureK: degF('supply_temperature'),
    condenserAirK: degF('condenser_air'),
    suctionLineK: degF('suction_line'),
    liquidLineK: degF('liquid_line'),
    dischargeLineK: degF('discharge_line'),
    amps: number(row, 'amps'),
    ratedAmps: number(row, 'rated_amps'),
    refrigerant: mapped(word('refrigerant'), findRefrigerant),
    suctionPa: psig('suction_pressure'),
    liquidPa: psig('liquid_pressure'),
    atmospherePa,
    suctionGaugePa: mapped(number(row, 'gauge_accuracy'), psiPa) ?? suctionGaugePa,
    liquidGaugePa: mapped(number(row, 'liquid_gauge_accuracy'), psiPa) ?? liquidGaugePa,
    probeK,
    airProbeK,
  };
  return { ...readings, standing: standingOf(row, readings, psig('standing_pressure')) };
}

function standingOf(
  row: Readonly<Record<string, string>>,
  { refrigerant, atmospherePa, liquidGaugePa: gaugePa }: ReadingSet,
  pressurePa: number | undefined,
): ReadingSet['standing'] {
  const ambientTemperatureK = mapped(number(row, 'standing_ambient_temperature'), fahrenheitK);
  if (!refrigerant || pressurePa === undefined || ambientTemperatureK === undefined) return undefined;
  try {
    const { word } = standingCheck({
      refrigerant,
      pressurePa,
      ambientTemperatureK,
      offS: mapped(number(row, 'standing_off_minutes'), minutesS),
      partsSpreadK: undefined,
      atmospherePa: atmospherePa ?? standardAtmospherePa(0),
      accuracy: { gaugePa, probeK },
    });
    return standingFinding(word);
  } catch (error) {
    if (error instanceof CalcError) return undefined;
    throw error;
  }
}

function mapped<From, To>(value: From | undefined, map: (value: From) => To): To | undefined {
  return value === undefined ? undefined : map(value);
}

/** Severity of the file on a scale from none (0) to the worst it holds (1). */
export function severityOf(cause: string, share: number): number {
  switch (cause) {
    case 'low charge':
    case 'restriction':
      return (1 - share) / 0.5;
    case 'overcharge':
      return (share - 1) / 0.4;
    case 'low indoor airflow':
    case 'dirty condenser':
      return (1 - share) / 0.6;
    case 'non-condensables':
      return share / 1.1;
    case 'weak compressor':
      return share / 0.42;
    default:
      return 0;
  }
}
