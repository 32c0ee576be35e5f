import vm from 'node:vm';

/** A JavaScript without a host: the language's own globals and nothing else, as engines run it inside a query. */
export function bareContext(): vm.Context {
  const context = vm.createContext(Object.create(null) as object);
  // V8 itself puts these into every context.
  vm.runInContext('delete globalThis.console; delete globalThis.WebAssembly;', context);
  return context;
}

/** Runs a function body with arguments by name. Values cross as JSON, as they do in engines. */
export function runBody(
  context: vm.Context,
  body: string,
  names: readonly string[],
  values: readonly unknown[],
): unknown {
  const call = `(function (${names.join(', ')}) {${body}}).apply(undefined, ${JSON.stringify(values)})`;
  const text = vm.runInContext(`JSON.stringify({ v: ${call} })`, context) as string;
  return (JSON.parse(text) as { v: unknown }).v;
}
