/** An invented service outfit, invented places and people: any likeness to real ones is chance. */
export const outfit = {
  name: 'Bramblewater Cooling Service',
  town: 'Hollin Reach',
  elevationFt: 640,
  units: 'US',
} as const;

export const staff = [
  { id: 'MOF', name: 'Maren Oduya-Falk', certificate: 'Universal', number: 'U-5512', flammable: 'yes' },
  { id: 'PLK', name: 'Piet Lasko', certificate: 'I', number: 'I-2087', flammable: 'no' },
] as const;
