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

/** Every worksheet function, in the order of a visit. */
export const catalogue = new Registry(
  [refrigerant, visit, charge, access, air, leak, records, cost].flatMap((family) =>
    Object.values(family as Record<string, FunctionDeclaration>),
  ),
);
