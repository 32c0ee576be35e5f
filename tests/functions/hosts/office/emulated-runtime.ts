/** How Excel's custom-functions runtime behaves towards an add-in, as far as ours depends on it. */
export class EmulatedExcel {
  private readonly code = new Map<string, (...given: unknown[]) => unknown>();
  private readonly metadata = new Map<string, FunctionMetadata>();
  private readonly allowErrors: boolean;
  /** Desktop hands a blank cell over as 0, the web as null. */
  private readonly blank: 0 | null;

  /** What the add-in's script sees. */
  readonly CustomFunctions = {
    associate: (id: string, code: (...given: unknown[]) => unknown): void => {
      this.code.set(id.toUpperCase(), code);
    },
    Error: EmulatedError,
    ErrorCode: {
      invalidValue: '#VALUE!',
      notAvailable: '#N/A',
      divisionByZero: '#DIV/0!',
      invalidNumber: '#NUM!',
      nullReference: '#NULL!',
      invalidName: '#NAME?',
      invalidReference: '#REF!',
    },
  };

  constructor(functionsJson: string, blank: 0 | null) {
    const { functions, allowErrorForDataTypeAny = false } = JSON.parse(functionsJson) as FunctionList;
    for (const each of functions) this.metadata.set(each.id.toUpperCase(), each);
    this.allowErrors = allowErrorForDataTypeAny;
    this.blank = blank;
  }

  associated(): readonly string[] {
    return [...this.code.keys()];
  }

  /** A formula in a cell: values in order, `undefined` for one that is left out, null for a blank cell, ranges as rows. */
  evaluate(id: string, values: readonly unknown[]): Shown {
    const metadata = this.metadata.get(id.toUpperCase());
    const code = this.code.get(id.toUpperCase());
    if (!metadata || !code) return '#NAME?';
    const { parameters } = metadata;
    if (values.length > parameters.length)
      throw new Error('Excel does not take this formula: too many values');
    const given: unknown[] = [];
    for (const [index, parameter] of parameters.entries()) {
      const value = values[index];
      if (value === undefined) {
        if (parameter.optional !== true && index >= values.length) {
          throw new Error(`Excel does not take this formula: ${parameter.name} is missing`);
        }
        given.push(null);
        continue;
      }
      const cells = Array.isArray(value) ? (value as unknown[][]) : [[value]];
      if (cells.flat().some((cell) => cell instanceof EmulatedError) && !this.allowErrors) return '#VALUE!';
      const handed = cells.map((row) =>
        row.map((cell) => (cell === null || cell === '' ? this.blank : cell)),
      );
      if (parameter.dimensionality === 'matrix') given.push(handed);
      else if (handed.flat().length === 1) given.push(handed[0]?.[0]);
      else return '#VALUE!';
    }
    // The runtime's own last argument; a function that takes its arguments as they come would read it as a value.
    given.push({ functionName: metadata.id, address: undefined, isInValuePreview: false });
    try {
      return shown(code(...given), metadata);
    } catch (error) {
      return error instanceof EmulatedError ? error : '#VALUE!';
    }
  }
}

export class EmulatedError {
  readonly code: string;
  readonly message: string | undefined;
  constructor(code: string, message?: string) {
    this.code = code;
    this.message = message;
  }
}

export type ShownCell = number | string | boolean | EmulatedError;
export type Shown = ShownCell | ShownCell[][];

interface FunctionList {
  readonly allowErrorForDataTypeAny?: boolean;
  readonly functions: readonly FunctionMetadata[];
}

interface FunctionMetadata {
  readonly id: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly optional?: boolean;
    readonly dimensionality?: 'scalar' | 'matrix';
  }[];
  readonly result: { readonly dimensionality?: 'scalar' | 'matrix' };
}

/** What the sheet shows of a returned value. */
function shown(value: unknown, { result }: FunctionMetadata): Shown {
  if (result.dimensionality !== 'matrix') return Array.isArray(value) ? '#VALUE!' : shownCell(value);
  if (!Array.isArray(value) || value.length === 0) return '#VALUE!';
  const rows = value as unknown[];
  const width = Array.isArray(rows[0]) ? rows[0].length : 0;
  if (width === 0 || rows.some((row) => !Array.isArray(row) || row.length !== width)) return '#VALUE!';
  const cells = (rows as unknown[][]).map((row) => row.map(shownCell));
  // One NaN fails the whole call.
  if (cells.flat().includes('failed')) return '#VALUE!';
  return cells.length === 1 && width === 1 ? (cells[0]?.[0] ?? '#VALUE!') : cells;
}

function shownCell(value: unknown): ShownCell {
  if (value === null) return 0;
  if (typeof value === 'number') return Number.isFinite(value) ? value : 'failed';
  if (typeof value === 'string' || typeof value === 'boolean' || value instanceof EmulatedError) return value;
  return 'failed';
}
