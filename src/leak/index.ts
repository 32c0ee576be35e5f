/** Leak rate, history, forecast, the rules that bind, and CO2-equivalent. */
export { additionReasons, countsAsLeak, mergedByDay } from './additions.ts';
export type { Addition, AdditionReason } from './additions.ts';
export { co2EquivalentKg } from './co2-equivalent.ts';
export { dutiesOf } from './duties/duties-of.ts';
export { equipmentUses, regions } from './duties/duty.ts';
export type { Duty, DutyAnswer, DutyQuestion, EquipmentUse, HowKnown, Region } from './duties/duty.ts';
export { defaultLimitShare, dueDay, forecastBasis } from './forecast.ts';
export type { ForecastRequest } from './forecast.ts';
export { currentIntervals, intervalsOf } from './intervals.ts';
export type { Interval, LeakRecord } from './intervals.ts';
export { annualizedRate, lastAnnualizedRate, leakRateMethods, rollingRate } from './leak-rate.ts';
export type { LeakRateMethod } from './leak-rate.ts';
export { annualShare, daysToLimit, decayPerDay, lossModels, lossRateKgPerS } from './loss.ts';
export type { Loss, LossModel } from './loss.ts';
export { lossRange } from './loss-range.ts';
export type { LossRange } from './loss-range.ts';
export {
  confidenceWord,
  tellingLosses,
  trendOf,
  trendVerdict,
  trendWords,
  usualScaleStepKg,
} from './trend.ts';
export type { TrendWord } from './trend.ts';
export { leakHistory, leftOut } from './history.ts';
export type { HistoryRow } from './history.ts';
