import type { Suspect } from './evidence.ts';
import type { JudgedCause } from './fault-signs.ts';
import type { ReadingSet } from './reading-set.ts';
import type { Weighed, WeighedCause } from './weigh-causes.ts';

/** Shares of belief from which a cause is called so: three to one for, and three to seventeen. Own choice, no source. */
const likelyFrom = 0.75;
const possibleFrom = 0.15;
/** A sound unit shares its readings with faults too slight to show, so belief in it stays lower than in a fault that shows. Own choice. */
const soundLikelyFrom = 0.5;
/**
 * One sign alone makes nothing likely: without the reading that speaks most for a cause the others must still speak for it. Nothing left speaks
 * neither way, but for the last digits of a sum.
 */
const leastRest = 1e-6;
/** Air inside without a standing pressure that says so and without a circuit known to be opened takes this much. Own choice. */
const airLikelyFrom = 0.9;
/** Low charge and restriction starve the coil alike: below these odds they are not told apart. Own choice. */
const toldApartFrom = 5;

/** A cause, or two that the readings do not tell apart. */
export interface RankedCause {
  readonly causes: readonly JudgedCause[];
  /** What stands for it in the calculation. */
  readonly suspect: Suspect;
  readonly belief: number;
  readonly word: 'likely' | 'possible' | 'unlikely';
}

/** Every cause with its own belief and word, the likeliest first. */
export function singleCauses(weighed: Weighed, set: ReadingSet): readonly RankedCause[] {
  return weighed.causes.map((cause) => ({
    causes: [cause.hypothesis],
    suspect: cause,
    belief: cause.belief,
    word: wordOf(cause, weighed, set),
  }));
}

function wordOf(
  { hypothesis, belief }: WeighedCause,
  weighed: Weighed,
  { standing, openedBefore }: ReadingSet,
): RankedCause['word'] {
  if (hypothesis === 'nothing wrong')
    return belief >= soundLikelyFrom ? 'likely' : belief >= possibleFrom ? 'possible' : 'unlikely';
  const airUnheard =
    hypothesis === 'non-condensables' && standing !== 'non-condensables' && openedBefore !== true;
  const severalSigns = weighed.withoutStrongest > leastRest;
  if (belief >= (airUnheard ? airLikelyFrom : likelyFrom) && severalSigns) return 'likely';
  return belief >= possibleFrom ? 'possible' : 'unlikely';
}

/**
 * For the lines that people read: a starved coil is one line while its two causes are not told apart, and then it may be
 * likely where neither of them is.
 */
export function groupedCauses(weighed: Weighed, set: ReadingSet): readonly RankedCause[] {
  const single = singleCauses(weighed, set);
  const starved = single.filter(({ causes: [name] }) => name === 'low charge' || name === 'restriction');
  const [more, less] = starved;
  if (more === undefined || less === undefined) return single;
  const belief = more.belief + less.belief;
  const together =
    belief >= likelyFrom && more.word !== 'likely' && more.belief < toldApartFrom * less.belief;
  if (!together) return single;
  const word = weighed.withoutStrongest > leastRest ? 'likely' : 'possible';
  const group: RankedCause = { causes: ['low charge', 'restriction'], suspect: more.suspect, belief, word };
  return [group, ...single.filter((cause) => !starved.includes(cause))];
}
