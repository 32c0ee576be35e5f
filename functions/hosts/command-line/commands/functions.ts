import { catalogue } from '../../../catalogue/index.ts';
import { describeParameter } from '../../../runtime/describe.ts';
import { families } from '../../../runtime/families.ts';
import type { RegisteredFunction } from '../../../runtime/registry.ts';
import type { Command } from '../command.ts';

export const functionsCommand: Command = {
  summary: 'List the functions, or tell all about one.',
  usage: `ouncewise functions
ouncewise functions FUNCTION`,
  run: ([id]) => {
    console.log(id === undefined ? list() : describe(catalogue.get(id)));
    return Promise.resolve(0);
  },
};

function list(): string {
  const all = catalogue.all();
  const width = Math.max(...all.map((declaration) => declaration.id.length));
  return Object.entries(families)
    .map(([family, title]) => ({
      title,
      members: all.filter((declaration) => declaration.family === family),
    }))
    .filter(({ members }) => members.length > 0)
    .map(({ title, members }) =>
      [
        title,
        ...members.map((declaration) => `  ${declaration.id.padEnd(width)}  ${declaration.summary}`),
      ].join('\n'),
    )
    .join('\n\n');
}

function describe(declaration: RegisteredFunction): string {
  const { id, summary, parameterNames, parameters, returns, source, examples } = declaration;
  const lines = [`${id}(${parameterNames.join(', ')})`, '', summary, ''];
  for (const name of parameterNames) {
    const parameter = parameters[name];
    if (parameter) lines.push(`  ${name}: ${describeParameter(parameter)}`);
  }
  lines.push('', `Gives: ${returns.description}`, `Rests on: ${source}`, '', 'Examples:');
  for (const example of examples) {
    const values = Object.entries(example.arguments).map(([name, value]) => `${name}=${quote(value)}`);
    lines.push(`  ouncewise call ${id} ${values.join(' ')}`);
    const within = example.tolerance === undefined ? '' : ` (within ${example.tolerance})`;
    const gives = typeof example.gives === 'object' ? JSON.stringify(example.gives) : String(example.gives);
    lines.push(`    gives ${gives}${within}; ${example.source}`);
  }
  return lines.join('\n');
}

function quote(value: unknown): string {
  if (value instanceof Date) return value.toISOString().slice(0, 10);
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return /^[\w./-]+$/.test(text) ? text : `"${text}"`;
}
