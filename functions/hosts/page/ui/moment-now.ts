/// <reference lib="dom" />

/** Local date and time as a log takes it. */
export function momentNow(): string {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, '0');
  const day = [String(now.getFullYear()), two(now.getMonth() + 1), two(now.getDate())].join('-');
  return `${day} ${two(now.getHours())}:${two(now.getMinutes())}`;
}
