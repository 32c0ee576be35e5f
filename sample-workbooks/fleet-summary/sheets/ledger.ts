import { visitLog } from '../../../src/records/index.ts';
import type { Field } from '../../../src/records/index.ts';
import { bandLooks, looks } from '../../writing/palette.ts';
import type { SheetRecipe } from '../../writing/recipe.ts';
import type { ColumnRecipe } from '../../writing/table.ts';
import { sheetNames } from '../names.ts';
import { recordSheet } from './record-sheet.ts';

const typed = visitLog.fields.filter(({ origin }) => origin === 'input');
const groups = [...new Set(typed.map(({ group }) => group))];
const inOrder = groups.flatMap((group) => typed.filter((field) => field.group === group));

/** Counts the blank cells of some fields of a row, neighbours together. */
function blanks(wanted: (field: Field) => boolean): { readonly formula: string; readonly count: number } {
  const runs: Field[][] = [];
  inOrder.forEach((field, index) => {
    if (!wanted(field)) return;
    const before = inOrder[index - 1];
    if (before !== undefined && wanted(before)) runs.at(-1)?.push(field);
    else runs.push([field]);
  });
  const terms = runs.map((run) => {
    const from = run[0]?.heading ?? '';
    const to = run.at(-1)?.heading ?? '';
    return `COUNTBLANK(Ledger[[#This Row],[${from}]:[${to}]])`;
  });
  return { formula: terms.join('+'), count: runs.flat().length };
}

const always = blanks(({ required }) => required === true);
const whenAdded = blanks(
  ({ required }) => typeof required === 'object' && required.words === 'when refrigerant was added',
);

const filled: ColumnRecipe = {
  heading: 'Filled',
  unit: '%',
  width: 8,
  origin: 'computed',
  look: { align: 'right', format: '0' },
  formula:
    `IF([@Unit]="","",100*(1-(${always.formula}+IF(N([@Added])>0,${whenAdded.formula},0))` +
    `/(${always.count}+IF(N([@Added])>0,${whenAdded.count},0))))`,
  note: 'Of the fields that every set is asked for, and of those for weighing when refrigerant was added.',
};

const verdict: ColumnRecipe = {
  heading: 'Verdict',
  width: 22,
  origin: 'computed',
  look: { align: 'left', size: 9, indent: 1 },
  note: "What the technician's log said of this set when it was gathered. It is carried over, not worked out again.",
};

const { laidOut, recipe, whole } = recordSheet({
  sheet: sheetNames.ledger,
  title: 'Ledger',
  line: 'Every set of readings of every technician, once each, in the order they were gathered. Amber: asked for and blank. Zero is an answer, blank is none.',
  table: 'Ledger',
  record: visitLog,
  tabColour: '8A6D1B',
  pagesWide: 5,
  frozenColumns: 3,
  more: [
    { title: 'Worked out', ...bandLooks.computed, columns: [verdict, filled] },
    {
      title: 'Where it came from',
      ...bandLooks.key,
      columns: [
        {
          heading: 'Mark',
          width: 10,
          origin: 'input',
          note: 'conflict: another log says otherwise; see Conflicts.',
        },
        { heading: 'File', width: 30, origin: 'input' },
        { heading: 'Sheet', width: 12, origin: 'input' },
        { heading: 'Row', width: 7, origin: 'input', look: { align: 'center' } },
        {
          heading: 'Not read',
          width: 30,
          origin: 'input',
          note: 'What stood under headings that mean no field. Say on the sheet Settled what a heading means, and gather again.',
        },
        {
          heading: 'Print',
          width: 13,
          origin: 'input',
          look: { size: 8, ink: '8A949C' },
          note: 'By which gather knows the row when its file comes again. Leave it alone.',
        },
      ],
    },
  ],
});

const mark = `${laidOut.letters('Mark')}${String(laidOut.firstRow)}`;

export const ledgerSheet: SheetRecipe = {
  ...recipe,
  rules: [...(recipe.rules ?? []), { range: mark, when: `${mark}="conflict"`, look: looks.stop }],
  notes: laidOut.notes,
};

export const ledgerWhole = whole;
