import { standardAtmospherePa } from '../../air/index.ts';
import type { ReadingSet } from './reading-set.ts';

/** What lies around the unit and moves the readings of a sound one: outdoor air, return air, its wet bulb, thickness of the air. */
export const weatherCount = 4;

/**
 * The weather as numbers of about -1.4 to 1.4, each with the doubt of what was not measured or lies beyond what the
 * expectations were fitted to.
 */
export interface Weather {
  readonly values: readonly number[];
  /** Standard deviation of each, in its own scale; 0 where it is known. */
  readonly doubts: readonly number[];
}

interface Scale {
  readonly middle: number;
  readonly unit: number;
}

const outdoor: Scale = { middle: 305, unit: 10 };
const indoor: Scale = { middle: 299.5, unit: 5 };
const wetBulb: Scale = { middle: 292, unit: 4 };
/** Share of the sea-level pressure. */
const thickness: Scale = { middle: 0.87, unit: 0.1 };

/** Range of the sets the expectations were fitted to (65 to 115 degF outdoors, 55 to 75 degF wet bulb, to 8,000 ft) and a little more. */
const furthest = 1.6;

/** Return air without a wet bulb: about half relative humidity. Common practice, no source. */
const usualDepressionK = 6;
const depressionDoubtK = 2.8;
/** What is left open by weather nobody measured. Own choice: a summer's day. */
const outdoorDoubtK = 7;
const indoorDoubtK = 3;

/** Weather of a reading set. */
export function weatherOf(set: ReadingSet): Weather {
  const { returnTemperatureK, returnWetBulbK } = set;
  const outdoorK = set.gates.outdoorTemperatureK;
  const returnK = returnTemperatureK ?? indoor.middle;
  const share = (set.atmospherePa ?? standardAtmospherePa(0)) / standardAtmospherePa(0);
  const parts = [
    placed(outdoorK ?? outdoor.middle, outdoor, outdoorK === undefined ? outdoorDoubtK : 0),
    placed(returnK, indoor, returnTemperatureK === undefined ? indoorDoubtK : 0),
    placed(
      returnWetBulbK ?? returnK - usualDepressionK,
      wetBulb,
      returnWetBulbK === undefined ? depressionDoubtK : 0,
    ),
    placed(share, thickness, 0),
  ];
  return { values: parts.map(({ value }) => value), doubts: parts.map(({ doubt }) => doubt) };
}

/** Beyond the range the expectation of its edge is kept, and half of what lies beyond is doubt: no curve is drawn on where nothing was seen. */
function placed(value: number, { middle, unit }: Scale, doubt: number): { value: number; doubt: number } {
  const scaled = (value - middle) / unit;
  const kept = Math.min(Math.max(scaled, -furthest), furthest);
  return { value: kept, doubt: Math.hypot(doubt / unit, (scaled - kept) / 2) };
}
