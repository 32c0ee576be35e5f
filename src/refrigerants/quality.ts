import { estimateDoubtsK } from '../data/estimate-doubts.ts';
import type { BlendFacts } from '../data/facts-form.ts';

/** How far the saturation temperatures of a refrigerant can be trusted. */
export interface QualityGrade {
  readonly grade: 'published' | 'published, differs from the standard' | 'partly estimated';
  /** Doubt of a saturation temperature [K]. */
  readonly doubtK: number;
  readonly reason: string;
  /** Pairs of components without published mixing parameters, as "R-22 with R-124". */
  readonly estimatedPairs: readonly string[];
}

/** Vapor pressures of the equations for single substances are within 0.2 % or so: less than this in temperature. */
const doubtOfPureK = 0.1;
/** Blends fitted as one substance: within 0.5 % in pressure. */
const doubtOfPseudoPureK = 0.2;
/** The least doubt given to a mixture model, about 1 % in pressure. */
const doubtOfMixtureK = 0.4;
/** Beyond this difference from the standard's boiling points a fully published model is graded down too. */
const agreementK = 0.5;

export function gradeOfPure(): QualityGrade {
  return {
    grade: 'published',
    doubtK: doubtOfPureK,
    reason: 'published reference equation of state for this substance',
    estimatedPairs: [],
  };
}

function upToTenth(valueK: number): number {
  return Math.ceil(valueK * 10 - 1e-6) / 10;
}

/** Grade of a blend from how its model was made and from its boiling points at 101.325 kPa against standard 34. */
export function gradeOfBlend(inputs: {
  readonly facts: BlendFacts;
  readonly pseudoPure: boolean;
  readonly estimatedPairs: readonly string[];
  readonly bubbleK: number;
  readonly dewK: number;
}): QualityGrade {
  const { facts, pseudoPure, estimatedPairs } = inputs;
  const [bubbleC, dewC] = facts.standardBoilingPointC;
  const differenceK = Math.max(
    Math.abs(inputs.bubbleK - 273.15 - bubbleC),
    Math.abs(inputs.dewK - 273.15 - dewC),
  );
  if (estimatedPairs.length > 0) {
    return {
      grade: 'partly estimated',
      doubtK: Math.max(1, upToTenth(differenceK), upToTenth(estimateDoubtsK[facts.designation] ?? 0)),
      reason: `no published mixing parameters for ${estimatedPairs.join(', ')}: borrowed from a measured relative or combined without correction; the doubt is the largest difference from the same model without correction anywhere on the saturation curve, or from the boiling points of standard 34 (from memory), at least 1 K`,
      estimatedPairs,
    };
  }
  if (differenceK > agreementK) {
    return {
      grade: 'published, differs from the standard',
      doubtK: upToTenth(differenceK),
      reason:
        'all mixing parameters are published, but the boiling points differ from those of standard 34 (from memory) by the doubt given',
      estimatedPairs: [],
    };
  }
  return {
    grade: 'published',
    doubtK: pseudoPure
      ? Math.max(doubtOfPseudoPureK, upToTenth(differenceK))
      : Math.max(doubtOfMixtureK, upToTenth(differenceK)),
    reason: pseudoPure
      ? 'published equation of state and saturation pressures for this blend'
      : 'mixture model with published parameters for every pair; boiling points agree with standard 34 (from memory)',
    estimatedPairs: [],
  };
}
