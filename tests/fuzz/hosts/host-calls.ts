import { call } from '../../../functions/catalogue/call.ts';
import { catalogue } from '../../../functions/catalogue/index.ts';
import { isRange } from '../../../functions/runtime/broadcast.ts';
import type { Argument } from '../../../functions/runtime/cells.ts';
import { plainOf } from '../../functions/hosts/call-table.ts';
import type { Plain } from '../../functions/hosts/call-table.ts';
import type { RandomCall } from '../catalogue/calls.ts';
import { plainArgument, plausibleCallOf, spoiledCall, wildCall } from '../catalogue/calls.ts';
import { sample } from '../runs.ts';

/** Random calls with what every host can hand over: numbers, texts, TRUE and FALSE, blanks, whole ranges of them. */
export function hostCalls(usual: number): readonly RandomCall[] {
  return [
    ...sample(spoiledCall(plainArgument), usual),
    ...sample(plausibleCallOf(catalogue.all(), 0), usual),
    ...sample(wildCall(plainArgument, 0), Math.ceil(usual / 4)),
  ]
    .filter(({ args }) => !args.flat(2).some(isHostsOwn))
    .map(({ id, args }) => ({ id, args: catalogue.get(id).parameterNames.map((_, index) => args[index]) }));
}

/** Some hosts hand errors over as "#N/A"; text with half a character or a zero in it comes out of no cell. */
function isHostsOwn(cell: unknown): boolean {
  return (
    typeof cell === 'string' && (cell.startsWith('#') || cell.includes('\0') || /[\ud800-\udfff]/u.test(cell))
  );
}

/** Calls in which only lists and tables are ranges, for hosts that work row by row. */
export function rowCalls(usual: number): readonly RandomCall[] {
  return hostCalls(usual).filter(({ id, args }) => {
    const parameters = Object.values(catalogue.get(id).parameters);
    return args.every(
      (arg, index) => !isRange(arg) || ['list', 'table'].includes(parameters[index]?.kind ?? ''),
    );
  });
}

/** Calls that a host answers otherwise than this process does. */
export function disagreements(
  calls: readonly RandomCall[],
  shown: (id: string, args: readonly Argument[]) => unknown,
  expected: (id: string, args: readonly Argument[]) => unknown = (id, args): Plain => plainOf(call(id, args)),
): readonly string[] {
  return calls.flatMap(({ id, args }) => {
    let found: string;
    try {
      found = JSON.stringify(shown(id, args));
    } catch (error) {
      found = `a throw: ${String(error)}`;
    }
    const wanted = JSON.stringify(expected(id, args));
    return found === wanted
      ? []
      : [`${id} ${JSON.stringify(args).slice(0, 500)}: ${found} instead of ${wanted}`];
  });
}
