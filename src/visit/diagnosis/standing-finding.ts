import { emptyWord, matchesWord, mismatchWord, nonCondensablesWord } from '../standing-check.ts';
import { withinDoubtWord } from '../../verdict-words.ts';

/** What a standing pressure showed, as data. A check that was refused is no finding. */
export const standingFindings = ['matches', 'non-condensables', 'mismatch', 'empty', 'within doubt'] as const;

export type StandingFinding = (typeof standingFindings)[number];

const firstWords: readonly (readonly [string, StandingFinding])[] = [
  [matchesWord, 'matches'],
  [nonCondensablesWord, 'non-condensables'],
  [mismatchWord, 'mismatch'],
  [emptyWord, 'empty'],
  [withinDoubtWord, 'within doubt'],
];

/** The finding behind a verdict of the standing-pressure check that stands in a cell as text; undefined when there is none. */
export function standingFinding(verdict: string | undefined): StandingFinding | undefined {
  const text = verdict?.trim().toLowerCase() ?? '';
  return firstWords.find(([word]) => text.startsWith(word.toLowerCase()))?.[1];
}

/** Something else than the gas on the nameplate is inside: no word on the amount. */
export function isOtherGasFound(finding: StandingFinding | undefined): boolean {
  return finding === 'non-condensables' || finding === 'mismatch';
}
