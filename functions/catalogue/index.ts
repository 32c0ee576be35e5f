import type { FunctionDeclaration } from '../runtime/define.ts';
import { Registry } from '../runtime/registry.ts';
import * as access from './access/index.ts';
import * as air from './air/index.ts';
import * as charge from './charge/index.ts';
import * as cost from './cost/index.ts';
import * as leak from './leak/index.ts';
import * as records from './records/index.ts';
import * as refrigerant from './refrigerant/index.ts';
import * as visit from './visit/index.ts';

/**
 * Every worksheet function: families in the order of a visit, functions by name. Sorted here, because bundlers and
 * runtimes list the exports of a module in different orders, and every emitted file follows this one.
 */
export const catalogue = new Registry(
  [refrigerant, visit, charge, access, air, leak, records, cost].flatMap((family) =>
    Object.values(family as Record<string, FunctionDeclaration>).sort((a, b) => (a.id < b.id ? -1 : 1)),
  ),
);
