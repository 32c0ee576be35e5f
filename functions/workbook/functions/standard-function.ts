import type { Place } from '../formula/compiled-formula.ts';
import type { Operand } from '../model/operand.ts';
import type { CellValue, Matrix } from '../model/values.ts';
import type { CellError } from '../model/values.ts';

/**
 * How a function takes an argument. The first four are single values: a range is cut to the formula's own row or column,
 * an array makes the function run once for each of its values, and an error is the result at once.
 * `any` is a single value that may be an error; `operand` is the reference, array or value as it stands; `array` reads
 * references whole and gives rows of values, and lets operators inside it work on whole ranges.
 */
export type Taking = 'number' | 'text' | 'boolean' | 'value' | 'any' | 'operand' | 'array';

/** A question mark marks an argument that may be missing. */
export type TakingSpelling = Taking | `${Taking}?`;

interface Taken {
  number: number;
  text: string;
  boolean: boolean;
  value: Exclude<CellValue, CellError>;
  any: CellValue;
  operand: Operand;
  array: Matrix;
}

export type ArgumentOf<Spelling> = Spelling extends `${infer Base extends Taking}?`
  ? Taken[Base] | undefined
  : Spelling extends Taking
    ? Taken[Spelling]
    : never;

export type ArgumentsOf<Spellings extends readonly TakingSpelling[]> = {
  -readonly [Index in keyof Spellings]: ArgumentOf<Spellings[Index]>;
};

/** A standard worksheet function as data. */
export interface StandardFunction {
  readonly takes: readonly Taking[];
  /** Fewest and most arguments. */
  readonly fewest: number;
  readonly most: number;
  /** How many of the last `takes` repeat for further arguments. */
  readonly repeating: number;
  readonly isVolatile: boolean;
  readonly run: (place: Place, args: readonly never[]) => Operand;
}

export type FunctionTable = Readonly<Record<string, StandardFunction>>;

function declare(
  spellings: readonly TakingSpelling[],
  repeating: number,
  run: (place: Place, ...args: never[]) => Operand,
): StandardFunction {
  const required = spellings.findIndex((spelling) => spelling.endsWith('?'));
  return {
    takes: spellings.map((spelling) => spelling.replace('?', '') as Taking),
    fewest: required < 0 ? spellings.length : required,
    most: repeating > 0 ? 255 : spellings.length,
    repeating,
    isVolatile: false,
    run: (place, args) => run(place, ...args),
  };
}

/** A function whose result depends on its arguments alone. */
export function pure<const Spellings extends readonly TakingSpelling[]>(
  takes: Spellings,
  run: (...args: ArgumentsOf<Spellings>) => Operand,
): StandardFunction {
  return declare(takes, 0, (_place, ...args) => run(...(args as unknown as ArgumentsOf<Spellings>)));
}

/** A function that also looks at where it stands: the cell, the date system, the clock. */
export function placed<const Spellings extends readonly TakingSpelling[]>(
  takes: Spellings,
  run: (place: Place, ...args: ArgumentsOf<Spellings>) => Operand,
): StandardFunction {
  return declare(takes, 0, (place, ...args) => run(place, ...(args as unknown as ArgumentsOf<Spellings>)));
}

/** A function whose last argument repeats: the first ones come singly, the repeated ones as a list. */
export function repeated<
  const Spellings extends readonly TakingSpelling[],
  const Rest extends TakingSpelling,
>(
  takes: Spellings,
  rest: Rest,
  run: (place: Place, first: ArgumentsOf<Spellings>, rest: readonly ArgumentOf<Rest>[]) => Operand,
): StandardFunction {
  return declare([...takes, rest], 1, (place, ...args) =>
    run(place, args.slice(0, takes.length) as unknown as ArgumentsOf<Spellings>, args.slice(takes.length)),
  );
}

/** A function whose last two arguments repeat in pairs, like a range and its criterion. */
export function paired<const Spellings extends readonly TakingSpelling[]>(
  takes: Spellings,
  pair: readonly [Taking, Taking],
  run: (place: Place, first: ArgumentsOf<Spellings>, rest: readonly Operand[]) => Operand,
): StandardFunction {
  return {
    ...declare([...takes, ...pair], 2, (place, ...args) =>
      run(place, args.slice(0, takes.length) as unknown as ArgumentsOf<Spellings>, args.slice(takes.length)),
    ),
  };
}

/** The same function, worked out again in every run. */
export function volatile(declaration: StandardFunction): StandardFunction {
  return { ...declaration, isVolatile: true };
}
