import type { Expected, JudgedCause } from './fault-signs.ts';
import { faultSigns, judgedCauses } from './fault-signs.ts';
import type { Sign, Symptom } from './symptoms.ts';

export type SignsFound = ReadonlyMap<Symptom, Sign>;

/**
 * How often a symptom with this expectation is found so. A slight fault leaves a sign inside its band, so "normal" speaks
 * little against a fault, the opposite sign much. Own weights, no source; only their order matters to the ranking.
 */
const chances: Readonly<Record<Expected, Readonly<Record<Sign, number>>>> = {
  '+': { '+': 0.7, '0': 0.25, '-': 0.05 },
  '+0': { '+': 0.47, '0': 0.47, '-': 0.06 },
  '0': { '+': 0.1, '0': 0.8, '-': 0.1 },
  '-0': { '+': 0.06, '0': 0.47, '-': 0.47 },
  '-': { '+': 0.05, '0': 0.25, '-': 0.7 },
  '?': { '+': 0.3, '0': 0.4, '-': 0.3 },
};

/** A sound unit leaves its bands by more than the doubt of the instruments about three times in a thousand. */
const chancesWhenSound: Readonly<Record<Sign, number>> = { '+': 0.0015, '0': 0.997, '-': 0.0015 };

function chanceOf(cause: JudgedCause, symptom: Symptom, sign: Sign): number {
  const expected = faultSigns[cause][symptom];
  return (cause === 'nothing wrong' && expected === '0' ? chancesWhenSound : chances[expected])[sign];
}

/** Product of the chances of everything found, given one cause. */
export function likelihood(cause: JudgedCause, found: SignsFound): number {
  let product = 1;
  for (const [symptom, sign] of found) product *= chanceOf(cause, symptom, sign);
  return product;
}

/** Shares of belief after the signs found, all causes alike before; they add up to 1. */
export function beliefs(found: SignsFound): ReadonlyMap<JudgedCause, number> {
  const products = judgedCauses.map((cause) => [cause, likelihood(cause, found)] as const);
  const sum = products.reduce((total, [, product]) => total + product, 0);
  return new Map(products.map(([cause, product]) => [cause, product / sum]));
}

/** How well one symptom would tell two causes apart: 0 not at all, 1 for certain. */
export function discrimination(symptom: Symptom, one: JudgedCause, other: JudgedCause): number {
  const a = chances[faultSigns[one][symptom]];
  const b = chances[faultSigns[other][symptom]];
  return (Math.abs(a['+'] - b['+']) + Math.abs(a['0'] - b['0']) + Math.abs(a['-'] - b['-'])) / 2;
}

/** Whether a sign found is what the cause leads to, speaks against it, or neither. */
export function bearing(cause: JudgedCause, symptom: Symptom, sign: Sign): 'for' | 'against' | 'neither' {
  const expected = faultSigns[cause][symptom];
  if (expected === '?') return 'neither';
  if (expected.includes(sign)) return expected.length > 1 && sign === '0' ? 'neither' : 'for';
  return 'against';
}
