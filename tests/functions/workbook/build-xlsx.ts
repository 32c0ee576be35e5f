import { strToU8, zipSync } from 'fflate';
import { parseAddress } from '../../../functions/workbook/model/address.ts';

/** A cell for a test workbook: a value, a formula with "=", or XML written out for the odd cases. */
export type TestCell = number | string | boolean | null | { readonly xml: string };

export interface TestSheet {
  readonly name: string;
  /** Cells by address. A text that starts with "=" is a formula without a cached value. */
  readonly cells?: Readonly<Record<string, TestCell>>;
  /** The whole worksheet part instead of cells. */
  readonly xml?: string;
  /** XML behind the sheet data. */
  readonly after?: string;
  readonly state?: 'hidden' | 'veryHidden';
  readonly tables?: readonly string[];
}

export interface TestWorkbook {
  readonly sheets: readonly TestSheet[];
  /** XML of the definedName elements. */
  readonly names?: string;
  readonly uses1904?: boolean;
  readonly styles?: string;
  readonly sharedStrings?: string;
  readonly extraParts?: Readonly<Record<string, string>>;
}

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packageRelations = 'http://schemas.openxmlformats.org/package/2006/relationships';
const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

export function escapeXml(text: string): string {
  return text.replace(/[&<>"]/g, (letter) => `&#${letter.charCodeAt(0)};`);
}

function cellXml(address: string, cell: TestCell): string {
  if (cell !== null && typeof cell === 'object') return cell.xml;
  if (cell === null) return `<c r="${address}"/>`;
  if (typeof cell === 'number') return `<c r="${address}"><v>${cell}</v></c>`;
  if (typeof cell === 'boolean') return `<c r="${address}" t="b"><v>${cell ? 1 : 0}</v></c>`;
  if (cell.startsWith('=')) return `<c r="${address}"><f>${escapeXml(cell.slice(1))}</f></c>`;
  return `<c r="${address}" t="inlineStr"><is><t xml:space="preserve">${escapeXml(cell)}</t></is></c>`;
}

export function sheetXml(sheet: TestSheet): string {
  if (sheet.xml !== undefined) return sheet.xml;
  const rows = new Map<number, { column: number; xml: string }[]>();
  for (const [address, cell] of Object.entries(sheet.cells ?? {})) {
    const position = parseAddress(address);
    if (position === undefined) throw new Error(`no address: ${address}`);
    const row = rows.get(position.row) ?? [];
    rows.set(position.row, row);
    row.push({ column: position.column, xml: cellXml(address, cell) });
  }
  const data = [...rows]
    .sort(([one], [other]) => one - other)
    .map(([row, cells]) => {
      const inOrder = cells.sort((one, other) => one.column - other.column).map(({ xml }) => xml);
      return `<row r="${row + 1}">${inOrder.join('')}</row>`;
    });
  const tableParts = (sheet.tables ?? []).map((_, index) => `<tablePart r:id="rId${index + 1}"/>`).join('');
  const parts = tableParts === '' ? '' : `<tableParts count="1">${tableParts}</tableParts>`;
  return `${declaration}<worksheet xmlns="${main}" xmlns:r="${relations}"><sheetData>${data.join('')}</sheetData>${sheet.after ?? ''}${parts}</worksheet>`;
}

/** Bytes of an .xlsx file, small and plain, with the parts a spreadsheet program asks for. */
export function buildXlsx(workbook: TestWorkbook): Uint8Array {
  const files: Record<string, string> = {};
  const overrides: string[] = [];
  const type = (part: string, kind: string): void => {
    overrides.push(
      `<Override PartName="/${part}" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.${kind}+xml"/>`,
    );
  };
  const links: string[] = [];
  let tableNumber = 0;
  workbook.sheets.forEach((sheet, index) => {
    const part = `xl/worksheets/sheet${index + 1}.xml`;
    files[part] = sheetXml(sheet);
    type(part, 'worksheet');
    links.push(
      `<Relationship Id="rId${index + 1}" Type="${relations}/worksheet" Target="worksheets/sheet${index + 1}.xml"/>`,
    );
    const tables = (sheet.tables ?? []).map((xml, position) => {
      tableNumber++;
      const table = `xl/tables/table${tableNumber}.xml`;
      files[table] = declaration + xml;
      type(table, 'table');
      return `<Relationship Id="rId${position + 1}" Type="${relations}/table" Target="../tables/table${tableNumber}.xml"/>`;
    });
    if (tables.length > 0) {
      files[`xl/worksheets/_rels/sheet${index + 1}.xml.rels`] =
        `${declaration}<Relationships xmlns="${packageRelations}">${tables.join('')}</Relationships>`;
    }
  });
  if (workbook.styles !== undefined) {
    files['xl/styles.xml'] = workbook.styles;
    type('xl/styles.xml', 'styles');
    links.push(`<Relationship Id="rIdStyles" Type="${relations}/styles" Target="styles.xml"/>`);
  }
  if (workbook.sharedStrings !== undefined) {
    files['xl/sharedStrings.xml'] = workbook.sharedStrings;
    type('xl/sharedStrings.xml', 'sharedStrings');
    links.push(
      `<Relationship Id="rIdStrings" Type="${relations}/sharedStrings" Target="sharedStrings.xml"/>`,
    );
  }
  const sheets = workbook.sheets.map((sheet, index) => {
    const state = sheet.state === undefined ? '' : ` state="${sheet.state}"`;
    return `<sheet name="${escapeXml(sheet.name)}" sheetId="${index + 1}"${state} r:id="rId${index + 1}"/>`;
  });
  const names = workbook.names === undefined ? '' : `<definedNames>${workbook.names}</definedNames>`;
  const properties = workbook.uses1904 === true ? '<workbookPr date1904="1"/>' : '';
  files['xl/workbook.xml'] =
    `${declaration}<workbook xmlns="${main}" xmlns:r="${relations}">${properties}<sheets>${sheets.join('')}</sheets>${names}</workbook>`;
  files['xl/_rels/workbook.xml.rels'] =
    `${declaration}<Relationships xmlns="${packageRelations}">${links.join('')}</Relationships>`;
  overrides.push(
    '<Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>',
  );
  files['_rels/.rels'] =
    `${declaration}<Relationships xmlns="${packageRelations}"><Relationship Id="rId1" Type="${relations}/officeDocument" Target="xl/workbook.xml"/></Relationships>`;
  files['[Content_Types].xml'] =
    `${declaration}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${overrides.join('')}</Types>`;
  Object.assign(files, workbook.extraParts);
  const time = new Date(2020, 0, 1);
  return zipSync(
    Object.fromEntries(Object.entries(files).map(([name, text]) => [name, [strToU8(text), { mtime: time }]])),
  );
}

/** XML of a table definition. */
export function tableXml(
  id: number,
  name: string,
  ref: string,
  columns: readonly string[],
  totals = false,
): string {
  const list = columns.map((column, index) => `<tableColumn id="${index + 1}" name="${escapeXml(column)}"/>`);
  return `<table xmlns="${main}" id="${id}" name="${name}" displayName="${name}" ref="${ref}"${totals ? ' totalsRowCount="1"' : ''}><tableColumns count="${columns.length}">${list.join('')}</tableColumns></table>`;
}
