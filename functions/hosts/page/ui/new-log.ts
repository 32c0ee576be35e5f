/// <reference lib="dom" />
import { ask } from './dialogs.ts';

export interface Sample {
  readonly file: string;
  readonly title: string;
}

/** A sample that is opened without the rows of some tables. */
export interface EmptyForm {
  readonly kind: 'empty';
  readonly file: string;
  readonly name: string;
  readonly tables: readonly string[];
  /** Single cells emptied too. */
  readonly cells: readonly (readonly [sheet: string, row: number, column: number])[];
  /** Sheet to begin at; undefined: the first visit. */
  readonly goTo: string | undefined;
  readonly words: string;
}

export type NewLog =
  | EmptyForm
  | { readonly kind: 'fleet' }
  | { readonly kind: 'estimate' }
  | { readonly kind: 'sample'; readonly sample: Sample };

const emptyLog: EmptyForm = {
  kind: 'empty',
  file: 'visit-log.xlsx',
  name: 'my-visit-log.xlsx',
  tables: ['Readings', 'Units', 'Staff'],
  // Name and town of the outfit.
  cells: [
    ['Settings', 4, 1],
    ['Settings', 5, 1],
  ],
  goTo: undefined,
  words:
    'Nothing of the sample is left but its prices and the doubts of its instruments, on the sheet Settings: put your own there before the first card is printed.',
};

const emptyEstimate: EmptyForm = {
  kind: 'empty',
  file: 'repair-or-replace.xlsx',
  name: 'my-repair-or-replace.xlsx',
  tables: ['Units', 'Ledger'],
  // The picked unit.
  cells: [['Unit', 4, 2]],
  goTo: 'Units',
  words:
    'Write the unit and its visits, or paste them; then pick it on the sheet Unit. Assumptions still hold examples.',
};

/** Asks what to begin; undefined when nothing. */
export function chooseNew(samples: readonly Sample[], unitInHand: string): Promise<NewLog | undefined> {
  const begin = 'Begin';
  const sample = 'Samples, with invented people and figures';
  return ask<NewLog>(
    'New',
    ['What is open now stays in this browser until it is saved.'],
    [
      { text: 'Empty visit log', value: emptyLog, isMain: true, group: begin },
      { text: 'Fleet summary from logs…', value: { kind: 'fleet' }, group: begin },
      ...(unitInHand === ''
        ? []
        : [
            {
              text: `Repair or replace ${unitInHand}`,
              value: { kind: 'estimate' } as const,
              group: begin,
            },
          ]),
      { text: 'Empty repair or replace', value: emptyEstimate, group: begin },
      ...samples.map((each) => ({
        text: `Sample: ${each.title}`,
        value: { kind: 'sample', sample: each } as const,
        group: sample,
      })),
    ],
  );
}
