import { CalcError } from '../../../../src/errors.ts';
import { call } from '../../../catalogue/call.ts';
import { catalogue } from '../../../catalogue/index.ts';
import type { Argument, Outcome } from '../../../runtime/cells.ts';
import { isBlank } from '../../../runtime/cells.ts';
import { isRequired } from '../../../runtime/coerce.ts';
import type { RegisteredFunction } from '../../../runtime/registry.ts';
import type { Command } from '../command.ts';
import { outcomeJson } from '../outcome-json.ts';
import { inWords } from '../outcome-words.ts';
import { streamCalls } from '../stream.ts';
import { UsageError } from '../usage-error.ts';

export const callCommand: Command = {
  summary: 'Call one function, or answer a stream of calls.',
  usage: `ouncewise call FUNCTION VALUE... [NAME=VALUE...] [--json]
ouncewise call --stream

  ouncewise call SATTEMP R-410A 62
  ouncewise call SATTEMP R-410A "427 kPa" elevation=1500 units=SI
  ouncewise call SUPERHEAT refrigerant=R-22 pressure=68.5 line_temperature="[50, 55, 60]"

A value in square brackets is a range, as JSON. Figures are shown with ten digits and dates as dates; --json gives
every digit, and dates as the serial numbers of a worksheet. --stream reads one JSON call a line, such as
  {"id":"SATTEMP","args":{"refrigerant":"R-22","pressure":"111.677 kPa abs","units":"K"}}
and answers each with {"value":...} or {"error":{"code","parameter","message"}}, in order.`,
  run: async (words) => {
    if (words.includes('--stream')) {
      await streamCalls(process.stdin, process.stdout);
      return 0;
    }
    const json = words.includes('--json');
    const [id, ...rest] = words.filter((word) => word !== '--json');
    if (id === undefined)
      throw new UsageError('call needs the name of a function, such as: ouncewise call SATTEMP R-410A 62');
    const declaration = catalogue.get(id);
    return show(declaration, call(declaration.id, readArguments(declaration, rest)), json);
  },
};

/** Words in calling order, or NAME=VALUE in any order behind them. */
function readArguments(declaration: RegisteredFunction, words: readonly string[]): Record<string, Argument> {
  const names = declaration.parameterNames;
  const args: Record<string, Argument> = {};
  let position = 0;
  for (const word of words) {
    const named = /^([a-z][a-z0-9_]*)=([^]*)$/i.exec(word);
    const name = named?.[1]?.toLowerCase();
    if (named && name !== undefined) {
      if (!names.includes(name))
        throw new UsageError(`${declaration.id} has no ${name}; it takes: ${names.join(', ')}`);
      args[name] = readValue(named[2] ?? '');
      continue;
    }
    const next = names[position];
    if (next === undefined) {
      throw new UsageError(`${declaration.id} takes at most ${names.length} values: ${names.join(', ')}`);
    }
    args[next] = readValue(word);
    position += 1;
  }
  // A blank cell stays blank in a worksheet; on a command line a missing value is a slip.
  for (const [name, parameter] of Object.entries(declaration.parameters)) {
    const needed =
      parameter.kind === 'list' || parameter.kind === 'table'
        ? parameter.optional !== true
        : isRequired(parameter);
    const given = args[name];
    if (needed && !Array.isArray(given) && isBlank(given as null)) {
      throw new UsageError(`${name} is missing; ${declaration.id} takes: ${names.join(', ')}`);
    }
  }
  return args;
}

function readValue(word: string): Argument {
  if (word.trim() !== '' && Number.isFinite(Number(word))) return Number(word);
  if (!word.startsWith('[')) return word;
  try {
    const parsed = JSON.parse(word) as unknown[];
    return parsed.map((row): unknown[] => (Array.isArray(row) ? row : [row])) as Argument;
  } catch {
    throw new UsageError(`a range must be JSON, such as [50, 55, 60] or [[1, 2], [3, 4]]; received ${word}`);
  }
}

function show(declaration: RegisteredFunction, outcome: Outcome, json: boolean): number {
  const cells = Array.isArray(outcome) ? outcome.flat() : [outcome];
  const errors = cells.filter((cell) => cell instanceof CalcError);
  if (json) {
    const text = JSON.stringify(outcomeJson(outcome));
    if (outcome instanceof CalcError) console.error(text);
    else console.log(text);
  } else if (outcome instanceof CalcError) {
    console.error(messageOf(outcome));
  } else {
    console.log(inWords(declaration, outcome));
    for (const error of errors) console.error(messageOf(error));
  }
  return errors.length > 0 ? 1 : 0;
}

/** Whoever reports a fault of the program sends along where it happened. */
function messageOf({ message, cause }: CalcError): string {
  return cause instanceof Error ? `${message}\n${cause.stack ?? ''}` : message;
}
