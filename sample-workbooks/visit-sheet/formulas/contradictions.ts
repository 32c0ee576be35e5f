import type { WorkingLine } from '../lines/line.ts';
import type { SheetUnits } from '../sheet-units.ts';
import { limitsOf } from './limits.ts';
import { all, any, flag, isNumber } from './words.ts';

const truth = (key: string, label: string, condition: string): WorkingLine => ({
  kind: 'working',
  key,
  label,
  formula: `IF([used]=0,0,${flag(condition)})`,
});

/** A comparison that counts only where every cell holds a number. */
const where = (cells: readonly string[], condition: string): string =>
  `IF(${all(...cells.map((cell) => isNumber(`[${cell}]`)))},${condition},FALSE)`;

/** The rules across the fields of a row whose findings reject it; as `src/records/visit-rules.ts`. */
export function rowContradictions(units: SheetUnits): readonly WorkingLine[] {
  const limit = limitsOf(units);
  const grams = `0.001*${limit.crumb}`;
  const left = `IF(SUM([recovered])>0,[cyl_end]-[cyl_start],[cyl_start]-[cyl_end])*${limit.cylinder}`;
  const booked = 'IF(SUM([recovered])>0,SUM([recovered]),SUM([added])+SUM([hose]))';
  return [
    truth(
      'row_reading',
      'Readings that cannot stand together',
      any(
        where(['return_wb', 'return_db'], '[return_wb]>[return_db]+0.000000001'),
        where(['supply_wb', 'supply_db'], '[supply_wb]>[supply_db]+0.000000001'),
        where(['suction', 'liquid'], all('[compressor_state]="running"', '[suction]>=[liquid]')),
        where(['watts', 'volts_run', 'amps_total'], `[watts]>[volts_run]*[amps_total]*${limit.meter}`),
      ),
    ),
    truth(
      'row_record',
      'Cylinder against what was booked',
      where(
        ['cyl_start', 'cyl_end'],
        `IF(AND(ISNUMBER({scale_step}),NOT(AND(SUM([added])>0,SUM([recovered])>0))),ABS(${left}-${booked})>2*{scale_step}+${grams},FALSE)`,
      ),
    ),
  ];
}

/** Readings of a running unit that contradict each other; as `src/visit/answer/rules/contradiction.ts`. */
export function contradictions(units: SheetUnits): readonly WorkingLine[] {
  const { clamp } = limitsOf(units);
  const doubt = (...parts: readonly string[]): string =>
    `SQRT(${parts.map((part) => `${part}^2`).join('+')})+${clamp}`;
  return [
    truth(
      'contradicts',
      'Readings that contradict each other',
      any(
        where(['superheat', 'superheat_doubt'], '[superheat]<-[superheat_doubt]'),
        where(['inlet', 'supply_db'], `[inlet]>[supply_db]+${doubt('[dew_doubt]', '§air_doubt')}`),
        where(
          ['condensing', 'outdoor_db'],
          `[condensing]<[outdoor_db]-(${doubt('[condensing_doubt]', '§air_doubt')})`,
        ),
        where(
          ['liquid_line', 'outdoor_db'],
          `[liquid_line]<[outdoor_db]-(${doubt('§pipe_doubt', '§air_doubt')})`,
        ),
        where(
          ['liquid_line', 'condensing'],
          `[liquid_line]>[condensing]+${doubt('[condensing_doubt]', '§pipe_doubt')}`,
        ),
        where(
          ['discharge_line', 'liquid_line'],
          `[discharge_line]<[liquid_line]-(${doubt('§pipe_doubt', '§pipe_doubt')})`,
        ),
        where(
          ['discharge_line', 'suction_line'],
          `[discharge_line]<[suction_line]-(${doubt('§pipe_doubt', '§pipe_doubt')})`,
        ),
      ),
    ),
  ];
}
