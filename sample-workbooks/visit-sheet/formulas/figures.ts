import { refusedWord } from '../../../src/verdict-words.ts';
import { readyWord } from '../../../src/visit/readiness.ts';
import type { ComputedLine } from '../lines/line.ts';
import type { SheetUnits } from '../sheet-units.ts';
import { limitsOf } from './limits.ts';
import { all, any, firstOf, isNumber, not, placed, quoted } from './words.ts';

/** What stands where there is none to be had. */
export const none = '"–"';

const notReady = `[ready]<>${quoted(readyWord)}`;

/** Readings of a unit that is not switched off. */
const on = '[compressor_state]<>"off"';

/**
 * The figures of the layout, by the headings under which the visit log has them: each as READYCHECK, SATTEMP, SUPERHEAT,
 * TARGETSUPERHEAT, TARGETSPLIT and the checks work it out; a test holds them together.
 */
export function figureLines(units: SheetUnits): ReadonlyMap<string, ComputedLine> {
  const limit = limitsOf(units);
  const degrees = units.unit('temperature').symbol;
  const steps = units.unit('temperatureDifference').symbol;
  const mass = units.unit('mass').symbol;
  const massDecimals = units.unit('mass').decimals;
  const lines: readonly ComputedLine[] = [
    {
      kind: 'computed',
      key: 'saturation',
      label: 'Suction saturation',
      unit: degrees,
      decimals: 1,
      formula: `IF(${on},[dew],"")`,
    },
    {
      kind: 'computed',
      key: 'expected_coil',
      label: 'Expected coil',
      unit: degrees,
      decimals: 1,
      formula: `IF(${all(on, isNumber('[return_db]'))},[return_db]-${limit.coil}+IF(${isNumber('[outdoor_db]')},([outdoor_db]-(${limit.weather.middle}))*${limit.weather.slope},0),"")`,
    },
    {
      kind: 'computed',
      key: 'coil_check',
      label: 'Coil check',
      isVerdict: true,
      formula: firstOf(
        [
          [
            any(
              '[compressor_state]<>"running"',
              not(isNumber('[suction_pressure]')),
              not(isNumber('[return_db]')),
            ),
            '""',
          ],
          [notReady, quoted(refusedWord)],
          [not(all(isNumber('[dew]'), isNumber('[bubble]'))), none],
          [`[inlet]<${limit.freezing}-[dew_doubt]`, '"Too cold"'],
          [`[return_db]>${limit.highestReturn}+0.000000001`, quoted(refusedWord)],
        ],
        placed(
          { value: '(([bubble]+[dew])/2-[expected_coil])', doubt: '[dew_doubt]' },
          { low: `-${limit.coilBand}`, high: limit.coilBand },
          ['Low', 'In range', 'High'],
        ),
      ),
    },
    {
      kind: 'computed',
      key: 'superheat',
      label: 'Superheat',
      unit: steps,
      decimals: 1,
      formula: `IF(${all(on, isNumber('[dew]'), isNumber('[suction_line]'))},[suction_line]-[dew],"")`,
    },
    {
      kind: 'computed',
      key: 'target_superheat',
      label: 'Target superheat',
      unit: steps,
      decimals: 1,
      formula: firstOf(
        [
          [any(not(on), not(isNumber('[return_wb]')), not(isNumber('[outdoor_db]'))), '""'],
          [any('{metering}="valve"', '{metering}=""'), none],
          [`[outdoor_db]<${limit.outdoor}-0.000000001`, none],
          [isNumber('[target_found]'), '[target_found]'],
        ],
        none,
      ),
    },
    {
      kind: 'computed',
      key: 'superheat_check',
      label: 'Superheat check',
      isVerdict: true,
      formula: firstOf(
        [
          [
            any(
              '[compressor_state]<>"running"',
              not(isNumber('[suction_pressure]')),
              not(isNumber('[suction_line]')),
            ),
            '""',
          ],
          [notReady, quoted(refusedWord)],
          ['[split_check]="High"', quoted(refusedWord)],
          [not(isNumber('[superheat]')), none],
          ['[superheat]<0', '"Floodback or probe"'],
          [
            '{metering}="valve"',
            placed(
              { value: '[superheat]', doubt: '[superheat_doubt]' },
              { low: limit.valveLow, high: limit.valveHigh },
              ['Low', 'On target', 'High'],
            ),
          ],
          [not(isNumber('[target_superheat]')), quoted(refusedWord)],
        ],
        placed(
          { value: '([superheat]-[target_superheat])', doubt: '[superheat_doubt]' },
          { low: `-${limit.superheat}`, high: limit.superheat },
          ['Low', 'On target', 'High'],
        ),
      ),
    },
    {
      kind: 'computed',
      key: 'subcooling',
      label: 'Subcooling',
      unit: steps,
      decimals: 1,
      formula: `IF(${all(on, isNumber('[condensing]'), isNumber('[liquid_line]'))},[condensing]-[liquid_line],"")`,
    },
    {
      kind: 'computed',
      key: 'split',
      label: 'Split',
      unit: steps,
      decimals: 1,
      formula: `IF(${all(on, isNumber('[return_db]'), isNumber('[supply_db]'))},[return_db]-[supply_db],"")`,
    },
    {
      kind: 'computed',
      key: 'target_split',
      label: 'Target split',
      unit: steps,
      decimals: 1,
      formula: firstOf(
        [
          [any(not(on), not(isNumber('[return_db]')), not(isNumber('[return_wb]'))), '""'],
          [not(isNumber('[split_row]')), none],
          [all(isNumber('[split_low]'), '[split_share]=0'), '[split_low]'],
          [all(isNumber('[split_high]'), '[split_share]=1'), '[split_high]'],
          [
            all(isNumber('[split_low]'), isNumber('[split_high]')),
            '[split_low]+[split_share]*([split_high]-[split_low])',
          ],
        ],
        none,
      ),
    },
    {
      kind: 'computed',
      key: 'split_check',
      label: 'Split check',
      isVerdict: true,
      formula: firstOf(
        [
          [any('[compressor_state]<>"running"', not(isNumber('[split]'))), '""'],
          [any(notReady, '[split]<=0'), quoted(refusedWord)],
          [all(isNumber('[return_wb]'), '[return_wb]>[return_db]+0.000000001'), quoted(refusedWord)],
          [
            isNumber('[target_split]'),
            placed(
              { value: '([split]-[target_split])', doubt: '(§air_doubt*SQRT(2))' },
              { low: `-${limit.split}`, high: limit.split },
              ['Low', 'Normal', 'High'],
            ),
          ],
        ],
        placed(
          { value: '[split]', doubt: '(§air_doubt*SQRT(2))' },
          { low: limit.splitLow, high: limit.splitHigh },
          ['Low', 'Normal', 'High'],
        ),
      ),
    },
    {
      kind: 'computed',
      key: 'added_so_far',
      label: 'Added so far',
      unit: mass,
      decimals: massDecimals,
      formula: 'IF([used]=1,[s_added_visit],"")',
    },
    {
      kind: 'computed',
      key: 'room',
      label: 'Room',
      unit: mass,
      decimals: massDecimals,
      formula: `IF([used]=1,IF(${isNumber('[room_left]')},[room_left],"unknown"),"")`,
    },
  ];
  return new Map(lines.map((line) => [line.label, line]));
}
