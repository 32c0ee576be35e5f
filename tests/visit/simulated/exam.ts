import { confidenceOf, diagnose } from '../../../src/visit/diagnosis/diagnose.ts';
import type { ResponseTable } from '../../../src/visit/diagnosis/response-form.ts';
import type { SimulatedSet } from '../../../src/visit/diagnosis/tools/simulated-sets.ts';

/**
 * What is counted, in per cent.
 *
 * Sets: of one mask, gates open or not looked at ("complete", "partial"), running on its rated supply. Where dirt or frost was seen the
 * answer is what was seen, and no ranking is examined. `sets` counts those with a fault, `sound` those without.
 * - first, second: the line of rank 1, or 1 or 2, names a true cause. Of two causes either is right; of a line that names a pair not told apart either half.
 * - likely: the first line is right and called likely.
 * - wrong: the first line is called likely and names a fault the set has not.
 * - missed: of the sets that lost a tenth of their capacity or more, those whose first line is "nothing wrong, likely".
 * - alarm: of the sound sets, those whose first line is a fault, likely.
 * - cleared: of the sound sets, those whose first line is "nothing wrong, likely".
 * - falseCharge: sets of overcharge, low airflow, dirty condenser or air inside, without low charge or restriction, in which low charge is called likely,
 *   alone or in a pair: a count.
 */
export interface Score {
  readonly sets: number;
  readonly first: number;
  readonly second: number;
  readonly likely: number;
  readonly wrong: number;
  readonly missed: number;
  readonly alarm: number;
  readonly cleared: number;
  readonly falseCharge: number;
}

export const masks = ['a', 'b', 'c'] as const;
export type Mask = (typeof masks)[number];

/** First two lines of one set. */
export interface Answer {
  readonly set: SimulatedSet;
  readonly lines: readonly { readonly causes: readonly string[]; readonly likely: boolean }[];
}

export function isExamined({ row, causes }: SimulatedSet): boolean {
  return (row['looks'] === 'complete' || row['looks'] === 'partial') && !causes.includes('supply fault');
}

/** Answer to one set, with the shipped table or another one. */
export function answerTo(set: SimulatedSet, table?: ResponseTable): Answer {
  const diagnosis = diagnose(set.readings, table);
  if (diagnosis.basis === 'seen') throw new Error(`a gate is closed in set ${set.row['set_no'] ?? ''}`);
  const unseen = diagnosis.gates.filter(({ state }) => state === 'not seen');
  return {
    set,
    lines: diagnosis.grouped.slice(0, 2).map((ranked) => ({
      causes: ranked.causes,
      likely: confidenceOf(ranked, set.readings, unseen) === 'likely',
    })),
  };
}

const neverShortOfCharge = ['overcharge', 'low indoor airflow', 'dirty condenser', 'non-condensables'];

/** @returns figures by mask */
export function scoresOf(answers: readonly Answer[]): Readonly<Record<Mask, Score>> {
  return Object.fromEntries(
    masks.map((mask) => [mask, scoreOf(answers.filter(({ set }) => set.row['mask'] === mask))]),
  ) as Record<Mask, Score>;
}

function scoreOf(answers: readonly Answer[]): Score {
  const isSound = ({ set }: Answer): boolean => set.causes.includes('nothing wrong');
  const faulty = answers.filter((answer) => !isSound(answer));
  const sound = answers.filter(isSound);
  const costly = faulty.filter(({ set }) => Number(set.row['capacity_fraction']) <= 0.9);
  const right = ({ set, lines }: Answer, index: number): boolean =>
    lines[index]?.causes.some((cause) => set.causes.includes(cause)) ?? false;
  const firstLikely = ({ lines }: Answer): boolean => lines[0]?.likely ?? false;
  const saysSound = ({ lines }: Answer): boolean => lines[0]?.causes[0] === 'nothing wrong';
  const share = (of: readonly Answer[], when: (answer: Answer) => boolean): number =>
    (100 * of.filter(when).length) / of.length;
  return {
    sets: faulty.length,
    first: share(faulty, (answer) => right(answer, 0)),
    second: share(faulty, (answer) => right(answer, 0) || right(answer, 1)),
    likely: share(faulty, (answer) => right(answer, 0) && firstLikely(answer)),
    wrong: share(faulty, (answer) => !right(answer, 0) && firstLikely(answer) && !saysSound(answer)),
    missed: share(costly, (answer) => saysSound(answer) && firstLikely(answer)),
    alarm: share(sound, (answer) => !saysSound(answer) && firstLikely(answer)),
    cleared: share(sound, (answer) => saysSound(answer) && firstLikely(answer)),
    falseCharge: answers.filter(
      (answer) =>
        firstLikely(answer) &&
        answer.lines[0]!.causes.includes('low charge') &&
        answer.set.causes.every((cause) => neverShortOfCharge.includes(cause)),
    ).length,
  };
}

/** Score by mask as rows of a printed table. */
export function scoreRows(scores: Readonly<Record<Mask, Score>>): string[] {
  const names = Object.keys(scores.a) as (keyof Score)[];
  return names.map((name) => {
    const digits = name === 'sets' || name === 'falseCharge' ? 0 : 1;
    return `${name.padEnd(12)}${masks.map((mask) => scores[mask][name].toFixed(digits).padStart(8)).join('')}`;
  });
}
