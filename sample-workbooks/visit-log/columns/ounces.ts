import type { ColumnRecipe } from '../../writing/table.ts';
import { fromRegister, whenFilled } from '../formulas.ts';
import { figureColumn, wordColumn } from './computed.ts';

const soFar = (heading: string): string =>
  `IF([@Unit]="","",SUMIFS(Readings[${heading}],Readings[Visit],[@Visit],Readings[Set],"<="&[@Set]))`;

const known = ['Mass known by', 'Nameplate'];

export const ounceColumns: readonly ColumnRecipe[] = [
  figureColumn('Added so far', 'mass', soFar('Added'), {
    width: 8,
    note: 'Weighed into the unit in this visit up to this set.',
  }),
  figureColumn('Hoses so far', 'mass', soFar('Lost in hoses'), {
    width: 8,
    note: 'Lost in hoses in this visit. Never part of the charge.',
  }),
  figureColumn(
    'Room',
    'mass',
    whenFilled(
      known,
      'IF([@Mass known by]="unknown","unknown",OUNCE.CHARGEROOM([@Nameplate],[@Mass known by],[@Added so far],[?Found by weight],,log_units))',
    ),
    {
      width: 9,
      note: 'What may still go in before the nameplate is reached. Unknown: the mass in the unit was never weighed.',
    },
  ),
  figureColumn(
    'Charge found',
    'mass',
    `IF(AND([@Stage]="final",N([@Added so far])>0,[@Mass known by]<>"nameplate weighed in"),OUNCE.CHARGEFOUND([@Nameplate],[@Added so far],log_units),"")`,
    { width: 8, note: 'Nameplate less what was added until the charge was right: what had been left.' },
  ),
];

export const cylinderCheckColumns: readonly ColumnRecipe[] = [
  figureColumn(
    'Left the cylinder',
    'mass',
    whenFilled(
      ['Cylinder before', 'Cylinder after'],
      '([@Cylinder before]-[@Cylinder after])*IF(log_units="SI",1000,16)',
    ),
    { width: 9, note: 'Cylinder before less after, in the unit of the charge.' },
  ),
  figureColumn(
    'Unexplained',
    'mass',
    whenFilled(['Left the cylinder'], 'ROUND([@Left the cylinder]-[@Added]-[@Lost in hoses],2)'),
    {
      width: 10.5,
      format: '+0.0;-0.0;0.0',
      note: 'Left the cylinder, less added, less lost in hoses. More than two scale steps is worth a question.',
    },
  ),
];

export const bookkeepingColumns: readonly ColumnRecipe[] = [
  wordColumn('Metering', 9, `IF([@Unit]="","",${fromRegister('Metering')})`, 'From the register.'),
  figureColumn('Rated amps', 'current', `IF([@Unit]="","",${fromRegister('Rated load amps')})`, {
    width: 8,
    note: 'From the register.',
  }),
  wordColumn(
    'Pressure units',
    10,
    'IF([@Gauge reads]="absolute",log_units_absolute,log_units)',
    'The unit system of the pressures of this row.',
  ),
  wordColumn(
    'Standing said',
    12,
    'IF([@Unit]="","",IF(SUMIFS(Readings[Recovered],Readings[Visit],[@Visit],Readings[Set],"<="&[@Set])>0,"",IFERROR(INDEX(Readings[Standing check],MATCH([@Visit]&"/standing",Readings[Card key],0)),"")))',
    'The standing check of the same visit, where there was one. Once gas was recovered it tells nothing about what is inside now.',
  ),
  figureColumn('Order', 'count', 'IF([@Unit]="","",ROUND([@Date and time]*1440,0)*100+[@Set])', {
    width: 12,
    note: 'Sorts sets by time.',
  }),
  wordColumn(
    'Latest of',
    8,
    'IF([@Unit]="","",IF(COUNTIFS(Readings[Unit],[@Unit],Readings[Order],">"&[@Order])=0,[@Unit],""))',
    'Names the unit on its last set.',
  ),
  wordColumn(
    'Card key',
    11,
    'IF([@Unit]="","",IF([@Compressor]="off",[@Visit]&"/standing",[@Visit]&"/"&COUNTIFS(Readings[Visit],[@Visit],Readings[Compressor],"<>off",Readings[Set],"<="&[@Set])))',
    'Counts the running sets of a visit; looked up by the visit card.',
  ),
  figureColumn(
    'Visit number',
    'count',
    'IF([@Unit]="","",IF([@Set]=1,COUNTIFS(Readings[Set],1,Readings[Order],"<="&[@Order]),""))',
    { width: 8, note: 'Counts visits in the order of time.' },
  ),
];
