import { cellErrorOf } from '../../../functions/runtime/cell-errors.ts';
import type { Argument, CellOutput, Outcome } from '../../../functions/runtime/cells.ts';
import { cellText, HostError } from '../../../functions/runtime/cells.ts';
import type { Returns } from '../../../functions/runtime/define.ts';
import type { RegisteredFunction } from '../../../functions/runtime/registry.ts';
import { costInputNames, definitionOf } from '../../../src/cost/inputs.ts';
import { CalcError } from '../../../src/errors.ts';
import { recordTables } from '../../../src/records/index.ts';

/** Everything that is wrong with an outcome as an outcome; nothing about whether its figure is right. */
export function faultsOf(
  declaration: RegisteredFunction,
  args: readonly Argument[],
  outcome: Outcome,
): readonly string[] {
  const { returns } = declaration;
  const faults: string[] = [];
  if (!Array.isArray(outcome)) faults.push(...cellFaults(declaration, args, outcome, returns.kind));
  else if (returns.kind === 'table') {
    const { columns } = returns;
    outcome.forEach((row, index) => {
      if (row.length !== columns.length) faults.push(`row ${String(index)} has ${String(row.length)} cells`);
      row.forEach((cell, column) => {
        const kind = index === 0 ? 'text' : (columns[column]?.kind ?? 'text');
        faults.push(...cellFaults(declaration, args, cell, kind));
      });
    });
    if (outcome.length === 0) faults.push('a table without headings');
  } else {
    const width = outcome[0]?.length ?? 0;
    if (width === 0) faults.push('a block without cells');
    if (outcome.some((row) => row.length !== width)) faults.push('rows of unequal length');
    faults.push(...outcome.flat().flatMap((cell) => cellFaults(declaration, args, cell, returns.kind)));
  }
  return faults;
}

function cellFaults(
  declaration: RegisteredFunction,
  args: readonly Argument[],
  cell: CellOutput,
  kind: Returns['kind'] | 'text',
): readonly string[] {
  if (cell instanceof HostError) return [];
  if (cell instanceof CalcError) return errorFaults(declaration, args, cell);
  if (cell === '') return [];
  switch (kind) {
    case 'number':
      return numberFaults(cell);
    case 'date':
      return typeof cell === 'number' && Number.isInteger(cell) ? [] : [`${String(cell)} is no day`];
    case 'yesNo':
      return typeof cell === 'boolean' ? [] : [`${cellText(cell)} is not TRUE or FALSE`];
    case 'fact':
      return typeof cell === 'number' ? numberFaults(cell) : textFaults(args, cell);
    case 'table':
      return ['a table was declared'];
    case 'text':
    case 'verdict':
      return textFaults(args, cell);
  }
}

function numberFaults(cell: CellOutput): readonly string[] {
  if (typeof cell !== 'number') return [`${cellText(cell)} is not a number`];
  return Number.isFinite(cell) && !Object.is(cell, -0)
    ? []
    : [`${Object.is(cell, -0) ? '-0' : String(cell)} came out`];
}

/** Words that only a slip of ours writes into a sentence, unless they were typed. */
const slips = /\bNaN\b|\bundefined\b|-?\bInfinity\b|\[object|\bnull\b|e\+\d|\d{22}/;

function textFaults(args: readonly Argument[], cell: unknown): readonly string[] {
  if (typeof cell !== 'string') return [`${String(cell)} is not text`];
  const slip = slips.exec(cell)?.[0];
  return slip === undefined || wasTyped(args, slip) ? [] : [`"${slip}" in "${cell.slice(0, 300)}"`];
}

function wasTyped(args: readonly Argument[], slip: string): boolean {
  return args.flat(2).some((cell) => cellText(cell).includes(slip));
}

/** Headings of records and rows of assumptions are parameters to the person who fills them in. */
const named = new Set([
  ...recordTables.flatMap(({ fields }) => fields.map(({ heading }) => heading)),
  ...costInputNames.map((name) => definitionOf(name).label),
]);

/** A cell shows no more than this; Excel takes 32,767 characters, and nobody reads a tenth of it. */
const longestMessage = 3000;

function errorFaults(
  declaration: RegisteredFunction,
  args: readonly Argument[],
  error: CalcError,
): readonly string[] {
  const given = args.flat(2);
  if (given.includes(error)) return [];
  const faults: string[] = [];
  const say = (what: string): void =>
    void faults.push(`${what}: ${error.code} ${error.message.slice(0, 300)}`);
  if (!(error.code in cellErrorOf)) say('unknown code');
  if (error.message.trim() === '') say('no message');
  if (error.code === 'internal') say('a fault of the program');
  if (error.message.length > longestMessage) say(`a message of ${String(error.message.length)} characters`);
  faults.push(...textFaults(args, error.message));
  const { parameter } = error;
  if (parameter !== undefined && !declaration.parameterNames.includes(parameter) && !named.has(parameter)) {
    say(`parameter "${parameter}" is none of the function`);
  }
  if (parameter === undefined && !namesNoParameter.test(error.message)) say('no parameter named');
  return faults;
}

/** Errors for which no single value is to blame. */
const namesNoParameter = /takes at most \d+ values|do not fit together|the values given lead to a/;
