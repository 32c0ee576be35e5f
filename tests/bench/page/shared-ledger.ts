/** Rows of a plain ledger that any grid with formulas can work out: typed figures, sums, a choice, a total in J1. */
export function cellsOfLedger(rows: number): (string | number)[][] {
  const lines: (string | number)[][] = [
    ['Unit', 'Day', 'Added', 'Recovered', 'Price', 'Hours', 'Net', 'Cost', 'Kept', `=SUM(H2:H${rows + 1})`],
  ];
  for (let row = 2; row <= rows + 1; row++) {
    lines.push([
      `U-${row % 97}`,
      row % 365,
      row % 23,
      row % 5,
      2.6,
      (row % 7) + 1,
      `=C${row}-D${row}`,
      `=G${row}*E${row}+F${row}*95`,
      `=IF(G${row}>0,G${row},0)`,
      `=SUM(C${row}:D${row})`,
    ]);
  }
  return lines;
}
