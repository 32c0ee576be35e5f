import { figure, phrase } from '../../phrase.ts';
import { dayOf } from './duty.ts';
import { evacuationLevel, pressureClass } from './evacuation-level.ts';
import type { DutyQuestion, EquipmentUse, Rule } from './duty.ts';
import { gwpUnitedStates, isFlammable, isNatural, isOnlyHfo, isOzoneDepleting } from './gas-kind.ts';

const poundKg = 0.453_592_37;

/** A small appliance is sealed at the factory and holds no more: 40 CFR 82.152. */
export const smallApplianceKg = 5 * poundKg;

/** 40 CFR 82.157(a). */
export const ozoneScopeKg = 50 * poundKg;

/** 40 CFR 84.106. */
export const hfcScopeKg = 15 * poundKg;
const hfcScopeGwp = 53;

/** Leak rates per year above which an appliance in scope must be repaired: 40 CFR 82.157(c)(2). */
export const repairLimit: Readonly<Record<EquipmentUse, number>> = {
  'comfort cooling': 0.1,
  'commercial refrigeration': 0.2,
  'industrial process': 0.3,
};

/** Days to repair a leak above the limit; the longer time where an industrial process must stop for it. 40 CFR 82.157(d), from memory. */
export const repairDays = { usual: 30, shutdown: 120 } as const;

/** Share to recover from a small appliance: 40 CFR 82.156(b) and 82.158. */
export const recoveredShare = { compressorRuns: 0.9, compressorDead: 0.8 } as const;

/** 4 inches of mercury, the other way to fulfil it. */
const recoveryVacuum = '4 inHg of vacuum';

function isSmall({ sealed, fullChargeKg }: DutyQuestion): boolean {
  return sealed && fullChargeKg <= smallApplianceKg * (1 + 1e-9);
}

const charge = (question: DutyQuestion) => figure(question.fullChargeKg, 'mass');
const limit = (massKg: number) => figure(massKg, 'cylinderMass', { decimals: 0 });

const venting: Rule = {
  name: 'No venting',
  source: '40 CFR 82.154(a)',
  known: 'read',
  judge: ({ refrigerant }) => {
    if (!isNatural(refrigerant)) {
      return {
        answer: 'Applies',
        why: phrase`${refrigerant.designation} is a fluorinated gas; the size of the unit does not matter`,
        duty: phrase`Recover it; release none on purpose`,
      };
    }
    return {
      answer: 'Check',
      why: phrase`${refrigerant.designation} is exempt in listed uses, R-290 in self-contained room units among them (list of March 2017)`,
      duty: isFlammable(refrigerant)
        ? phrase`Exempt or not, it burns: recover it or follow the maker's outdoor procedure`
        : phrase`Look the use up in the list`,
    };
  },
};

const certification: Rule = {
  name: 'Certified technician',
  source: '40 CFR 82.161; Type I by a training text, Types II and III from memory',
  known: 'from memory',
  judge: (question) =>
    isNatural(question.refrigerant)
      ? {
          answer: 'Check',
          why: phrase`exempt gases are outside the rule`,
          duty: phrase`A person trained for flammable gas, all the same`,
        }
      : {
          answer: 'Applies',
          why: phrase`opening the circuit needs a certificate, however small the unit`,
          duty: isSmall(question)
            ? phrase`Type I or Universal; keep a copy at the place of business`
            : phrase`${pressureClass(question.refrigerant) === 'low' ? 'Type III' : 'Type II'} or Universal; keep a copy at the place of business`,
        },
};

const recovery: Rule = {
  name: 'Recovery before opening or disposal',
  source: '40 CFR 82.156(b), 82.158',
  known: 'read',
  judge: (question) => {
    if (isNatural(question.refrigerant)) {
      return { answer: 'Check', why: phrase`tied to the venting ban`, duty: phrase`See "No venting"` };
    }
    if (!isSmall(question)) {
      return {
        answer: 'Applies',
        why: phrase`${charge(question)} is above the ${limit(smallApplianceKg)} of a small appliance, or it is not sealed`,
        duty: phrase`Evacuate to ${evacuationLevel(question.refrigerant, question.fullChargeKg)}, level recalled, confirm`,
      };
    }
    const { compressorRuns, compressorDead } = recoveredShare;
    return {
      answer: 'Applies',
      why: phrase`small appliance: sealed, ${charge(question)} of at most ${limit(smallApplianceKg)}`,
      duty: phrase`Recover 90 %, ${figure(compressorRuns * question.fullChargeKg, 'mass')}; 80 %, ${figure(compressorDead * question.fullChargeKg, 'mass')}, when the compressor is dead; or reach ${recoveryVacuum}`,
    };
  },
};

const sales: Rule = {
  name: 'Sales restriction',
  source: '40 CFR 82.154(c), by EPA section 608 sales pages, 2021; three years from memory',
  known: 'from summaries',
  judge: ({ refrigerant }) =>
    isNatural(refrigerant)
      ? { answer: 'Does not apply', why: phrase`not a restricted gas`, duty: [] }
      : {
          answer: 'Applies',
          why: phrase`${refrigerant.designation} is sold to certified technicians and their employers`,
          duty: phrase`Keep purchase records three years`,
        },
};

