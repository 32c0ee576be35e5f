import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { CellError } from '../../../functions/workbook/model/values.ts';
import { FileError } from '../../../functions/workbook/file/file-error.ts';
import { usualLimits } from '../../../functions/workbook/file/limits.ts';
import { readOds } from '../../../functions/workbook/file/ods-reader.ts';
import type { OdsSheet } from '../../../functions/workbook/file/ods-reader.ts';
import { openContainer } from '../../../functions/workbook/file/recognize.ts';

function plain(rows: OdsSheet['rows'] | undefined): unknown[][] {
  return (rows ?? []).map((row) =>
    Array.from(row, (cell) => {
      if (cell === undefined) return null;
      if (cell.value instanceof CellError) return cell.value.code;
      return cell.isDate ? { date: cell.value } : cell.value;
    }),
  );
}

const read = (bytes: Uint8Array): readonly OdsSheet[] =>
  readOds(openContainer(bytes, usualLimits), usualLimits);

describe('reading .ods', () => {
  const ods = (body: string, extra: Record<string, Uint8Array> = {}): Uint8Array =>
    zipSync({
      mimetype: strToU8('application/vnd.oasis.opendocument.spreadsheet'),
      'content.xml': strToU8(
        `<office:document-content xmlns:office="o" xmlns:table="t" xmlns:text="x" xmlns:style="s" xmlns:calcext="c"><office:automatic-styles><style:style style:name="ta2" style:family="table"><style:table-properties table:display="false"/></style:style></office:automatic-styles><office:body><office:spreadsheet>${body}</office:spreadsheet></office:body></office:document-content>`,
      ),
      ...extra,
    });
  const rows = (body: string): unknown[][] =>
    plain(read(ods(`<table:table table:name="S">${body}</table:table>`))[0]?.rows);

  // OpenDocument 1.3 Part 3, 19.385 (value types) and 9.1 (repeated rows and cells).
  it('reads every kind of cell, repeats, comments and white space', () => {
    expect(
      rows(
        '<table:table-row table:number-rows-repeated="2"/><table:table-row><table:table-cell office:value-type="float" office:value="2.5"><text:p>2,5</text:p></table:table-cell><table:table-cell table:number-columns-repeated="2"/><table:table-cell office:value-type="string"><office:annotation><text:p>note</text:p></office:annotation><text:p>a<text:s text:c="2"/>b</text:p><text:p>c</text:p></table:table-cell><table:table-cell office:value-type="boolean" office:boolean-value="true"/><table:table-cell office:value-type="date" office:date-value="2026-11-25T12:00:00"/><table:table-cell office:value-type="time" office:time-value="PT06H00M00S"/><table:table-cell office:value-type="string" calcext:value-type="error"><text:p>#N/A</text:p></table:table-cell><table:table-cell office:value-type="percentage" office:value="0.5" table:number-columns-repeated="2"/><table:table-cell table:number-columns-repeated="16000"/></table:table-row><table:table-row table:number-rows-repeated="1048000"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>',
      ),
    ).toEqual([
      [],
      [],
      [2.5, null, null, 'a  b\nc', true, { date: 46_351.5 }, { date: 0.25 }, '#N/A', 0.5, 0.5],
    ]);
  });

  it('knows hidden sheets and refuses protected and overfull ones', () => {
    const sheets = read(
      ods('<table:table table:name="A"/><table:table table:name="B" table:style-name="ta2"/>'),
    );
    expect(sheets.map(({ name, isHidden }) => [name, isHidden])).toEqual([
      ['A', false],
      ['B', true],
    ]);
    const manifest = strToU8('<manifest><file-entry><encryption-data/></file-entry></manifest>');
    expect(() => read(ods('', { 'META-INF/manifest.xml': manifest }))).toThrow(/password/);
    const full =
      '<table:table-row table:number-rows-repeated="1000000"><table:table-cell office:value-type="float" office:value="1" table:number-columns-repeated="1000"/></table:table-row>';
    expect(() => rows(full)).toThrow(FileError);
  });
});
