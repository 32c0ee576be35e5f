import { compressorStates, unitStatuses } from '../../../src/records/tables/words.ts';
import type { WorkingLine } from '../lines/line.ts';
import type { SheetUnits } from '../sheet-units.ts';
import { clearlyLow, ounces } from './clear-case.ts';
import { contradictions, rowContradictions } from './contradictions.ts';
import { limitsOf } from './limits.ts';
import type { RuleKey } from '../answer/reduced-rules.ts';
import { all, any, firstOf, isNumber, not, oneOf, quoted } from './words.ts';

type Case = readonly [when: string, key: RuleKey];

const decided = (cases: readonly Case[], otherwise = '""'): string =>
  firstOf(
    cases.map(([when, key]) => [when, quoted(key)] as const),
    otherwise,
  );

const off = '[compressor_state]="off"';
const on = '[compressor_state]<>"off"';

/**
 * The order of precedence of `src/visit/answer/answer.ts`, as far as plain formulas can follow it. Each case names a rule of
 * the table of reduced answers; where only the functions can tell it names why.
 */
export function ruleLines(units: SheetUnits): readonly WorkingLine[] {
  return [
    ...rowContradictions(units),
    ...contradictions(units),
    ...clearlyLow(units),
    working('rule_1', 'Harm, records, gas, mass', decided(first(units))),
    working('rule_2', 'Opened circuit, compressor off', decided(second(units))),
    working('rule_3', 'Gates, leak, contradictions', decided(third(), quoted('functions: cause'))),
    working('rule', 'What decided', 'IF([rule_1]<>"",[rule_1],IF([rule_2]<>"",[rule_2],[rule_3]))'),
    working('touches', 'Opens the circuit or moves gas', 'INDEX(§rule_touches,MATCH([rule],§rule_keys,0))'),
    working('permitted', 'After permission', permission()),
    working('word', 'Word', word(units)),
    {
      kind: 'working',
      key: 'answer_key',
      label: 'Rule of the answer',
      formula: 'IF([used]=0,"",IFERROR([permitted],"functions: typed"))',
    },
    {
      kind: 'working',
      key: 'action',
      label: 'Action',
      formula: 'IF([used]=0,"",INDEX(§rule_actions,MATCH([answer_key],§rule_keys,0)))',
    },
  ];
}

function working(key: string, label: string, formula: string): WorkingLine {
  return { kind: 'working', key, label, formula: `IF([used]=0,"",${formula})` };
}

/** What harms now, what was done without permission, records and readings that cannot be right, what is inside, its mass. */
function first(units: SheetUnits): readonly Case[] {
  const limit = limitsOf(units);
  return [
    [`IF(${all(on, isNumber('[suction]'))},[suction]<§atmosphere-${limit.zero},FALSE)`, 'runs in a vacuum'],
    [
      `IF(${all(isNumber('[test_1]'), isNumber('§low_side'))},[test_1]>§low_side+${limit.pascal},FALSE)`,
      'test beyond the nameplate',
    ],
    ['[unread_so_far]+§unread_once>0', 'functions: typed'],
    ['[late]=1', 'functions: order'],
    [all('SUM([tap_added])>0', '§flammable=1'), 'tap on a flammable unit'],
    [any('SUM([tap_added])>1', all('SUM([tap_added])>0', 'SUM({taps_fitted})+[<s_taps]>0')), 'second tap'],
    [all('§untrained=1', '[accesses]=1'), 'gauges without training'],
    [
      oneOf(
        '{status}',
        unitStatuses.filter((status) => status !== 'in use'),
      ),
      'unit out of use',
    ],
    ['§out_visit>0', 'impossible record'],
    ['[out_reading]>0', 'impossible reading'],
    ['[out_record]+§out_record_once>0', 'impossible record'],
    ['[row_reading]=1', 'impossible reading'],
    ['[row_record]=1', 'impossible record'],
    [all('[gas_added]<>""', '{refrigerant}<>""', '[gas_added]<>{refrigerant}'), 'wrong gas'],
    ['[s_standing]="Empty"', 'empty'],
    [oneOf('[s_standing]', ['Non-condensables', 'Mismatch']), 'other gas inside'],
    [
      `IF(${isNumber('{nameplate}')},[least]-{nameplate}>MAX(§scale_step,${limit.scaleStep})+${limit.crumb}/1000,FALSE)`,
      'above the nameplate',
    ],
    ['[compressor_state]=""', 'compressor not written'],
  ];
}

