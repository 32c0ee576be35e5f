import { once } from 'node:events';
import type { Readable, Writable } from 'node:stream';
import { CalcError } from '../../../src/errors.ts';
import { call } from '../../catalogue/call.ts';
import type { CallArguments } from '../../runtime/call.ts';
import type { Answer } from './outcome-json.ts';
import { errorJson, outcomeJson } from './outcome-json.ts';

/** A line longer than this is answered with an error and skipped, so that memory stays bounded. */
const longestLine = 16 * 1024 * 1024;

/** Answers newline-delimited JSON calls in order. A broken line gets an error answer; nothing ends the stream but its end. */
export async function streamCalls(input: Readable, output: Writable): Promise<void> {
  input.setEncoding('utf8');
  let rest = '';
  let skipping = false;
  for await (const chunk of input as AsyncIterable<string>) {
    const lines = (rest + chunk).split('\n');
    rest = lines.pop() ?? '';
    let answers = '';
    for (const line of lines) {
      answers += `${JSON.stringify(skipping ? tooLong() : answerLine(line))}\n`;
      skipping = false;
    }
    if (rest.length > longestLine) {
      rest = '';
      skipping = true;
    }
    if (answers !== '' && !output.write(answers)) await once(output, 'drain');
  }
  if (skipping) output.write(`${JSON.stringify(tooLong())}\n`);
  else if (rest.trim() !== '') output.write(`${JSON.stringify(answerLine(rest))}\n`);
}

function answerLine(line: string): Answer {
  let request: unknown;
  try {
    request = JSON.parse(line);
  } catch {
    return broken('the line is not JSON');
  }
  if (!isRequest(request)) return broken('the line must be {"id":"FUNCTION","args":{...} or [...]}');
  return outcomeJson(call(request.id, matrices(request.args)));
}

interface Request {
  readonly id: string;
  readonly args: CallArguments;
}

function isRequest(value: unknown): value is Request {
  if (typeof value !== 'object' || value === null || !('id' in value) || typeof value.id !== 'string')
    return false;
  return (
    'args' in value &&
    typeof value.args === 'object' &&
    value.args !== null &&
    argumentsOf(value.args).every(isArgument)
  );
}

function argumentsOf(args: object): readonly unknown[] {
  return Array.isArray(args) ? args : Object.values(args);
}

/** A cell, a row of cells or rows of cells. */
function isArgument(value: unknown): boolean {
  if (!Array.isArray(value)) return isCell(value);
  return value.every((row) => (Array.isArray(row) ? row.every(isCell) : isCell(row)));
}

function isCell(value: unknown): boolean {
  return value === null || ['number', 'string', 'boolean'].includes(typeof value);
}

/** A flat list stands for a column. */
function matrices(args: CallArguments): CallArguments {
  const matrix = (value: unknown): unknown =>
    Array.isArray(value) ? value.map((row: unknown): unknown[] => (Array.isArray(row) ? row : [row])) : value;
  if (Array.isArray(args)) return args.map(matrix) as CallArguments;
  return Object.fromEntries(
    Object.entries(args).map(([name, value]) => [name, matrix(value)]),
  ) as CallArguments;
}

function broken(message: string): Answer {
  return errorJson(new CalcError(message, { code: 'invalid-argument' }));
}

function tooLong(): Answer {
  return broken(`the line is longer than ${longestLine} characters`);
}
