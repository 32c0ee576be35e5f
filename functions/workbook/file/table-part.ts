import type { CellArea } from '../model/address.ts';
import { parseArea } from '../model/address.ts';
import { attribute, decodeEscapes, readXml, truth } from './xml-reader.ts';

export interface TableEntry {
  readonly name: string;
  readonly area: CellArea;
  readonly columns: readonly string[];
  readonly hasHeader: boolean;
  readonly hasTotals: boolean;
}

/** A table definition; undefined when it says no usable area. */
export function readTablePart(text: string, part: string): TableEntry | undefined {
  const columns: string[] = [];
  let found: Omit<TableEntry, 'columns'> | undefined;
  readXml(text, part, {
    open(element, attributes) {
      if (element === 'table') {
        const area = parseArea(attribute(attributes, 'ref') ?? '');
        const name = attribute(attributes, 'displayName') ?? attribute(attributes, 'name');
        if (area === undefined || name === undefined) return;
        found = {
          name: decodeEscapes(name),
          area,
          hasHeader: attribute(attributes, 'headerRowCount') !== '0',
          hasTotals:
            Number(attribute(attributes, 'totalsRowCount') ?? 0) > 0 &&
            truth(attribute(attributes, 'totalsRowShown'), true),
        };
      } else if (element === 'tableColumn') {
        columns.push(decodeEscapes(attribute(attributes, 'name') ?? ''));
      }
    },
  });
  return found === undefined ? undefined : { ...found, columns };
}
