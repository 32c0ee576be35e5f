import { CalcError } from '../../../src/errors.ts';
import { cellErrorOf } from '../../runtime/cell-errors.ts';
import type { CellOutput, Outcome } from '../../runtime/cells.ts';
import { HostError } from '../../runtime/cells.ts';
import type { Example, Returns } from '../../runtime/define.ts';

/** Where nothing else is declared, figures agree to the digits a cell shows. */
const relativeTolerance = 1e-9;

/** Whether a result is what an example promises: figures within its tolerance, sentences by their beginning, errors by their kind. */
export function agrees(returns: Returns, example: Example, outcome: Outcome): boolean {
  const { gives, tolerance } = example;
  if (Array.isArray(gives)) {
    if (!Array.isArray(outcome)) return false;
    return (gives as readonly (readonly (number | string)[])[]).every((row, rowIndex) =>
      row.every((expected, columnIndex) =>
        cellAgrees(expected, outcome[rowIndex]?.[columnIndex], tolerance, true),
      ),
    );
  }
  if (Array.isArray(outcome)) return false;
  const beginning = returns.kind === 'verdict' || returns.kind === 'text';
  return cellAgrees(gives as number | string | boolean, outcome, tolerance, beginning);
}

function cellAgrees(
  expected: number | string | boolean,
  received: CellOutput | undefined,
  tolerance: number | undefined,
  beginning: boolean,
): boolean {
  if (received === undefined || received instanceof HostError) return false;
  if (received instanceof CalcError) return cellErrorOf[received.code] === expected;
  if (isErrorSpelling(expected)) return false;
  if (typeof expected === 'number') {
    if (typeof received !== 'number') return false;
    return Math.abs(received - expected) <= (tolerance ?? relativeTolerance * Math.abs(expected));
  }
  if (typeof expected === 'boolean') return received === expected;
  if (typeof received !== 'string') return false;
  return beginning && expected !== '' ? received.startsWith(expected) : received === expected;
}

/** An expected error is written as the cell would show it. */
export function isErrorSpelling(expected: unknown): boolean {
  return (Object.values(cellErrorOf) as unknown[]).includes(expected);
}
