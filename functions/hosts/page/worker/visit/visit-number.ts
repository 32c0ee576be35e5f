/** The number after the highest one there is, written like it: V-112 after V-111. */
export function nextVisitNumber(visits: readonly string[]): string {
  let highest: { readonly before: string; readonly digits: string } | undefined;
  for (const visit of visits) {
    const [, before = '', digits = ''] = /^(.*?)(\d{1,9})$/.exec(visit) ?? [];
    if (digits === '') continue;
    if (highest === undefined || Number(digits) > Number(highest.digits)) highest = { before, digits };
  }
  if (highest === undefined) return 'V-1';
  const next = String(Number(highest.digits) + 1).padStart(highest.digits.length, '0');
  return `${highest.before}${next}`;
}
