import { describeParameter } from '../../runtime/describe.ts';
import type { Parameter } from '../../runtime/define.ts';
import type { RegisteredFunction } from '../../runtime/registry.ts';
import { spell } from './spell.ts';

/**
 * The library file. The calculation stands inside the library's own function, so that the editor may keep and run
 * the text of that function alone; its comments are the help that users see and must survive.
 */
export function emitLibrary(options: {
  readonly functions: readonly RegisteredFunction[];
  readonly version: string;
  /** The bundled `main.ts`: `var Ouncewise = …`. */
  readonly core: string;
}): string {
  return `(function()
{
// Ouncewise ${options.version}, MIT license; contains mathjs (Apache-2.0) and psychrolib (MIT), see NOTICES.md.
// Opening a refrigerant circuit is work for a certified technician; venting is unlawful.
Api.AddCustomFunctionLibrary("Ouncewise", function() {
${options.core.trim()}
${emitRegistrations(options.functions)}});
})();
`;
}

/** One documented registration for each worksheet function. */
export function emitRegistrations(functions: readonly RegisteredFunction[]): string {
  return functions.map(registration).join('');
}

function registration({ id, summary, parameters, parameterNames, returns }: RegisteredFunction): string {
  const lines = [
    summary,
    '@customfunction',
    ...Object.entries(parameters).map(
      ([name, parameter]) =>
        `@param {${typeOf(parameter)}} ${nameOf(name, parameter)} ${describeParameter(parameter)}`,
    ),
    `@returns {${returns.kind === 'table' ? 'any[][]' : 'any'}} ${returns.description}`,
  ];
  const comment = lines.map((line) => ` * ${line.replace(/\*\//g, '* /')}`).join('\n');
  return `/**
${comment}
 */
Api.AddCustomFunction(function ${spell(id)}(${parameterNames.join(', ')}) {
  return Ouncewise.call("${id}", arguments);
});
`;
}

function nameOf(name: string, parameter: Parameter): string {
  return parameter.optional === true || 'default' in parameter ? `[${name}]` : name;
}

/** Ranges say so; everything else takes whatever the cell holds, because text may carry units. */
function typeOf(parameter: Parameter): string {
  return parameter.kind === 'list' || parameter.kind === 'table' ? 'any[][]' : 'any';
}
