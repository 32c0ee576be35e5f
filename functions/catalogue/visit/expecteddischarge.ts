import { idealDischargeK, usualEfficiency } from '../../../src/visit/ideal-discharge.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';
import { pipe, suctionPressureParameter } from './shared-parameters.ts';

const cycle = 'adiabatic compression at 70 % isentropic efficiency, CoolProp 8.0.0';

export const expecteddischarge = defineFunction({
  id: 'EXPECTEDDISCHARGE',
  family: 'visit',
  summary: 'Discharge temperature of the ideal cycle for the suction gas and the pressures measured.',
  parameters: {
    refrigerant: refrigerantParameter,
    suction_pressure: suctionPressureParameter,
    suction_line: { ...pipe, description: 'Suction line at the compressor.' },
    discharge_pressure: {
      kind: 'number',
      quantity: 'pressure',
      description: 'High side, compressor running.',
    },
    efficiency: {
      kind: 'number',
      quantity: 'percent',
      above: 0,
      maximum: 1,
      default: usualEfficiency,
      description: 'Isentropic efficiency of the compressor. 70 % if left out.',
    },
    elevation: elevationParameter,
  },
  returns: {
    kind: 'number',
    quantity: 'temperature',
    description: 'Without heat lost from the shell: a pipe outside reads lower.',
  },
  source:
    'First and second law on the equation of state of the refrigerant; efficiency: common practice, no source.',
  examples: [
    {
      arguments: { refrigerant: 'R-22', suction_pressure: 68.6, suction_line: 55, discharge_pressure: 259.9 },
      gives: 196,
      tolerance: 4,
      source: `40/120 degF, superheat 15 degF, ${cycle}`,
    },
    {
      arguments: { refrigerant: 'R-22', suction_pressure: 68.6, suction_line: 30, discharge_pressure: 259.9 },
      gives: '#NUM!',
      source: 'definition: below the dew point nothing but liquid and vapor',
    },
  ],
  compute: (args) =>
    idealDischargeK({
      refrigerant: args.refrigerant,
      suctionPa: args.suction_pressure,
      suctionTemperatureK: args.suction_line,
      dischargePa: args.discharge_pressure,
      efficiency: args.efficiency,
    }),
});
