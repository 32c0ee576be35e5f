/** The words of the dropdowns. Lower case; shared by the records and by whoever reads them. */
export const visitReasons = [
  'no cool',
  'weak cool',
  'ice',
  'trips',
  'noise',
  'leak',
  'routine',
  'warranty',
] as const;

export const stages = ['as found', 'after cleaning', 'after step', 'final'] as const;

export const certificates = ['I', 'II', 'III', 'Universal'] as const;

export const powerSources = [
  'shore 20 A',
  'shore 30 A',
  'shore 50 A',
  'generator',
  'inverter',
  'house',
] as const;

export const compressorStates = ['running', 'off', 'short cycling'] as const;

export const gaugeReferences = ['gauge', 'absolute', 'gauge zeroed at site'] as const;

export const airflowSources = ['measured', 'chart', 'assumed'] as const;

export const leakPlaces = [
  'line tap',
  'process tube',
  'brazed joint',
  'evaporator',
  'condenser',
  'capillary',
  'compressor',
  'other',
] as const;

export const leakMethods = ['soap', 'electronic', 'dye', 'nitrogen', 'ultrasound'] as const;

export const testGases = ['nitrogen'] as const;

export const causeWords = [
  'low charge',
  'overcharge',
  'restriction',
  'low indoor airflow',
  'dirty condenser',
  'non-condensables',
  'weak compressor',
  'supply fault',
  'ice',
  'nothing wrong',
] as const;

export const tapSizes = ['1/4', '5/16', '3/8', '1/2', '5/8'] as const;

export const unitKinds = ['roof', 'window', 'through-wall', 'portable', 'other'] as const;

export const meterings = ['capillary', 'orifice', 'valve'] as const;

export const criticalUses = ['none', 'medical', 'livestock', 'server'] as const;

export const unitStatuses = ['in use', 'stored', 'retired', 'scrapped'] as const;

export const chargeMethods = ['nameplate', 'measured'] as const;

export const safetyClasses = ['A1', 'A2L', 'A2', 'A3', 'B1', 'B2L', 'B2', 'B3'] as const;

export const movementPurposes = ['charge', 'recover', 'transfer', 'return', 'reclaim', 'purchase'] as const;

export const cylinderStatuses = ['in use', 'full', 'empty', 'out of test', 'returned'] as const;

export const cylinderPlaces = ['truck', 'shop', 'supplier'] as const;

export const priceUnits = ['oz', 'each', 'h', 'mile', 'trip'] as const;

export const instrumentKinds = ['scale', 'gauge', 'probe', 'meter', 'vacuum gauge', 'leak detector'] as const;
