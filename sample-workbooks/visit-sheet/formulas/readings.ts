import { outdoorScale, wetBulbScale } from '../../../src/visit/target-superheat-table.ts';
import { targetSplitRows } from '../../../src/visit/target-split-table.ts';
import { fahrenheitK } from '../../../src/units/trade.ts';
import type { WorkingLine } from '../lines/line.ts';
import type { SheetUnits } from '../sheet-units.ts';
import { plain } from '../sheet-units.ts';
import { curveSlope, curveValue, curveVariable } from './curves.ts';
import { limitsOf } from './limits.ts';
import { absurd } from './typed-checks.ts';
import { all, isNumber } from './words.ts';

const working = (key: string, label: string, formula: string): WorkingLine => ({
  kind: 'working',
  key,
  label,
  formula,
});

/** A gauge reading counted from vacuum; nothing where it would lie below vacuum or beyond all sense. */
const absolute = (field: string): string =>
  `IF(${isNumber(`[${field}]`)},IF(AND([${field}]+§gauge_zero>0,[${field}]<=${String(absurd)}),[${field}]+§gauge_zero,""),"")`;

/** Saturation temperature of a pressure counted from vacuum, "outside" beyond the series. */
const saturation = (curve: 'dew' | 'bubble', x: string): string =>
  `IF(${isNumber(x)},${curveValue(curve, x)},${x})`;

const logarithm = (pressure: string): string => `LN(${pressure})`;

/** x of a pressure in a temperature series; nothing is worked out where no number stands. */
const pressureVariable = (curve: 'dew' | 'bubble', pressure: string): string =>
  `IF(${isNumber(pressure)},${curveVariable(curve, logarithm(pressure), pressure)},"")`;

