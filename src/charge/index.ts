export { capacityShare, shareEnds } from './capacity-share.ts';
export type { ShareEnd } from './capacity-share.ts';
/** Weighed charge: what is in, what may go in, the next step; cylinders and hoses. */
export { chargeFoundKg } from './charge-found.ts';
export { chargePlan } from './charge-plan.ts';
export type { PlanRequest, PlanRow } from './charge-plan.ts';
export { chargeRoomKg } from './charge-room.ts';
export type { GateState } from './charging-gates.ts';
export { cylinderAnswers, cylinderFigure } from './cylinder-answers.ts';
export type { CylinderAnswer, CylinderQuestion } from './cylinder-answers.ts';
export { cylinderKinds } from './cylinder-kinds.ts';
export type { CylinderKind } from './cylinder-kinds.ts';
export {
  cylinderVolumeM3,
  eightyPercentKg,
  liquidFullMassKg,
  liquidFullTemperatureK,
  netLimitKg,
  regulatoryMaximumKg,
} from './cylinder-limit.ts';
export type { CylinderFill } from './cylinder-limit.ts';
export { cylinderNetKg } from './cylinder-net.ts';
export { requireFillable } from './cylinder-rules.ts';
export type { CylinderFacts } from './cylinder-rules.ts';
export { hoseContentKg, hoseStates, hoseVolumeM3 } from './hose-content.ts';
export type { HoseFilling, HoseState } from './hose-content.ts';
export { massBases } from './mass-basis.ts';
export type { ChargeState, MassBasis } from './mass-basis.ts';
export { aimReached, nextStepKg, stepKg } from './next-step.ts';
export type { ReadingAndAim, StepRequest } from './next-step.ts';
export { weighInKg } from './weigh-in.ts';
export type { WeighInRequest } from './weigh-in.ts';
