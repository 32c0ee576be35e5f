import type { WorkbookRecipe } from '../writing/recipe.ts';
import { assumptionNames, assumptionsSheet } from './sheets/assumptions.ts';
import { ledgerSheet } from './sheets/ledger.ts';
import { offerChoicesRange } from './sheets/offer-table.ts';
import { offerSheet } from './sheets/offer.ts';
import { resultNames, resultSheet } from './sheets/result.ts';
import { sensitivitySheet } from './sheets/sensitivity.ts';
import { startHereSheet } from './sheets/start-here.ts';
import { unitNames, unitSheet } from './sheets/unit.ts';
import { units, unitsSheet } from './sheets/units.ts';

/** The estimator's workbook: one unit, its history, every assumption, the answer with its range, a page for the customer. */
export const repairOrReplaceRecipe: WorkbookRecipe = {
  title: 'Repair or replace',
  subject: 'What repair, replacement, topping up and doing nothing cost a year, from the history of the unit',
  file: 'repair-or-replace',
  names: {
    ...unitNames,
    ...assumptionNames,
    ...resultNames,
    offer_choices: offerChoicesRange,
    unit_list: `Units!${units.body('Unit')}`,
  },
  sheets: [
    startHereSheet,
    offerSheet,
    resultSheet,
    unitSheet,
    assumptionsSheet,
    sensitivitySheet,
    unitsSheet,
    ledgerSheet,
  ],
};
