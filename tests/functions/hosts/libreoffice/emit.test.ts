import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { catalogue } from '../../../../functions/catalogue/index.ts';
import {
  emitConfiguration,
  emitFunctionTable,
  emitTypeLibrary,
} from '../../../../functions/hosts/libreoffice/emit.ts';
import { buildExtension } from '../../../../functions/hosts/libreoffice/extension.ts';
import { spell } from '../../../../functions/hosts/libreoffice/spell.ts';
import { defineFunction } from '../../../../functions/runtime/define.ts';
import { Registry } from '../../../../functions/runtime/registry.ts';

const two = new Registry([
  defineFunction({
    id: 'ROOM',
    family: 'charge',
    summary: 'Room left < nameplate & "more".',
    parameters: { in: { kind: 'number', quantity: 'mass', minimum: 0, description: 'What is in.' } },
    returns: { kind: 'number', quantity: 'mass', description: 'Room.' },
    source: 'made up for this test',
    examples: [],
    compute: (given) => given.in,
  }),
  defineFunction({
    id: 'WORD',
    family: 'visit',
    summary: 'A word.',
    parameters: {},
    returns: { kind: 'text', description: 'Word.' },
    source: 'made up for this test',
    examples: [],
    compute: () => 'word',
  }),
]).all();

describe('what the add-in is made of', () => {
  test('type library: numbered parameters, rows of cells for numbers, any where text can come', () => {
    expect(emitTypeLibrary(two)).toBe(
      'module ouncewise { module libreoffice { interface XOunce {\n' +
        '  sequence<sequence<any> > ROOM([in] any p01, [in] any p02);\n' +
        '  any WORD([in] any p01);\n' +
        '}; }; };\n',
    );
  });

  test('configuration: names and help of each parameter, escaped', () => {
    const xml = emitConfiguration(two);
    expect(xml).toContain(
      '<value xml:lang="en">Room left &lt; nameplate &amp; &quot;more&quot;. Result: Room.</value>',
    );
    const room = xml.slice(xml.indexOf('oor:name="ROOM"'), xml.indexOf('oor:name="WORD"'));
    expect(room).toContain('<value xml:lang="en">OUNCE.ROOM</value>');
    expect(room).toMatch(
      /oor:name="p01"[^]*<value xml:lang="en">in<\/value>[^]*What is in\. In oz, in SI g\./,
    );
    expect(room).toMatch(/oor:name="p02"[^]*<value xml:lang="en">units<\/value>/);
  });

  test('the whole catalogue: well-formed, every id and parameter once', () => {
    const ids: string[] = [];
    let parameters = 0;
    const parser = new SaxesParser();
    parser.on('opentag', ({ attributes }) => {
      const name = attributes['oor:name'] ?? '';
      if (catalogue.find(name)?.id === name) ids.push(name);
      if (/^p\d\d$/.test(name)) parameters += 1;
    });
    parser.write(emitConfiguration(catalogue.all())).close();
    expect(ids).toEqual(catalogue.all().map(({ id }) => id));
    expect(parameters).toBe(
      catalogue.all().reduce((sum, { parameterNames }) => sum + parameterNames.length, 0),
    );

    const library = emitTypeLibrary(catalogue.all());
    for (const { id, parameterNames } of catalogue.all()) {
      const [, inside] = new RegExp(` ${id}\\(([^)]*)\\);`).exec(library) ?? [];
      expect(inside?.split(', '), id).toHaveLength(parameterNames.length);
    }
    const table = JSON.parse(emitFunctionTable(catalogue.all())) as Record<string, { parameters: unknown[] }>;
    expect(Object.keys(table)).toEqual(catalogue.all().map(({ id }) => id));
  });

  test('ids are method names that the type library can hold', () => {
    for (const { id } of catalogue.all()) expect(id).toMatch(/^[A-Z][A-Z0-9]*$/);
    expect(spell('SATTEMP')).toBe('OUNCE.SATTEMP');
  });

  test('the same parts give the same bytes, whatever their order', () => {
    const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
    const parts = { functions: two, version: '1.2.3', server: bytes('server') };
    const one = { 'description.xml': bytes('<version value="{version}"/>'), 'a.py': bytes('a') };
    const other = { 'a.py': bytes('a'), 'description.xml': bytes('<version value="{version}"/>') };
    expect(buildExtension({ ...parts, templates: one })).toEqual(
      buildExtension({ ...parts, templates: other }),
    );
  });
});
