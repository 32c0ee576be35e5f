import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { CalcError } from '../../../src/errors.ts';
import type { RegisteredFunction } from '../../runtime/registry.ts';
import { emitGuide } from '../../handbook/function-guide/emit.ts';
import { emitFunctionsJson } from './emit.ts';
import { drawIcon, iconSizes } from './icon.ts';
import { fillTemplate } from './template.ts';

export interface OfficeBundle {
  readonly functions: readonly RegisteredFunction[];
  /** Where the files will be served from, such as https://tools.example.org/ouncewise. */
  readonly baseUrl: string;
  /** Three numbers, such as 0.1.0. */
  readonly version: string;
  /** Text of the built functions.js. */
  readonly script: string;
  /** Texts of `manifest/office` by name. */
  readonly templates: { readonly manifest: string; readonly page: string };
}

/** Every file of the add-in by its path: static, for any https host. @throws CalcError when the address is no https one */
export function officeFiles(bundle: OfficeBundle): Readonly<Record<string, string | Uint8Array>> {
  const { functions, script, templates } = bundle;
  const baseUrl = checkedBase(bundle.baseUrl);
  const guide = Object.entries(emitGuide(functions, bundle.version)).map(
    ([name, page]) => [`guide/${name}`, page] as const,
  );
  const icons = iconSizes.map((size) => [`icon-${size}.png`, drawIcon(size)] as const);
  const words = { baseUrl, version: `${bundle.version}.0` };
  return {
    'manifest.xml': fillTemplate(templates.manifest, words),
    'functions.html': fillTemplate(templates.page, words),
    'functions.js': script,
    'functions.json': emitFunctionsJson(functions, `${baseUrl}/guide`),
    ...Object.fromEntries(icons),
    ...Object.fromEntries(guide),
  };
}

/** Writes the add-in for one address. The script and the templates come from the installed package. */
export function bundleOffice(options: {
  readonly functions: readonly RegisteredFunction[];
  readonly baseUrl: string;
  readonly outDir: string;
  /** Folder that holds package.json, dist/ and manifest/. */
  readonly packageRoot: string;
}): readonly string[] {
  const read = (path: string): string => readFileSync(join(options.packageRoot, path), 'utf8');
  const { version } = JSON.parse(read('package.json')) as { version: string };
  const files = officeFiles({
    functions: options.functions,
    baseUrl: options.baseUrl,
    version,
    script: read('dist/office/functions.js'),
    templates: {
      manifest: read('manifest/office/manifest.xml'),
      page: read('manifest/office/functions.html'),
    },
  });
  // Where the script goes, the licences of the libraries inside it go along.
  const licences = join(options.packageRoot, 'dist/THIRD-PARTY.txt');
  const all = existsSync(licences) ? { ...files, 'THIRD-PARTY.txt': readFileSync(licences) } : files;
  for (const [name, content] of Object.entries(all)) {
    const path = join(options.outDir, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
  }
  return Object.keys(all);
}

function checkedBase(text: string): string {
  let url: URL;
  try {
    url = new URL(text);
  } catch {
    throw wrongBase(text);
  }
  const plain = url.search === '' && url.hash === '' && url.username === '' && url.password === '';
  if (url.protocol !== 'https:' || !plain) throw wrongBase(text);
  return url.href.replace(/\/+$/, '');
}

function wrongBase(received: string): CalcError {
  return new CalcError(`base-url must be an https address; received "${received}"`, {
    code: 'invalid-argument',
    parameter: 'base-url',
    received,
    limit: 'https://…, without query or fragment: Office takes add-ins from https only',
  });
}
