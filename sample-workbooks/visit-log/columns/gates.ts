import type { ColumnRecipe } from '../../writing/table.ts';
import { declared, figureColumn, wordColumn } from './computed.ts';

const airPath = '[&Filter],[&Indoor coil],[&Outdoor coil],[&Vents and ducts],[&Fan]';
const openPath = '"clean","clean","clean","clean","clean"';
const openSupply = '115,"115"';
const mild = '"70 degF"';

/** One gate by itself: all others are held open, so that the strip and the verdict can never disagree. */
function gate(heading: string, width: number, call: string, note: string): ColumnRecipe {
  const answer = `OUNCE.READYCHECK(${call})`;
  return wordColumn(
    heading,
    width,
    `IF(OR([@Unit]="",[@Compressor]="off"),"",IF(LEFT(${answer},5)="Ready","ok",` +
      `IF(LEFT(${answer},4)="Look","not seen",IF(LEFT(${answer},4)="Wait","wait","stop"))))`,
    `${note} ok, wait, stop or not seen.`,
  );
}

export const gateColumns: readonly ColumnRecipe[] = [
  gate(
    'Supply gate',
    8,
    `${openPath},"none",60,[?Volts running],[@Rated volts],${mild}`,
    'Running volts within 10 % of the rating.',
  ),
  gate('Ice gate', 8, `${openPath},[&Frost],60,${openSupply},${mild}`, 'No frost anywhere.'),
  gate(
    'Air gate',
    8,
    `${airPath},"none",60,${openSupply},${mild}`,
    'Filter, both coils, vents and fan clean.',
  ),
  gate(
    'Weather gate',
    8,
    `${openPath},"none",60,${openSupply},[?Outdoor dry bulb],log_units`,
    '55 °F outdoors or more.',
  ),
  gate(
    'Settled gate',
    8,
    `${openPath},"none",[?Minutes since change],${openSupply},${mild}`,
    '15 minutes since the start or the last change.',
  ),
  figureColumn(
    'Wait',
    'minutes',
    'IF(OR([@Minutes since change]="",[@Compressor]="off"),"",MAX(0,15-[@Minutes since change]))',
    { width: 6, note: 'Minutes still to wait before the next reading means something.' },
  ),
  {
    heading: 'Read again at',
    width: 8,
    origin: 'computed',
    look: { align: 'center', format: 'hh:mm' },
    formula: 'IF([@Wait]="","",IF([@Wait]>0,[@Date and time]+[@Wait]/1440,""))',
    note: 'Time of this set plus the minutes to wait.',
  },
  declared(
    'ready',
    44,
    `IF(OR([@Unit]="",[@Compressor]="off"),"",OUNCE.READYCHECK(${airPath},[&Frost],[?Minutes since change],[?Volts running],[@Rated volts],[?Outdoor dry bulb],log_units))`,
    { align: 'left', size: 8, wrap: true, indent: 1 },
  ),
];