/** Pressures, saturation temperatures and their doubts, the split table, the pressure test. */
export function readingLines(units: SheetUnits): readonly WorkingLine[] {
  const limit = limitsOf(units);
  const fahrenheit = (cell: string): string =>
    units.system === 'US'
      ? `ROUND(${cell},9)`
      : `ROUND(${cell}*1.8-${plain(units.value(fahrenheitK(0), 'temperature') * 1.8)},9)`;
  const zeroK = units.value(0, 'temperature');
  const kelvin = (cell: string): string => `(${cell}-(${plain(zeroK)}))`;
  return [
    working('suction', 'Suction pressure from vacuum', absolute('suction_pressure')),
    working('liquid', 'Liquid pressure from vacuum', absolute('liquid_pressure')),
    working('test_1', 'Test pressure start from vacuum', absolute('test_start_pressure')),
    working('test_2', 'Test pressure end from vacuum', absolute('test_end_pressure')),
    working('x_dew', 'x of the suction pressure, dew', pressureVariable('dew', '[suction]')),
    working('x_bubble', 'x of the suction pressure, bubble', pressureVariable('bubble', '[suction]')),
    working('x_liquid', 'x of the liquid pressure, bubble', pressureVariable('bubble', '[liquid]')),
    working('dew', 'Dew point of the suction pressure', saturation('dew', '[x_dew]')),
    working('bubble', 'Bubble point of the suction pressure', saturation('bubble', '[x_bubble]')),
    working('condensing', 'Bubble point of the liquid pressure', saturation('bubble', '[x_liquid]')),
    working(
      'inlet',
      'Coldest point of the coil',
      `IF(${all(isNumber('[dew]'), isNumber('[bubble]'))},[bubble]+${limit.inlet}*([dew]-[bubble]),"")`,
    ),
    working(
      'dew_doubt',
      'Doubt of the dew point',
      `IF(${isNumber('[x_dew]')},§suction_doubt/[suction]*${curveSlope('dew', '[x_dew]')},"")`,
    ),
    working(
      'condensing_doubt',
      'Doubt of condensing',
      `IF(${isNumber('[x_liquid]')},§liquid_doubt/[liquid]*${curveSlope('bubble', '[x_liquid]')},"")`,
    ),
    working(
      'superheat_doubt',
      'Doubt of the superheat',
      `IF(${isNumber('[dew_doubt]')},SQRT([dew_doubt]^2+§pipe_doubt^2),"")`,
    ),
    working(
      'subcooling_doubt',
      'Doubt of the subcooling',
      `IF(${isNumber('[condensing_doubt]')},SQRT([condensing_doubt]^2+§pipe_doubt^2),"")`,
    ),
    working(
      'standing_pressure',
      'Standing pressure from vacuum',
      `IF(${isNumber('[suction]')},[suction],[liquid])`,
    ),
    working(
      'standing_gauge',
      'Doubt of its gauge',
      `IF(${isNumber('[suction]')},§suction_doubt,§liquid_doubt)`,
    ),
    working(
      'x_outdoor',
      'x of the outdoor temperature',
      curveVariable('pressure', '[outdoor_db]', '[outdoor_db]'),
    ),
    working(
      'p_sat',
      'Pressure the gas should have',
      `IF(${isNumber('[x_outdoor]')},EXP(${curveValue('pressure', '[x_outdoor]')}),"")`,
    ),
    working(
      'p_excess',
      'More than that',
      `IF(${all(isNumber('[p_sat]'), isNumber('[standing_pressure]'))},[standing_pressure]-[p_sat],"")`,
    ),
    working(
      'p_slope',
      'Its change for a degree',
      `IF(${isNumber('[p_sat]')},([p_sat]-EXP(${curveValue('pressure', `([x_outdoor]-${limit.kelvin}/§pressure_half)`)}))/${limit.kelvin},"")`,
    ),
    working(
      'p_parts',
      'Doubt by unequal parts',
      `IF(${isNumber('[p_slope]')},[p_slope]*SUM([parts_spread])/2,"")`,
    ),
    working(
      'p_doubt',
      'Doubt of the comparison',
      `IF(${isNumber('[p_slope]')},SQRT([standing_gauge]^2+([p_slope]*§pipe_doubt)^2+[p_parts]^2),"")`,
    ),
    ...splitLines(fahrenheit, units),
    ...targetLines(fahrenheit, units),
    working(
      'test_change',
      'Pressure test: more than expected',
      `IF(${all(...['[test_1]', '[test_2]', '[test_start_temperature]', '[test_end_temperature]'].map(isNumber))},IF(${kelvin('[test_start_temperature]')}>0,[test_2]-[test_1]*${kelvin('[test_end_temperature]')}/${kelvin('[test_start_temperature]')},""),"")`,
    ),
    working(
      'test_doubt',
      'Doubt of the pressure test',
      `IF(${isNumber('[test_change]')},SQRT(§suction_doubt^2*(1+(${kelvin('[test_end_temperature]')}/${kelvin('[test_start_temperature]')})^2)+([test_1]/${kelvin('[test_start_temperature]')}*§pipe_doubt)^2*(1+(${kelvin('[test_end_temperature]')}/${kelvin('[test_start_temperature]')})^2)),"")`,
    ),
  ];
}

export const splitTable = {
  rows: [...targetSplitRows.keys()],
  firstWetBulb: 76 - Math.max(...[...targetSplitRows.values()].map(({ length }) => length)) + 1,
  lastWetBulb: 76,
} as const;

