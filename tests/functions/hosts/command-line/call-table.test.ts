import { PassThrough, Readable } from 'node:stream';
import { expect, it } from 'vitest';
import { call } from '../../../../functions/catalogue/call.ts';
import { outcomeJson } from '../../../../functions/hosts/command-line/outcome-json.ts';
import { streamCalls } from '../../../../functions/hosts/command-line/stream.ts';
import { everyCall } from '../calls.ts';

it('every call of the table gives through the stream what it gives in this process', async () => {
  const calls = everyCall();
  const output = new PassThrough();
  const chunks: string[] = [];
  output.on('data', (chunk: Buffer) => chunks.push(chunk.toString()));
  const lines = calls.map(
    ({ id, args }) => `${JSON.stringify({ id, args: args.map((arg) => arg ?? null) })}\n`,
  );
  await streamCalls(Readable.from(lines), output);
  const answers = chunks.join('').trimEnd().split('\n');
  expect(answers).toHaveLength(calls.length);
  expect(calls.length).toBeGreaterThanOrEqual(200);
  const wrong = calls.flatMap(({ label, id, args }, index) => {
    const expected = JSON.stringify(outcomeJson(call(id, args)));
    return answers[index] === expected ? [] : [`${label}: ${answers[index] ?? ''} instead of ${expected}`];
  });
  expect(wrong).toEqual([]);
});
