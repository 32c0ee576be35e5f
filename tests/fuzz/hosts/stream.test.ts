import { PassThrough, Readable } from 'node:stream';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { catalogue } from '../../../functions/catalogue/index.ts';
import { streamCalls } from '../../../functions/hosts/command-line/stream.ts';
import { sample } from '../runs.ts';

const oneLine = (text: string): string => text.replace(/[\r\n]/g, ' ');
const ids = fc.constantFrom(
  ...catalogue.all().map(({ id }) => id),
  '__proto__',
  'constructor',
  'sattemp',
  '',
);
const names = fc.constantFrom(
  'pressure',
  'refrigerant',
  'units',
  '__proto__',
  'constructor',
  'toString',
  '0',
);

const lines = fc.oneof(
  fc.string({ unit: 'binary' }).map(oneLine),
  fc.json().map(oneLine),
  fc.record({ id: ids, args: fc.jsonValue() }).map((request) => JSON.stringify(request)),
  fc
    .record({ id: ids, args: fc.array(fc.tuple(names, fc.jsonValue()), { maxLength: 4 }) })
    .map(
      ({ id, args }) =>
        `{"id":${JSON.stringify(id)},"args":{${args.map(([name, value]) => `"${name}":${JSON.stringify(value)}`).join(',')}}}`,
    ),
);

test('every line of any text gets one answer: a value, or an error with a message', async () => {
  const asked = sample(lines, 2000).filter((line) => line !== '');
  const output = new PassThrough();
  const chunks: string[] = [];
  output.on('data', (chunk: Buffer) => chunks.push(chunk.toString()));
  await streamCalls(Readable.from(asked.map((line) => `${line}\n`)), output);
  const answers = chunks.join('').trimEnd().split('\n');
  expect(answers).toHaveLength(asked.length);
  const wrong = answers.flatMap((text, index) => {
    const answer = JSON.parse(text) as { value?: unknown; error?: { code?: string; message?: string } };
    const sound =
      answer.error === undefined
        ? 'value' in answer && answer.value !== null
        : typeof answer.error.code === 'string' &&
          (answer.error.message ?? '') !== '' &&
          !/fault of the program|\[object/.test(answer.error.message ?? '');
    return sound ? [] : [`${asked[index] ?? ''}: ${text}`];
  });
  expect(wrong).toEqual([]);
}, 300_000);
