/** Google Sheets knows no dots in the names of custom functions. */
export function spell(id: string): string {
  return `OUNCE_${id}`;
}
