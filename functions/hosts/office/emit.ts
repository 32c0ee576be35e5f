import { describeParameter } from '../../runtime/describe.ts';
import type { Parameter } from '../../runtime/define.ts';
import type { RegisteredFunction } from '../../runtime/registry.ts';
import { guideLink } from '../../handbook/function-guide/links.ts';
import { fit, longestDescription, longestParameterDescription } from './limits.ts';

/**
 * functions.json: what Excel knows of the functions before it calls any.
 * Every value is taken as a range of anything: a single cell then comes as [[v]], a range whole, and the runtime
 * works cell by cell. Error cells are let in, so that they fail alone.
 */
export function emitFunctionsJson(functions: readonly RegisteredFunction[], guideUrl: string): string {
  const metadata = {
    allowErrorForDataTypeAny: true,
    functions: functions.map((declaration) => ({
      id: declaration.id,
      name: declaration.id,
      description: fit(
        `${declaration.summary} Gives: ${declaration.returns.description}`,
        longestDescription,
      ),
      helpUrl: `${guideUrl}/${guideLink(declaration)}`,
      parameters: Object.entries(declaration.parameters).map(([name, parameter]) => ({
        name,
        description: fit(describeParameter(parameter), longestParameterDescription),
        type: 'any',
        dimensionality: 'matrix',
        ...(mayBeLeftOut(parameter) ? { optional: true } : {}),
      })),
      result: { type: 'any', dimensionality: 'matrix' },
    })),
  };
  return `${JSON.stringify(metadata, undefined, 2)}\n`;
}

function mayBeLeftOut(parameter: Parameter): boolean {
  return parameter.optional === true || 'default' in parameter;
}