const leakRepairOzone: Rule = {
  name: 'Leak rate and repair, ozone-depleting gas',
  source: '40 CFR 82.157; 85 FR 14150',
  known: 'read',
  judge: (question) => {
    if (!isOzoneDepleting(question.refrigerant)) {
      return {
        answer: 'Does not apply',
        why: phrase`${question.refrigerant.designation} does not deplete ozone; since 10 April 2020 the rule covers such gases only`,
        duty: [],
      };
    }
    if (question.fullChargeKg < ozoneScopeKg) {
      return {
        answer: 'Does not apply',
        why: phrase`the rule begins at ${limit(ozoneScopeKg)}, this unit holds ${charge(question)}`,
        duty: [],
      };
    }
    return inScope(question);
  },
};

const leakRepairHfc: Rule = {
  name: 'Leak rate and repair, HFC',
  source: '40 CFR 84.106, by summaries of 89 FR 82682',
  known: 'from summaries',
  fromDay: dayOf(2026, 1, 1),
  judge: (question) => {
    const { refrigerant, fullChargeKg, residential, use } = question;
    const gwp = gwpUnitedStates(refrigerant);
    if (fullChargeKg < hfcScopeKg) {
      return {
        answer: 'Does not apply',
        why: phrase`the rule begins at ${limit(hfcScopeKg)}, this unit holds ${charge(question)}`,
        duty: [],
      };
    }
    if (
      isNatural(refrigerant) ||
      isOzoneDepleting(refrigerant) ||
      isOnlyHfo(refrigerant) ||
      (gwp !== undefined && gwp <= hfcScopeGwp)
    ) {
      return {
        answer: 'Does not apply',
        why: phrase`${refrigerant.designation} is no HFC above a GWP of ${String(hfcScopeGwp)}`,
        duty: [],
      };
    }
    if (residential && use === 'comfort cooling') {
      return {
        answer: 'Does not apply',
        why: phrase`residential and light-commercial air conditioning is left out (wording recalled, confirm)`,
        duty: [],
      };
    }
    return inScope(question);
  },
};

function inScope(question: DutyQuestion) {
  return {
    answer: 'Applies' as const,
    why: phrase`${charge(question)} is in scope`,
    duty: phrase`Work out the leak rate at every addition; repair above ${figure(repairLimit[question.use], 'percent', { decimals: 0 })} a year within ${String(repairDays.usual)} days, ${String(repairDays.shutdown)} where an industrial process must be shut down, and verify it; report 125 % in a calendar year by March 1`,
  };
}

const disposal: Rule = {
  name: 'Disposal record',
  source: '40 CFR 82.156(a)(3)',
  known: 'read',
  judge: (question) => {
    const { fullChargeKg } = question;
    const applies =
      fullChargeKg > smallApplianceKg && fullChargeKg < ozoneScopeKg && !isNatural(question.refrigerant);
    return applies
      ? {
          answer: 'Applies',
          why: phrase`${charge(question)} lies between ${limit(smallApplianceKg)} and ${limit(ozoneScopeKg)}`,
          duty: phrase`On disposal record place, date, kind, monthly ounces recovered and sent for reclaim; keep three years`,
        }
      : {
          answer: 'Does not apply',
          why: phrase`it covers units between ${limit(smallApplianceKg)} and ${limit(ozoneScopeKg)}`,
          duty: [],
        };
  },
};

const invoice: Rule = {
  name: 'Invoice with the amount added',
  source: 'EPA section 608 recordkeeping page, 2021',
  known: 'read',
  judge: (question) =>
    question.fullChargeKg >= ozoneScopeKg && isOzoneDepleting(question.refrigerant)
      ? {
          answer: 'Applies',
          why: phrase`${charge(question)} of an ozone-depleting gas`,
          duty: phrase`Give the owner an invoice with the amount added`,
        }
      : {
          answer: 'Does not apply',
          why: phrase`it begins at ${limit(ozoneScopeKg)} of an ozone-depleting gas`,
          duty: phrase`Write the weighed ounces on the invoice all the same`,
        },
};

const flammableRetrofit: Rule = {
  name: 'No flammable gas in a unit built for another',
  source: '40 CFR 82 Subpart G, Appendices R and V',
  known: 'read',
  judge: ({ refrigerant }) =>
    isFlammable(refrigerant)
      ? {
          answer: 'Applies',
          why: phrase`${refrigerant.designation} is class ${refrigerant.safetyClass}: only a unit designed and labeled for it may hold it`,
          duty: phrase`Check the label before charging`,
        }
      : {
          answer: 'Applies',
          why: phrase`the unit is built for ${refrigerant.designation}, class ${refrigerant.safetyClass}`,
          duty: phrase`Never charge an A2L or A3 gas into it`,
        },
};

const newProducts: Rule = {
  name: 'GWP below 700 in new units',
  source: '40 CFR 84.54(a)(1)',
  known: 'read',
  judge: () => ({
    answer: 'Does not apply',
    why: phrase`it binds units made or imported from 1 January 2025, not the service of this one`,
    duty: phrase`Mind it when quoting a replacement`,
  }),
};

/** What may bind a unit in the United States, whole-unit duties first. */
export const unitedStates: readonly Rule[] = [
  venting,
  certification,
  recovery,
  sales,
  leakRepairOzone,
  leakRepairHfc,
  disposal,
  invoice,
  flammableRetrofit,
  newProducts,
];
