import type { Field } from '../../../src/records/index.ts';
import { limitsIn } from '../../../src/records/index.ts';
import { judgedElsewhere, readingGroups } from '../../../src/records/visit-facts.ts';
import type { OnceLine, SetLine } from '../lines/line.ts';
import type { SheetUnits } from '../sheet-units.ts';
import { plain } from '../sheet-units.ts';
import { firstOf, oneOf } from './words.ts';

/** What a check of a typed cell says, by whom it is judged: the last by a rule with words of its own. Nothing for a blank one, zero for one that is fine. */
export const outOfLimits = { reading: 1, record: 3, visit: 4, elsewhere: 5 } as const;
/** A text in place of a number, a word outside its list, a figure beyond all sense: what it means only the functions may know. */
export const unreadable = 2;

/** Conversion crumbs make no outlier. */
const crumb = '0.0000001';

/** Ounces, pounds, counts without an upper limit: more than this is a slip of the finger. */
export const absurd = 1_000_000;

/** Days that a visit can have, as sheets count them: of the years 2000 to 2099. */
const firstDay = 36_526;
const lastDay = 73_050;

/** The check of one typed cell. `cell` is how the formula names it. */
export function typedCheck(line: OnceLine | SetLine, cell: string, units: SheetUnits): string {
  return `IFERROR(IF(${cell}="","",${checkOf(line, cell, units)}),${String(unreadable)})`;
}

const bad = String(unreadable);

function checkOf(line: OnceLine | SetLine, cell: string, units: SheetUnits): string {
  const { field, choices } = line;
  if (line.key === 'rated_volts') return `IF(§rated_low>0,0,${bad})`;
  if (field?.numbered !== undefined) {
    const leads = field.numbered.map((word) => `LEFT(${cell},${String(word.length + 1)})="${word} "`);
    return `IF(OR(${[oneOf(cell, choices ?? []), ...leads].join(',')}),0,${bad})`;
  }
  if (choices !== undefined) return `IF(${oneOf(cell, choices)},0,${bad})`;
  switch (field?.kind) {
    case 'refrigerant':
      return `IF(SUMPRODUCT((§gases=${cell})*1)>0,0,${bad})`;
    case 'text':
    case 'link':
      return '0';
    case 'date':
    case 'dateTime':
      return `IF(ISNUMBER(${cell}),IF(AND(${cell}>=${String(firstDay)},${cell}<=${String(lastDay)}),0,${bad}),${bad})`;
    default:
      return `IF(ISNUMBER(${cell}),${numberCheck(line, cell, units)},${bad})`;
  }
}

function numberCheck(line: OnceLine | SetLine, cell: string, units: SheetUnits): string {
  const { field, limits } = line;
  if (field === undefined) {
    const [low, high] = limits ?? [-absurd, absurd];
    return `IF(OR(${cell}<${plain(low)},${cell}>${plain(high)}),${bad},0)`;
  }
  const cases: (readonly [string, string])[] = [[`ABS(${cell})>${String(absurd)}`, bad]];
  // There is nothing below a vacuum.
  if (field.quantity === 'vacuum') cases.push([`${cell}<0`, bad]);
  if (field.integer === true) cases.push([`${cell}<>INT(${cell})`, bad], [`${cell}<0`, bad]);
  const { quantity } = field;
  const isGauge = quantity === 'pressure' && line.kind === 'set';
  const value = isGauge ? `(${cell}+§gauge_zero-§atmosphere)` : cell;
  if (isGauge) cases.push([`${cell}+§gauge_zero<=0`, bad]);
  const { minimum, maximum } =
    quantity === undefined
      ? { minimum: undefined, maximum: undefined }
      : limitsIn(field, 'reject', units.unit(quantity));
  const code = String(codeOf(line, field));
  const beyond = [
    // The least wait for a standing pressure is no limit of the cell: less of it is told as a wait.
    ...(minimum === undefined || line.key === 'standing_off'
      ? []
      : [`${value}<${plain(tidy(minimum))}-${crumb}`]),
    ...(maximum === undefined ? [] : [`${value}>${plain(tidy(maximum))}+${crumb}`]),
  ];
  if (quantity === 'minutes') beyond.push(`${cell}<0`);
  if (beyond.length > 0)
    cases.push([beyond.length === 1 ? (beyond[0] ?? '') : `OR(${beyond.join(',')})`, code]);
  return firstOf(cases, '0');
}

const tidy = (value: number): number => Number(value.toPrecision(12));

/** As the answer hears a finding: a reading to take again, a record to put right, or nothing that it judges. */
function codeOf(line: OnceLine | SetLine, field: Field): number {
  if (!line.tables.includes('log')) return unreadable;
  if (judgedElsewhere.has(field.name)) return outOfLimits.elsewhere;
  if (field.group === 'Visit') return outOfLimits.visit;
  return readingGroups.has(field.group) ? outOfLimits.reading : outOfLimits.record;
}
