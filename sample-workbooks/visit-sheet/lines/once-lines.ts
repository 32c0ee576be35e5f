import { staffList, unitRegister, visitLog } from '../../../src/records/index.ts';
import type { RecordTable } from '../../../src/records/index.ts';
import { fieldOf } from '../../writing/record-column.ts';
import { defaultInstruments } from '../../../src/visit/answer/index.ts';
import type { Quantity } from '../../../src/units/quantities.ts';
import type { SheetUnits } from '../sheet-units.ts';
import type { OnceLine, SectionLine } from './line.ts';

type TableName = OnceLine['tables'][number];

const tables: Readonly<Record<TableName, RecordTable>> = {
  log: visitLog,
  register: unitRegister,
  staff: staffList,
};

/** A field said once. The first table declares it; the others repeat it in each of their rows. */
function once(key: string, ...told: readonly TableName[]): OnceLine {
  const [first = 'log'] = told;
  const field = fieldOf(tables[first], key);
  const { heading: label, quantity, choices, help } = field;
  const words = field.kind === 'yesNo' ? ['yes', 'no'] : choices;
  return {
    kind: 'once',
    key,
    label,
    field,
    tables: told,
    help,
    ...(quantity === undefined ? {} : { quantity }),
    ...(words === undefined ? {} : { choices: words }),
  };
}

/** Doubt of an instrument: the project's usual figure stands there until somebody types a better one. */
function doubt(key: string, label: string, si: number, quantity: Quantity, units: SheetUnits): OnceLine {
  const usual = units.value(si, quantity);
  return {
    kind: 'once',
    key,
    label,
    tables: [],
    quantity,
    limits: [0, Math.round(usual * 100) / 10],
    help: 'Half-width, from the papers of the instrument. The usual figure stands here.',
    preset: Number(usual.toPrecision(3)),
  };
}

const section = (key: string, label: string): SectionLine => ({
  kind: 'section',
  key,
  label,
  holds: 'typed',
});

/** Fields of the log that a visit says once, though a row of the log could say them anew. */
export const saidOnce: readonly string[] = [
  'gauge_reference',
  'barometer',
  'scale_id',
  'scale_step',
  'cal_date',
  'photo_label',
];

/** The unit, the person and the instruments: said once, on top. */
export function onceLines(units: SheetUnits): readonly (OnceLine | SectionLine)[] {
  return [
    section('s-who', 'Unit and visit'),
    once('unit_id', 'log', 'register'),
    once('visit_id', 'log'),
    once('technician_id', 'log', 'staff'),
    once('cert_type', 'log', 'staff'),
    once('flammable_trained', 'staff'),
    once('owner', 'register'),
    once('site', 'register'),
    once('reason', 'log'),
    section('s-label', 'Label and register'),
    { ...once('refrigerant', 'register'), label: 'Gas on the label' },
    once('nameplate', 'register'),
    once('rated_volts', 'register'),
    once('rated_amps', 'register'),
    once('metering', 'register'),
    once('low_side_design', 'register'),
    once('elevation', 'log', 'register'),
    { ...once('taps_fitted', 'register'), label: 'Taps before this visit' },
    once('warranty_end', 'register'),
    once('status', 'register'),
    {
      kind: 'once',
      key: 'topped_up',
      label: 'Topped up or leaking before',
      tables: [],
      choices: ['no', 'yes'],
      help: 'Since the last repair that was proved: ask the office or the customer. Blank: not known.',
    },
    { ...once('customer_agrees', 'log'), label: 'Customer agrees to opening' },
    section('s-tools', 'Supply, gauge and scale'),
    once('source', 'log'),
    once('gauge_reference', 'log'),
    once('barometer', 'log'),
    once('scale_id', 'log'),
    once('scale_step', 'log'),
    once('cal_date', 'log'),
    once('photo_label', 'log'),
    doubt(
      'suction_doubt',
      'Suction gauge good to ±',
      defaultInstruments.suctionGaugePa,
      'pressureDifference',
      units,
    ),
    doubt(
      'liquid_doubt',
      'Liquid gauge good to ±',
      defaultInstruments.liquidGaugePa,
      'pressureDifference',
      units,
    ),
    doubt('pipe_doubt', 'Pipe probe good to ±', defaultInstruments.probeK, 'temperatureDifference', units),
    doubt('air_doubt', 'Air probe good to ±', defaultInstruments.airProbeK, 'temperatureDifference', units),
  ];
}
