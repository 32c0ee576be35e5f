import type { ColumnRecipe } from '../../writing/table.ts';
import { orDash, whenFilled, whenRunning } from '../formulas.ts';
import { declared, figureColumn, verdictColumn } from './computed.ts';

const gas = '[@Gas in unit]';
const suction = '[@Suction pressure]';
const site = '[@Elevation],[@Pressure units]';
const gauge = 'log_gauge_accuracy';
const probe = 'log_probe_accuracy';

export const figureColumns: readonly ColumnRecipe[] = [
  declared(
    'suction_saturation',
    9.5,
    whenRunning(['Suction pressure'], `OUNCE.SATTEMP(${gas},${suction},"dew",${site})`),
  ),
  figureColumn(
    'Expected coil',
    'temperature',
    whenRunning(['Return dry bulb'], 'OUNCE.EXPECTEDEVAP([@Return dry bulb],,[?Outdoor dry bulb],log_units)'),
    {
      width: 9,
      note: 'Return air less 35 °F, by common practice; a degree less for every six below 95 °F outdoors.',
    },
  ),
  declared(
    'superheat',
    9.5,
    whenRunning(
      ['Suction pressure', 'Suction line'],
      `OUNCE.SUPERHEAT(${gas},${suction},[@Suction line],${site})`,
    ),
  ),
  figureColumn(
    'Superheat doubt',
    'temperatureDifference',
    whenRunning(
      ['Suction pressure', 'Suction line'],
      `OUNCE.DOUBT(${gas},${suction},"dew",${gauge},${probe},${site})`,
    ),
    { width: 9.5, format: '"± "0.0', note: 'From the accuracy of gauge and probe on the Settings sheet.' },
  ),
  figureColumn(
    'Target superheat',
    'temperatureDifference',
    whenRunning(
      ['Return wet bulb', 'Outdoor dry bulb'],
      orDash('OUNCE.TARGETSUPERHEAT([@Return wet bulb],[@Outdoor dry bulb],[@Metering],log_units)'),
    ),
    {
      width: 9.5,
      note: 'By the makers’ table for capillary and orifice units, ± 5 °F. A dash: no charging by superheat in this weather.',
    },
  ),
  figureColumn(
    'Condensing',
    'temperature',
    whenRunning(['Liquid pressure'], `OUNCE.SATTEMP(${gas},[@Liquid pressure],"bubble",${site})`),
    { width: 10, note: 'Bubble point of the liquid pressure.' },
  ),
  figureColumn(
    'Subcooling',
    'temperatureDifference',
    whenRunning(
      ['Liquid pressure', 'Liquid line'],
      `OUNCE.SUBCOOLING(${gas},[@Liquid pressure],[@Liquid line],${site})`,
    ),
    { width: 10, note: 'Bubble point less the liquid line.' },
  ),
  figureColumn(
    'Pressure ratio',
    'ratio',
    whenRunning(
      ['Suction pressure', 'Liquid pressure'],
      `OUNCE.COMPRESSIONRATIO(${suction},[@Liquid pressure],${site})`,
    ),
    { width: 8.5, format: '0.00', note: 'Of absolute pressures.' },
  ),
  figureColumn(
    'Split',
    'temperatureDifference',
    whenRunning(
      ['Return dry bulb', 'Supply dry bulb'],
      'OUNCE.TEMPSPLIT([@Return dry bulb],[@Supply dry bulb],log_units)',
    ),
    { width: 7, note: 'Return less supply air.' },
  ),
  figureColumn(
    'Target split',
    'temperatureDifference',
    whenRunning(
      ['Return dry bulb', 'Return wet bulb'],
      orDash('OUNCE.TARGETSPLIT([@Return dry bulb],[@Return wet bulb],log_units)'),
    ),
    { width: 7.5, note: 'For this return air, by California’s table RA3.2-3, from memory.' },
  ),
  figureColumn(
    'Cooling',
    'heatRate',
    whenRunning(
      ['Airflow', 'Return dry bulb', 'Return wet bulb', 'Supply dry bulb', 'Supply wet bulb'],
      orDash(
        'OUNCE.TOTALCAPACITY([@Airflow],[@Return dry bulb],[@Return wet bulb],[@Supply dry bulb],[@Supply wet bulb],[@Elevation],log_units)',
      ),
    ),
    { width: 9, note: 'Temperature and moisture together; only as good as the airflow figure.' },
  ),
];

export const verdictColumns: readonly ColumnRecipe[] = [
  verdictColumn(
    'Standing check',
    46,
    `IF([@Compressor]<>"off","",${whenFilled(
      ['Suction pressure', 'Outdoor dry bulb'],
      `OUNCE.STANDINGCHECK(${gas},${suction},[@Outdoor dry bulb],[?Minutes off],[?Spread of the parts],${gauge},${probe},${site})`,
    )})`,
    'Says which gas is inside, never how much of it.',
  ),
  verdictColumn(
    'Coil check',
    46,
    whenRunning(
      ['Suction pressure', 'Return dry bulb'],
      `OUNCE.EVAPCHECK(${gas},${suction},[@Return dry bulb],[@Ready],${gauge},[?Outdoor dry bulb],${site})`,
    ),
    'The evaporator against the air it gets.',
  ),
  verdictColumn(
    'Superheat check',
    46,
    whenRunning(
      ['Suction pressure', 'Suction line'],
      `OUNCE.SUPERHEATCHECK(${gas},${suction},[@Suction line],[@Ready],[?Return wet bulb],[?Outdoor dry bulb],[@Metering],"installer",${gauge},${probe},[?Split check],${site})`,
    ),
    'Superheat against its target, with its doubt.',
  ),
  verdictColumn(
    'Split check',
    42,
    whenRunning(
      ['Return dry bulb', 'Supply dry bulb'],
      `OUNCE.SPLITCHECK([@Return dry bulb],[@Supply dry bulb],[?Return wet bulb],[@Ready],"installer",${probe},[@Elevation],log_units)`,
    ),
    'Air temperature drop against its target.',
  ),
  verdictColumn(
    'Discharge check',
    30,
    whenRunning(['Discharge line'], `OUNCE.DISCHARGECHECK([@Discharge line],${probe},log_units)`),
    'How hot the compressor sends the gas out.',
  ),
  verdictColumn(
    'Supply check',
    30,
    whenFilled(
      ['Volts running', 'Rated volts'],
      'OUNCE.VOLTAGECHECK([@Volts running],[@Rated volts],[?Volts idle],[?Volts second leg])',
    ),
    'Band, drop and the balance of the legs.',
  ),
  verdictColumn(
    'Amps check',
    30,
    whenRunning(
      ['Amps compressor', 'Rated amps'],
      'OUNCE.AMPSCHECK([@Amps compressor],[@Rated amps],[?Volts running],[@Rated volts])',
    ),
    'Compressor against its rated load, corrected for the volts.',
  ),
  verdictColumn(
    'Capacitor check',
    26,
    whenFilled(
      ['Run capacitor measured', 'Run capacitor label'],
      'OUNCE.CAPACITORCHECK([@Run capacitor label],[@Run capacitor measured])',
    ),
    'Measured against the label.',
  ),
];
