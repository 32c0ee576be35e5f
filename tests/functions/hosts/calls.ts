import type { Argument } from '../../../functions/runtime/cells.ts';
import { callTable } from './call-table.ts';

export interface Call {
  readonly label: string;
  readonly id: string;
  readonly args: readonly Argument[];
}

/** The one table of calls for hosts that are compared call by call with this process. */
export function everyCall(): readonly Call[] {
  return callTable().map(({ kind, id, values }, index) => ({
    label: `${String(index)} ${id} ${kind}`,
    id,
    args: values,
  }));
}
