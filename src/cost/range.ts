/** An input as the estimator knows it. All three equal: known exactly. */
export interface Range {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** Worked out from the life of a new unit: both are long together, or short. */
  readonly follows?: 'newLife';
}

export const exactly = (value: number): Range => ({ low: value, likely: value, high: value });

export const isExact = ({ low, high }: Range): boolean => low === high;
