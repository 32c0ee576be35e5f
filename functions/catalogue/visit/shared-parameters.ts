import { cleanlinessChoices, frostChoices } from '../../../src/visit/gates.ts';
import { airProbeK, liquidGaugePa, probeK, suctionGaugePa } from '../../../src/visit/instrument-accuracy.ts';
import { roleChoices } from '../../../src/visit/superheat-check.ts';
import { meteringChoices } from '../../../src/visit/target-superheat.ts';
import { fahrenheitDifferenceK, fahrenheitK, minutesS } from '../../../src/units/trade.ts';

/** The visit log rejects what lies outside these as well: no such air is met, a typing slip or another unit is. */
const air = (lowestF: number, highestF: number) =>
  ({
    kind: 'number',
    quantity: 'temperature',
    minimum: fahrenheitK(lowestF),
    maximum: fahrenheitK(highestF),
  }) as const;

export const returnTemperatureParameter = {
  ...air(40, 110),
  description: 'Air that goes into the indoor coil, dry bulb.',
} as const;

export const returnWetBulbParameter = {
  ...air(35, 90),
  description: 'Air that goes into the indoor coil, wet bulb.',
} as const;

export const supplyTemperatureParameter = {
  ...air(25, 105),
  description: 'Air that comes out of the indoor coil, dry bulb.',
} as const;

export const outdoorTemperatureParameter = {
  ...air(-20, 135),
  description: 'Air that goes into the outdoor coil, dry bulb.',
} as const;

export const pipe = {
  kind: 'number',
  quantity: 'temperature',
  minimum: fahrenheitK(-40),
  maximum: fahrenheitK(350),
} as const;

export const suctionPressureParameter = {
  kind: 'number',
  quantity: 'pressure',
  description: 'Suction pressure, compressor running.',
} as const;

export const ratedVoltsParameter = {
  kind: 'text',
  description: 'Rated volts as on the nameplate, such as 115 or 208/230.',
} as const;

const cleanliness = { kind: 'choice', choices: cleanlinessChoices, optional: true } as const;

/** What is looked at before a charge verdict. */
export const gateParameters = {
  filter: { ...cleanliness, description: 'Air filter: clean, dirty, blocked or not seen.' },
  indoor_coil: { ...cleanliness, description: 'Indoor coil: clean, dirty, blocked or not seen.' },
  outdoor_coil: { ...cleanliness, description: 'Outdoor coil: clean, dirty, blocked or not seen.' },
  vents: {
    ...cleanliness,
    description:
      'Vents and ducts, or the grilles of a unit without ducts: clean, dirty, blocked or not seen.',
  },
  fan: {
    ...cleanliness,
    description: 'Fans: clean, dirty, blocked (does not turn freely) or not seen.',
  },
  frost: {
    kind: 'choice',
    choices: frostChoices,
    optional: true,
    description: 'Frost on the indoor coil: none, inlet only, part, full or not seen.',
  },
  minutes_since_change: {
    kind: 'number',
    quantity: 'minutes',
    minimum: 0,
    maximum: minutesS(600),
    optional: true,
    description: 'Minutes since the start or the last change, cleaning or charge step.',
  },
  volts: {
    kind: 'number',
    quantity: 'voltage',
    minimum: 0,
    maximum: 600,
    optional: true,
    description: 'Supply at the unit while it runs.',
  },
  rated_volts: { ...ratedVoltsParameter, optional: true },
  outdoor_temperature: { ...outdoorTemperatureParameter, optional: true },
} as const;

/** The text that READYCHECK left in its cell. */
export const readyParameter = {
  kind: 'text',
  optional: true,
  description:
    'The verdict of READYCHECK for the same readings. Refused unless it begins with "Ready"; without it nothing is said about charge.',
} as const;

/** The text that SPLITCHECK left in its cell. */
export const splitVerdictParameter = {
  kind: 'text',
  optional: true,
  description:
    'The verdict of SPLITCHECK for the same readings. Refused while it says High: air comes first.',
} as const;

const gauge = {
  kind: 'number',
  quantity: 'pressureDifference',
  minimum: 0,
  maximum: 200_000,
} as const;

export const suctionGaugeParameter = {
  ...gauge,
  default: suctionGaugePa,
  description: 'What the gauge may be wrong by, plus or minus. 3.5 psi if left out.',
} as const;

export const liquidGaugeParameter = {
  ...gauge,
  default: liquidGaugePa,
  description: 'What the liquid-side gauge may be wrong by, plus or minus. 7 psi if left out.',
} as const;

export const probeParameter = {
  kind: 'number',
  quantity: 'temperatureDifference',
  minimum: 0,
  maximum: fahrenheitDifferenceK(20),
  default: probeK,
  description: 'What a temperature probe may be wrong by, plus or minus. 1.8 degF if left out.',
} as const;

export const airProbeParameter = {
  ...probeParameter,
  default: airProbeK,
  description: 'What each air thermometer may be wrong by, plus or minus. 1 degF if left out.',
} as const;

export const meteringParameter = {
  kind: 'choice',
  choices: meteringChoices,
  default: 'capillary',
  description: 'capillary (used if left out), orifice or valve.',
} as const;

export const roleParameter = {
  kind: 'choice',
  choices: roleChoices,
  default: 'installer',
  description: 'Whose tolerance applies: installer (used if left out) or verifier.',
} as const;

export const amps = { kind: 'number', quantity: 'current', minimum: 0, maximum: 100 } as const;

export const frequencyParameter = {
  kind: 'number',
  quantity: 'frequency',
  minimum: 30,
  maximum: 90,
  default: 60,
  description: 'Frequency of the supply. 60 Hz if left out.',
} as const;
