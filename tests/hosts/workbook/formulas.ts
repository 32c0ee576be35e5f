import { readFileSync } from 'node:fs';

/** Cells that the formulas below read, on a sheet named Data. */
export const data: Readonly<Record<string, number | string | boolean>> = {
  // A unit, B gas, C date serial, D ounces, E pressure, F note
  A1: 'Unit',
  B1: 'Gas',
  C1: 'Date',
  D1: 'Ounces',
  E1: 'Pressure',
  F1: 'Note',
  A2: 'AC-01',
  B2: 'R-410A',
  C2: 46023,
  D2: 2.5,
  E2: 118,
  F2: 'cold coil',
  A3: 'AC-02',
  B3: 'R-32',
  C3: 46054,
  D3: 1.25,
  E3: 121,
  F3: 'ok',
  A4: 'AC-01',
  B4: 'R-410A',
  C4: 46082,
  D4: 3,
  E4: 62,
  F4: 'ice*',
  A5: 'AC-03',
  B5: 'R-22',
  C5: 46113,
  D5: 0,
  E5: 68.5,
  F5: 'Cold room',
  A6: 'AC-02',
  B6: 'r-32',
  C6: 46143,
  D6: -1,
  E6: 130,

  A7: 'AC-04',
  B7: 'R-134a',
  C7: 46174,
  D7: 7.75,
  E7: 35,
  F7: '~ten',
  A8: 'AC-01',
  B8: 'R-410A',
  C8: 46204,
  E8: 245,
  F8: 'cold coil again',
  A9: 'AC-05',
  B9: 'R-32',
  C9: 46235,
  D9: 4.1,
  E9: 119,
  F9: '12',
  A10: 'AC-03',
  B10: 'R-22',
  C10: 46266,
  D10: 2,
  E10: 70,
  F10: 'x',
  H2: true,
  H3: false,
  H4: '5',
  H5: 5,
  H6: 'abc',
  H7: 0.1,
  H8: 46000.75,
  H9: 'TRUE',
  H10: ' 7 ',
  // Ascending steps with a result each.
  // Texts that formulas leave empty.
  G2: '=""',
  G3: '=IF(1>2,1,"")',
  G4: 'x',
  J2: 0,
  K2: 'none',
  J3: 10,
  K3: 'low',
  J4: 20,
  K4: 'middle',
  J5: 40,
  K5: 'high',
};

/**
 * Formulas by family, from formulas.txt: one a line under headings. Those under "arrays" fill three rows of one column;
 * those under "own row" stand on rows 2 to 4 of the sheet Data itself, where ranges are cut to the cell's own row.
 */
export function readFormulas(): ReadonlyMap<string, readonly string[]> {
  const families = new Map<string, string[]>();
  let family: string[] = [];
  for (const line of readFileSync(new URL('formulas.txt', import.meta.url), 'utf8').split('\n')) {
    if (line.startsWith('# ')) {
      family = [];
      families.set(line.slice(2), family);
    } else if (line !== '') {
      family.push(line);
    }
  }
  return families;
}
