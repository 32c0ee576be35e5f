/** 1 → "A", 27 → "AA". */
export function columnLetters(number: number): string {
  let rest = number;
  let letters = '';
  while (rest > 0) {
    const digit = (rest - 1) % 26;
    letters = String.fromCharCode(65 + digit) + letters;
    rest = (rest - 1 - digit) / 26;
  }
  return letters;
}

/** "AA" → 27. */
export function columnNumber(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}

/** Address of a cell from column and row numbers that start at 1. */
export function address(column: number, row: number): string {
  return `${columnLetters(column)}${String(row)}`;
}

const firstDay = Date.UTC(1899, 11, 30);
const dayMs = 86_400_000;

/** Serial number of a date as workbooks keep it: "2026-05-12" or "2026-05-12 14:35". */
export function dateSerial(text: string): number {
  const [day = '', clock = '00:00'] = text.split(' ');
  const whole = (Date.parse(`${day}T00:00:00Z`) - firstDay) / dayMs;
  const [hours = '0', minutes = '0'] = clock.split(':');
  return whole + (Number(hours) * 60 + Number(minutes)) / 1440;
}
