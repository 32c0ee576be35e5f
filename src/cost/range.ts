/** An input as the estimator knows it. All three equal: known exactly. */
export interface Range {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

export const exactly = (value: number): Range => ({ low: value, likely: value, high: value });

export const isExact = ({ low, high }: Range): boolean => low === high;