/** An opened circuit, the nameplate reached, and sets with the compressor off. */
function second(units: SheetUnits): readonly Case[] {
  const limit = limitsOf(units);
  const pressure = isNumber('[standing_pressure]');
  return [
    ['[test_check]="Leak"', 'pressure test leaks'],
    [all('[test_check]="Holds"', '[vacuum_check]=""'), 'pressure test holds'],
    [oneOf('[test_check]', ['Read again', 'Refused']), 'pressure test unclear'],
    ['[vacuum_check]="Leak"', 'vacuum leaks'],
    ['[vacuum_check]="Incomplete"', 'vacuum not written down'],
    [all('[vacuum_check]<>""', '[vacuum_check]<>"Dry and tight"'), 'vacuum not reached'],
    ['[s_open]=1', 'not yet dry'],
    [all('[s_held]=1', '[s_leak]=1'), 'leak behind a vacuum'],
    [all('[s_held]=1', any(not(isNumber('{nameplate}')), '§gas_row=0')), 'weigh in without a label'],
    [all('[s_held]=1', '[compressor_state]="running"'), 'runs empty'],
    [`IF(${all('[s_held]=1', isNumber('[room_left]'))},[room_left]>0,FALSE)`, 'weigh in'],
    [
      all(off, pressure, any(not(isNumber('[standing_off]')), not(isNumber('[outdoor_db]')), '§gas_row=0')),
      'standing pressure incomplete',
    ],
    [all(off, pressure, not(isNumber('[p_sat]'))), 'functions: range'],
    [`IF(${all(off, pressure)},[standing_off]<${limit.off},FALSE)`, 'wait for the parts'],
    [all(off, pressure, '[s_standing]<>"Matches"'), 'standing pressure in doubt'],
    [
      `IF(${all(isNumber('[room_left]'), '[s_open]=0')},[room_left]<=2*§scale_step+${limit.crumb},FALSE)`,
      'at the nameplate',
    ],
    [all(off, not(pressure)), 'off without a pressure'],
    [off, 'standing pressure matches'],
  ];
}

/** Gates, a known leak, readings that contradict each other, the capacitor; then what only the functions can tell. */
function third(): readonly Case[] {
  return [
    ['[gate_supply]="stop"', 'supply out of band'],
    [oneOf('[supply_check]', ['Unbalanced', 'Drop']), 'weak supply'],
    ['[gate_frost]="stop"', 'frost'],
    ['[gate_dirt]="stop"', 'dirt'],
    [`[compressor_state]=${quoted(compressorStates[2])}`, 'short cycling'],
    ['[ready]="Hot outdoors"', 'functions: weather'],
    ['[gate_outdoor]="stop"', 'cold outdoors'],
    [
      any(
        ...['gate_supply', 'gate_frost', 'gate_dirt', 'gate_outdoor', 'gate_settled'].map(
          (gate) => `[${gate}]="not seen"`,
        ),
      ),
      'not looked at',
    ],
    ['[gate_settled]="wait"', 'not settled'],
    ['[s_leak]=1', 'known leak'],
    ['[contradicts]=1', 'contradiction'],
    [oneOf('[capacitor_check]', ['Weak', 'High']), 'capacitor'],
    [all('[bearing]=0', '[weighed_in]=0', '[s_standing]=""'), 'nothing measured'],
    ...ounces(),
  ];
}

/** As `withPermission`: asked of every answer that opens the circuit or moves gas. */
function permission(): string {
  return firstOf(
    [
      ['[touches]=0', '[rule]'],
      ['§gas_row=0', quoted('which gas' satisfies RuleKey)],
      ['§untrained=1', quoted('untrained' satisfies RuleKey)],
      [oneOf('{cert_type}', ['II', 'III']), quoted('certificate' satisfies RuleKey)],
      ['{cert_type}=""', quoted('no certificate' satisfies RuleKey)],
      [
        `IF(${isNumber('{warranty_end}')},IF(${isNumber('[date_time]')},INT([date_time])<={warranty_end},TRUE),FALSE)`,
        quoted('warranty' satisfies RuleKey),
      ],
      ['{customer_agrees}="no"', quoted('customer declines' satisfies RuleKey)],
      [any('SUM({taps_fitted})>0', '[s_accessed]=1', '{customer_agrees}="yes"'), '[rule]'],
    ],
    quoted('ask the customer' satisfies RuleKey),
  );
}

/** The word of the rule, with its figure where it has one. */
function word(units: SheetUnits): string {
  const limit = limitsOf(units);
  const mass = units.unit('mass');
  const minutes = units.unit('minutes');
  const told = 'INDEX(§rule_words,MATCH([permitted],§rule_keys,0))';
  const weight = (value: string): string =>
    `${told}&" "&FIXED(${value},${String(mass.decimals)})&" ${mass.symbol}"`;
  const wait = (value: string): string => `${told}&" "&FIXED(${value},0)&" ${minutes.symbol}"`;
  const cases: readonly (readonly [RuleKey, string])[] = [
    ['weigh in', weight('[room_left]')],
    ['add a step', weight('[step]')],
    ['above the nameplate', weight('[least]-{nameplate}')],
    ['wait for the parts', wait(`${limit.off}-[standing_off]`)],
    ['not settled', wait(`-INT(-(${limit.settling}-[minutes_since_change]-0.000000001))`)],
  ];
  return firstOf(
    cases.map(([key, then]) => [`[permitted]=${quoted(key)}`, then] as const),
    told,
  );
}
