import type { Phrase } from '../../../phrase.ts';
import { figure, phrase } from '../../../phrase.ts';
import type { Answer } from '../answer-form.ts';
import { answerOf } from '../answer-form.ts';
import { headings } from '../ask.ts';
import type { Evidence, Rule } from '../evidence.ts';

/** A leak that was found and not mended in this visit takes every ounce with it. */
export const knownLeak: Rule = ({ known, set }) => {
  if (!known.leakOpen) return undefined;
  const place = set.leakPlace === undefined ? phrase`` : phrase` (${set.leakPlace})`;
  return answerOf('find-leak-first', phrase`Mend the leak first`, [
    phrase`a leak was found${place} and is not mended: no top-up before it is, and before the repair is verified`,
  ]);
};

/** What earlier visits say, for any answer; nothing when there is nothing to say. */
export function historyLine({ known }: Evidence): readonly Phrase[] {
  const lines: Phrase[] = [];
  if (known.topUps > 0) {
    const times = known.topUps === 1 ? 'once' : `${String(known.topUps)} times`;
    lines.push(
      phrase`topped up ${times} before, ${figure(known.toppedUpKg, 'mass')} in all since the last proved repair: it leaks`,
    );
  }
  if (known.earlierLeakOpen)
    lines.push(phrase`an earlier visit found a leak, and no repair of it is on record`);
  return lines;
}

/** True when earlier visits say that this unit leaks. */
export function leaksByHistory({ known }: Evidence): boolean {
  return known.topUps > 0 || known.earlierLeakOpen;
}

/** A unit that was topped up before and is low again leaks; said more strongly each time. */
export function leakBeforeTopUp(evidence: Evidence, why: readonly Phrase[]): Answer | undefined {
  const { known } = evidence;
  if (!leaksByHistory(evidence)) return undefined;
  const again =
    known.topUps >= 2
      ? phrase`another top-up would be the ${ordinal(known.topUps + 1)}: find the leak and mend it, or quote a repair or a new unit`
      : phrase`low again after a top-up: find the leak before any more goes in`;
  return answerOf(
    'find-leak-first',
    phrase`Find the leak first`,
    [...historyLine(evidence), again, ...why],
    [headings.leakPlace],
  );
}

function ordinal(count: number): string {
  const last = count % 10;
  if (count % 100 >= 11 && count % 100 <= 13) return `${String(count)}th`;
  return `${String(count)}${last === 1 ? 'st' : last === 2 ? 'nd' : last === 3 ? 'rd' : 'th'}`;
}
