import type { CellValue } from './values.ts';

/** What one argument of a custom function arrives as: undefined omitted, null a blank cell, a matrix for a range. */
export type CustomArgument = CellValue | CellValue[][] | undefined;

/** The functions a workbook may call beside the standard ones. The engine knows nothing else about them. */
export interface CustomFunctions {
  /** Own identifier for a name as spelled in a formula ("NS.NAME", "_xldudf_NS_NAME"); undefined when it is none of ours. */
  resolve(name: string): string | undefined;
  /** Calls a function; the answer may hold errors. Throwing counts as #VALUE! with the exception's message. */
  call(id: string, args: readonly CustomArgument[]): CellValue | CellValue[][];
  /** True when the function wants to see single error values itself; otherwise the first one is the result. */
  takesErrors?(id: string): boolean;
  /** True when the answer may differ although the arguments do not, so that it is asked again in every run. */
  isVolatile?(id: string): boolean;
}

/** No functions beside the standard ones. */
export const noCustomFunctions: CustomFunctions = {
  resolve: () => undefined,
  call: () => null,
};
