import type { CostInput } from '../../../src/cost/inputs.ts';
import { costInputNames, definitionOf } from '../../../src/cost/inputs.ts';
import type { UnitKind } from '../../../src/cost/life.ts';
import { expectedLife, publishedMedianLife, unitKinds } from '../../../src/cost/life.ts';
import type { Range } from '../../../src/cost/range.ts';
import { fromSi } from '../../../src/units/conversion.ts';
import type { Context, TableCell } from '../../runtime/define.ts';
import { defineFunction } from '../../runtime/define.ts';

/** Where the published or assumed figures of the template come from; the rest comes from the unit's own papers. */
const sourceOf: Partial<Record<CostInput, string>> = {
  efficiencyLoss:
    'laboratory tests of capillary units, reported in Home Energy Magazine, May/June 2002: 4 to 6 % at 15 % undercharge',
  capacityLoss:
    'laboratory tests of capillary units, reported in Home Energy Magazine, May/June 2002: 8 to 22 % at 15 % undercharge; as CAPACITYSHARE',
  coolingMissed:
    'assumption, no source: from none to half of the running hours without a pause; valued at what a new unit cools for',
  usableDownTo:
    'assumption; valve-fed units degrade drastically below 80 % (literature), capillary units sooner',
  refillAt: 'common practice, no source: customers call when about 15 % is missing',
  chanceOfHolding: 'assumption, no source: replace it with your own call-back record',
  leakGrowth: 'assumption: steady leak; compare the last interval of the history with the one before',
};

/** Not a figure anybody published: the template makes the doubt visible where the calculation alone would assume none. */
const assumedChance: Range = { low: 0.5, likely: 0.8, high: 0.95 };
const assumedMissed: Range = { low: 0, likely: 0.25, high: 0.5 };

export const costinputs = defineFunction({
  id: 'COSTINPUTS',
  family: 'cost',
  summary:
    'The assumption sheet to start from: every input by name, with published ranges and their sources.',
  parameters: {
    kind: {
      kind: 'choice',
      choices: unitKinds,
      description: 'Kind of unit; the life of a new one depends on it. A roof unit if left out.',
      default: 'roof',
    },
  },
  returns: {
    kind: 'table',
    columns: [
      { heading: 'Input', kind: 'text' },
      { heading: 'Likely', kind: 'number' },
      { heading: 'Low', kind: 'number' },
      { heading: 'High', kind: 'number' },
      { heading: 'Unit', kind: 'text' },
      { heading: 'What it is', kind: 'text' },
      { heading: 'Source', kind: 'text' },
    ],
    description:
      'One row for each input. Paste it as values, fill in the blanks, and give the range to REPAIRORREPLACE.',
  },
  source: 'Each row names its own.',
  examples: [
    {
      arguments: { kind: 'roof' },
      gives: [
        ['Input', 'Likely', 'Low', 'High', 'Unit'],
        ['capacity', '', '', '', 'Btu/h'],
      ],
      source: 'definition',
    },
    { arguments: { kind: 'igloo' }, gives: '#VALUE!', source: 'definition' },
  ],
  compute: ({ kind }, context) => costInputNames.map((name) => rowOf(name, kind, context)),
});

function rowOf(name: CostInput, kind: UnitKind, context: Context): readonly TableCell[] {
  const { label, quantity, description } = definitionOf(name);
  const range = startingRange(name, kind);
  const unit = context.units[quantity];
  const inUnit = (value: number | undefined): number | undefined =>
    // Conversion leaves crumbs; a template is read by people.
    value === undefined ? undefined : Number(fromSi(value, unit, context.atmospherePa).toPrecision(6));
  const exact = range !== undefined && range.low === range.high;
  return [
    label,
    inUnit(range?.likely),
    exact ? undefined : inUnit(range?.low),
    exact ? undefined : inUnit(range?.high),
    quantity === 'money' ? '' : unit.symbol,
    description,
    name === 'newLife' ? lifeSource(kind) : (sourceOf[name] ?? ''),
  ];
}

function startingRange(name: CostInput, kind: UnitKind): Range | undefined {
  if (name === 'newLife') return expectedLife[kind];
  if (name === 'chanceOfHolding') return assumedChance;
  if (name === 'coolingMissed') return assumedMissed;
  return definitionOf(name).default;
}

function lifeSource(kind: UnitKind): string {
  const years = publishedMedianLife['residential split or package unit'];
  return `${expectedLife[kind].source}. For comparison: ${String(years)} years median for residential split and package units, ASHRAE equipment life chart`;
}
