import { call } from '../../../functions/catalogue/call.ts';
import type { UnitRow } from './fleet-units.ts';

/** What the log's column of verdicts shows for a set: the first cause that CAUSES names from what was written down. */
export function verdictOf(unit: UnitRow, set: Readonly<Record<string, string | number>>): string {
  if (set['compressor_state'] === 'off') return '';
  const ranked = call('CAUSES', {
    return_temperature: set['return_db'],
    supply_temperature: set['supply_db'],
    return_wet_bulb: set['return_wb'],
    filter: set['filter'],
    indoor_coil: set['evap_coil'],
    outdoor_coil: set['cond_coil'],
    vents: set['vents'],
    fan: set['fan'],
    frost: set['frost'],
    minutes_since_change: set['minutes_since_change'],
    volts: set['volts_run'],
    rated_volts: unit['rated_volts'],
    outdoor_temperature: set['outdoor_db'],
    suction_line: set['suction_line'],
    discharge_line: set['discharge_line'],
    amps: set['amps_comp'],
    rated_amps: unit['rated_amps'],
    refrigerant: set['gas_in_unit'],
    suction_pressure: set['suction_pressure'],
    elevation: set['elevation'],
  });
  // Where no cause may be named yet the log shows none.
  const first = Array.isArray(ranked) ? ranked[1]?.[1] : undefined;
  return typeof first === 'string' ? first : '';
}
