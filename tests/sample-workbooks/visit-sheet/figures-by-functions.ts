import { call } from '../../../functions/catalogue/call.ts';
import type { PlacedLines } from '../../../sample-workbooks/visit-sheet/place-of-lines.ts';
import type { TypedVisit } from '../../../sample-workbooks/visit-sheet/sheets/visit-page.ts';

type Cell = number | string | undefined;
export type Figure = number | string;

/** Feet or metres that the functions take, roughly: beyond it the sheet says that the record cannot be right. */
const highestElevation = 4500;

/** Minutes that the function takes. */
const longestOff = 10_000;

/** What a function gives where the sheet shows a dash or nothing. */
export const noFigure = 'no figure';

/** Figures and verdicts of a set by the worksheet functions, by the key of the sheet's line; what cannot be asked is left out. */
export function figuresByFunctions(
  placed: PlacedLines,
  typed: TypedVisit,
  index: number,
): Readonly<Record<string, Figure>> {
  const { once } = typed;
  const set = typed.sets[index] ?? {};
  const units = placed.units.system;
  const absolute = once['gauge_reference'] === 'absolute';
  const pressure = (key: string): Cell => {
    const value = set[key];
    return typeof value === 'number' && absolute
      ? `${String(value)} ${units === 'US' ? 'psia' : 'kPa abs'}`
      : value;
  };
  // The functions know an elevation, no barometer, and nothing of a gas without a name.
  const hasPressures =
    once['barometer'] === undefined &&
    Math.abs(Number(once['elevation'] ?? 0)) <= highestElevation &&
    typeof once['refrigerant'] === 'string' &&
    once['refrigerant'].trim() !== '';
  const site = { elevation: once['elevation'], units };
  const doubts = { gauge_accuracy: doubt('suction_doubt'), probe_accuracy: doubt('pipe_doubt') };
  const running = set['compressor_state'] === 'running';
  const on = set['compressor_state'] !== 'off';
  const gas = once['refrigerant'];
  const metering = once['metering'];
  const figures: Record<string, Figure> = {};

  function doubt(key: string): Cell {
    return once[key] ?? placed.once.find((line) => line.key === key)?.preset;
  }
  function put(
    key: string,
    needed: readonly Cell[],
    id: string,
    args: Readonly<Record<string, Cell>>,
  ): string | undefined {
    if (needed.some((one) => one === undefined)) {
      figures[key] = '';
      return undefined;
    }
    const outcome = call(
      id,
      Object.fromEntries(Object.entries(args).map(([name, value]) => [name, value ?? null])),
    );
    if (typeof outcome === 'number') figures[key] = outcome;
    else if (typeof outcome === 'string') figures[key] = outcome.split(':')[0] ?? outcome;
    else figures[key] = outcome instanceof Error ? noFigure : '';
    return typeof outcome === 'string' ? outcome : undefined;
  }

  const ready = on
    ? put('ready', [], 'READYCHECK', {
        filter: set['filter'],
        indoor_coil: set['evap_coil'],
        outdoor_coil: set['cond_coil'],
        vents: set['vents'],
        fan: set['fan'],
        frost: set['frost'],
        minutes_since_change: set['minutes_since_change'],
        volts: set['volts_run'],
        rated_volts: once['rated_volts'],
        outdoor_temperature: set['outdoor_db'],
        units,
      })
    : undefined;
  const suction = pressure('suction_pressure');
  const liquid = pressure('liquid_pressure');
  if (on && hasPressures) {
    put('saturation', [suction], 'SATTEMP', { refrigerant: gas, pressure: suction, curve: 'dew', ...site });
    put('superheat', [suction, set['suction_line']], 'SUPERHEAT', {
      refrigerant: gas,
      pressure: suction,
      line_temperature: set['suction_line'],
      ...site,
    });
    put('superheat_doubt', [suction], 'DOUBT', {
      refrigerant: gas,
      pressure: suction,
      curve: 'dew',
      ...doubts,
      ...site,
    });
    put('subcooling', [liquid, set['liquid_line']], 'SUBCOOLING', {
      refrigerant: gas,
      pressure: liquid,
      line_temperature: set['liquid_line'],
      ...site,
    });
  }
  if (on) {
    put('expected_coil', [set['return_db']], 'EXPECTEDEVAP', {
      return_temperature: set['return_db'],
      outdoor_temperature: set['outdoor_db'],
      units,
    });
    if (metering !== undefined)
      put('target_superheat', [set['return_wb'], set['outdoor_db']], 'TARGETSUPERHEAT', {
        return_wet_bulb: set['return_wb'],
        outdoor_temperature: set['outdoor_db'],
        metering,
        units,
      });
    put('target_split', [set['return_db'], set['return_wb']], 'TARGETSPLIT', {
      return_temperature: set['return_db'],
      return_wet_bulb: set['return_wb'],
      units,
    });
    put('discharge_check', [set['discharge_line']], 'DISCHARGECHECK', {
      line_temperature: set['discharge_line'],
      probe_accuracy: doubts.probe_accuracy,
      units,
    });
  }
  if (running) {
    const split = put('split_check', [set['return_db'], set['supply_db']], 'SPLITCHECK', {
      return_temperature: set['return_db'],
      supply_temperature: set['supply_db'],
      return_wet_bulb: set['return_wb'],
      ready,
      role: 'installer',
      probe_accuracy: doubt('air_doubt'),
      units,
    });
    if (hasPressures && metering !== undefined) {
      put('superheat_check', [suction, set['suction_line']], 'SUPERHEATCHECK', {
        refrigerant: gas,
        pressure: suction,
        line_temperature: set['suction_line'],
        ready,
        return_wet_bulb: set['return_wb'],
        outdoor_temperature: set['outdoor_db'],
        metering,
        role: 'installer',
        split,
        ...doubts,
        ...site,
      });
      put('coil_check', [suction, set['return_db']], 'EVAPCHECK', {
        refrigerant: gas,
        pressure: suction,
        return_temperature: set['return_db'],
        ready,
        gauge_accuracy: doubts.gauge_accuracy,
        outdoor_temperature: set['outdoor_db'],
        ...site,
      });
    }
  }
  if (
    set['compressor_state'] === 'off' &&
    hasPressures &&
    suction !== undefined &&
    Number(set['standing_off'] ?? 0) <= longestOff
  ) {
    put('standing_check', [suction, set['outdoor_db']], 'STANDINGCHECK', {
      refrigerant: gas,
      pressure: suction,
      ambient_temperature: set['outdoor_db'],
      off_minutes: set['standing_off'],
      parts_spread: set['parts_spread'],
      ...doubts,
      ...site,
    });
  }
  put('supply_check', [set['volts_run'], once['rated_volts']], 'VOLTAGECHECK', {
    volts: set['volts_run'],
    rated_volts: once['rated_volts'],
    idle_volts: set['volts_idle'],
    second_leg: set['volts_leg2'],
    units,
  });
  const label = set['cap_label'];
  put('capacitor_check', [label, set['cap_measured']], 'CAPACITORCHECK', {
    label: label === undefined ? undefined : String(label),
    measured: set['cap_measured'],
    units,
  });
  // The function takes no vacuum of zero; the answer does.
  if (
    ['vacuum_start', 'vacuum_end', 'vacuum_minutes'].every((key) => set[key] !== undefined && set[key] !== 0)
  ) {
    put('vacuum_check', [set['vacuum_start']], 'VACUUMCHECK', {
      vacuum_start: set['vacuum_start'],
      vacuum_end: set['vacuum_end'],
      minutes: set['vacuum_minutes'],
      far_end: set['vacuum_far_end'] ?? 'no',
      units,
    });
  }
  return figures;
}
