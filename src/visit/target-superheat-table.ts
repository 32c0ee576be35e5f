/**
 * Target superheat [degF] of fixed metering for outdoor air at a dry bulb [degF]; the values of each row are for a return wet
 * bulb of 50, 52, … 76 degF. A dash: no charging by superheat, the target would be below 5 degF.
 * Source: makers' charging tables for capillary tubes and orifices, two manuals that agree within 1 degF (14ACX page 26;
 * 38VTA page 9, from 55 degF on); plus or minus 5 degF at the service port as printed there.
 */
const table = `
40: 15 18 20 23 26 29 32 34 38 41 43 46 48 51
45: 13 16 18 21 24 27 30 33 36 39 41 44 46 49
50: 11 14 16 19 22 25 28 31 34 37 39 42 44 47
55: 9 12 14 17 20 23 27 30 33 36 38 40 42 44
60: 7 10 12 15 18 21 24 27 30 33 35 38 40 43
65: - 6 10 13 16 19 21 24 27 30 33 36 38 41
70: - - 7 10 13 16 19 21 24 27 30 33 36 39
75: - - - 6 9 12 15 18 21 24 28 31 34 37
80: - - - - 5 8 12 15 18 21 25 28 31 35
85: - - - - - - 8 11 15 19 22 26 30 33
90: - - - - - - 5 9 13 16 20 24 27 31
95: - - - - - - - 6 10 14 18 22 25 29
100: - - - - - - - - 8 12 16 21 24 28
105: - - - - - - - - 5 9 13 17 22 26
110: - - - - - - - - - 6 11 15 20 25
115: - - - - - - - - - - 8 14 18 24
`;

/** Lowest and highest value of both scales, with the steps between their values [degF]. */
export const outdoorScale = { lowest: 40, highest: 115, step: 5 } as const;
export const wetBulbScale = { lowest: 50, highest: 76, step: 2 } as const;

/** Values by row of outdoor air, then by wet bulb; undefined where charging by superheat is not allowed. */
export const targetSuperheatRows: readonly (readonly (number | undefined)[])[] = table
  .trim()
  .split('\n')
  .map((line) =>
    (line.split(': ')[1] ?? '').split(' ').map((value) => (value === '-' ? undefined : Number(value))),
  );
