import { isRequired } from '../../runtime/coerce.ts';
import type { Parameter } from '../../runtime/define.ts';

/** False: NULL, or nothing where the engine allows it, may stand for the parameter. */
export function mustBeGiven(parameter: Parameter): boolean {
  return parameter.kind === 'list' || parameter.kind === 'table'
    ? parameter.optional !== true
    : isRequired(parameter);
}
