/** What stands in "Do next" where plain formulas cannot tell: it begins no action and closes nothing. */
export const undecidedWord = 'The functions can tell';

/**
 * Why the sheet does not decide, and what to do without the functions. These are the sheet's own words: the answer itself has
 * none for what it can tell.
 */
export const undecided = {
  'functions: cause':
    'which cause it is and how sure. Without them: add nothing and close nothing on this sheet alone. Airflow, amps and pipes first; if gas seems short and nobody weighed it, recover, weigh, evacuate and weigh the nameplate charge in, or leave it sealed.',
  'functions: history':
    'nothing without the history. Write down whether it was topped up or leaked before: low again means find the leak, not add.',
  'functions: typed':
    'what stands in the cells marked with ✗ (words, units, figures beyond all limits). Without them: type plain numbers and pick words from the lists.',
  'functions: order':
    'the order of the sets by their times. Without them: put the sets in the order in which they were taken, or mend the times.',
  'functions: weather':
    'nothing in this heat: no unit is rated for it. Come back on a cooler day, or recover and weigh the nameplate charge in: the scale needs no weather.',
  'functions: range':
    'saturation of this gas beyond the range of this sheet. Without them: read the pressure card of the gas, and add nothing.',
} as const;

export type Undecided = keyof typeof undecided;
