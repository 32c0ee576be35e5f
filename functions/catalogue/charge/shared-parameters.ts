import { massBases } from '../../../src/charge/mass-basis.ts';
import { defaultScaleStepKg } from '../../../src/charge/next-step.ts';
import { fahrenheitK } from '../../../src/units/trade.ts';

/** No unit of this kind holds more; a larger figure is a slip of the unit, such as pounds typed for ounces. */
const largestChargeKg = 50;

const mass = { kind: 'number', quantity: 'mass', minimum: 0, maximum: largestChargeKg } as const;

export const nameplateParameter = {
  kind: 'number',
  quantity: 'mass',
  above: 0,
  maximum: largestChargeKg,
  description: 'Full charge printed on the unit, by weight. Fluid ounces are refused.',
} as const;

export const massBasisParameter = {
  kind: 'choice',
  choices: massBases,
  description:
    'How it is known what the unit holds: "nameplate weighed in" for a unit emptied before, "residual weighed" when what was left has been weighed, or "unknown".',
} as const;

export const addedParameter = {
  ...mass,
  description: 'Weighed into the unit so far. Type 0 before the first step; a blank is not zero.',
} as const;

export const foundParameter = {
  ...mass,
  optional: true,
  description:
    'In the unit before this charging, as weighed. Needed for "residual weighed"; 0 says that the unit was emptied, which "nameplate weighed in" needs before the first ounce.',
} as const;

export const hoseParameter = {
  ...mass,
  optional: true,
  description:
    'Held in the hoses and still able to run into the unit; counted as if it were inside. See HOSECONTENT.',
} as const;

export const scaleStepParameter = {
  kind: 'number',
  quantity: 'mass',
  above: 0,
  maximum: 1,
  default: defaultScaleStepKg,
  description: 'Smallest step the scale shows. 0.1 oz if left out.',
} as const;

export const suctionSaturationParameter = {
  kind: 'number',
  quantity: 'temperature',
  minimum: fahrenheitK(-60),
  maximum: fahrenheitK(150),
  optional: true,
  description:
    'Saturation temperature of the suction pressure now, from SATTEMP; for a blend with glide the middle between dew and bubble.',
} as const;

/** A blank cell that a host hands over as 0 is no aim. */
export const aimParameter = {
  kind: 'number',
  quantity: 'temperature',
  minimum: fahrenheitK(20),
  maximum: fahrenheitK(75),
  optional: true,
  description: 'Saturation temperature to come to, from EXPECTEDEVAP. 40 degF if left out.',
} as const;

export const marginParameter = {
  ...mass,
  optional: true,
  description:
    'For a slow leak: what is still to be added once the reading has come to the aim. Never goes beyond the nameplate. A capillary-tube unit suffers from overcharge.',
} as const;

export const minutesSinceChangeParameter = {
  kind: 'number',
  quantity: 'minutes',
  minimum: 0,
  optional: true,
  description: 'Since the start or the last change. Less than 15 minutes is refused.',
} as const;

export const readyParameter = {
  kind: 'text',
  optional: true,
  description: 'The answer of READYCHECK. Anything that does not begin with "Ready" is refused.',
} as const;

/** What other checks said of the same readings; any may forbid charge, a blank is not heard. */
export const evidenceParameters = {
  superheat: {
    kind: 'text',
    optional: true,
    description:
      'The verdict of SUPERHEATCHECK. High lets gas in, On target is the stop, anything else is refused. Blank: not heard.',
  },
  split: {
    kind: 'text',
    optional: true,
    description: 'The verdict of SPLITCHECK. High or Refused is refused: air comes first. Blank: not heard.',
  },
  standing: {
    kind: 'text',
    optional: true,
    description: 'The verdict of STANDINGCHECK. Anything but Matches is refused. Blank: not heard.',
  },
  cause: {
    kind: 'text',
    optional: true,
    description: 'The cause that leads in CAUSES. Anything but low charge is refused. Blank: not heard.',
  },
} as const;
