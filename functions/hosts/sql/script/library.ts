import { catalogue } from '../../../catalogue/index.ts';
import * as single from './answer.ts';
import type { ScriptValue } from './answer.ts';

/** What the one library file for engines that load libraries offers to the bodies of the definitions. */
export function answer(id: string, args: readonly unknown[], failing: boolean): ScriptValue {
  return single.answer(catalogue.get(id), args, failing);
}

export function why(id: string, argsJson: string | null): string | null {
  const declaration = catalogue.find(id.replace(/^ounce_/i, ''));
  if (declaration === undefined) return `no function is called ${id}`;
  const args: unknown = JSON.parse(argsJson ?? '[]');
  return Array.isArray(args) ? single.why(declaration, args) : 'the values must be a JSON list';
}
