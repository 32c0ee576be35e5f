export interface Band {
  readonly lowest: number;
  readonly highest: number;
}

export type Place = 'low' | 'inside' | 'high' | 'within doubt';

/** A limit hit exactly counts as inside, whatever conversions did to its last digits. */
const slack = 1e-9;

/**
 * Where a figure lies in a band, ends included, or that its own doubt reaches across an edge.
 *
 * @param figure - value with the half-width of its doubt, in the unit of the band
 */
export function placeInBand(figure: { readonly value: number; readonly doubt: number }, band: Band): Place {
  const { value, doubt } = figure;
  const tiny = slack * Math.max(1, Math.abs(value));
  if (value < band.lowest - tiny) return band.lowest - value >= doubt - tiny ? 'low' : 'within doubt';
  if (value > band.highest + tiny) return value - band.highest >= doubt - tiny ? 'high' : 'within doubt';
  const room = Math.min(value - band.lowest, band.highest - value);
  return room >= doubt - tiny ? 'inside' : 'within doubt';
}
