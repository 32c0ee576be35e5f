/** The formulas of the log that several columns share, in the neutral spelling. */

/** A figure of the unit register for the unit of this row. */
export function fromRegister(heading: string): string {
  return `INDEX(Units[${heading}],MATCH([@Unit],Units[Unit],0))`;
}

/** Blank while the row is free. */
export function forRow(expression: string): string {
  return `IF([@Unit]="","",${expression})`;
}

/** Blank unless all of these cells of the row are filled in. */
export function whenFilled(headings: readonly string[], expression: string): string {
  const blanks = headings.map((heading) => `[@${heading}]=""`);
  return `IF(${blanks.length === 1 ? (blanks[0] ?? '') : `OR(${blanks.join(',')})`},"",${expression})`;
}

/** Like `whenFilled`, and only of a running compressor. */
export function whenRunning(headings: readonly string[], expression: string): string {
  const blanks = headings.map((heading) => `[@${heading}]=""`).join(',');
  return `IF(OR([@Compressor]<>"running",${blanks}),"",${expression})`;
}

/** What stands before the colon of a verdict. */
export function firstWord(cell: string): string {
  return `LEFT(${cell},FIND(":",${cell}&":")-1)`;
}

/** The answer, or a dash where the function refuses to give one: the reason stands in the gates. */
export function orDash(expression: string): string {
  return `IFERROR(${expression},"–")`;
}
