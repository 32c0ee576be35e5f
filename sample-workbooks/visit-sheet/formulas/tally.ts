import type { WorkingLine } from '../lines/line.ts';
import { outOfLimits, unreadable } from './typed-checks.ts';
import { flag, isNumber } from './words.ts';

const kept = (key: string, label: string, before: number, formula: string): WorkingLine => ({
  kind: 'working',
  key,
  label,
  before,
  formula: `IF([used]=0,[<${key}],${formula})`,
});

/** What the checks of the typed cells found in each set, and whether the sets stand in the order of their times. */
export function tallyLines(): readonly WorkingLine[] {
  const count = (key: string, label: string, code: number): WorkingLine => ({
    kind: 'working',
    key,
    label,
    formula: `COUNTIF(§typed_checks,${String(code)})`,
  });
  return [
    { kind: 'working', key: 'used', label: 'Set in use', formula: flag('COUNT(§typed_checks)>0') },
    count('unread', 'Cells that cannot be read', unreadable),
    count('out_reading', 'Readings out of limits', outOfLimits.reading),
    count('out_record', 'Records out of limits', outOfLimits.record),
    count('out_elsewhere', 'Out of limits, told by a rule of its own', outOfLimits.elsewhere),
    kept('unread_so_far', 'Cells that cannot be read so far', 0, '[<unread_so_far]+[unread]'),
    kept(
      'late',
      'A set is older than one before it',
      0,
      flag(`OR([<late]=1,IF(${isNumber('[date_time]')},[date_time]<[<last_time],FALSE))`),
    ),
    kept(
      'last_time',
      'Latest time so far',
      0,
      `IF(${isNumber('[date_time]')},MAX([<last_time],[date_time]),[<last_time])`,
    ),
  ];
}
