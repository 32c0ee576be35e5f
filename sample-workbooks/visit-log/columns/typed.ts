import { visitLog } from '../../../src/records/index.ts';
import type { ColumnOptions } from '../../writing/record-column.ts';
import { recordColumn } from '../../writing/record-column.ts';
import type { ColumnRecipe } from '../../writing/table.ts';
import { forRow, fromRegister } from '../formulas.ts';

/** A column people type into, as the visit-log record declares it. */
export function typed(name: string, width: number, options: Omit<ColumnOptions, 'width'> = {}): ColumnRecipe {
  return recordColumn(visitLog, name, { width, ...options });
}

export const keyColumns: readonly ColumnRecipe[] = [
  typed('unit_id', 7, { from: 'unit_list', look: { align: 'center', bold: true } }),
  typed('visit_id', 7.5),
  typed('set_no', 4.5, { look: { align: 'center' } }),
  typed('stage', 13),
];

export const visitColumns: readonly ColumnRecipe[] = [
  typed('date_time', 15.5),
  typed('technician_id', 10.5, { from: 'staff_list', look: { align: 'center' } }),
  typed('reason', 10.5),
  typed('minutes_since_change', 9),
  typed('customer_agrees', 9),
];

export const lookColumns: readonly ColumnRecipe[] = [
  typed('filter', 8.5),
  typed('evap_coil', 8.5),
  typed('cond_coil', 8.5),
  typed('vents', 8.5),
  typed('fan', 8.5),
  typed('frost', 9.5),
  typed('compressor_state', 11.5),
];

export const supplyColumns: readonly ColumnRecipe[] = [
  typed('source', 11),
  typed('volts_idle', 7),
  typed('volts_run', 8),
  typed('volts_leg2', 8),
];

export const airColumns: readonly ColumnRecipe[] = [
  typed('outdoor_db', 8.5),
  typed('return_db', 8),
  typed('return_wb', 8),
  typed('supply_db', 8),
  typed('supply_wb', 8),
  typed('condenser_air', 8.5),
  typed('airflow', 8),
  typed('airflow_how', 9.5),
];

export const pipeColumns: readonly ColumnRecipe[] = [
  typed('suction_line', 8),
  typed('liquid_line', 8),
  typed('discharge_line', 9.5),
  typed('suction_pressure', 9),
  typed('liquid_pressure', 9),
  typed('gauge_reference', 11, { look: { size: 9, wrap: true } }),
  typed('standing_off', 8),
  typed('parts_spread', 8.5),
];

export const electricalColumns: readonly ColumnRecipe[] = [
  typed('amps_total', 7),
  typed('amps_comp', 10.5),
  typed('amps_fan', 7),
  typed('watts', 7.5),
  typed('cap_measured', 9.5),
  typed('cap_label', 9.5),
];

export const chargeColumns: readonly ColumnRecipe[] = [
  typed('mass_basis', 16, { look: { size: 9, wrap: true } }),
  typed('found', 8.5),
  typed('added', 8),
  typed('added_reason', 11.5, { look: { size: 9, wrap: true } }),
  typed('gas_added', 9, { from: 'gas_list' }),
  typed('recovered', 9.5),
  typed('hose', 8),
];

export const cylinderColumns: readonly ColumnRecipe[] = [
  typed('cyl_id', 9, { look: { align: 'center' } }),
  typed('cyl_start', 9),
  typed('cyl_end', 9),
  typed('scale_id', 8, { look: { align: 'center' } }),
  typed('scale_step', 7),
  typed('cal_date', 11),
];

export const workColumns: readonly ColumnRecipe[] = [
  typed('leak_found', 7),
  typed('leak_place', 12),
  typed('leak_method', 10.5),
  typed('leak_fixed', 7),
  typed('verified_on', 11),
  typed('test_gas', 9),
  typed('test_start_pressure', 9),
  typed('test_start_temperature', 10.5),
  typed('test_end_pressure', 9),
  typed('test_end_temperature', 10.5),
  typed('vacuum_start', 8),
  typed('vacuum_end', 8),
  typed('vacuum_minutes', 8),
  typed('vacuum_far_end', 10.5),
  typed('tap_added', 7),
  typed('tap_left', 9),
  typed('tap_od', 7),
];

export const paperColumns: readonly ColumnRecipe[] = [
  typed('photo_label', 18, { look: { size: 9 } }),
  typed('photo_gauge', 18, { look: { size: 9 } }),
  typed('photo_scale', 18, { look: { size: 9 } }),
  typed('note', 46, { look: { size: 9, wrap: true } }),
];

/** Follows from the register and the staff list; nobody types it twice. */
export const registerColumns: readonly ColumnRecipe[] = [
  typed('gas_in_unit', 9, { formula: forRow(`${fromRegister('Refrigerant')}&""`) }),
  {
    heading: 'Nameplate',
    unit: typed('added', 0).unit,
    width: 9.5,
    origin: 'computed',
    look: { align: 'right', format: '0.0' },
    formula: forRow(fromRegister('Nameplate charge')),
  },
  {
    heading: 'Rated volts',
    unit: 'V',
    width: 8.5,
    origin: 'computed',
    look: { align: 'center' },
    formula: forRow(`${fromRegister('Rated volts')}&""`),
  },
  typed('elevation', 9, { formula: forRow(fromRegister('Elevation')) }),
  typed('cert_type', 10, {
    formula:
      'IF([@Technician]="","",IFERROR(INDEX(Staff[Certificate],MATCH([@Technician],Staff[Technician],0))&"","?"))',
    look: { align: 'center' },
  }),
];
