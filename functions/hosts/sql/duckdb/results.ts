import type * as DuckDb from '@duckdb/node-api';
import type { DuckDBType, DuckDBValue } from '@duckdb/node-api';
import type { CellOutput, Outcome } from '../../../runtime/cells.ts';
import { dayOfSerial } from '../../../runtime/dates.ts';
import type { Column, Returns } from '../../../runtime/define.ts';

export type Api = typeof DuckDb;

/** The SQL type of a result. A table is a LIST of STRUCTs: `unnest(…, recursive := true)` makes rows of it. */
export function resultType(api: Api, returns: Returns): DuckDBType {
  switch (returns.kind) {
    case 'number':
      return api.DOUBLE;
    case 'date':
      return api.DATE;
    case 'yesNo':
      return api.BOOLEAN;
    case 'text':
    case 'verdict':
    case 'fact':
      return api.VARCHAR;
    case 'table':
      return api.LIST(
        api.STRUCT(
          Object.fromEntries(returns.columns.map((column) => [column.heading, columnType(api, column)])),
        ),
      );
  }
}

function columnType(api: Api, { kind }: Column): DuckDBType {
  return kind === 'number' ? api.DOUBLE : kind === 'date' ? api.DATE : api.VARCHAR;
}

/** A result that is no error, as a value of `resultType`. Blank is NULL. */
export function resultValue(api: Api, returns: Returns, outcome: Outcome): DuckDBValue {
  if (returns.kind === 'table') {
    // A blank in place of the table: a required input was NULL.
    if (!Array.isArray(outcome)) return null;
    const { columns } = returns;
    return api.listValue(
      outcome
        .slice(1)
        .map((row) =>
          api.structValue(
            Object.fromEntries(
              columns.map(({ heading, kind }, index) => [heading, cellValue(api, kind, row[index] ?? '')]),
            ),
          ),
        ),
    );
  }
  if (Array.isArray(outcome)) return null;
  return cellValue(api, returns.kind, outcome);
}

function cellValue(api: Api, kind: Column['kind'] | Returns['kind'], cell: CellOutput): DuckDBValue {
  if (cell === '' || typeof cell === 'object') return null;
  switch (kind) {
    case 'number':
      return typeof cell === 'number' ? cell : null;
    case 'date': {
      const day = typeof cell === 'number' ? dayOfSerial(cell) : undefined;
      return day === undefined ? null : new api.DuckDBDateValue(day);
    }
    case 'yesNo':
      return cell === true;
    default:
      return String(cell);
  }
}
