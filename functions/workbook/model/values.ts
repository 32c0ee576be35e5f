/** Error texts a worksheet cell can hold. The last three came with spilling formulas; older programs do not know them. */
export type ErrorText =
  | '#NULL!'
  | '#DIV/0!'
  | '#VALUE!'
  | '#REF!'
  | '#NAME?'
  | '#NUM!'
  | '#N/A'
  | '#GETTING_DATA'
  | '#SPILL!'
  | '#CALC!'
  | '#FIELD!';

/**
 * An error as the value of a cell. It is a value, not an exception: it travels through formulas like any other.
 * The message says why, where somebody knows; it is kept while the error is passed on from cell to cell.
 */
export class CellError {
  readonly code: ErrorText;
  readonly message: string | undefined;

  constructor(code: ErrorText, message?: string) {
    this.code = code;
    this.message = message;
  }

  toString(): string {
    return this.code;
  }
}

/** What one cell holds; `null` is a blank cell. */
export type CellValue = number | string | boolean | null | CellError;

/** Whether two values are the same to every formula: minus zero is not zero, an error is its code and its message. */
export function sameValue(one: CellValue, other: CellValue): boolean {
  if (Object.is(one, other)) return true;
  return (
    one instanceof CellError &&
    other instanceof CellError &&
    one.code === other.code &&
    one.message === other.message
  );
}

/** Rows of values, all rows equally long, at least one by one. */
export type Matrix = CellValue[][];

export const nullError = new CellError('#NULL!');
export const divisionByZero = new CellError('#DIV/0!');
export const valueError = new CellError('#VALUE!');
export const referenceError = new CellError('#REF!');
export const nameError = new CellError('#NAME?');
export const numberError = new CellError('#NUM!');
export const notAvailable = new CellError('#N/A');
export const spillError = new CellError('#SPILL!');
export const emptyArrayError = new CellError('#CALC!');

const plain = new Map<string, CellError>(
  [
    nullError,
    divisionByZero,
    valueError,
    referenceError,
    nameError,
    numberError,
    notAvailable,
    spillError,
    emptyArrayError,
    new CellError('#GETTING_DATA'),
    new CellError('#FIELD!'),
  ].map((error) => [error.code, error]),
);

/** The error a file or a formula spells; anything unheard of counts as #VALUE!. */
export function errorFromText(text: string): CellError {
  return plain.get(text.toUpperCase()) ?? valueError;
}

const meanings: Readonly<Record<ErrorText, string>> = {
  '#NULL!': 'the two ranges have no cell in common',
  '#DIV/0!': 'division by zero, or an average of nothing',
  '#VALUE!': 'a value of the wrong kind',
  '#REF!': 'a reference to a cell, sheet or column that does not exist',
  '#NAME?': 'an unknown name or function',
  '#NUM!': 'a number outside what the function can work with',
  '#N/A': 'nothing found or nothing to report',
  '#GETTING_DATA': 'the value had not arrived when the file was saved',
  '#SPILL!': 'the cells the result needs are not empty',
  '#CALC!': 'the result would be an empty array',
  '#FIELD!': 'the field does not exist',
};

/** The reason to show for an error: its own message, or what the code means in general. */
export function describeError(error: CellError): string {
  return error.message ?? meanings[error.code];
}
