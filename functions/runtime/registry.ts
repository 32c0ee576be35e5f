import { CalcError } from '../../src/errors.ts';
import type { FunctionDeclaration } from './define.ts';
import { unitsParameter } from './shared-parameters.ts';

/** A declaration as hosts see it: with `units` as the last parameter. */
export interface RegisteredFunction extends FunctionDeclaration {
  readonly parameterNames: readonly string[];
}

/** The functions of a catalogue by id. */
export class Registry {
  private readonly byId = new Map<string, RegisteredFunction>();

  constructor(declarations: Iterable<FunctionDeclaration>) {
    for (const declaration of declarations) {
      if (this.byId.has(declaration.id)) throw new Error(`two functions are called ${declaration.id}`);
      const parameters = { ...declaration.parameters, units: unitsParameter };
      this.byId.set(declaration.id, { ...declaration, parameters, parameterNames: Object.keys(parameters) });
    }
  }

  all(): readonly RegisteredFunction[] {
    return [...this.byId.values()];
  }

  find(id: string): RegisteredFunction | undefined {
    return this.byId.get(id) ?? this.byId.get(id.toUpperCase());
  }

  /** @throws CalcError unknown-name */
  get(id: string): RegisteredFunction {
    const found = this.find(id);
    if (found) return found;
    throw new CalcError(`no function is called ${id}`, {
      code: 'unknown-name',
      parameter: 'id',
      received: id,
      limit: 'a name that "ouncewise functions" lists',
    });
  }
}
