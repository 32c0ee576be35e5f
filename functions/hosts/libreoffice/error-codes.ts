/** Calc's own numbers for the errors a cell can show. */
export const calcErrorNumber = {
  '#NUM!': 503,
  '#VALUE!': 519,
  '#REF!': 524,
  '#NAME?': 525,
  '#DIV/0!': 532,
  '#N/A': 0x7fff,
} as const;
