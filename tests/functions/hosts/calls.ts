import { catalogue } from '../../../functions/catalogue/index.ts';
import type { Argument } from '../../../functions/runtime/cells.ts';
import type { RegisteredFunction } from '../../../functions/runtime/registry.ts';

export interface Call {
  readonly label: string;
  readonly id: string;
  readonly args: readonly Argument[];
}

/**
 * Calls made from the catalogue's own examples: as they stand, with the first value left out, with a wrong text in its
 * place, and with a range of a good, a blank and a wrong cell. They grow with the catalogue. Expected is what `call`
 * gives in this process: these calls compare hosts, they do not judge results.
 */
export function everyCall(): readonly Call[] {
  return catalogue.all().flatMap(callsOf);
}

function callsOf(declaration: RegisteredFunction): Call[] {
  const { id, examples, parameterNames, parameters } = declaration;
  const calls: Call[] = [];
  const add = (label: string, args: readonly Argument[]): void => {
    calls.push({ label: `${id} ${label}`, id, args });
  };
  examples.forEach((example, index) => {
    const args = parameterNames.map((name) => example.arguments[name]);
    add(`example ${index + 1}`, args);
    const first = parameterNames.findIndex((name) => args[parameterNames.indexOf(name)] !== undefined);
    const kind = Object.values(parameters)[first]?.kind;
    if (index > 0 || first < 0) return;
    const replaced = (value: Argument): readonly Argument[] =>
      args.map((arg, position) => (position === first ? value : arg));
    add('first value left out', replaced(undefined));
    add('wrong text', replaced('no such thing é ½ 漢'));
    if (kind !== 'list' && kind !== 'table') {
      add(
        'range',
        replaced([[args[first] as never], [''], ['no such thing é ½ 漢'], [args[first] as never]]),
      );
    }
  });
  return calls;
}
