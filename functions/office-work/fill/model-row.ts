import { FileError } from '../../workbook/file/file-error.ts';

/** A cell of the template that others are made like. */
export interface ModelCell {
  readonly style: string | undefined;
  /** As XML; undefined for a cell without a formula. */
  readonly formula: string | undefined;
}

export interface ModelRow {
  /** Attributes of the row element but its number. */
  readonly attributes: string;
  /** By column letters. */
  readonly cells: ReadonlyMap<string, ModelCell>;
  readonly start: number;
  readonly end: number;
}

/** A row of a worksheet part as our own template has it. */
export function modelRow(sheetXml: string, row: number): ModelRow {
  const start = sheetXml.indexOf(`<row r="${row}"`);
  const end = sheetXml.indexOf('</row>', start);
  if (start < 0 || end < 0) throw new FileError('corrupt', `the template has no row ${row}`);
  const text = sheetXml.slice(start, end);
  const attributes = /^<row r="\d+"([^>]*)>/.exec(text)?.[1] ?? '';
  const cells = new Map<string, ModelCell>();
  for (const [, letters = '', given = '', body = ''] of text.matchAll(
    /<c r="([A-Z]+)\d+"([^>]*?)(?:\/>|>(.*?)<\/c>)/gs,
  )) {
    cells.set(letters, {
      style: /\bs="(\d+)"/.exec(given)?.[1],
      formula: /<f[^>]*>(.*?)<\/f>/s.exec(body)?.[1],
    });
  }
  return { attributes, cells, start, end: end + '</row>'.length };
}

/** A formula of the model row for another row: references without a dollar sign before the row move along. */
export function formulaForRow(formula: string, from: number, to: number): string {
  if (from === to) return formula;
  return formula.replace(new RegExp(`(?<![A-Za-z0-9_.])(\\$?[A-Z]{1,3})${from}(?![0-9(])`, 'g'), `$1${to}`);
}
