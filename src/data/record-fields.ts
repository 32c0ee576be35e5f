import type { Field } from './record-codec.ts';

/** Which fields each kind of record has, and in which order they are packed. */

const gwpFields: readonly Field[] = [
  ['gwp.AR4', 'number'],
  ['gwp.AR5', 'number'],
  ['gwp.AR6', 'number'],
  ['gwp.US exchange value', 'number'],
  ['gwp.EU 2024/573', 'number'],
];

const commonFacts: readonly Field[] = [
  ['designation', 'text'],
  ['type', 'word'],
  ['safetyClass', 'word'],
  ['usualOil', 'word'],
];

export const pureFields: readonly Field[] = [
  ...commonFacts,
  ['names', 'texts'],
  ...gwpFields,
  ['odp', 'number'],
  ['lowerFlammabilityLimitKgPerM3', 'number'],
  ['onlyInBlends', 'flag'],
  ['factoryCharge', 'flag'],
];

export const blendFields: readonly Field[] = [
  ...commonFacts,
  ['components', 'shares'],
  ['standardBoilingPointC', 'numbers'],
  ['names', 'texts'],
  ['lowerFlammabilityLimitKgPerM3', 'number'],
  ['factoryCharge', 'flag'],
  ['compositionUnconfirmed', 'flag'],
];

const numbersUnder = (path: string, names: readonly string[]): Field[] =>
  names.map((name) => [`${path}.${name}`, 'numbers']);

export const equationFields: readonly Field[] = [
  ['designation', 'text'],
  ['source', 'word'],
  ['molarMassKgPerMol', 'number'],
  ['gasConstant', 'number'],
  ['acentricFactor', 'number'],
  ['reducingTemperatureK', 'number'],
  ['reducingDensityMolPerM3', 'number'],
  ['criticalTemperatureK', 'number'],
  ['criticalPressurePa', 'number'],
  ['lowestTemperatureK', 'number'],
  ['highestTemperatureK', 'number'],
  ['highestPressurePa', 'number'],
  ...numbersUnder('residual.exponential', ['n', 'd', 't', 'l', 'm']),
  ['ideal.logTau', 'number'],
  ...numbersUnder('ideal.power', ['n', 't']),
  ...numbersUnder('ideal.planckEinstein', ['n', 't']),
  ...numbersUnder('ideal.heatCapacity', ['c', 't']),
  ...numbersUnder('residual.gaussian', ['n', 'd', 't', 'eta', 'epsilon', 'beta', 'gamma']),
  ['bubblePressure.T', 'number'],
  ['bubblePressure.p', 'number'],
  ...numbersUnder('bubblePressure', ['n', 't']),
  ['dewPressure.T', 'number'],
  ['dewPressure.p', 'number'],
  ...numbersUnder('dewPressure', ['n', 't']),
  ...numbersUnder('residual.nonAnalytic', ['n', 'a', 'b', 'beta', 'A', 'B', 'C', 'D']),
];

export const pairFields: readonly Field[] = [
  ['first', 'text'],
  ['second', 'text'],
  ['source', 'word'],
  ['betaT', 'number'],
  ['gammaT', 'number'],
  ['betaV', 'number'],
  ['gammaV', 'number'],
  ['xi', 'number'],
  ['zeta', 'number'],
  ['departure', 'word'],
  ['departureFactor', 'number'],
];

export const departureFields: readonly Field[] = [
  ['name', 'word'],
  ['source', 'word'],
  ['n', 'numbers'],
  ['d', 'numbers'],
  ['t', 'numbers'],
  ['l', 'numbers'],
];

export const tableFields: readonly Field[] = [
  ['designation', 'text'],
  ['scale', 'numbers'],
  ['low', 'number'],
  ['high', 'number'],
  ['bubble', 'counts'],
  ['dew', 'counts'],
  ['liquid', 'counts'],
  ['vapor', 'counts'],
  ['heat', 'counts'],
];
