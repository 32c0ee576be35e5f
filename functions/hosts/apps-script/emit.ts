import { describeParameter } from '../../runtime/describe.ts';
import type { Parameter, Returns } from '../../runtime/define.ts';
import type { RegisteredFunction } from '../../runtime/registry.ts';
import { spell } from './spell.ts';

/** ouncewise.gs: a heading, the calculation in one piece, then one documented function for each worksheet function. */
export function emitScript(options: {
  readonly functions: readonly RegisteredFunction[];
  readonly version: string;
  /** The bundled `main.ts`: `var Ouncewise = …`. */
  readonly core: string;
}): string {
  return `/*
 * Ouncewise ${options.version}: worksheet functions for servicing small factory-sealed air conditioners by weighed ounces.
 * Paste the whole file into a script file of your spreadsheet: Extensions, Apps Script. MIT license; contains mathjs
 * (Apache-2.0) and psychrolib (MIT), see NOTICES.md of the package.
 * Opening a refrigerant circuit is work for a certified technician; venting is unlawful.
 */
${options.core.trim()}

${emitStubs(options.functions)}`;
}

/** The functions a sheet sees. The comments are its help. */
export function emitStubs(functions: readonly RegisteredFunction[]): string {
  return functions.map(stub).join('\n');
}

function stub(declaration: RegisteredFunction): string {
  const { id, summary, parameters, parameterNames, returns } = declaration;
  const lines = [
    summary,
    '',
    ...Object.entries(parameters).map(
      ([name, parameter]) =>
        `@param {${typeOf(parameter)}} ${nameOf(name, parameter)} ${describeParameter(parameter)}`,
    ),
    `@return {${resultType(returns)}} ${returns.description}`,
    '@customfunction',
  ];
  const comment = lines.map((line) => ` * ${line.replace(/\*\//g, '* /')}`.trimEnd()).join('\n');
  return `/**
${comment}
 */
function ${spell(id)}(${parameterNames.join(', ')}) {
  return Ouncewise.call('${id}', arguments);
}
`;
}

function nameOf(name: string, parameter: Parameter): string {
  return parameter.optional === true || 'default' in parameter ? `[${name}]` : name;
}

function typeOf(parameter: Parameter): string {
  switch (parameter.kind) {
    case 'number':
      return 'number|string';
    case 'date':
      return 'Date|string';
    case 'yesNo':
      return 'boolean|string';
    case 'list':
    case 'table':
      return 'range';
    case 'text':
    case 'choice':
    case 'refrigerant':
      return 'string';
  }
}

function resultType(returns: Returns): string {
  switch (returns.kind) {
    case 'number':
      return 'number';
    case 'date':
      return 'Date';
    case 'yesNo':
      return 'boolean';
    case 'text':
    case 'verdict':
      return 'string';
    case 'fact':
      return 'number|string';
    case 'table':
      return 'range';
  }
}
