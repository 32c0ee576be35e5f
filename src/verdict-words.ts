/** What a verdict asks of the reader: go on, look closer before going on, or stop. */
export type Asks = 'go' | 'care' | 'stop';

/** Said by any check whose readings may not be judged. */
export const refusedWord = 'Refused';

/** Said by any check whose figure may lie on either side of its limit. */
export const withinDoubtWord = 'Within doubt';

/**
 * Every first word a verdict may have, with what it asks of the reader. Checks, the colours of sheets and the page read this
 * one table; `Verdict` takes no word that is not in it.
 */
export const verdictWords = [
  // Any check.
  { word: refusedWord, asks: 'care' },
  { word: withinDoubtWord, asks: 'care' },
  // Readiness.
  { word: 'Ready', asks: 'go' },
  { word: 'Look first', asks: 'care' },
  { word: 'Wait', asks: 'care' },
  { word: 'Cold outdoors', asks: 'care' },
  { word: 'Hot outdoors', asks: 'care' },
  { word: 'Fix supply', asks: 'stop' },
  { word: 'Thaw first', asks: 'stop' },
  { word: 'Clean first', asks: 'stop' },
  // Readings of the running unit.
  { word: 'On target', asks: 'go' },
  { word: 'In range', asks: 'go' },
  { word: 'Normal', asks: 'go' },
  { word: 'Low', asks: 'care' },
  { word: 'High', asks: 'care' },
  { word: 'Floodback or probe', asks: 'stop' },
  { word: 'Flash gas or probe', asks: 'care' },
  { word: 'Too cold', asks: 'care' },
  { word: 'Too hot', asks: 'stop' },
  // Standing pressure.
  { word: 'Matches', asks: 'go' },
  { word: 'Non-condensables', asks: 'stop' },
  { word: 'Mismatch', asks: 'stop' },
  { word: 'Empty', asks: 'stop' },
  // Electricity.
  { word: 'In band', asks: 'go' },
  { word: 'Frequency', asks: 'care' },
  { word: 'Unbalanced', asks: 'care' },
  { word: 'Drop', asks: 'care' },
  { word: 'Good', asks: 'go' },
  { word: 'Weak', asks: 'care' },
  // The opened circuit.
  { word: 'Holds', asks: 'go' },
  { word: 'Read again', asks: 'care' },
  { word: 'Leak', asks: 'stop' },
  { word: 'Dry and tight', asks: 'go' },
  { word: 'Keep pumping', asks: 'care' },
  { word: 'Moisture', asks: 'care' },
  { word: 'Moisture or leak', asks: 'care' },
  { word: '1/4 in', asks: 'care' },
  { word: '5/16 in', asks: 'care' },
  { word: '3/8 in', asks: 'care' },
  { word: '1/2 in', asks: 'care' },
  { word: '5/8 in', asks: 'care' },
  // Rooms and flammable gas.
  { word: 'Not flammable', asks: 'go' },
  { word: 'Small charge', asks: 'care' },
  { word: 'Large enough', asks: 'care' },
  { word: 'Too small', asks: 'stop' },
  // Records and leaks.
  { word: 'Fine', asks: 'go' },
  { word: 'Look again', asks: 'care' },
  { word: 'Gaps', asks: 'care' },
  { word: 'Reject', asks: 'stop' },
  { word: 'No loss', asks: 'go' },
  { word: 'One interval', asks: 'care' },
  { word: 'Steady', asks: 'care' },
  { word: 'Slowing', asks: 'care' },
  { word: 'Growing', asks: 'stop' },
  // Money.
  { word: 'Repair', asks: 'go' },
  { word: 'Replace', asks: 'go' },
  { word: 'Top up', asks: 'care' },
  { word: 'Do nothing', asks: 'care' },
  { word: 'Too close to call', asks: 'care' },
  { word: 'Warranty first', asks: 'care' },
  { word: 'Cannot tell yet', asks: 'care' },
] as const satisfies readonly { readonly word: string; readonly asks: Asks }[];

export type VerdictWord = (typeof verdictWords)[number]['word'];

/** The word a verdict begins with as it stands in a cell, "Wait: 6 min left" or "Wait"; undefined for any other text. */
export function verdictWordOf(text: string): VerdictWord | undefined {
  const first = (text.split(':')[0] ?? '').trim().toLowerCase();
  return verdictWords.find(({ word }) => word.toLowerCase() === first)?.word;
}
