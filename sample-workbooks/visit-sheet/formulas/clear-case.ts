import type { RuleKey } from '../answer/reduced-rules.ts';
import type { WorkingLine } from '../lines/line.ts';
import type { SheetUnits } from '../sheet-units.ts';
import { limitsOf } from './limits.ts';
import { all, any, flag, isNumber, not } from './words.ts';

const working = (key: string, label: string, formula: string): WorkingLine => ({
  kind: 'working',
  key,
  label,
  formula: `IF([used]=0,0,${formula})`,
});

/** Readings of a running unit that bear on a cause. */
const bearing = [
  'return_db',
  'return_wb',
  'supply_db',
  'condenser_air',
  'suction_line',
  'liquid_line',
  'discharge_line',
  'amps_comp',
  'suction',
  'liquid',
] as const;

/** True where the reading is blank or the condition holds. */
const unless = (cells: readonly string[], condition: string): string =>
  `IF(${all(...cells.map((cell) => isNumber(`[${cell}]`)))},${condition},TRUE)`;

/**
 * The one case in which plain formulas name ounces beside the weighed-in charge of an emptied unit: superheat above its
 * target by more than tolerance and doubt, and not one reading that speaks for another cause. Everything else wants the
 * ranked causes, which only the functions have.
 */
export function clearlyLow(units: SheetUnits): readonly WorkingLine[] {
  const limit = limitsOf(units);
  const coarsest = `MIN(${limit.largestStep},${limit.stepShare}*{nameplate})`;
  return [
    working('bearing', 'Readings that bear on a cause', bearing.map((key) => `COUNT([${key}])`).join('+')),
    working(
      'weighed_in',
      'Emptied and weighed in',
      flag(all(isNumber('[room_left]'), any('[s_emptied]=1', '[s_basis]="nameplate weighed in"'))),
    ),
    working(
      'step',
      'Next step by weight',
      `IF(${all(isNumber('[room_left]'), isNumber('{nameplate}'))},IF(§scale_step>${coarsest}*(1+${limit.stepRounding}),0,INT(MIN(${coarsest},[room_left]/2)/§scale_step+${limit.stepRounding})*§scale_step),0)`,
    ),
    working(
      'clearly_low',
      'Clearly short of gas',
      flag(
        all(
          '[compressor_state]="running"',
          any('{metering}="capillary"', '{metering}="orifice"'),
          any(isNumber('{elevation}'), isNumber('{barometer}')),
          '[stage]<>"final"',
          any('[s_standing]=""', '[s_standing]="Matches"'),
          '[superheat_check]="High"',
          any('[coil_check]="Low"', '[coil_check]="Too cold"'),
          any('[split_check]="Low"', '[split_check]="Normal"'),
          any('[discharge_check]=""', '[discharge_check]="Normal"'),
          unless(
            ['condensing', 'outdoor_db'],
            `[condensing]<=[outdoor_db]+${limit.condenser}+${limit.condenserBand}`,
          ),
          unless(
            ['subcooling', 'subcooling_doubt'],
            `[subcooling]+[subcooling_doubt]<=${limit.subcoolingLow}`,
          ),
          unless(['condenser_air', 'outdoor_db'], `[condenser_air]-[outdoor_db]<=${limit.condenser}`),
          // A liquid line without its pressure tells neither for nor against.
          any(isNumber('[subcooling]'), all(not(isNumber('[liquid_line]')), not(isNumber('[liquid]')))),
          `IF(${isNumber('[amps_comp]')},IF(${isNumber('{rated_amps}')},AND([amps_comp]<={rated_amps},[amps_comp]>=${limit.leastAmps}*{rated_amps}),FALSE),TRUE)`,
          `IF(AND(${isNumber('[<s_superheat]')},[s_added_visit]>[<s_added_at]+${limit.crumb}),[superheat]<=[<s_superheat]-${limit.response},TRUE)`,
        ),
      ),
    ),
  ];
}

/** Ounces, last of all. */
export function ounces(): readonly (readonly [when: string, key: RuleKey])[] {
  const room = isNumber('[room_left]');
  const coarse = `IF(${all(room, '[clearly_low]=1', isNumber('{nameplate}'))},[step]<=0,FALSE)`;
  const tellsApart = isNumber('[subcooling]');
  const noIdle = not(isNumber('[volts_idle]'));
  return [
    [
      all('[weighed_in]=1', any('[clearly_low]=1', all('[bearing]=0', '[s_standing]=""')), noIdle),
      'volts idle',
    ],
    [all('[weighed_in]=1', '[bearing]=0', '[s_standing]=""', '[step]>0', '[stage]<>"final"'), 'add a step'],
    [all('[weighed_in]=1', '[clearly_low]=1', '[step]>0'), 'add a step'],
    [all('[weighed_in]=1', coarse), 'finer scale'],
    [
      all('[clearly_low]=1', '[s_basis]="residual weighed"', room, tellsApart, '{topped_up}="yes"'),
      'low again',
    ],
    [
      all('[clearly_low]=1', '[s_basis]="residual weighed"', room, tellsApart, '{topped_up}=""'),
      'functions: history',
    ],
    [all('[clearly_low]=1', '[s_basis]="residual weighed"', room, tellsApart, noIdle), 'volts idle'],
    [all('[clearly_low]=1', '[s_basis]="residual weighed"', room, tellsApart, '[step]>0'), 'add a step'],
    [all('[s_basis]="residual weighed"', room, tellsApart, coarse), 'finer scale'],
  ].map(([when, key]) => [when ?? '', key as RuleKey] as const);
}
