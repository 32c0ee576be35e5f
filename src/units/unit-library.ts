import { createUnitClass } from 'mathjs';

/** What is asked of the conversion library: a value in a unit, and that value in another one. */
export interface LibraryUnit {
  toSI(): LibraryUnit;
  toNumber(unit: string | null): number;
}

declare module 'mathjs' {
  /** Missing from the library's own types. */
  export const createUnitClass: (parts: object) => new (value: number, unit: string) => LibraryUnit;
}

/** The library writes 5/9 as a fraction; nothing else of its exact arithmetic is needed. */
class Ratio {
  readonly top: number;
  readonly bottom: number;
  constructor(top: number, bottom = 1) {
    this.top = top;
    this.bottom = bottom;
  }
  get isFraction(): true {
    return true;
  }
  valueOf(): number {
    return this.top / this.bottom;
  }
}

/** Stands for number types that no unit of ours is made of. */
class Unused {
  static readonly I = undefined;
}

const isRatio = (value: unknown): value is Ratio => value instanceof Ratio;

/**
 * The library's unit class over plain numbers. Its usual set-up brings arbitrary precision, complex numbers and
 * matrices along: five times the size of everything that is used here.
 */
const NumberUnit = createUnitClass({
  config: { number: 'number', predictable: false },
  addScalar: (a: number, b: number) => a + b,
  subtractScalar: (a: number, b: number) => a - b,
  multiplyScalar: (a: number, b: number) => a * b,
  divideScalar: (a: number, b: number) => a / b,
  pow: Math.pow,
  abs: Math.abs,
  fix: Math.trunc,
  round: Math.round,
  equal: (a: number, b: number) => a === b,
  isNumeric: (value: unknown) => typeof value === 'number' || isRatio(value),
  format: String,
  number: (value: unknown) => Number(value),
  Complex: Unused,
  BigNumber: Unused,
  Fraction: Ratio,
});

export function libraryUnit(value: number, unit: string): LibraryUnit {
  return new NumberUnit(value, unit);
}
