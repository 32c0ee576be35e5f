import type { WorkbookRecipe } from '../writing/recipe.ts';
import { answerNames, answersSheet } from './sheets/answers.ts';
import { cardSheet } from './sheets/card.ts';
import { cautionsSheet } from './sheets/cautions-sheet.ts';
import { latestSheet } from './sheets/latest.ts';
import { pressureChartSheet } from './sheets/pressure-chart.ts';
import { readingsSheet } from './sheets/readings.ts';
import { gasTable, settingNames, settingsSheet, staffTable } from './sheets/settings.ts';
import { startHereSheet } from './sheets/start-here.ts';
import { units, unitsSheet } from './sheets/units.ts';
import { visitList, visitsSheet } from './sheets/visits.ts';

/** "A5:C9" → "$A$5:$C$9". */
function absoluteRange(range: string): string {
  return range.replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
}

/** The technician's log: settings, register, readings with their verdicts, summaries, a card for the customer. */
export const visitLogRecipe: WorkbookRecipe = {
  title: 'Visit log',
  subject: 'Readings, gates, verdicts and weighed ounces of small sealed air conditioners',
  file: 'visit-log',
  names: {
    ...settingNames,
    unit_list: `Units!${units.body('Unit')}`,
    staff_list: `Settings!${staffTable.body('Technician')}`,
    gas_list: `Settings!${gasTable.body('Gas')}`,
    ...answerNames,
    register_all: `Units!${absoluteRange(units.native.range)}`,
    staff_all: `Settings!${absoluteRange(staffTable.native.range)}`,
    visit_list: `Visits!${visitList.body('Visit')}`,
  },
  sheets: [
    startHereSheet,
    settingsSheet,
    unitsSheet,
    readingsSheet,
    answersSheet,
    latestSheet,
    visitsSheet,
    cardSheet,
    pressureChartSheet,
    cautionsSheet,
  ],
};
