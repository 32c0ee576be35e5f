import type { RuleKey } from '../answer/reduced-rules.ts';
import type { VisitPageLine, WorkingLine } from '../lines/line.ts';
import type { SheetUnits } from '../sheet-units.ts';
import { any, firstOf, isNumber, not, oneOf, quoted } from './words.ts';

const airParts = ['filter', 'evap_coil', 'cond_coil', 'vents', 'fan'] as const;

/** What the case itself says behind the word: which part is dirty, what was not looked at, how the ounces add up. */
export function detailLines(units: SheetUnits, lines: readonly VisitPageLine[]): readonly WorkingLine[] {
  const labelOf = (key: string): string => lines.find((line) => line.key === key)?.label ?? key;
  const named = (key: string, when: string): string => `IF(${when},${quoted(`${labelOf(key)}, `)},"")`;
  const dirty = airParts
    .map(
      (part) =>
        `IF(${oneOf(`[${part}]`, ['dirty', 'blocked'])},${quoted(`${labelOf(part)} `)}&[${part}]&", ","")`,
    )
    .join('&');
  const unseen = [
    named('volts_run', not(isNumber('[volts_run]'))),
    named('rated_volts', '§rated_low=0'),
    named('frost', oneOf('[frost]', ['', 'not seen'])),
    ...airParts.map((part) => named(part, oneOf(`[${part}]`, ['', 'not seen']))),
    named('outdoor_db', not(isNumber('[outdoor_db]'))),
    named('minutes_since_change', not(isNumber('[minutes_since_change]'))),
  ].join('&');
  const incomplete = [
    named('standing_off', not(isNumber('[standing_off]'))),
    named('outdoor_db', not(isNumber('[outdoor_db]'))),
    named('refrigerant', '§gas_row=0'),
  ].join('&');
  const mass = units.unit('mass');
  const figure = (value: string): string => `FIXED(${value},${String(mass.decimals)})`;
  const masses = [
    `IF(AND([s_basis]="residual weighed",${isNumber('[s_found]')},[s_emptied]=0),"found "&${figure('SUM([s_found])')}&", ","")`,
    `"added "&${figure('[s_added]')}`,
    `IF([s_recovered]>0,", recovered "&${figure('[s_recovered]')},"")`,
    `IF(${isNumber('{nameplate}')},", nameplate "&${figure('SUM({nameplate})')},"")`,
    quoted(` ${mass.symbol}`),
  ].join('&');
  const wanted = 'IF([permitted]<>[rule],"without that: "&INDEX(§rule_words,MATCH([rule],§rule_keys,0)),"")';
  const cases: readonly (readonly [readonly RuleKey[], string])[] = [
    [['dirt'], dirty],
    [['not looked at'], unseen],
    [['standing pressure incomplete'], incomplete],
    [['impossible reading', 'impossible record', 'functions: typed'], '§first_flagged'],
    [['above the nameplate', 'at the nameplate', 'weigh in', 'add a step', 'finer scale'], masses],
    [
      [
        'untrained',
        'certificate',
        'no certificate',
        'warranty',
        'customer declines',
        'ask the customer',
        'which gas',
      ],
      wanted,
    ],
    [['frost'], '"frost: "&[frost]'],
    [['supply out of band', 'weak supply'], '"volts: "&[supply_check]'],
    [['vacuum not reached', 'vacuum leaks'], '"vacuum: "&[vacuum_check]'],
  ];
  return [
    {
      kind: 'working',
      key: 'case_says',
      label: 'What the case says, as it is put together',
      formula: `IF([used]=0,"",IFERROR(${firstOf(
        cases.map(
          ([keys, text]) => [any(...keys.map((key) => `[answer_key]=${quoted(key)}`)), text] as const,
        ),
        '[answer_key]',
      )},""))`,
    },
    {
      kind: 'working',
      key: 'detail',
      label: 'What the case says',
      formula: 'IF(RIGHT([case_says],2)=", ",LEFT([case_says],LEN([case_says])-2),[case_says])',
    },
    {
      kind: 'working',
      key: 'asks',
      label: 'Go, care or stop',
      formula: 'IF([used]=0,"",INDEX(§rule_asks,MATCH([answer_key],§rule_keys,0)))',
    },
    {
      kind: 'working',
      key: 'shown_word',
      label: 'Do next',
      formula: 'IF([used]=0,"",IFERROR([word],INDEX(§rule_words,MATCH([answer_key],§rule_keys,0))))',
    },
  ];
}
