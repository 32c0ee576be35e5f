/** Where the answers stand on their sheet: beside the rows of the readings, row for row. */
export const answersSheetName = 'Answers';

/** Row of the headings of the readings; the answers stand in the same rows. */
export const readingsHeadingRow = 5;

/** Sets that one log holds; a season of one technician is a third of it. */
export const mostSets = 1000;

/** Columns of DONEXT, counted from 1. */
export const answerColumn = { 'Do next': 1, Why: 2, 'Ask next': 3, Action: 4, Ounces: 5 } as const;
