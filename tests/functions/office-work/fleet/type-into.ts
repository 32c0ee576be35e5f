import { cellAddress, parseAddress } from '../../../../functions/workbook/model/address.ts';
import { openFleet } from '../../../../functions/office-work/fleet/fleet-file.ts';
import type { FleetFile } from '../../../../functions/office-work/fleet/fleet-file.ts';
import { readPart } from '../../../../functions/workbook/file/package-parts.ts';
import { writeCells } from '../../../../functions/workbook/file/write-cells.ts';

/** A cell that somebody types into a sheet of the fleet: "Register!E7". */
export type Typed = Readonly<Record<string, string | number>>;

export function fleetOf(bytes: Uint8Array): FleetFile {
  const fleet = openFleet(bytes);
  if (fleet === undefined) throw new Error('no fleet workbook');
  return fleet;
}

/** The workbook as somebody leaves it who typed into cells and saved. */
export function typeInto(bytes: Uint8Array, typed: Typed): Uint8Array {
  const fleet = fleetOf(bytes);
  const parts = new Map<string, string>();
  for (const [place, value] of Object.entries(typed)) {
    const [sheet = '', address = ''] = place.split('!');
    const part = fleet.sheetParts.get(sheet);
    const cell = parseAddress(address);
    if (part === undefined || cell === undefined) throw new Error(`no place ${place}`);
    const text = parts.get(part) ?? readPart(fleet.archive, part);
    parts.set(
      part,
      writeCells(text, part, [{ row: cell.row, column: cell.column, value }], () => undefined).text,
    );
  }
  const encoder = new TextEncoder();
  return fleet.archive.withReplaced(new Map([...parts].map(([part, text]) => [part, encoder.encode(text)])));
}

export function valueAt(bytes: Uint8Array, place: string): unknown {
  const [sheet = '', address = ''] = place.split('!');
  const cell = parseAddress(address);
  return fleetOf(bytes).values.get(sheet)?.rows[cell?.row ?? 0]?.[cell?.column ?? 0];
}

/** Address of a cell of a table by heading and row. */
export function placeOf(fleet: FleetFile, tableName: string, heading: string, row: number): string {
  const table = fleet.tables.get(tableName);
  if (table === undefined) throw new Error(`no table ${tableName}`);
  return `${table.sheet}!${cellAddress(row - 1, table.left + table.columns.indexOf(heading))}`;
}
