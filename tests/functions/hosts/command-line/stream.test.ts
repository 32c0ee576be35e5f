import { PassThrough, Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { streamCalls } from '../../../../functions/hosts/command-line/stream.ts';

interface StreamAnswer {
  value?: unknown;
  error?: { code: string; parameter: string | null; message: string };
}

async function answers(chunks: readonly string[]): Promise<StreamAnswer[]> {
  const output = new PassThrough();
  const collected: string[] = [];
  output.on('data', (chunk: Buffer) => collected.push(chunk.toString()));
  await streamCalls(Readable.from(chunks), output);
  return collected
    .join('')
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as StreamAnswer);
}

const good = '{"id":"SATTEMP","args":{"refrigerant":"R-22","pressure":"111.677 kPa abs","units":"K"}}';

describe('call --stream', () => {
  it('answers named and positional calls in order', async () => {
    const [named, positional] = await answers([`${good}\n{"id":"CHARGEFOUND","args":[14,3]}\n`]);
    // R-22 at 111.677 kPa: 234.5 K by CoolProp 8.0.0 (ref 233.15 K at 105.231 kPa, 238.15 K at 132.026 kPa, interpolated).
    expect(named?.value).toBeCloseTo(234.43, 1);
    // 14 oz less the 3 oz added: definition.
    expect(positional?.value).toBe(11);
  });

  it('answers a broken line with an error and goes on', async () => {
    const [broken, after] = await answers([`{"id": \n${good}\n`]);
    expect(broken?.error).toMatchObject({ code: 'invalid-argument', message: 'the line is not JSON' });
    expect(after?.value).toBeTypeOf('number');
  });

  it.each(['', '[]', '3', '{"id":7,"args":[]}', '{"id":"SATTEMP"}', '{"id":"SATTEMP","args":[{"a":1}]}'])(
    'takes %j as broken, never as the end',
    async (line) => {
      const [broken, after] = await answers([`${line}\n${good}\n`]);
      expect(broken?.error?.code).toBe('invalid-argument');
      expect(after?.value).toBeTypeOf('number');
    },
  );

  it('names the parameter of a call that fails', async () => {
    const [unknown, cold] = await answers([
      '{"id":"SATTEMP","args":["R-999",62]}\n{"id":"SATTEMP","args":["R-22","-20 psig"]}\n',
    ]);
    expect(unknown?.error).toMatchObject({ code: 'invalid-argument', parameter: 'refrigerant' });
    expect(cold?.error).toMatchObject({ code: 'out-of-range', parameter: 'pressure' });
  });

  it('knows no function of that name', async () => {
    const [answer] = await answers(['{"id":"NOSUCH","args":[]}\n']);
    expect(answer?.error?.code).toBe('unknown-name');
  });

  it('takes lines however they are cut into chunks, and a last line without its end', async () => {
    const text = `${good}\n${good}`;
    const whole = await answers([text]);
    expect(await answers([...text])).toEqual(whole);
    expect(whole).toHaveLength(2);
  });

  it('gives the error of a single cell in its place inside a range', async () => {
    const [answer] = await answers(['{"id":"SATTEMP","args":["R-22",[68.5,"far",null]]}\n']);
    const rows = answer?.value as unknown[][];
    expect(rows[0]?.[0]).toBeTypeOf('number');
    expect(rows[1]?.[0]).toMatchObject({ error: { code: 'invalid-argument', parameter: 'pressure' } });
    expect(rows[2]?.[0]).toBe('');
  });
});
