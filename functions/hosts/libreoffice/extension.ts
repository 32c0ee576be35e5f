import type { RegisteredFunction } from '../../runtime/registry.ts';
import { emitConfiguration, emitFunctionTable, emitTypeLibrary } from './emit.ts';
import { pack } from './pack.ts';

export interface ExtensionParts {
  readonly functions: readonly RegisteredFunction[];
  readonly version: string;
  /** The hand-written files of `manifest/libreoffice` by path, with LICENSE and NOTICES. */
  readonly templates: Readonly<Record<string, Uint8Array>>;
  /** The bundled `main.ts`. */
  readonly server: Uint8Array;
}

/** The bytes of ouncewise.oxt. */
export function buildExtension({ functions, version, templates, server }: ExtensionParts): Uint8Array {
  const text = (value: string): Uint8Array => new TextEncoder().encode(value);
  const description = new TextDecoder().decode(templates['description.xml']).replace('{version}', version);
  return pack({
    ...templates,
    'description.xml': text(description),
    'XOunce.idl': text(emitTypeLibrary(functions)),
    'CalcAddIns.xcu': text(emitConfiguration(functions)),
    'functions.json': text(emitFunctionTable(functions)),
    'server.cjs': server,
  });
}
