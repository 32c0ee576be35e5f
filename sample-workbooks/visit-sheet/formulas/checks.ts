import { refusedWord, withinDoubtWord } from '../../../src/verdict-words.ts';
import { readyWord } from '../../../src/visit/readiness.ts';
import {
  emptyWord,
  matchesWord,
  mismatchWord,
  nonCondensablesWord,
} from '../../../src/visit/standing-check.ts';
import type { ComputedLine } from '../lines/line.ts';
import type { SheetUnits } from '../sheet-units.ts';
import { none } from './figures.ts';
import { limitsOf } from './limits.ts';
import { all, any, firstOf, isNumber, not, oneOf, quoted } from './words.ts';

/** A level typed in another unit is the same level. */
const slack = '0.000000001';

/** Parts that can stop air, as the record names them. */
const airParts = ['filter', 'evap_coil', 'cond_coil', 'vents', 'fan'] as const;

const verdict = (key: string, label: string, formula: string): ComputedLine => ({
  kind: 'computed',
  key,
  label,
  isVerdict: true,
  formula,
});

/** The gates and the checks that stand under no reading. */
export function checkLines(units: SheetUnits): readonly ComputedLine[] {
  const limit = limitsOf(units);
  const off = '[compressor_state]="off"';
  const gate = (
    key: string,
    label: string,
    cases: readonly (readonly [string, string])[],
    open: string,
  ): ComputedLine =>
    verdict(
      key,
      label,
      firstOf(
        [[any('[used]=0', off), '""'], ...cases.map(([when, word]) => [when, quoted(word)] as const)],
        quoted(open),
      ),
    );
  const volts = isNumber('[volts_run]');
  const rated = '§rated_low>0';
  const outOfBand = any(
    `[volts_run]<${limit.lowVolts}*§rated_low-0.000000001`,
    `[volts_run]>${limit.highVolts}*§rated_high+0.000000001`,
  );
  const gates = ['gate_supply', 'gate_frost', 'gate_dirt', 'gate_outdoor', 'gate_settled'].map(
    (key) => `[${key}]`,
  );
  const any5 = (word: string): string => oneOfCells(gates, word);
  return [
    gate(
      'gate_supply',
      'Supply',
      [
        [not(all(volts, rated)), 'not seen'],
        [outOfBand, 'stop'],
      ],
      'ok',
    ),
    gate(
      'gate_frost',
      'Ice',
      [
        [oneOf('[frost]', ['inlet only', 'part', 'full']), 'stop'],
        ['[frost]<>"none"', 'not seen'],
      ],
      'ok',
    ),
    gate(
      'gate_dirt',
      'Air path',
      [
        [any(...airParts.map((part) => oneOf(`[${part}]`, ['dirty', 'blocked']))), 'stop'],
        [any(...airParts.map((part) => `[${part}]<>"clean"`)), 'not seen'],
      ],
      'ok',
    ),
    gate(
      'gate_outdoor',
      'Weather',
      [
        [not(isNumber('[outdoor_db]')), 'not seen'],
        [`[outdoor_db]<${limit.outdoor}-0.000000001`, 'stop'],
        [`[outdoor_db]>${limit.highestOutdoor}+0.000000001`, 'stop'],
      ],
      'ok',
    ),
    gate(
      'gate_settled',
      'Settled',
      [
        [not(isNumber('[minutes_since_change]')), 'not seen'],
        [`[minutes_since_change]<${limit.settling}`, 'wait'],
      ],
      'ok',
    ),
    verdict(
      'ready',
      'Ready',
      firstOf(
        [
          [any('[used]=0', off), '""'],
          ['[gate_supply]="stop"', '"Fix supply"'],
          ['[gate_frost]="stop"', '"Thaw first"'],
          ['[gate_dirt]="stop"', '"Clean first"'],
          [`AND([gate_outdoor]="stop",[outdoor_db]>${limit.outdoor})`, '"Hot outdoors"'],
          ['[gate_outdoor]="stop"', '"Cold outdoors"'],
          [any5('not seen'), '"Look first"'],
          ['[gate_settled]="wait"', '"Wait"'],
        ],
        quoted(readyWord),
      ),
    ),
    verdict(
      'supply_check',
      'Supply check',
      firstOf(
        [
          [not(all(volts, rated)), '""'],
          [`[volts_run]<${limit.lowVolts}*§rated_low-0.000000001`, '"Low"'],
          [`[volts_run]>${limit.highVolts}*§rated_high+0.000000001`, '"High"'],
          [
            `IF(${isNumber('[volts_leg2]')},ABS([volts_run]-[volts_leg2])/([volts_run]+[volts_leg2])>${limit.unbalance}+0.000000000001,FALSE)`,
            '"Unbalanced"',
          ],
          [
            `IF(${isNumber('[volts_idle]')},IF([volts_idle]>0,([volts_idle]-[volts_run])/[volts_idle]>${limit.drop}+0.000000000001,FALSE),FALSE)`,
            '"Drop"',
          ],
        ],
        '"In band"',
      ),
    ),
    verdict(
      'standing_check',
      'Standing check',
      firstOf(
        [
          [
            any(not(off), not(isNumber('[standing_pressure]')), not(isNumber('[outdoor_db]')), '§gas_row=0'),
            '""',
          ],
          [not(isNumber('[standing_off]')), quoted(refusedWord)],
          [`[standing_off]<${limit.off}-0.000000001`, quoted(refusedWord)],
          [not(isNumber('[p_sat]')), none],
          [
            all(
              `ABS([p_excess])-[p_doubt]<=${limit.identity}*[p_sat]`,
              any(`[p_parts]>${limit.identity}*[p_sat]`, `[p_doubt]>2*${limit.identity}*[p_sat]`),
            ),
            quoted(refusedWord),
          ],
          [
            any(
              `ABS([p_excess])<=MIN([p_doubt],${limit.identity}*[p_sat])`,
              `ABS([p_excess])+[p_doubt]<=${limit.identity}*[p_sat]`,
            ),
            quoted(matchesWord),
          ],
          [`ABS([p_excess])-[p_doubt]<=${limit.identity}*[p_sat]`, quoted(withinDoubtWord)],
          ['[p_excess]>0', quoted(nonCondensablesWord)],
          ['[standing_pressure]<=§atmosphere+[standing_gauge]', quoted(emptyWord)],
        ],
        quoted(mismatchWord),
      ),
    ),
    verdict(
      'discharge_check',
      'Discharge check',
      firstOf(
        [
          [any(off, not(isNumber('[discharge_line]'))), '""'],
          [`ABS([discharge_line]-${limit.discharge})<§pipe_doubt`, quoted(withinDoubtWord)],
          [`[discharge_line]>${limit.discharge}`, '"Too hot"'],
        ],
        '"Normal"',
      ),
    ),
    verdict(
      'capacitor_check',
      'Capacitor',
      firstOf(
        [
          [not(all(isNumber('[cap_measured]'), isNumber('[cap_label]'))), '""'],
          [`[cap_measured]<[cap_label]*(1-${limit.capacitor})-0.000001`, '"Weak"'],
          [`[cap_measured]>[cap_label]*(1+${limit.capacitor})+0.000001`, '"High"'],
        ],
        '"Good"',
      ),
    ),
    verdict(
      'test_check',
      'Pressure test',
      firstOf(
        [
          [
            not(
              all(
                ...['[test_1]', '[test_2]', '[test_start_temperature]', '[test_end_temperature]'].map(
                  isNumber,
                ),
              ),
            ),
            '""',
          ],
          [
            `IF(${isNumber('§low_side')},MAX([test_1],[test_2])>§low_side+${limit.pascal},FALSE)`,
            quoted(refusedWord),
          ],
          ['[test_change]<-[test_doubt]', '"Leak"'],
          ['[test_change]>[test_doubt]', '"Read again"'],
        ],
        '"Holds"',
      ),
    ),
    verdict(
      'vacuum_check',
      'Vacuum',
      firstOf(
        [
          [not(any(isNumber('[vacuum_start]'), isNumber('[vacuum_end]'))), '""'],
          [not(all(...['[vacuum_start]', '[vacuum_end]', '[vacuum_minutes]'].map(isNumber))), '"Incomplete"'],
          ['[vacuum_far_end]<>"yes"', quoted(refusedWord)],
          ['[vacuum_end]<[vacuum_start]', quoted(refusedWord)],
          [`[vacuum_start]>${limit.vacuum}*(1+${slack})`, '"Keep pumping"'],
          [`[vacuum_minutes]<${limit.decayWait}`, '"Wait"'],
          [
            all(
              `[vacuum_end]<=${limit.decay}*(1+${slack})`,
              `[vacuum_end]-[vacuum_start]>=${limit.rise}-${slack}`,
            ),
            '"Wait"',
          ],
          [all(`[vacuum_end]<=${limit.decay}*(1+${slack})`, `[vacuum_end]>${limit.surelyDry}`), '"Wait"'],
          [`[vacuum_end]<=${limit.decay}*(1+${slack})`, '"Dry and tight"'],
          [`[vacuum_end]>${limit.plateau}`, '"Leak"'],
        ],
        '"Moisture or leak"',
      ),
    ),
  ];
}

function oneOfCells(cells: readonly string[], word: string): string {
  return any(...cells.map((cell) => `${cell}=${quoted(word)}`));
}
