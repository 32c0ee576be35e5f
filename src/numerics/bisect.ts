/**
 * Where a function that changes sign once between two places is zero, by halving.
 *
 * @param f - negative at `low` and positive at `high`, or the other way round
 * @returns the place within `tolerance`
 */
export function bisect(
  f: (x: number) => number,
  span: { readonly low: number; readonly high: number; readonly tolerance: number },
): number {
  let { low, high } = span;
  const rising = f(high) > 0;
  while (high - low > span.tolerance) {
    const middle = (low + high) / 2;
    // Neighbouring numbers have no middle.
    if (middle <= low || middle >= high) break;
    if (f(middle) > 0 === rising) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
