import type { HeardEvidence } from '../../../src/charge/heard-evidence.ts';
import type { StepRequest } from '../../../src/charge/next-step.ts';
import type { Arguments } from '../../runtime/define.ts';
import * as shared from './shared-parameters.ts';

/** What the next step and the whole plan ask for. */
export const stepParameters = {
  nameplate: shared.nameplateParameter,
  mass_basis: shared.massBasisParameter,
  added: shared.addedParameter,
  found: shared.foundParameter,
  suction_saturation: shared.suctionSaturationParameter,
  aim: shared.aimParameter,
  minutes_since_change: shared.minutesSinceChangeParameter,
  ready: shared.readyParameter,
  scale_step: shared.scaleStepParameter,
  hose: shared.hoseParameter,
  margin: shared.marginParameter,
} as const;

export function stepRequest(given: Arguments<typeof stepParameters>): StepRequest {
  return {
    nameplateKg: given.nameplate,
    massBasis: given.mass_basis,
    addedKg: given.added,
    foundKg: given.found,
    hoseKg: given.hose,
    suctionSaturationK: given.suction_saturation,
    aimK: given.aim,
    sinceChangeS: given.minutes_since_change,
    ready: given.ready,
    scaleStepKg: given.scale_step,
    marginKg: given.margin,
  };
}

export function heardEvidence(given: Arguments<typeof shared.evidenceParameters>): HeardEvidence {
  return { superheat: given.superheat, split: given.split, standing: given.standing, cause: given.cause };
}
