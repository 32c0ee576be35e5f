/** Which of two numbers is the month where a date has no name of a month and no year in front. */
export type DateOrder = 'month first' | 'day first';

export const dateOrders: readonly DateOrder[] = ['month first', 'day first'];

/** A date as somebody wrote it. */
export type WrittenDate =
  | { readonly kind: 'sure'; readonly moment: number }
  /** Days since 1970-01-01 by either order; undefined where that order makes no date. */
  | {
      readonly kind: 'order';
      readonly mark: string;
      readonly by: Readonly<Record<DateOrder, number | undefined>>;
    };

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const millisecondsPerDay = 86_400_000;
const longest = 60;

/** "5/4/2026 9:30", "13.04.25", "Apr 5, 2026 2:15 pm", "2026-04-05T09:30"; undefined for what is no date. */
export function readWrittenDate(text: string): WrittenDate | undefined {
  if (text.length > longest) return undefined;
  const { day: words, time } = withoutTime(text.trim());
  if (time === undefined) return undefined;
  const at = (year: number, month: number, date: number): number | undefined => {
    const day = dayOf(fullYear(year), month, date);
    return day === undefined ? undefined : day + time;
  };
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(words) ?? /^(\d{4})(\d{2})(\d{2})$/.exec(words);
  if (iso) return sure(at(Number(iso[1]), Number(iso[2]), Number(iso[3])));
  const plain = /^(\d{1,2})\s*([-/.])\s*(\d{1,2})\s*\2\s*(\d{4}|\d{2})$/.exec(words);
  if (plain) {
    const [one, other, year] = [Number(plain[1]), Number(plain[3]), Number(plain[4])];
    const by = { 'month first': at(year, one, other), 'day first': at(year, other, one) };
    if (by['month first'] === undefined && by['day first'] === undefined) return undefined;
    if (one === other) return sure(by['month first']);
    return { kind: 'order', mark: plain[2] ?? '', by };
  }
  const named =
    /^(?:[a-z]{2,9}\.?,?\s+)?(\d{1,2})(?:st|nd|rd|th)?[\s.-]*([a-z]{3,9})\.?[\s,.-]*(\d{4}|\d{2})$/i.exec(
      words,
    ) ?? undefined;
  if (named) return sure(at(Number(named[3]), monthOf(named[2]), Number(named[1])));
  const monthFirst =
    /^(?:[a-z]{2,9}\.?,?\s+)?([a-z]{3,9})\.?[\s-]*(\d{1,2})(?:st|nd|rd|th)?[\s,.-]+(\d{4}|\d{2})$/i.exec(
      words,
    );
  if (monthFirst) return sure(at(Number(monthFirst[3]), monthOf(monthFirst[1]), Number(monthFirst[2])));
  return undefined;
}

function sure(moment: number | undefined): WrittenDate | undefined {
  return moment === undefined ? undefined : { kind: 'sure', moment };
}

function monthOf(name = ''): number {
  return months.indexOf(name.slice(0, 3).toLowerCase()) + 1;
}

/** Two figures are of this century: these logs are of small units of our days. */
function fullYear(year: number): number {
  return year < 100 ? 2000 + year : year;
}

function dayOf(year: number, month: number, date: number): number | undefined {
  const milliseconds = Date.UTC(year, month - 1, date);
  const back = new Date(milliseconds);
  const isReal = back.getUTCMonth() === month - 1 && back.getUTCDate() === date;
  return isReal && year >= 1955 && year < 2150 ? milliseconds / millisecondsPerDay : undefined;
}

/** The time of day behind a date, as a share of it; 0 without one, undefined for what is no time of day. */
function withoutTime(text: string): { readonly day: string; readonly time: number | undefined } {
  const match =
    /^(.*?)[T\s,]+(?:at\s+)?(\d{1,2})(?:[:.h](\d{2}))?(?:[:.](\d{2})(?:[.,]\d+)?)?\s*(?:([ap])\.?\s?m?\.?)?\s*(?:Z|[+-]\d{2}:?\d{2})?$/i.exec(
      text,
    );
  const [, day = '', hours, minutes, seconds, half] = match ?? [];
  // "Apr 5, 26" ends with a year; an hour alone needs its am or pm.
  if (
    match === null ||
    day.trim() === '' ||
    !/\d/.test(day) ||
    (minutes === undefined && half === undefined)
  ) {
    return { day: text, time: 0 };
  }
  if (!/^(?:\d{4}[-/.]|\d{1,2}[-/.\s])|[a-z]/i.test(day)) return { day: text, time: 0 };
  return { day: day.trim().replace(/,$/, ''), time: shareOfDay(Number(hours), minutes, seconds, half) };
}

function shareOfDay(
  hours: number,
  minutes = '0',
  seconds = '0',
  half: string | undefined,
): number | undefined {
  const isRight = half === undefined ? hours < 24 : hours >= 1 && hours <= 12;
  if (!isRight || Number(minutes) > 59 || Number(seconds) > 59) return undefined;
  const hour = half === undefined ? hours : (hours % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  return (hour * 3600 + Number(minutes) * 60 + Number(seconds)) / 86_400;
}

/** What a column says about the order of its own dates, by the mark between the numbers. */
export interface ColumnOrders {
  /** Settled by dates that only one order makes. */
  readonly settled: ReadonlyMap<string, DateOrder>;
  /** Marks whose dates all make sense both ways, or contradict each other, with the first date so written. */
  readonly open: ReadonlyMap<string, string>;
}

/** With points between, the day stands first: no country writes the month first with points (ISO and CLDR practice). */
const byHabit: Readonly<Record<string, DateOrder>> = { '.': 'day first' };

/** Decides from the column itself: one date that only one order makes settles it, two that contradict leave it open. */
export function ordersOf(column: readonly string[]): ColumnOrders {
  const votes = new Map<string, { readonly for: Set<DateOrder>; readonly first: string }>();
  for (const text of column) {
    const date = readWrittenDate(text);
    if (date?.kind !== 'order') continue;
    const vote = votes.get(date.mark) ?? { for: new Set<DateOrder>(), first: text.trim() };
    votes.set(date.mark, vote);
    const possible = dateOrders.filter((order) => date.by[order] !== undefined);
    if (possible.length === 1) for (const order of possible) vote.for.add(order);
  }
  const settled = new Map<string, DateOrder>();
  const open = new Map<string, string>();
  for (const [mark, vote] of votes) {
    const [only] = vote.for;
    const order = vote.for.size === 0 ? byHabit[mark] : vote.for.size === 1 ? only : undefined;
    if (order === undefined) open.set(mark, vote.first);
    else settled.set(mark, order);
  }
  return { settled, open };
}

/** The moment of a date in days since 1970-01-01; undefined while its order is not known. */
export function momentOf(date: WrittenDate, orders: ReadonlyMap<string, DateOrder>): number | undefined {
  if (date.kind === 'sure') return date.moment;
  const possible = dateOrders.filter((order) => date.by[order] !== undefined);
  // In a column of two hands, a date that only one order makes is what it is.
  const order = possible.length === 1 ? possible[0] : orders.get(date.mark);
  return order === undefined ? undefined : date.by[order];
}
