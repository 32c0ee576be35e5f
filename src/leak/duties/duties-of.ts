import { phrase } from '../../phrase.ts';
import type { Duty, DutyQuestion, Region, Rule } from './duty.ts';
import { rulesCheckedDay } from './duty.ts';
import { europeanUnion } from './european-union.ts';
import { unitedStates } from './united-states.ts';

const rulesOf: Readonly<Record<Region, readonly Rule[]>> = { US: unitedStates, EU: europeanUnion };

/**
 * Every rule of a region against one unit: whether it binds, why or why not, and what to do.
 * No legal advice: each answer carries its source, whether it was read or recalled, and the day of the last check.
 */
export function dutiesOf(region: Region, question: DutyQuestion): readonly Duty[] {
  return rulesOf[region].map((rule) => ({
    rule: rule.name,
    source: rule.source,
    known: rule.known,
    checkedDay: rulesCheckedDay,
    ...judgeOn(rule, question),
  }));
}

function judgeOn(rule: Rule, question: DutyQuestion): Pick<Duty, 'answer' | 'why' | 'duty'> {
  const { fromDay } = rule;
  if (fromDay !== undefined && question.onDay !== undefined && question.onDay < fromDay) {
    const from = new Date(fromDay * 86_400_000).toISOString().slice(0, 10);
    return { answer: 'Does not apply', why: phrase`not in force before ${from}`, duty: [] };
  }
  return rule.judge(question);
}
