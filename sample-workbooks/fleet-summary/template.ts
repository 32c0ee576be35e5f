import type { WorkbookRecipe } from '../writing/recipe.ts';
import { cautionsSheet } from './sheets/cautions-sheet.ts';
import { cylinderNames, cylindersSheet } from './sheets/cylinders.ts';
import { figureNames, figuresSheet } from './sheets/figures.ts';
import { ledgerSheet, ledgerWhole } from './sheets/ledger.ts';
import {
  asideSheet,
  conflictsSheet,
  correctionsSheet,
  cylinderListSheet,
  listNames,
  movementsSheet,
  registerSheet,
  settledSheet,
} from './sheets/lists.ts';
import { overviewSheet } from './sheets/overview.ts';
import { ruleNames, rulesSheet } from './sheets/rules.ts';
import { settingNames, settingsSheet } from './sheets/settings.ts';
import { unitNames, unitsSheet } from './sheets/units.ts';

/**
 * The fleet workbook without rows: every table has one row that says how its rows look and calculate. `ouncewise gather`
 * fills it with the rows of the logs, and so is the sample filled.
 */
export const fleetTemplate: WorkbookRecipe = {
  title: 'Fleet summary',
  subject: 'Weighed refrigerant, leaks, calls due and cylinders of a fleet of small sealed air conditioners',
  file: 'fleet-template',
  names: {
    ledger_all: ledgerWhole,
    ...listNames,
    ...settingNames,
    ...unitNames,
    ...cylinderNames,
    ...figureNames,
    ...ruleNames,
  },
  sheets: [
    overviewSheet,
    unitsSheet,
    ledgerSheet,
    cylindersSheet,
    rulesSheet,
    cautionsSheet,
    correctionsSheet,
    settledSheet,
    asideSheet,
    conflictsSheet,
    registerSheet,
    cylinderListSheet,
    movementsSheet,
    figuresSheet,
    settingsSheet,
  ],
};
