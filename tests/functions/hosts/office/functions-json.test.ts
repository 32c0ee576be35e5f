import { describe, expect, it } from 'vitest';
import { emitFunctionsJson } from '../../../../functions/hosts/office/emit.ts';
import { fit } from '../../../../functions/hosts/office/limits.ts';
import { catalogue } from '../../../../functions/catalogue/index.ts';

interface Metadata {
  readonly functions: readonly Record<string, unknown>[];
}

/**
 * What Excel's documentation and the unified manifest's definitions (version 1.30) say of a function list, checked
 * in our own words: fields, kinds, patterns and lengths. Returns what is wrong.
 */
function faultsOf(list: unknown): string[] {
  const faults: string[] = [];
  const check = (fine: boolean, what: string): void => {
    if (!fine) faults.push(what);
  };
  const onlyFields = (value: object, allowed: readonly string[], where: string): void => {
    for (const field of Object.keys(value)) check(allowed.includes(field), `${where} has no field ${field}`);
  };
  const isText = (value: unknown, longest: number): boolean =>
    typeof value === 'string' && value.length >= 1 && value.length <= longest;

  const root = list as Record<string, unknown>;
  check(Array.isArray(root.functions) && root.functions.length > 0, 'functions is a list');
  check(['boolean', 'undefined'].includes(typeof root.allowErrorForDataTypeAny), 'allowErrorForDataTypeAny');
  onlyFields(root, ['functions', 'allowErrorForDataTypeAny'], 'the list');
  const ids = new Set<string>();
  for (const each of root.functions as Record<string, unknown>[]) {
    const where = String(each.id);
    onlyFields(each, ['id', 'name', 'description', 'helpUrl', 'parameters', 'result'], where);
    check(isText(each.id, 64) && /^[A-Za-z][A-Za-z0-9_]{2,}$/.test(String(each.id)), `${where} id`);
    check(isText(each.name, 64) && /^\p{L}[\p{L}0-9._]{2,}$/u.test(String(each.name)), `${where} name`);
    check(isText(each.description, 1024), `${where} description`);
    check(isText(each.helpUrl, 2048) && String(each.helpUrl).startsWith('https://'), `${where} helpUrl`);
    check(!ids.has(where.toUpperCase()), `${where} twice`);
    ids.add(where.toUpperCase());
    const parameters = each.parameters as Record<string, unknown>[];
    check(Array.isArray(parameters) && parameters.length <= 128, `${where} parameters`);
    let optionalBefore = false;
    for (const parameter of parameters) {
      const place = `${where} ${String(parameter.name)}`;
      onlyFields(parameter, ['name', 'description', 'type', 'dimensionality', 'optional'], place);
      check(isText(parameter.name, 64), `${place} name`);
      check(isText(parameter.description, 512), `${place} description`);
      check(['boolean', 'number', 'string', 'any'].includes(String(parameter.type)), `${place} type`);
      check(['scalar', 'matrix'].includes(String(parameter.dimensionality)), `${place} dimensionality`);
      check(parameter.optional === undefined || parameter.optional === true, `${place} optional`);
      check(!(optionalBefore && parameter.optional !== true), `${place} is needed behind one that is not`);
      optionalBefore ||= parameter.optional === true;
    }
    const result = each.result as Record<string, unknown>;
    onlyFields(result, ['type', 'dimensionality'], `${where} result`);
    check(['boolean', 'number', 'string', 'any'].includes(String(result.type)), `${where} result type`);
    check(['scalar', 'matrix'].includes(String(result.dimensionality)), `${where} result dimensionality`);
  }
  return faults;
}

const list = JSON.parse(emitFunctionsJson(catalogue.all(), 'https://example.org/guide')) as Metadata;

describe('functions.json', () => {
  it('is a list Excel takes', () => {
    expect(faultsOf(list)).toEqual([]);
  });

  it('has every function with every value, units last', () => {
    expect(list.functions.map(({ id }) => id)).toEqual(catalogue.all().map(({ id }) => id));
    for (const each of list.functions) {
      const names = (each.parameters as { name: string }[]).map(({ name }) => name);
      expect(names).toEqual(catalogue.get(String(each.id)).parameterNames);
    }
  });

  it.each<[string, (copy: Record<string, never>[]) => void]>([
    ['an id with a dot', ([first]) => Object.assign(first ?? {}, { id: 'A.B.C' })],
    [
      'a description that is too long',
      ([first]) => Object.assign(first ?? {}, { description: 'x'.repeat(1025) }),
    ],
    ['a field Excel does not know', ([first]) => Object.assign(first ?? {}, { colour: 'blue' })],
    ['the same function twice', (copy) => copy.push(copy[0] as never)],
  ])('the check notices %s', (_, spoil) => {
    const copy = structuredClone(list) as unknown as { functions: Record<string, never>[] };
    spoil(copy.functions);
    expect(faultsOf(copy)).not.toEqual([]);
  });
});

describe('text that is too long for Excel', () => {
  it('ends with a whole sentence, or with an ellipsis', () => {
    expect(fit('One. Two. Three.', 16)).toBe('One. Two. Three.');
    expect(fit('One. Two. Three.', 12)).toBe('One. Two.');
    expect(fit('One two three', 8)).toBe('One two…');
  });
});
