import type { Field } from './field.ts';

/** Why a heading that means a field is not read. */
export type HeadingProblem =
  /** Its unit measures something else, or nothing: figures in an unknown unit are no figures. */
  | { readonly kind: 'wrong-unit'; readonly heading: string; readonly field: Field; readonly unit: string }
  /** An earlier column holds the field already. */
  | {
      readonly kind: 'repeated';
      readonly heading: string;
      readonly field: Field;
      readonly earlierHeading: string;
    };

/** The problem as a sentence; what to do about it is decided by its kind. */
export function headingProblemText(problem: HeadingProblem): string {
  const { heading, field } = problem;
  return problem.kind === 'wrong-unit'
    ? `"${heading}": ${problem.unit} is no unit for ${field.heading}`
    : `"${heading}" and "${problem.earlierHeading}" both mean ${field.heading}`;
}
