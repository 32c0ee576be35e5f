import type { CellArea } from '../model/address.ts';
import { columnLimit, parseAddress, parseArea, rowLimit } from '../model/address.ts';
import { attribute, readXml, truth } from './xml-reader.ts';
import type { Attributes } from './xml-reader.ts';

export interface ConditionalRule {
  readonly areas: readonly CellArea[];
  readonly type: string;
  readonly operator: string;
  readonly overlay: number | undefined;
  readonly priority: number;
  readonly stops: boolean;
  readonly text: string;
  readonly formulas: readonly string[];
}

export interface Validation {
  readonly areas: readonly CellArea[];
  readonly type: string;
  readonly operator: string;
  /** "stop" refuses, "warning" and "information" only tell. */
  readonly severity: string;
  readonly allowBlank: boolean;
  readonly showsError: boolean;
  readonly error: string;
  readonly prompt: string;
  readonly formulas: readonly string[];
}

/** What a worksheet part says beside its cells' contents: sizes, panes, joined cells, rules. */
export interface SheetLayout {
  /** Characters of the usual font. */
  readonly columnWidths: ReadonlyMap<number, number>;
  readonly defaultColumnWidth: number | undefined;
  /** Points; 0 for a hidden row. */
  readonly rowHeights: ReadonlyMap<number, number>;
  readonly defaultRowHeight: number;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly showsGridLines: boolean;
  readonly merges: readonly CellArea[];
  readonly rules: readonly ConditionalRule[];
  readonly validations: readonly Validation[];
  readonly links: ReadonlyMap<string, string>;
  /** Column by column, by row: the number of the cell's look. */
  readonly styles: readonly (readonly (number | undefined)[] | undefined)[];
  readonly columnStyles: ReadonlyMap<number, number>;
}

const cellTag = /<(?:\w+:)?c\s([^>]*)>/g;
const rowTag = /<(?:\w+:)?row\s([^>]*)>/g;

export function readSheetLayout(text: string, part: string): SheetLayout {
  const dataStart = text.search(/<(?:\w+:)?sheetData[\s/>]/);
  const dataEnd = text.search(/<\/(?:\w+:)?sheetData\s*>/);
  const hasData = dataStart >= 0 && dataEnd > dataStart;
  const data = hasData ? text.slice(dataStart, dataEnd) : '';
  // The cells are stepped over by pattern; everything around them is read as XML.
  const around = hasData ? text.slice(0, dataStart) + text.slice(dataEnd).replace(/^<[^>]*>/, '') : text;
  return { ...readAround(around, part), ...readSizes(data), styles: readStyleNumbers(data) };
}

function readStyleNumbers(data: string): (number | undefined)[][] {
  const styles: (number | undefined)[][] = [];
  for (const [, attributes = ''] of data.matchAll(cellTag)) {
    const style = /(?:^|\s)s="(\d+)"/.exec(attributes)?.[1];
    const address = /(?:^|\s)r="([A-Z]{1,3}\d{1,7})"/.exec(attributes)?.[1];
    if (style === undefined || address === undefined) continue;
    const place = parseAddress(address);
    if (place === undefined) continue;
    (styles[place.column] ??= [])[place.row] = Number(style);
  }
  return styles;
}

function readSizes(data: string): Pick<SheetLayout, 'rowHeights'> {
  const rowHeights = new Map<number, number>();
  for (const [, attributes = ''] of data.matchAll(rowTag)) {
    const row = Number(/(?:^|\s)r="(\d{1,7})"/.exec(attributes)?.[1] ?? 0) - 1;
    const height = /(?:^|\s)ht="([\d.]+)"/.exec(attributes)?.[1];
    const isHidden = /(?:^|\s)hidden="(?:1|true)"/.test(attributes);
    if (row < 0 || row >= rowLimit) continue;
    if (isHidden) rowHeights.set(row, 0);
    else if (height !== undefined) rowHeights.set(row, Number(height));
  }
  return { rowHeights };
}

type Around = Omit<SheetLayout, 'rowHeights' | 'styles'>;
type Open<T> = { -readonly [K in keyof T]: T[K] };

