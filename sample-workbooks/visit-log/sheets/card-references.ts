/** The cell in which a visit is picked, and the rows of the log that belong to it. */
export const pick = '$B$4';
export const before = '$G$4';
export const after = '$G$5';
export const standing = '$G$6';

/** A cell of the log in one of those rows; blank stays blank. */
export function ofSet(row: string, heading: string): string {
  const cell = `INDEX(Readings[${heading}],${row})`;
  return `IF(${row}="","",IF(${cell}="","",${cell}))`;
}

/** A cell of the register for the unit on the card. */
export function register(heading: string): string {
  return `IFERROR(INDEX(Units[${heading}],MATCH($B$5,Units[Unit],0)),"")`;
}

/** Sum over the sets of the visit. */
export function total(heading: string): string {
  return `SUMIFS(Readings[${heading}],Readings[Visit],${pick})`;
}
