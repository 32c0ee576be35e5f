/** What became of one action at the page. */
export interface Outcome {
  readonly notice: string;
  readonly wasRefused: boolean;
  /** The log was read anew from other bytes. */
  readonly isRebuilt: boolean;
}

export const fine: Outcome = { notice: '', wasRefused: false, isRebuilt: false };
export const refused = (notice: string): Outcome => ({ notice, wasRefused: true, isRebuilt: false });
