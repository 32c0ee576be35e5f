/** In the order in which every sheet and page shows them. */
export const cautions: readonly string[] = [
  'Flammable gas (class A2L or A3): only for a person allowed to work on it. No line tap, no flame, fresh air.',
  'Air and ice before gas: dirty coils or filters, a weak fan, frost and wrong voltage look like a low charge. Rule them out first.',
  'Everything that goes in or out is weighed, and the nameplate charge is where it stops.',
  'Gauges, probes and scales are off by a little. A verdict that lies inside that doubt says so.',
  'Opening a refrigerant circuit is work for a certified technician; venting is unlawful, and local codes come first.',
];
