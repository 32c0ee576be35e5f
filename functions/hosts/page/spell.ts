import type { Table } from '../../workbook/model/table.ts';

/** The namespace before our functions' names, as the page shows and takes them. */
export const namespace = 'OUNCE.';

/** Functions that files mark as newer than the format (ECMA-376 and [MS-XLSX] 2.2.2). */
const newer =
  'ACOT|BASE|CEILING.MATH|CONCAT|DAYS|DECIMAL|FLOOR.MATH|FORMULATEXT|IFNA|IFS|ISFORMULA|MAXIFS|MINIFS|NUMBERVALUE|RANDARRAY|SEQUENCE|SHEET|SHEETS|SORTBY|STDEV.P|STDEV.S|SWITCH|TEXTJOIN|UNIQUE|VAR.P|VAR.S|XLOOKUP|XMATCH|XOR';
const newerPattern = new RegExp(`(?<![\\w.])(${newer.replaceAll('.', '\\.')})(?=\\()`, 'gi');
const newestPattern = /(?<![\w.])(FILTER|SORT)(?=\()/gi;

/** Applies a change to a formula outside its quoted texts and sheet names. */
function outsideQuotes(formula: string, change: (piece: string) => string): string {
  return formula
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/)
    .map((piece, index) => (index % 2 === 1 ? piece : change(piece)))
    .join('');
}

/** A formula of a file as a person reads and types it. */
export function shownFormula(formula: string, table: Table | undefined): string {
  return outsideQuotes(formula, (piece) =>
    piece
      .replace(/_xldudf_OUNCE_([A-Z0-9]+)/gi, `${namespace}$1`)
      .replace(/_xl(?:fn|ws|pm|udf)\./gi, '')
      .replace(/(\w+)\[\[#This Row\],\[([^\][#'@]+)\]\]/g, (all, name: string, column: string) =>
        name.toLowerCase() !== table?.name.toLowerCase()
          ? all
          : /^\w+$/.test(column)
            ? `[@${column}]`
            : `[@[${column}]]`,
      ),
  );
}

/** A typed formula as the workbook engine takes it. */
export function enteredFormula(formula: string, table: Table | undefined): string {
  if (table === undefined) return formula;
  return outsideQuotes(formula, (piece) =>
    piece.replace(
      /(?<![\w\]])\[@(?:\[([^\][]+)\]|([^\][@]+))\]/g,
      (_all, long: string | undefined, short: string | undefined) =>
        `${table.name}[[#This Row],[${long ?? short ?? ''}]]`,
    ),
  );
}

/** A formula as a file stores it; `forExcel` in files whose functions are spelled for Excel. */
export function storedFormula(formula: string, forExcel: boolean): string {
  return outsideQuotes(formula, (piece) => {
    const marked = piece
      .replace(newerPattern, (name) => `_xlfn.${name}`)
      .replace(newestPattern, (name) => `_xlfn._xlws.${name}`);
    return forExcel
      ? marked.replace(/(?<![\w.])OUNCE[._]([A-Z0-9]+)(?=\()/gi, (_all, id: string) => {
          return `_xldudf_OUNCE_${id.toUpperCase()}`;
        })
      : marked.replace(/_xldudf_OUNCE_([A-Z0-9]+)/gi, `${namespace}$1`);
  });
}
