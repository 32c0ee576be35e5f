import { createContext, runInContext } from 'node:vm';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { emitLibrary } from '../../../../functions/hosts/onlyoffice/emit.ts';
import { catalogue } from '../../../../functions/catalogue/index.ts';
import { budget } from '../../../size-budget.ts';
import { built } from '../built.ts';
import type { Plain } from '../call-table.ts';
import { callTable } from '../call-table.ts';
import { tooModern } from '../modern-syntax.ts';

type Code = (...given: unknown[]) => unknown;

/** What the editor's interface was asked for. */
interface Recorded {
  readonly libraries: { name: string; text: string }[];
  readonly functions: Map<string, Code>;
}

/**
 * Runs the file as the editor does: the library's function is kept as text and run on its own, where nothing that
 * stands outside of it can be seen.
 */
function open(text: string): Recorded {
  const recorded: Recorded = { libraries: [], functions: new Map() };
  const options = { codeGeneration: { strings: false, wasm: false } } as const;
  runInContext(
    text,
    createContext(
      {
        Api: {
          AddCustomFunctionLibrary: (name: string, library: () => void) =>
            recorded.libraries.push({ name, text: library.toString() }),
        },
      },
      options,
    ),
  );
  const inside = createContext(
    { Api: { AddCustomFunction: (code: Code) => recorded.functions.set(code.name, code) } },
    options,
  );
  for (const library of recorded.libraries) runInContext(`(${library.text})()`, inside);
  return recorded;
}

let file = '';
let opened: Recorded;

beforeAll(() => {
  file = emitLibrary({ functions: catalogue.all(), version: '1.2.3', core: built('onlyoffice', 'core.js') });
  opened = open(file);
}, 300_000);

describe('the library in ONLYOFFICE', () => {
  it('registers every function once, under its name', () => {
    expect(opened.libraries.map(({ name }) => name)).toEqual(['Ouncewise']);
    expect([...opened.functions.keys()]).toEqual(catalogue.all().map(({ id }) => `OUNCE_${id}`));
  });

  it('keeps a comment the editor understands in front of every function', () => {
    const supported = /^(any|any\[\]\[\])$/;
    for (const { id, summary, parameterNames } of catalogue.all()) {
      const pattern = new RegExp(
        `(/\\*\\*(?:(?!\\*/)[^])*\\*/)\\nApi\\.AddCustomFunction\\(function OUNCE_${id}\\(`,
      );
      const [, comment = ''] = pattern.exec(opened.libraries[0]?.text ?? '') ?? [];
      expect(comment, id).toContain('@customfunction');
      expect(comment, id).toContain(summary);
      const named = [...comment.matchAll(/@param \{([^}]+)\} \[?(\w+)\]? \S/g)];
      expect(
        named.map(([, , name]) => name),
        id,
      ).toEqual(parameterNames);
      for (const [, type] of named) expect(type, id).toMatch(supported);
      expect(/@returns \{([^}]+)\} \S/.exec(comment)?.[1], id).toMatch(supported);
    }
  });

  it('gives what the catalogue gives, call by call', () => {
    const table = callTable();
    expect(table.length).toBeGreaterThanOrEqual(200);
    const wrong = table
      .map((row) => ({ row, outcome: opened.functions.get(`OUNCE_${row.id}`)?.(...row.values) as Plain }))
      .filter(({ row, outcome }) => JSON.stringify(outcome) !== JSON.stringify(row.expected));
    expect(wrong).toEqual([]);
  });

  it('takes a cell bare or in brackets, and a row as a row or as a list', () => {
    const read = opened.functions.get('OUNCE_READMASS');
    expect(read?.('1 lb')).toBe(16);
    expect(read?.([['1 lb']])).toBe(16);
    expect(read?.([['1 lb'], ['']])).toEqual([[16], ['']]);
    expect(read?.(['1 lb', '2 lb'])).toEqual([[16], [32]]);
  });

  it('passes on an error that comes in', () => {
    expect(opened.functions.get('OUNCE_READMASS')?.('#DIV/0!')).toBe('#DIV/0!');
  });

  it('is written in JavaScript that older editors read', () => {
    expect(tooModern(file)).toEqual([]);
  });

  it('stays within its size budget', () => {
    const limit = budget['onlyoffice/ouncewise-onlyoffice.js'];
    expect(Buffer.byteLength(file)).toBeLessThanOrEqual(limit.bytes);
    expect(gzipSync(file, { level: 9 }).length).toBeLessThanOrEqual(limit.compressedBytes);
  });
});
