/**
 * Random formulas of standard functions over the cells of tests/hosts/workbook/formulas.ts: numbers, texts and truths,
 * nested, with blanks, wrong kinds and odd sizes among them.
 */

/** A number from 0 to 1, the same sequence for the same seed (mulberry32, public domain). */
function chanceFrom(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** @returns a function that gives another formula each time */
export function formulasFrom(seed: number): () => string {
  const chance = chanceFrom(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(chance() * list.length)] as T;
  const cols = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'J', 'K', 'L', 'Z'];
  const cell = (): string =>
    `Data!${pick(['', '$'])}${pick(cols)}${pick(['', '$'])}${1 + Math.floor(chance() * 14)}`;
  const range = (numeric = chance() < 0.5): string => {
    const c = numeric ? pick(['C', 'D', 'E', 'J']) : pick(cols);
    const a = 1 + Math.floor(chance() * 12);
    const b = a + Math.floor(chance() * (14 - a));
    const c2 = chance() < 0.25 ? String.fromCharCode(c.charCodeAt(0) + 1) : c;
    return `Data!${c}${a}:${c === 'Z' ? 'Z' : c2}${b}`;
  };
  const column = (c: string): string => `Data!${c}2:${c}12`;
  const text = (): string =>
    pick([
      '"AC-01"',
      '"R-32"',
      '"cold*"',
      '"?-0*"',
      '""',
      '"12"',
      '"x"',
      '"Cold"',
      '"~*"',
      '">2"',
      '"<=118"',
      '"<>R-32"',
      '">=R-3"',
      '"=AC-01"',
      '"<>"',
      '"="',
      '"2.5"',
      '" 7 "',
      '"1/2"',
      '"2026-03-01"',
      '"12:30"',
      '"1e3"',
      '"5%"',
    ]);
  const num = (): string =>
    pick([
      '0',
      '1',
      '2',
      '-1',
      '3',
      '2.5',
      '0.1',
      '7',
      '100',
      '-0.5',
      '46100',
      '1e-9',
      '1E15',
      '12.345',
      '-12.345',
    ]);
  function number(d: number): string {
    if (d <= 0) return chance() < 0.5 ? num() : cell();
    const n = (): string => number(d - 1);
    const t = (): string => texts(d - 1);
    const l = (): string => logic(d - 1);
    return pick<() => string>([
      () => `${n()}+${n()}`,
      () => `(${n()}-${n()})`,
      () => `${n()}*${n()}`,
      () => `${n()}/${n()}`,
      () => `-${n()}`,
      () => `${n()}%`,
      () => `(${n()})^${pick(['2', '0.5', '-1', '3'])}`,
      () => `SUM(${range()},${n()})`,
      () => `AVERAGE(${range()})`,
      () => `MIN(${range()})`,
      () => `MAX(${range()},${n()})`,
      () => `COUNT(${range()})`,
      () => `COUNTA(${range()})`,
      () => `COUNTBLANK(${range()})`,
      () => `MEDIAN(${range(true)})`,
      () => `STDEV(${range(true)})`,
      () => `VARP(${range(true)})`,
      () => `LARGE(${range(true)},${n()})`,
      () => `SMALL(${range(true)},${pick(['1', '2', '3'])})`,
      () => `RANK(${cell()},${column('D')})`,
      () => `PERCENTILE(${range(true)},${pick(['0', '0.3', '0.5', '1'])})`,
      () => `QUARTILE(${range(true)},${pick(['0', '1', '2', '3', '4'])})`,
      () => `ROUND(${n()},${pick(['0', '1', '2', '-1', '-2'])})`,
      () => `ROUNDUP(${n()},${pick(['0', '1', '-1'])})`,
      () => `ROUNDDOWN(${n()},${pick(['0', '1', '-1'])})`,
      () => `INT(${n()})`,
      () => `TRUNC(${n()},1)`,
      () => `MOD(${n()},${n()})`,
      () => `QUOTIENT(${n()},${n()})`,
      () => `ABS(${n()})`,
      () => `SIGN(${n()})`,
      () => `SQRT(${n()})`,
      () => `EXP(${pick(['1', '0', '-2'])})`,
      () => `LN(${n()})`,
      () => `LOG10(${n()})`,
      () => `LOG(${n()},2)`,
      () => `POWER(${n()},${pick(['2', '0.5', '-1'])})`,
      () => `CEILING(${n()},${pick(['1', '0.5', '10'])})`,
      () => `FLOOR(${n()},${pick(['1', '0.5', '10'])})`,
      () => `EVEN(${n()})`,
      () => `ODD(${n()})`,
      () => `MROUND(${n()},${pick(['1', '5', '0.1'])})`,
      () => `GCD(12,${n()})`,
      () => `FACT(${pick(['0', '3', '5', '-1'])})`,
      () => `COMBIN(5,${pick(['0', '2', '6'])})`,
      () => `SUMIF(${column(pick(['A', 'B', 'D', 'E', 'F']))},${t()},${column(pick(['D', 'E']))})`,
      () => `SUMIF(${column('D')},">"&${num()})`,
      () => `COUNTIF(${column(pick(['A', 'B', 'D', 'E', 'F', 'G']))},${chance() < 0.7 ? text() : n()})`,
      () => `AVERAGEIF(${column(pick(['A', 'B']))},${text()},${column('E')})`,
      () => `SUMIFS(${column('E')},${column('A')},${text()},${column('D')},">"&${num()})`,
      () => `COUNTIFS(${column('B')},${text()},${column('F')},${text()})`,
      () => `MAXIFS(${column('E')},${column('B')},${text()})`,
      () => `AVERAGEIFS(${column('D')},${column('E')},"<"&${num()})`,
      () => `SUMPRODUCT((${column('B')}=${text()})*${column('E')})`,
      () => `SUMPRODUCT(--(${column('D')}>${num()}))`,
      () => `SUMPRODUCT(${column('D')},${column('E')})`,
      () => `SUMPRODUCT(LEN(${column(pick(['A', 'F', 'D']))}))`,
      () => `SUMPRODUCT((${column('F')}<>"")/COUNTIF(${column('F')},${column('F')}&""))`,
      () =>
        `MATCH(${chance() < 0.5 ? t() : n()},${column(pick(['A', 'B', 'D', 'E', 'F', 'J']))},${pick(['0', '1', '-1'])})`,
      () => `VLOOKUP(${n()},Data!J2:K5,${pick(['1', '2', '3'])},${pick(['TRUE', 'FALSE'])})`,
      () => `INDEX(Data!A2:F10,${pick(['1', '2', '9', '10', '0'])},${pick(['1', '4', '6', '7'])})`,
      () => `LOOKUP(${n()},Data!J2:J5,Data!K2:K5)`,
      () => `HLOOKUP("Gas",Data!A1:F5,${pick(['1', '3', '6'])},FALSE)`,
      () => `LEN(${t()})`,
      () => `FIND(${text()},${t()})`,
      () => `SEARCH(${text()},${t()})`,
      () => `VALUE(${t()})`,
      () => `CODE(${t()})`,
      () => `N(${chance() < 0.5 ? n() : t()})`,
      () => `DATEVALUE(${text()})`,
      () => `TIMEVALUE(${text()})`,
      () => `YEAR(${n()})`,
      () => `MONTH(${n()})`,
      () => `DAY(${n()})`,
      () => `WEEKDAY(${n()},${pick(['1', '2', '3'])})`,
      () => `DATE(${pick(['2026', '2024', '1900', '99'])},${n()},${n()})`,
      () => `EDATE(${n()},${pick(['1', '-1', '12'])})`,
      () => `EOMONTH(${n()},${pick(['0', '1', '-2'])})`,
      () => `HOUR(${n()})`,
      () => `MINUTE(${n()})`,
      () => `SECOND(${n()})`,
      () => `TIME(${n()},${num()},${num()})`,
      () => `NETWORKDAYS(46023,${n()})`,
      () => `WORKDAY(46023,${num()})`,
      () => `DATEDIF(45900,46100.5,${pick(['"d"', '"m"', '"y"', '"ym"', '"md"', '"yd"'])})`,
      () => `WEEKNUM(46023+${num()})`,
      () => `DAYS360(45900,46100)`,
      () => `YEARFRAC(45900,46100,${pick(['0', '1', '2', '3', '4'])})`,
      () => `PMT(${pick(['0.05', '0', '0.01'])},${pick(['10', '12'])},${n()})`,
      () => `NPV(0.1,${range(true)})`,
      () => `FV(0.05,5,${n()})`,
      () => `SLN(1000,100,${pick(['5', '10'])})`,
      () => `IF(${l()},${n()},${n()})`,
      () => `IFERROR(${n()},${n()})`,
      () => `IFNA(${n()},${n()})`,
      () => `CHOOSE(${pick(['1', '2', '3', '0'])},${n()},${n()})`,
      () => `ROWS(${range()})`,
      () => `COLUMNS(${range()})`,
      () => `ROW(${cell()})`,
      () => `SUBTOTAL(${pick(['1', '2', '3', '4', '5', '9', '102', '109'])},${range()})`,
      () => `AGGREGATE(${pick(['4', '9', '14'])},6,${column('E')},1)`,
      () => `TYPE(${n()})`,
      () => `ERROR.TYPE(${n()})`,
      () => `SUM(OFFSET(Data!D2,${pick(['0', '1', '2'])},${pick(['0', '1'])},${pick(['1', '2', '3'])},1))`,
      () => `SUM(INDIRECT("Data!D2:D"&${pick(['3', '5', '9'])}))`,
      () => `CORREL(${column('D')},${column('E')})`,
      () => `SLOPE(${column('E')},${column('C')})`,
      () => `FORECAST(46200,${column('E')},${column('C')})`,
      () => `BIN2DEC(${pick(['"101"', '"2"'])})`,
      () =>
        `CONVERT(${n()},${pick(['"F"', '"C"', '"psi"', '"m"', '"ozm"'])},${pick(['"C"', '"K"', '"Pa"', '"ft"', '"g"'])})`,
    ])();
  }
  function texts(d: number): string {
    if (d <= 0) return chance() < 0.5 ? text() : cell();
    const n = (): string => number(d - 1);
    const t = (): string => texts(d - 1);
    const l = (): string => logic(d - 1);
    return pick<() => string>([
      () => `${t()}&${t()}`,
      () => `${n()}&""`,
      () => `LEFT(${t()},${pick(['0', '1', '3', '-1'])})`,
      () => `RIGHT(${t()},${pick(['0', '2', '30'])})`,
      () => `MID(${t()},${pick(['1', '2', '0'])},${pick(['0', '2', '9'])})`,
      () => `UPPER(${t()})`,
      () => `LOWER(${t()})`,
      () => `PROPER(${t()})`,
      () => `TRIM(${t()})`,
      () => `SUBSTITUTE(${t()},${text()},"-")`,
      () => `SUBSTITUTE(${t()},"0","",${pick(['1', '2'])})`,
      () => `REPLACE(${t()},${pick(['1', '3'])},${pick(['0', '2'])},"#")`,
      () => `REPT(${t()},${pick(['0', '2', '3'])})`,
      () =>
        `TEXT(${n()},${pick(['"0.00"', '"#,##0"', '"0%"', '"yyyy-mm-dd"', '"0.0E+00"', '"hh:mm"', '"@"', '"000"', '"#.##"', '"mmm d"', '"0;-0;zero"', '"[>5]0.0;0"', '"# ?/?"'])})`,
      () => `FIXED(${n()},${pick(['0', '2'])})`,
      () => `CONCATENATE(${t()},${n()})`,
      () => `TEXTJOIN(",",${pick(['TRUE', 'FALSE'])},${range()})`,
      () => `IF(${l()},${t()},${t()})`,
      () => `T(${t()})`,
      () => `CHAR(${pick(['65', '97', '42'])})`,
      () => `VLOOKUP(${n()},Data!J2:K5,2)`,
      () => `INDEX(${column(pick(['A', 'B', 'F']))},MATCH(${n()},${column('E')},1))`,
      () => `EXACT(${t()},${t()})&""`,
      () => `IFERROR(${t()},"?")`,
      () => `ADDRESS(${pick(['1', '3'])},${pick(['1', '28'])},${pick(['1', '4'])})`,
      () => `CLEAN(${t()})`,
      () => `DEC2HEX(${pick(['10', '255', '-1'])})`,
      () => `ROMAN(${pick(['4', '9', '2026'])})`,
      () => `DOLLAR(${n()},2)&""`,
      () => `NUMBERVALUE(${text()})&""`,
    ])();
  }
  function logic(d: number): string {
    const n = (): string => number(d - 1);
    const t = (): string => texts(d - 1);
    const l = (): string => (d <= 0 ? 'TRUE' : logic(d - 1));
    return pick<() => string>([
      () => `${n()}>${n()}`,
      () => `${n()}=${n()}`,
      () => `${t()}<${t()}`,
      () => `${t()}=${t()}`,
      () => `${n()}<${t()}`,
      () => `AND(${l()},${l()})`,
      () => `OR(${l()},${n()}>1)`,
      () => `NOT(${l()})`,
      () => `ISNUMBER(${chance() < 0.5 ? n() : t()})`,
      () => `ISTEXT(${t()})`,
      () => `ISBLANK(${cell()})`,
      () => `ISERROR(${n()})`,
      () => `ISNA(${n()})`,
      () => `ISEVEN(${n()})`,
      () => `XOR(${l()},${l()})`,
      () => `ISLOGICAL(${l()})`,
    ])();
  }

  return () => {
    const formula = pick([number, texts, logic, number])(pick([1, 1, 2]));
    return chance() < 0.1 ? `IF(${formula},1,0)` : formula;
  };
}
