import { causes as rankedCauses } from '../../../src/visit/diagnosis/causes.ts';
import { causeSource } from '../../../src/visit/diagnosis/fault-signs.ts';
import { standingFinding } from '../../../src/visit/diagnosis/standing-finding.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';
import { gateReadings } from './gate-readings.ts';
import * as shared from './shared-parameters.ts';

const clean = {
  filter: 'clean',
  indoor_coil: 'clean',
  outdoor_coil: 'clean',
  vents: 'clean',
  fan: 'clean',
  frost: 'none',
  minutes_since_change: 20,
  volts: 117,
  rated_volts: '115',
} as const;

export const causes = defineFunction({
  id: 'CAUSES',
  family: 'visit',
  summary:
    'Ranked causes from whatever was measured, with evidence, what was not measured and the reading to take next. Works without gauges.',
  parameters: {
    return_temperature: { ...shared.returnTemperatureParameter, optional: true },
    supply_temperature: { ...shared.supplyTemperatureParameter, optional: true },
    return_wet_bulb: { ...shared.returnWetBulbParameter, optional: true },
    ...shared.gateParameters,
    suction_line: { ...shared.pipe, optional: true, description: 'Suction line at the compressor.' },
    liquid_line: { ...shared.pipe, optional: true, description: 'Liquid line before the capillary tube.' },
    discharge_line: {
      ...shared.pipe,
      optional: true,
      description: 'Discharge line about 6 in from the compressor.',
    },
    // Not the limit of the weather: a blocked outdoor coil blows hotter than any air outdoors.
    condenser_air: { ...shared.pipe, optional: true, description: 'Air that leaves the outdoor coil.' },
    amps: { ...shared.amps, optional: true, description: 'Running amps.' },
    rated_amps: {
      ...shared.amps,
      above: 0,
      optional: true,
      description: 'Rated load amps of the same part.',
    },
    refrigerant: { ...refrigerantParameter, optional: true },
    suction_pressure: { ...shared.suctionPressureParameter, optional: true },
    liquid_pressure: {
      kind: 'number',
      quantity: 'pressure',
      optional: true,
      description: 'Liquid or discharge side, compressor running.',
    },
    standing: { kind: 'text', optional: true, description: 'The verdict of STANDINGCHECK.' },
    metering: shared.meteringParameter,
    gauge_accuracy: shared.suctionGaugeParameter,
    liquid_gauge_accuracy: shared.liquidGaugeParameter,
    probe_accuracy: shared.probeParameter,
    air_accuracy: shared.airProbeParameter,
    elevation: elevationParameter,
  },
  returns: {
    kind: 'table',
    columns: [
      { heading: 'rank', kind: 'number' },
      { heading: 'cause', kind: 'text' },
      { heading: 'confidence', kind: 'text' },
      { heading: 'for', kind: 'text' },
      { heading: 'against', kind: 'text' },
      { heading: 'not measured', kind: 'text' },
      { heading: 'next reading', kind: 'text' },
    ],
    description:
      'Likeliest cause first; beside each reading stands the range of sound units in this weather. Confidence: seen; likely (three to one or better, and no single reading carries it), possible, unlikely; unproven behind a gate nobody looked at; not judged behind a closed one.',
  },
  source: `${causeSource}.`,
  examples: [
    {
      arguments: {
        ...clean,
        return_temperature: 76,
        return_wet_bulb: 63,
        outdoor_temperature: 92,
        supply_temperature: 68,
        suction_line: 72,
        liquid_line: 100,
        amps: 6.1,
        rated_amps: 10,
      },
      gives: [
        ['rank', 'cause', 'confidence'],
        [1, 'low charge', 'likely'],
      ],
      source:
        'HVAC&R Research 3(1) 1997, sign table: split low, suction line warm, liquid line not cold as behind a restriction; low amps from memory',
    },
    {
      arguments: {
        ...clean,
        return_temperature: 80,
        return_wet_bulb: 67,
        outdoor_temperature: 100,
        supply_temperature: 63,
        suction_line: 58,
        liquid_line: 142,
        condenser_air: 148,
        amps: 12.5,
        rated_amps: 10,
      },
      gives: [
        ['rank', 'cause', 'confidence'],
        [1, 'dirty condenser', 'likely'],
      ],
      source:
        'HVAC&R Research 3(1) 1997, sign table: condenser air rise, liquid line and amps high, split low',
    },
    {
      arguments: {
        ...clean,
        frost: 'part',
        return_temperature: 76,
        supply_temperature: 60,
        outdoor_temperature: 92,
      },
      gives: [
        ['rank', 'cause', 'confidence'],
        [1, 'ice', 'seen'],
      ],
      source: 'common practice, no source: ice hides every other cause',
    },
    {
      arguments: {
        ...clean,
        minutes_since_change: 4,
        return_temperature: 76,
        supply_temperature: 60,
        outdoor_temperature: 92,
      },
      gives: '#N/A',
      source: 'California RA3.2.2.6 step 6 (2008): 15 min',
    },
  ],
  compute: (args, { atmospherePa }) =>
    rankedCauses({
      gates: gateReadings(args),
      metering: args.metering,
      returnTemperatureK: args.return_temperature,
      returnWetBulbK: args.return_wet_bulb,
      supplyTemperatureK: args.supply_temperature,
      condenserAirK: args.condenser_air,
      suctionLineK: args.suction_line,
      liquidLineK: args.liquid_line,
      dischargeLineK: args.discharge_line,
      amps: args.amps,
      ratedAmps: args.rated_amps,
      refrigerant: args.refrigerant,
      suctionPa: args.suction_pressure,
      liquidPa: args.liquid_pressure,
      standing: standingFinding(args.standing),
      atmospherePa,
      suctionGaugePa: args.gauge_accuracy,
      liquidGaugePa: args.liquid_gauge_accuracy,
      probeK: args.probe_accuracy,
      airProbeK: args.air_accuracy,
    }).map((line) => [
      line.rank,
      line.cause,
      line.confidence,
      line.inFavor,
      line.against,
      line.notMeasured,
      line.next,
    ]),
});
