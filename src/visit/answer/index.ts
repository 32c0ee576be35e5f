/** The answer: what to do next after a set of readings, from everything that is known by then. */
export { actions, everyAction } from './actions.ts';
export type { Action } from './actions.ts';
export { answerSet, answerSets, precedence } from './answer.ts';
export type { Answered, Question } from './answer.ts';
export type { Answer } from './answer-form.ts';
export type { Certificate, Impossible, Instruments, Person, UnitFacts, VisitSet } from './facts.ts';
export { nothingKnown } from './knowledge.ts';
export type { Knowledge } from './knowledge.ts';
export { defaultInstruments } from './default-instruments.ts';
