import type {
  DuckDBDateValue,
  DuckDBDecimalValue,
  DuckDBListType,
  DuckDBListValue,
  DuckDBStructType,
  DuckDBStructValue,
  DuckDBTimestampValue,
  DuckDBType,
  DuckDBValue,
} from '@duckdb/node-api';
import { CalcError } from '../../../../src/errors.ts';
import type { Argument, CellInput } from '../../../runtime/cells.ts';
import { serialOfDay } from '../../../runtime/dates.ts';
import type { Parameter } from '../../../runtime/define.ts';

const microsecondsPerDay = 86_400_000_000n;

/** What becomes of the values of a column of this type; an error value stands for types that no function takes. */
type CellReader = (value: DuckDBValue) => CellInput;

function cellReader(type: DuckDBType): CellReader {
  switch (type.alias ?? typeName(type)) {
    case 'BOOLEAN':
    case 'VARCHAR':
    case 'TINYINT':
    case 'SMALLINT':
    case 'INTEGER':
    case 'UTINYINT':
    case 'USMALLINT':
    case 'UINTEGER':
    case 'FLOAT':
    case 'DOUBLE':
    case 'ENUM':
      return (value) => value as number | string | boolean;
    case 'BIGINT':
    case 'UBIGINT':
    case 'HUGEINT':
    case 'UHUGEINT':
      return Number;
    case 'DECIMAL':
      return (value) => (value as DuckDBDecimalValue).toDouble();
    case 'DATE':
      return (value) => serialOfDay((value as DuckDBDateValue).days);
    case 'TIMESTAMP':
      return (value) => serialOfDay(daysOf((value as DuckDBTimestampValue).micros));
    default:
      return () => unsuitable(type);
  }
}

function typeName(type: DuckDBType): string {
  return type.toString().replace(/\(.*/s, '');
}

/** Towards the past, also before 1970. */
function daysOf(microseconds: bigint): number {
  const part = microseconds % microsecondsPerDay;
  return Number((microseconds - part) / microsecondsPerDay) - (part < 0n ? 1 : 0);
}

function unsuitable(type: DuckDBType): CalcError {
  return new CalcError(
    `a value of type ${type.toString()} cannot be read; cast it to a number, text or date`,
    {
      code: 'invalid-argument',
      received: type.toString(),
      limit: 'number, text, date or yes/no',
    },
  );
}

/**
 * Reads the values of one argument's column. A list parameter takes a LIST; a table parameter a LIST of STRUCTs, or a
 * plain LIST where a single row is wanted.
 */
export function argumentReader(
  parameter: Parameter | undefined,
  type: DuckDBType,
): (value: DuckDBValue) => Argument {
  let read: (value: DuckDBValue) => Argument = cellReader(type);
  if (isList(type) && parameter?.kind === 'list') read = columnReader(type.valueType);
  if (isList(type) && parameter?.kind === 'table') read = tableReader(type.valueType);
  return (value) => (value === null ? null : read(value));
}

function columnReader(itemType: DuckDBType): (value: DuckDBValue) => Argument {
  const read = cellReader(itemType);
  return (value) => items(value).map((item) => [item === null ? null : read(item)]);
}

function tableReader(itemType: DuckDBType): (value: DuckDBValue) => Argument {
  if (!isStruct(itemType)) {
    const read = cellReader(itemType);
    return (value) => [items(value).map((item) => (item === null ? null : read(item)))];
  }
  const readers = itemType.entryTypes.map(cellReader);
  return (value) => [
    itemType.entryNames,
    ...items(value).map((row) =>
      itemType.entryNames.map((name, index) => {
        const cell = row === null ? null : ((row as DuckDBStructValue).entries[name] ?? null);
        return cell === null ? null : readers[index]?.(cell);
      }),
    ),
  ];
}

function items(value: DuckDBValue): readonly DuckDBValue[] {
  return (value as DuckDBListValue).items;
}

function isList(type: DuckDBType): type is DuckDBListType {
  return 'valueType' in type && type.toString().endsWith('[]');
}

function isStruct(type: DuckDBType): type is DuckDBStructType {
  return 'entryNames' in type && type.toString().startsWith('STRUCT');
}
