import type { GateReadings } from '../../../src/visit/gates.ts';
import { readRatedVolts } from '../../../src/visit/supply-band.ts';
import type { Arguments } from '../../runtime/define.ts';
import type { gateParameters } from './shared-parameters.ts';

/** Worksheet arguments → what the gates look at. */
export function gateReadings(args: Arguments<typeof gateParameters>): GateReadings {
  return {
    filter: args.filter,
    indoorCoil: args.indoor_coil,
    outdoorCoil: args.outdoor_coil,
    vents: args.vents,
    fan: args.fan,
    frost: args.frost,
    settledS: args.minutes_since_change,
    volts: args.volts,
    ratedVolts: args.rated_volts === undefined ? undefined : readRatedVolts(args.rated_volts),
    outdoorTemperatureK: args.outdoor_temperature,
  };
}
