import type { Offer } from '../../../src/cost/offer.ts';
import { offerAnswer, offerOf } from '../../../src/cost/offer.ts';
import { defineFunction } from '../../runtime/define.ts';
import { assumptionsParameter, readAssumptions } from './assumption-table.ts';
import { knownUnit, uncertainCase } from './example-assumptions.ts';
import { Remembered, symbolsOf } from './remembered.ts';

const offers = new Remembered<Offer>();

export const offeranswer = defineFunction({
  id: 'OFFERANSWER',
  family: 'cost',
  summary: 'The recommendation for the owner and its reason in two sentences; or what would decide.',
  parameters: { assumptions: assumptionsParameter },
  returns: { kind: 'text', description: 'Costs a year rounded as in OFFERCHOICES.' },
  source: 'The decision of REPAIRORREPLACE in the words of a customer.',
  examples: [
    {
      arguments: { assumptions: uncertainCase },
      gives: 'Repair or Replace: too close to call. What would decide: a firm price for the repair.',
      source:
        'engineering economy: the break-even, (338.69 - 162.00) / 0.388034 = 455.34, lies inside 350 to 600',
    },
    {
      arguments: { assumptions: [...knownUnit, ['warranty left', 2.5]] },
      gives:
        'We recommend: Claim the warranty. The maker pays first, and nobody opens the unit before the claim is answered.',
      source: 'definition: the warranty comes first',
    },
  ],
  compute: ({ assumptions }, context) =>
    offerAnswer(
      offers.of(assumptions, symbolsOf(context), () => offerOf(readAssumptions(assumptions, context))),
    ),
});