function readAround(text: string, part: string): Around {
  const widths = new Map<number, number>();
  const columnStyles = new Map<number, number>();
  const merges: CellArea[] = [];
  const rules: ConditionalRule[] = [];
  const validations: Validation[] = [];
  const links = new Map<string, string>();
  const found: Open<Around> = {
    columnWidths: widths,
    columnStyles,
    defaultColumnWidth: undefined,
    defaultRowHeight: 15,
    frozenRows: 0,
    frozenColumns: 0,
    showsGridLines: true,
    merges,
    rules,
    validations,
    links,
  };
  let areas: CellArea[] = [];
  let rule: (Open<ConditionalRule> & { formulas: string[] }) | undefined;
  let check: (Open<Validation> & { formulas: string[] }) | undefined;
  let formula: string | undefined;
  readXml(text, part, {
    open(element, attributes) {
      const get = (name: string): string | undefined => attribute(attributes, name);
      switch (element) {
        case 'sheetFormatPr':
          found.defaultRowHeight = Number(get('defaultRowHeight') ?? 15) || 15;
          found.defaultColumnWidth = Number(get('defaultColWidth')) || undefined;
          break;
        case 'sheetView':
          found.showsGridLines = truth(get('showGridLines'), true);
          break;
        case 'pane':
          if (get('state')?.startsWith('frozen') === true) {
            found.frozenColumns = Math.floor(Number(get('xSplit') ?? 0));
            found.frozenRows = Math.floor(Number(get('ySplit') ?? 0));
          }
          break;
        case 'col': {
          const last = Math.min(Number(get('max') ?? 0), columnLimit);
          // A look or width for all columns to the end of the sheet is kept for those in use.
          for (let column = Number(get('min') ?? 1) - 1; column < Math.min(last, 1024); column++) {
            const width = truth(get('hidden'), false) ? 0 : Number(get('width') ?? Number.NaN);
            if (Number.isFinite(width)) widths.set(column, width);
            if (get('style') !== undefined) columnStyles.set(column, Number(get('style')));
          }
          break;
        }
        case 'mergeCell': {
          const area = parseArea(get('ref') ?? '');
          if (area !== undefined) merges.push(area);
          break;
        }
        case 'hyperlink': {
          const location = get('location');
          if (location !== undefined) links.set(get('ref') ?? '', location);
          break;
        }
        case 'conditionalFormatting':
          areas = areasOf(attributes);
          break;
        case 'cfRule':
          rule = {
            areas,
            type: get('type') ?? '',
            operator: get('operator') ?? '',
            overlay: get('dxfId') === undefined ? undefined : Number(get('dxfId')),
            priority: Number(get('priority') ?? 0),
            stops: truth(get('stopIfTrue'), false),
            text: get('text') ?? '',
            formulas: [],
          };
          break;
        case 'dataValidation':
          check = {
            areas: areasOf(attributes),
            type: get('type') ?? 'none',
            operator: get('operator') ?? 'between',
            severity: get('errorStyle') ?? 'stop',
            allowBlank: truth(get('allowBlank'), false),
            showsError: truth(get('showErrorMessage'), false),
            error: get('error') ?? '',
            prompt: get('prompt') ?? '',
            formulas: [],
          };
          break;
        case 'formula':
        case 'formula1':
        case 'formula2':
          formula = '';
          break;
        default:
      }
    },
    text(piece) {
      if (formula !== undefined) formula += piece;
    },
    close(element) {
      if (element === 'cfRule' && rule !== undefined) {
        rules.push(rule);
        rule = undefined;
      } else if (element === 'dataValidation' && check !== undefined) {
        validations.push(check);
        check = undefined;
      } else if (formula !== undefined && element.startsWith('formula')) {
        (rule ?? check)?.formulas.push(formula);
        formula = undefined;
      }
    },
  });
  rules.sort((one, other) => one.priority - other.priority);
  return found;
}

function areasOf(attributes: Attributes): CellArea[] {
  const words = (attribute(attributes, 'sqref') ?? '').split(/\s+/);
  return words.map((word) => parseArea(word)).filter((area) => area !== undefined);
}
