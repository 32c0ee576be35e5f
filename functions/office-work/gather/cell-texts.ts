import type { Field } from '../../../src/records/index.ts';
import type { CellInput } from '../../runtime/cells.ts';

/** A number with a comma that cannot part thousands: other than three figures stand behind it. */
const decimalComma = /^\s*[<>~]?\s*[+-]?\d+,(?:\d{1,2}|\d{4,})(?!\d)/;
const thousands = /^(\s*[+-]?\d{1,3})((?:[.,\s'\u00a0]\d{3})+)(?=$|[.,\s]|[a-z])/i;

/** Whether a table writes a comma where others write a point. One cell that cannot mean anything else tells. */
export function usesDecimalComma(cells: Iterable<CellInput>): boolean {
  for (const cell of cells) if (typeof cell === 'string' && decimalComma.test(cell)) return true;
  return false;
}

/** A cell of a field of numbers as the reader of numbers takes it: "2,4 oz" is "2.4 oz", "1,200 ft" is "1200 ft". */
export function numberCell(field: Field, cell: CellInput, commaIsPoint: boolean): CellInput {
  if (field.kind !== 'number' || typeof cell !== 'string') return cell;
  if (!/\d[.,'\s\u00a0]\d/.test(cell)) return cell;
  if (commaIsPoint) {
    const joined = cell.replace(/(\d)\.(?=\d{3}(?!\d))/g, '$1');
    return joined.replace(/(\d),(?=\d)/g, '$1.');
  }
  const grouped = thousands.exec(cell);
  if (grouped === null || !/[,'\u00a0]/.test(grouped[2] ?? '')) return cell;
  return `${grouped[1] ?? ''}${(grouped[2] ?? '').replace(/\D/g, '')}${cell.slice(grouped[0].length)}`;
}

const separator = ' | ';

/** Cells under unknown headings as one text: "Truck: 7 | Weather: hot". */
export function extrasText(
  cells: readonly (readonly [heading: string, cell: CellInput])[],
): string | undefined {
  const told = cells.map(([heading, cell]) => `${escaped(heading)}: ${escaped(plain(cell))}`);
  return told.length === 0 ? undefined : told.join(separator);
}

/** The cells again, in order. */
export function extrasIn(text: string): [heading: string, value: string][] {
  return text.split(separator).flatMap((part): [string, string][] => {
    const colon = part.indexOf(': ');
    return colon < 0 ? [] : [[unescaped(part.slice(0, colon)), unescaped(part.slice(colon + 2))]];
  });
}

function escaped(text: string): string {
  return text
    .replace(/[\\|:]/g, (sign) => ({ '\\': '\\\\', '|': '\\p', ':': '\\c' })[sign] ?? sign)
    .replace(/\s*\n\s*/g, '\\n');
}

function unescaped(text: string): string {
  return text.replace(
    /\\([\\pcn])/g,
    (_, sign: string) => ({ '\\': '\\', p: '|', c: ':', n: '\n' })[sign] ?? sign,
  );
}

function plain(cell: CellInput): string {
  if (typeof cell === 'number') return String(Number(cell.toPrecision(12)));
  if (cell instanceof Date) return cell.toISOString().slice(0, 16).replace('T', ' ');
  return typeof cell === 'string' ? cell.trim() : typeof cell === 'boolean' ? String(cell) : '';
}
