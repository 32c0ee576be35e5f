/** Printed with every answer about a unit, in the order in which they matter on the roof. */
export const cautions = [
  'Flammable gas (A2L, A3): no line tap, no flame; only for those allowed to work on it.',
  'Air, dirt, ice and supply voltage come before any verdict on the charge.',
  'The nameplate mass is a stop. Every ounce is weighed.',
  'Figures carry the doubt of the instruments.',
  'Opening the circuit is for certified technicians; venting is unlawful. Local codes come first.',
].join('\n');
