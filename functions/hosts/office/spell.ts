/** Stands before every function name in the add-in's manifest. */
const namespace = 'OUNCE';

/** How Excel shows and takes a function: =OUNCE.SATTEMP(…). */
export function spell(id: string): string {
  return `${namespace}.${id}`;
}

/** How Excel stores the same call inside an .xlsx file. */
export function spellInFile(id: string): string {
  return `_xldudf_${namespace}_${id}`;
}
