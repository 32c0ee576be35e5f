import { figure, phrase } from '../../phrase.ts';
import type { Phrase } from '../../phrase.ts';
import type { DutyQuestion, Rule } from './duty.ts';
import { gwpEuropeanUnion, isNatural, isOnlyHfo, isOzoneDepleting } from './gas-kind.ts';

/** Regulation (EU) 2024/573, Article 5: from here on leak checks are due. [kg CO2e] */
export const leakCheckKgCo2e = 5000;
/** The same, hermetically sealed and labeled. */
export const sealedLeakCheckKgCo2e = 10_000;
/** Gases of Annex II, section 1, by mass. */
const hfoLeakCheckKg = 1;
export const sealedHfoLeakCheckKg = 2;
/** Hermetically sealed and labeled, in a residential building. */
export const sealedResidentialKg = 3;

/** Least months between checks by tonnes of CO2e; twice as long with a leak detection system. */
export const checkIntervals: readonly { readonly belowKgCo2e: number; readonly months: number }[] = [
  { belowKgCo2e: 50_000, months: 12 },
  { belowKgCo2e: 500_000, months: 6 },
  { belowKgCo2e: Infinity, months: 3 },
];

/** Charge [kg] at which a gas reaches a mass of CO2-equivalent. */
export function chargeAtKg(kgCo2e: number, gwp: number): number {
  return kgCo2e / gwp;
}

const outside = (question: DutyQuestion): boolean =>
  isNatural(question.refrigerant) || isOzoneDepleting(question.refrigerant);

function notFluorinated({ refrigerant }: DutyQuestion): Phrase {
  return isOzoneDepleting(refrigerant)
    ? phrase`${refrigerant.designation} depletes ozone: Regulation (EU) 2024/590 binds instead`
    : phrase`${refrigerant.designation} is no fluorinated gas`;
}

const release: Rule = {
  name: 'No intentional release',
  source: 'Regulation (EU) 2024/573, Article 4',
  known: 'from memory',
  judge: (question) =>
    outside(question)
      ? { answer: 'Does not apply', why: notFluorinated(question), duty: [] }
      : {
          answer: 'Applies',
          why: phrase`${question.refrigerant.designation} is a fluorinated gas; the size of the unit does not matter`,
          duty: phrase`Recover it; repair a leak without delay and check again within one month`,
        },
};

const personnel: Rule = {
  name: 'Certified person, recovery',
  source: 'Regulation (EU) 2024/573, Articles 8 and 10',
  known: 'from memory',
  judge: (question) =>
    outside(question)
      ? {
          answer: 'Check',
          why: notFluorinated(question),
          duty: phrase`See the rules for its own kind of gas`,
        }
      : {
          answer: 'Applies',
          why: phrase`opening the circuit needs a certified person, however small the unit`,
          duty: phrase`Recover before repair and disposal`,
        },
};

const leakCheck: Rule = {
  name: 'Leak checks',
  source: 'Regulation (EU) 2024/573, Article 5',
  known: 'read',
  judge: (question) => {
    if (outside(question)) return { answer: 'Does not apply', why: notFluorinated(question), duty: [] };
    const exemption = exemptBecause(question);
    if (exemption) return { answer: 'Does not apply', why: exemption, duty: [] };
    const gwp = gwpEuropeanUnion(question.refrigerant);
    if (gwp === undefined) {
      return {
        answer: 'Check',
        why: phrase`no GWP on the basis of the regulation is at hand`,
        duty: phrase`Look it up`,
      };
    }
    const kgCo2e = gwp * question.fullChargeKg;
    const months = checkIntervals.find(({ belowKgCo2e }) => kgCo2e < belowKgCo2e)?.months ?? 3;
    return {
      answer: 'Applies',
      why: phrase`${figure(kgCo2e, 'carbonDioxideMass')} is above the limit`,
      duty: phrase`Check for leaks every ${String(months)} months, ${String(2 * months)} with a leak detection system; record it`,
    };
  },
};

function exemptBecause(question: DutyQuestion): Phrase | undefined {
  const { refrigerant, fullChargeKg, sealed, residential } = question;
  const chargeText = figure(fullChargeKg, 'mass');
  if (sealed && residential && fullChargeKg < sealedResidentialKg) {
    return phrase`sealed, labeled, in a residential building: begins at ${figure(sealedResidentialKg, 'mass')}, this unit holds ${chargeText}`;
  }
  if (isOnlyHfo(refrigerant)) {
    const limitKg = sealed ? sealedHfoLeakCheckKg : hfoLeakCheckKg;
    return fullChargeKg < limitKg
      ? phrase`begins at ${figure(limitKg, 'mass')} for this gas, this unit holds ${chargeText}`
      : undefined;
  }
  const gwp = gwpEuropeanUnion(refrigerant);
  const limitKgCo2e = sealed ? sealedLeakCheckKgCo2e : leakCheckKgCo2e;
  if (gwp === undefined || gwp * fullChargeKg >= limitKgCo2e) return undefined;
  return phrase`begins at ${figure(limitKgCo2e, 'carbonDioxideMass', { decimals: 0 })}, for this gas ${figure(chargeAtKg(limitKgCo2e, gwp), 'mass')}; this unit holds ${chargeText}`;
}

const records: Rule = {
  name: 'Records of leak checks',
  source: 'Regulation (EU) 2024/573, Article 7',
  known: 'read',
  judge: (question) => {
    const { answer } = leakCheck.judge(question);
    return answer === 'Applies'
      ? { answer, why: phrase`the unit must be checked for leaks`, duty: phrase`Keep the records five years` }
      : { answer, why: phrase`tied to the leak checks`, duty: [] };
  },
};

const newProducts: Rule = {
  name: 'GWP limits of new units',
  source: 'Regulation (EU) 2024/573, Annex IV, points 8(a) and 8(b)',
  known: 'read',
  judge: () => ({
    answer: 'Does not apply',
    why: phrase`it binds units placed on the market: plug-in movable ones below 150 since 2020, self-contained ones up to 12 kW below 150 from 2027 (750 where safety needs it)`,
    duty: phrase`Mind it when quoting a replacement`,
  }),
};

/** What may bind a unit in the European Union. */
export const europeanUnion: readonly Rule[] = [release, personnel, leakCheck, records, newProducts];