/** Bilinear between the points of the published table, which is in degrees Fahrenheit. */
function splitLines(fahrenheit: (cell: string) => string, units: SheetUnits): readonly WorkingLine[] {
  const { rows, firstWetBulb, lastWetBulb } = splitTable;
  const first = Math.min(...rows);
  const last = Math.max(...rows);
  const column = `MIN(${String(lastWetBulb - firstWetBulb)},INT([wet_f])-${String(firstWetBulb - 1)})`;
  const perDegree = units.system === 'US' ? '' : '/1.8';
  const at = (row: string, shift: string): string => `INDEX(§splits,${row},${column}${shift})`;
  const along = (row: string): string =>
    `IF(${isNumber('[split_row]')},IF(AND(ISNUMBER(${at(row, '')}),ISNUMBER(${at(row, '+1')})),(${at(row, '')}+([wet_f]-${String(firstWetBulb - 1)}-${column})*(${at(row, '+1')}-${at(row, '')}))${perDegree},"outside"),"")`;
  return [
    working(
      'return_f',
      'Return dry bulb, degF',
      `IF(${isNumber('[return_db]')},${fahrenheit('[return_db]')},"")`,
    ),
    working(
      'wet_f',
      'Return wet bulb, degF',
      `IF(${isNumber('[return_wb]')},${fahrenheit('[return_wb]')},"")`,
    ),
    working(
      'split_row',
      'Row of the split table',
      `IF(${all(isNumber('[return_f]'), isNumber('[wet_f]'))},IF(AND([return_f]>=${String(first)},[return_f]<=${String(last)},[wet_f]>=${String(firstWetBulb)},[wet_f]<=${String(lastWetBulb)},[wet_f]<=[return_f]),MIN(${String(rows.length - 1)},INT([return_f])-${String(first - 1)}),"outside"),"")`,
    ),
    working(
      'split_share',
      'Between its rows',
      `IF(${isNumber('[split_row]')},[return_f]-${String(first - 1)}-[split_row],"")`,
    ),
    working('split_low', 'Target on the lower row', along('[split_row]')),
    working('split_high', 'Target on the upper row', along('[split_row]+1')),
  ];
}

/** Bilinear between the points of the makers' table, in degrees Fahrenheit; a dash beside the point forbids a target. */
function targetLines(fahrenheit: (cell: string) => string, units: SheetUnits): readonly WorkingLine[] {
  const scale = (
    cell: string,
    { lowest, step }: { readonly lowest: number; readonly step: number },
  ): string => `(${cell}-${String(lowest)})/${String(step)}`;
  const inside = [
    `[outdoor_f]>=${String(outdoorScale.lowest)}`,
    `[outdoor_f]<=${String(outdoorScale.highest)}`,
    `[wet_f]>=${String(wetBulbScale.lowest)}`,
    `[wet_f]<=${String(wetBulbScale.highest)}`,
  ];
  const point = (row: string, column: string): string => `INDEX(§targets,${row},${column})`;
  const along = (row: string): string => {
    const left = point(row, '[target_column]');
    const right = point(row, '[target_column]+1');
    const between = `IF(AND(ISNUMBER(${left}),ISNUMBER(${right})),${left}*(1-[target_across])+${right}*[target_across],"none")`;
    return `IF([target_across]=0,IF(ISNUMBER(${left}),${left},"none"),${between})`;
  };
  const perDegree = units.system === 'US' ? '' : '/1.8';
  return [
    working(
      'outdoor_f',
      'Outdoor dry bulb, degF',
      `IF(${isNumber('[outdoor_db]')},${fahrenheit('[outdoor_db]')},"")`,
    ),
    working(
      'target_row',
      'Row of the superheat table',
      `IF(${all(isNumber('[outdoor_f]'), isNumber('[wet_f]'))},IF(AND(${inside.join(',')}),INT(${scale('[outdoor_f]', outdoorScale)})+1,"outside"),"")`,
    ),
    working(
      'target_down',
      'Between its rows',
      `IF(${isNumber('[target_row]')},${scale('[outdoor_f]', outdoorScale)}+1-[target_row],"")`,
    ),
    working(
      'target_column',
      'Column of the superheat table',
      `IF(${isNumber('[target_row]')},INT(${scale('[wet_f]', wetBulbScale)})+1,"")`,
    ),
    working(
      'target_across',
      'Between its columns',
      `IF(${isNumber('[target_row]')},${scale('[wet_f]', wetBulbScale)}+1-[target_column],"")`,
    ),
    working(
      'target_upper',
      'Target on the upper row',
      `IF(${isNumber('[target_row]')},${along('[target_row]')},"")`,
    ),
    working(
      'target_lower',
      'Target on the lower row',
      `IF(${isNumber('[target_row]')},IF([target_down]=0,"none",${along('([target_row]+1)')}),"")`,
    ),
    working(
      'target_found',
      'Target of the table',
      `IF(${isNumber('[target_upper]')},IF([target_down]=0,[target_upper]${perDegree},IF(${isNumber('[target_lower]')},([target_upper]*(1-[target_down])+[target_lower]*[target_down])${perDegree},"none")),"none")`,
    ),
  ];
}
