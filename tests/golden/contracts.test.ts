import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../functions/catalogue/index.ts';
import { emitStubs } from '../../functions/hosts/apps-script/emit.ts';
import { emitConfiguration, emitTypeLibrary } from '../../functions/hosts/libreoffice/emit.ts';
import { emitFunctionsJson } from '../../functions/hosts/office/emit.ts';
import { fillTemplate } from '../../functions/hosts/office/template.ts';
import { emitRegistrations } from '../../functions/hosts/onlyoffice/emit.ts';

/**
 * What users' files depend on: names, order of values, help. A difference here is seen by everyone; read it, then
 * accept it with `npx vitest run tests/golden -u`. Ids are never renamed or reused, values never reordered.
 */
const contracts: Readonly<Record<string, () => string>> = {
  'functions.json': () => emitFunctionsJson(catalogue.all(), 'https://example.org/ouncewise/guide'),
  'manifest.xml': () =>
    fillTemplate(readFileSync(join(import.meta.dirname, '../../manifest/office/manifest.xml'), 'utf8'), {
      baseUrl: 'https://example.org/ouncewise',
      version: '1.2.3.0',
    }),
  'apps-script-functions.txt': () => emitStubs(catalogue.all()),
  'onlyoffice-registrations.txt': () => emitRegistrations(catalogue.all()),
  'libreoffice-types.idl': () => emitTypeLibrary(catalogue.all()),
  'libreoffice-help.xcu': () => emitConfiguration(catalogue.all()),
};

describe('emitted contracts', () => {
  it.each(Object.keys(contracts))('%s is as reviewed', async (name) => {
    await expect(contracts[name]?.()).toMatchFileSnapshot(name);
  });
});
