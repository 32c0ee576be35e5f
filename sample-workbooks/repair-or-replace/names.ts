/** Names of the cells that several sheets read. */
export const names = {
  unit: 'quote_unit',
  date: 'quote_date',
  by: 'quote_by',
  outfit: 'quote_outfit',
  town: 'quote_town',
  currency: 'quote_currency',
  validDays: 'quote_valid_days',
  units: 'log_units',
  number: 'quote_number',
  address: 'quote_address',
  tax: 'quote_tax',
  scope: 'quote_scope',
  region: 'quote_region',
  newGas: 'quote_new_gas',
} as const;

/** A figure of the register for the picked unit; blank stays blank. */
export function ofUnit(heading: string): string {
  const cell = `INDEX(Units[${heading}],MATCH(${names.unit},Units[Unit],0))`;
  return `IFERROR(IF(${cell}="","",${cell}),"")`;
}

/** Whole tables as our functions take them. LibreOffice does not know the short form, Table[#All]. */
export const assumptions = 'Assumptions[[#All],[Input]:[Unit]]';
export const ledger = 'Ledger[[#All],[Unit]:[Note]]';
export const register = 'Units[[#All],[Unit]:[Status]]';

/** A figure that counts, from the assumption table. */
export function counts(input: string, column: 'Likely' | 'Low' | 'High' = 'Likely'): string {
  return `INDEX(Assumptions[${column}],MATCH("${input}",Assumptions[Input],0))`;
}
