/** The namespace before a function's name, in the ways spreadsheet files store it. */
const spellings = /^(?:_xldudf_OUNCE_|OUNCE\.|OUNCE_)([A-Z0-9]+)$/i;

/** The id of one of our functions as a workbook spells it, whether that function exists or not. */
export function idOf(name: string): string | undefined {
  return spellings.exec(name)?.[1]?.toUpperCase();
}
