import { describe, expect, test } from 'vitest';
import { call } from '../../../../functions/catalogue/call.ts';
import { CalcServer } from '../../../../functions/hosts/libreoffice/server.ts';

function ask(server: CalcServer, request: object): unknown {
  return JSON.parse(server.answerLine(JSON.stringify(request)));
}

describe('the calculation server of the Calc add-in', () => {
  test('answers with the number of the question', () => {
    // Definition: 16 oz to the pound.
    expect(ask(new CalcServer(), { n: 7, f: 'READMASS', a: ['1 lb 4 oz'] })).toEqual({ n: 7, v: 20 });
  });

  test('puts Calc error numbers into the cells they belong to', () => {
    const server = new CalcServer();
    const answer = ask(server, { n: 1, f: 'SATTEMP', a: ['R-22', [['68.5 psig'], [''], [-20], ['warm']]] });
    expect(answer).toEqual({
      n: 1,
      v: [[call('SATTEMP', ['R-22', 68.5])], [''], [{ e: 503 }], [{ e: 519 }]],
    });
  });

  test('says a refusal as #N/A', () => {
    // Definition of the refusal: with the mass in the unit unknown no step is named.
    expect(ask(new CalcServer(), { n: 1, f: 'NEXTSTEP', a: [14, 'unknown', 0] })).toEqual({
      n: 1,
      v: { e: 0x7fff },
    });
  });

  test('keeps the last twenty different messages, newest first', () => {
    const server = new CalcServer();
    for (let row = 0; row < 30; row += 1) ask(server, { n: row, f: 'SATTEMP', a: [`R-${9000 + row}`, 62] });
    ask(server, { n: 31, f: 'SATTEMP', a: ['R-9028', 62] });
    const { v } = ask(server, { n: 32, messages: true }) as { v: string[] };
    expect(v).toHaveLength(20);
    expect(v[0]).toContain('R-9028');
    expect(v[1]).toContain('R-9029');
  });

  test('outlives lines that are no question', () => {
    const server = new CalcServer();
    expect(JSON.parse(server.answerLine('{'))).toEqual({ n: 0, v: { e: 519 } });
    expect(ask(server, { n: 2, f: 'NOSUCH', a: [] })).toEqual({ n: 2, v: { e: 519 } });
    expect(ask(server, { n: 3, f: 'READMASS', a: [20] })).toEqual({ n: 3, v: 20 });
  });
});
