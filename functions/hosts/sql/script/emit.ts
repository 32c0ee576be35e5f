import type { Parameter, Returns, ScalarParameter } from '../../../runtime/define.ts';
import type { RegisteredFunction } from '../../../runtime/registry.ts';
import { spell } from '../spell.ts';

export interface EmitOptions {
  /** What a wrong input does: NULL, or the end of the query with the reason. */
  readonly errors: 'null' | 'fail';
  /** Numbers as numbers, or as text that may carry a unit ('62 psig'). */
  readonly numbers: 'number' | 'text';
}

export const defaultOptions: EmitOptions = { errors: 'null', numbers: 'number' };

interface TypeNames {
  readonly number: string;
  readonly text: string;
  readonly yesNo: string;
  readonly list: (item: string) => string;
}

const libraryTypes: TypeNames = {
  number: 'FLOAT64',
  text: 'STRING',
  yesNo: 'BOOL',
  list: (item) => `ARRAY<${item}>`,
};
const inlineTypes: TypeNames = { number: 'FLOAT', text: 'VARCHAR', yesNo: 'BOOLEAN', list: () => 'ARRAY' };

/**
 * Definitions for engines whose functions load a library file: `LANGUAGE js OPTIONS (library = […])`.
 *
 * @param library - address of ouncewise-library.js as the engine reads it
 */
export function emitLibraryDefinitions(
  functions: readonly RegisteredFunction[],
  library: string,
  options: EmitOptions = defaultOptions,
): string {
  const tail = `LANGUAGE js\nOPTIONS (library = ['${library}'])`;
  const definitions = functions.map((declaration) => {
    const names = parameterNames(declaration);
    const parameters = sqlParameters(declaration, libraryTypes, names, options);
    const failing = String(options.errors === 'fail');
    const body = `return Ouncewise.answer('${declaration.id}', [${names.join(', ')}], ${failing});`;
    return `${comment(declaration)}CREATE OR REPLACE FUNCTION ${spell(declaration.id)}(${parameters})
RETURNS ${resultType(declaration.returns, libraryTypes)}
${tail}
AS r"""${body}""";
`;
  });
  const why = `-- The reason why a call has no result: OUNCE_WHY('SATTEMP', '["R-22", -20]').
CREATE OR REPLACE FUNCTION OUNCE_WHY(id STRING, args STRING)
RETURNS STRING
${tail}
AS r"""return Ouncewise.why(id, args);""";
`;
  return [...definitions, why].join('\n');
}

/**
 * The definition for engines that take the whole program as the body: `LANGUAGE JAVASCRIPT AS $$…$$`. Arguments arrive
 * there under upper-case names.
 *
 * @param program - what `bundleFunction` made: it sets `answer`
 */
export function emitInlineDefinition(
  declaration: RegisteredFunction,
  program: string,
  options: EmitOptions = defaultOptions,
): string {
  const names = parameterNames(declaration);
  return `${comment(declaration)}CREATE OR REPLACE FUNCTION ${spell(declaration.id)}(${sqlParameters(declaration, inlineTypes, names, options)})
RETURNS ${resultType(declaration.returns, inlineTypes)}
LANGUAGE JAVASCRIPT
AS $$${inlineBody(declaration, program, options)}$$;
`;
}

/** The body runs once a row; what it made the first time is kept. */
export function inlineBody(
  declaration: RegisteredFunction,
  program: string,
  options: EmitOptions = defaultOptions,
): string {
  const names = parameterNames(declaration).map((name) => name.toUpperCase());
  const kept = `globalThis.ounce_${declaration.id}`;
  return `
if (!${kept}) {
${withoutDoubleDollars(program.trim())}
${kept} = Ouncewise.answer;
}
return ${kept}([${names.join(', ')}], ${String(options.errors === 'fail')});
`;
}

/** Two dollar signs would end the body. An escaped one is the same to JavaScript in texts, templates and names. */
function withoutDoubleDollars(program: string): string {
  return program.replace(/\$(?=\$)/g, '\\u0024');
}

/** Words that SQL or JavaScript keep for themselves among the catalogue's parameter names get a tail. */
const reserved = new Set(['against', 'text', 'source', 'since', 'record', 'in', 'default', 'model', 'use']);

function parameterNames({ parameterNames: names }: RegisteredFunction): readonly string[] {
  return names.map((name) => (reserved.has(name) ? `${name}_given` : name));
}

function sqlParameters(
  { parameters }: RegisteredFunction,
  types: TypeNames,
  names: readonly string[],
  options: EmitOptions,
): string {
  return Object.values(parameters)
    .map((parameter, index) => `${names[index] ?? ''} ${parameterType(parameter, types, options)}`)
    .join(', ');
}

function parameterType(parameter: Parameter, types: TypeNames, options: EmitOptions): string {
  if (parameter.kind === 'list') return types.list(scalarType(parameter.of, types, options));
  // JSON text.
  if (parameter.kind === 'table') return types.text;
  return scalarType(parameter, types, options);
}

function scalarType({ kind }: ScalarParameter, types: TypeNames, options: EmitOptions): string {
  if (kind === 'number') return options.numbers === 'text' ? types.text : types.number;
  if (kind === 'yesNo') return types.yesNo;
  // Engines disagree on the time zone of a date's midnight, so that dates go in and out as '2026-07-14'.
  return types.text;
}

function resultType({ kind }: Returns, types: TypeNames): string {
  if (kind === 'number') return types.number;
  return kind === 'yesNo' ? types.yesNo : types.text;
}

function comment({ summary, returns, parameters }: RegisteredFunction): string {
  const kinds = Object.values(parameters).map(({ kind }) => kind);
  const notes = [
    kinds.includes('date') || returns.kind === 'date' ? "Dates are text such as '2026-07-14'." : '',
    kinds.includes('table') ? 'Tables are JSON text: a list of records.' : '',
    returns.kind === 'table' ? 'The result is JSON text: a list of records.' : '',
  ];
  return `-- ${[summary, ...notes].filter((text) => text !== '').join(' ')}\n`;
}
