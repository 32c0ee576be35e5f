/**
 * Facts that a second place confirms, with that place. What is not here was typed from memory of the standard.
 * Confirmed in November 2026 by search of stored public texts; tests/standards/settled/settled-values.csv has every value.
 */

const propertyLibrary = 'as carried in the property library CoolProp 8.0.0';

/** Safety class of ASHRAE 34 as the library's fluid file has it; its entries are older than class 2L. */
export const safetyClassConfirmedBy = propertyLibrary;
export const confirmedSafetyClass: ReadonlySet<string> = new Set([
  'R-11',
  'R-116',
  'R-12',
  'R-123',
  'R-1234yf',
  'R-124',
  'R-1270',
  'R-134a',
  'R-142b',
  'R-152a',
  'R-218',
  'R-22',
  'R-227ea',
  'R-23',
  'R-236fa',
  'R-245fa',
  'R-290',
  'R-600',
  'R-601a',
  'R-744',
  'R-404A',
  'R-407C',
  'R-410A',
  'R-507A',
]);

/** Ozone depletion potential, by where it was seen. */
export const odpConfirmedBy: Readonly<Record<string, string>> = {
  'R-11': '40 CFR 82 subpart A appendix A',
  'R-12': '40 CFR 82 subpart A appendix A',
  'R-115': '40 CFR 82 subpart A appendix A',
  'R-124': 'the Montreal Protocol, ' + propertyLibrary,
  'R-123': 'the Montreal Protocol, ' + propertyLibrary,
};
