import { findUnit, toSi } from '../../src/units/conversion.ts';
import type { Quantity, Unit } from '../../src/units/quantities.ts';
import type { RecordRow } from '../../src/records/index.ts';

export function si(value: number, quantity: Quantity, unit: string): number {
  return toSi(value, findUnit(quantity, unit) as Unit, 101_325);
}

const degF = (value: number): number => si(value, 'temperature', 'degF');

/** A complete, plausible reading set of a made-up window unit on a hot day; nothing was added. */
export const healthySet: RecordRow = {
  visit_id: 'V-0107',
  set_no: 1,
  unit_id: 'W-12',
  date_time: 20_648.5,
  technician_id: 'ml',
  cert_type: 'Universal',
  reason: 'routine',
  stage: 'as found',
  minutes_since_change: si(20, 'minutes', 'min'),
  elevation: 0,
  outdoor_db: degF(92),
  return_db: degF(80),
  return_wb: degF(67),
  supply_db: degF(60),
  filter: 'clean',
  evap_coil: 'clean',
  cond_coil: 'clean',
  fan: 'clean',
  vents: 'clean',
  frost: 'none',
  compressor_state: 'running',
  source: 'house',
  volts_idle: 119,
  volts_run: 116,
  amps_total: 8.4,
  amps_comp: 7.2,
  amps_fan: 1.2,
  gas_in_unit: 'R-410A',
  mass_basis: 'unknown',
  added: 0,
  recovered: 0,
  hose: 0,
  leak_found: false,
  tap_added: 0,
  tap_left: 0,
  photo_label: 'w12-label.jpg',
};
