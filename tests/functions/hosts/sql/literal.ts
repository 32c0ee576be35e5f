import type { Argument, CellInput } from '../../../../functions/runtime/cells.ts';
import type { Parameter } from '../../../../functions/runtime/define.ts';
import { isRange } from '../../../../functions/runtime/broadcast.ts';

/** An argument as a person writes it in SQL; a table becomes a list of structs with its headings as names, a single row a list. */
export function sqlLiteral(argument: Argument, parameter: Parameter | undefined): string {
  if (!isRange(argument)) return cellLiteral(argument);
  if (parameter?.kind === 'table' && argument.length > 1) {
    const [headings = [], ...rows] = argument;
    const names = headings.map((heading) => quoted(heading as string));
    const structs = rows.map(
      (row) => `{${names.map((name, index) => `${name}: ${cellLiteral(row[index])}`).join(', ')}}`,
    );
    return `[${structs.join(', ')}]`;
  }
  const cells = argument.flat();
  // One list, one type: where a text is among the numbers all are texts.
  const asText = cells.some((cell) => typeof cell === 'string' && cell !== '');
  return `[${cells.map((cell) => cellLiteral(asText && typeof cell === 'number' ? String(cell) : cell)).join(', ')}]`;
}

function cellLiteral(cell: CellInput): string {
  if (typeof cell === 'number') return `${cell}::DOUBLE`;
  if (typeof cell === 'boolean') return String(cell);
  if (typeof cell === 'string' && cell !== '') return quoted(cell);
  return 'NULL';
}

function quoted(text: string): string {
  return `'${text.replaceAll("'", "''")}'`;
}
