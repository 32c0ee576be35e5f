/**
 * Where our engine and LibreOffice 7.4 differ on purpose, with the reason. Unless it says otherwise the reason is that the
 * common reading of the OOXML functions (ECMA-376 Part 1, 18.17.7) differs from LibreOffice's own, and a workbook in .xlsx
 * is written for the former.
 */
const booleansAreNumbers =
  'LibreOffice keeps booleans as numbers with a format, so ranges count them; OOXML functions leave booleans in ranges out';

export const knownDifferences: Readonly<Record<string, string>> = {
  '"a"<TRUE': booleansAreNumbers,
  'TRUE&1': booleansAreNumbers,
  'SUM(Data!H2:H10)': booleansAreNumbers,
  'COUNT(Data!A1:H10)': booleansAreNumbers,
  'COUNT(Data!H2:H10)': booleansAreNumbers,
  'MAXA(Data!H2:H3)': booleansAreNumbers,
  'MINA(Data!H2:H5)': booleansAreNumbers,
  'MAX(Data!H2:H4)': booleansAreNumbers,
  'AVERAGE(Data!H2:H4)': booleansAreNumbers,
  'TYPE(TRUE)': booleansAreNumbers,
  'CONCATENATE("a",1,TRUE)': booleansAreNumbers,
  'TEXT(TRUE,"0")': booleansAreNumbers,
  'Data!D2:D4=Data!D2': 'LibreOffice writes the booleans of an array formula as 1 and 0',
  'Data!H9+1': 'the text TRUE is no number; LibreOffice reads it as the boolean',
  'SUM("3",1)': 'a number as text given directly counts (SUM, 18.17.7.306); LibreOffice refuses it',
  '1E21&""': 'LibreOffice spells exponents with three digits',
  '123456789012345678&""': 'LibreOffice spells exponents with three digits',
  '(-8)^(1/3)': 'no real result by way of logarithms; LibreOffice recognizes the odd root',
  '0^-1': 'a division by zero; LibreOffice calls it a wrong number',
  'GEOMEAN(0,1)': 'the geometric mean wants positive numbers',
  'ADDRESS(2,3,1,TRUE,"My Sheet")': 'LibreOffice spells addresses in its own syntax when asked at load',
  'INDEX((Data!A1:A3,Data!B1:B3),2,1)': 'references of several areas are read by sums only',
  'ATAN2(0,0)': 'no angle; LibreOffice answers 0',
  'MROUND(5,-2)': 'signs must agree; LibreOffice ignores the sign',
  'CHAR(169)': 'LibreOffice uses the code page of the machine, here none; ours is always Windows-1252',
  'FIND("","abc")': 'empty text is found at once',
  'CODE("")': 'there is no first character; LibreOffice answers 0',
  'YEAR(-1)': 'there are no dates before serial 0',
  'WEEKNUM(-1)': 'there are no dates before serial 0',
  'EDATE(-0.5,1)': 'there are no dates before serial 0',
  'EOMONTH(-12,0)': 'there are no dates before serial 0',
  'DAY(Data!Z99)': 'a blank cell is January 0 of 1900; LibreOffice counts from 30 December 1899',
  'MONTH(Data!Z99)': 'a blank cell is January 0 of 1900; LibreOffice counts from 30 December 1899',
  'YEAR(Data!Z99)': 'a blank cell is January 0 of 1900; LibreOffice counts from 30 December 1899',
  'EOMONTH(Data!Z99,0)': 'a blank cell is January 0 of 1900; LibreOffice counts from 30 December 1899',
  'CONVERT(1,"lbm","kg")': 'the pound is 0.45359237 kg exactly (NIST SP 811); LibreOffice has 0.45359231',
  'CONVERT(1,"atm","Pa")': 'the atmosphere is 101325 Pa exactly (NIST SP 811); LibreOffice has 101324.9966',
};

/** Formulas with functions our engine leaves alone. */
export const leftAlone: readonly string[] = [
  'GAMMA(4.5)',
  'CONFIDENCE.T(0.05,2,30)',
  'T.INV(0.9,5)',
  'BESSELJ(1,1)',
  'BESSELI(1,1)',
  'BESSELK(1,1)',
  'BESSELY(1,1)',
];
