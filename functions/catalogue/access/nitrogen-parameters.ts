export const startPressureParameter = {
  kind: 'number',
  quantity: 'pressure',
  description: 'Gauge pressure when the nitrogen cylinder was shut.',
} as const;

export const startTemperatureParameter = {
  kind: 'number',
  quantity: 'temperature',
  description: 'Temperature of the unit then.',
} as const;

export const endTemperatureParameter = {
  kind: 'number',
  quantity: 'temperature',
  description: 'Temperature of the unit at the second reading.',
} as const;

export const lowSideParameter = {
  kind: 'number',
  quantity: 'pressure',
  description: 'Low-side design pressure on the nameplate. A test above it is refused.',
} as const;

export const testGasParameter = {
  kind: 'text',
  description: 'What the unit is filled with. Anything but nitrogen is refused.',
  default: 'nitrogen',
} as const;

export const gasLaw = 'ideal gas at constant volume, absolute units';
