import type { ColumnRecipe } from '../../writing/table.ts';
import { firstWord } from '../formulas.ts';
import { declared, verdictColumn } from './computed.ts';

/** Everything that was measured, in the calling order of CAUSES. */
const measured = [
  '[?Return dry bulb]',
  '[?Supply dry bulb]',
  '[?Return wet bulb]',
  '[&Filter]',
  '[&Indoor coil]',
  '[&Outdoor coil]',
  '[&Vents and ducts]',
  '[&Fan]',
  '[&Frost]',
  '[?Minutes since change]',
  '[?Volts running]',
  '[@Rated volts]',
  '[?Outdoor dry bulb]',
  '[?Suction line]',
  '[?Liquid line]',
  '[?Discharge line]',
  '[?Outdoor coil air]',
  '[?Amps compressor]',
  '[?Rated amps]',
  '[@Gas in unit]',
  '[?Suction pressure]',
  '[?Liquid pressure]',
  '[@Standing said]',
  '[@Metering]',
  'log_gauge_accuracy',
  'log_liquid_gauge_accuracy',
  'log_probe_accuracy',
  'log_probe_accuracy',
  '[@Elevation]',
  '[@Pressure units]',
].join(',');

/** A cell of the first line of the ranked table, below its headings; blank where no cause may be named yet. */
function ofFirstCause(column: number): string {
  return `IFERROR(INDEX(OUNCE.CAUSES(${measured}),2,${String(column)}),"")`;
}

const running = (expression: string): string => `IF(OR([@Unit]="",[@Compressor]="off"),"",${expression})`;

export const outcomeColumns: readonly ColumnRecipe[] = [
  declared('verdict', 20, running(ofFirstCause(2)), {
    align: 'left',
    bold: true,
    size: 9,
    wrap: true,
    indent: 1,
  }),
  verdictColumn('Confidence', 10, running(ofFirstCause(3)), 'How well the readings hold together.'),
  {
    // One line that ends at its cell: the whole text stands on the visit card and in the formula bar.
    ...verdictColumn('Evidence', 60, running(ofFirstCause(4)), 'What speaks for it.'),
    look: { align: 'left', size: 9, indent: 1 },
  },
  verdictColumn(
    'Reading to take next',
    34,
    running(ofFirstCause(7)),
    'The one reading that would settle it.',
  ),
  declared('verdict_blocked_by', 14, running(`IF(LEFT([@Ready],5)="Ready","",${firstWord('[@Ready]')})`), {
    align: 'left',
  }),
];
