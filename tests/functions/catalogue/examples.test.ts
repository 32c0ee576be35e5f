import { describe, expect, it } from 'vitest';
import { agrees } from '../../../functions/handbook/function-guide/agreement.ts';
import { call } from '../../../functions/catalogue/call.ts';
import { catalogue } from '../../../functions/catalogue/index.ts';

/** The guide and the help of every host show these examples; here each one is carried out. */
describe.each(catalogue.all().map((declaration) => ({ id: declaration.id, declaration })))(
  'examples of $id',
  ({ id, declaration }) => {
    it('are two or more, each with its source', () => {
      expect(declaration.examples.length).toBeGreaterThanOrEqual(2);
      for (const { source } of declaration.examples) expect(source.trim()).not.toBe('');
    });

    it.each(declaration.examples.map((example, index) => ({ number: index + 1, example })))(
      'number $number gives what it says',
      ({ example }) => {
        const outcome = call(id, example.arguments);
        const said = JSON.stringify(example.arguments);
        expect(
          agrees(declaration.returns, example, outcome),
          `${id} ${said} gave ${JSON.stringify(outcome)}, not ${JSON.stringify(example.gives)} ± ${String(example.tolerance ?? 0)}`,
        ).toBe(true);
      },
    );
  },
);

describe('the catalogue', () => {
  it('names every function once, in capitals and digits', () => {
    const ids = catalogue.all().map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[A-Z][A-Z0-9]{2,}$/);
  });

  it('names parameters in lower case with underscores, units last', () => {
    for (const { id, parameterNames } of catalogue.all()) {
      for (const name of parameterNames) expect(name, id).toMatch(/^[a-z][a-z0-9]*(_[a-z0-9]+)*$/);
      expect(parameterNames.at(-1), id).toBe('units');
      const elevation = parameterNames.indexOf('elevation');
      if (elevation >= 0)
        expect(elevation, `${id}: elevation stands before units`).toBe(parameterNames.length - 2);
    }
  });

  it('takes what must be given before what may be left out', () => {
    for (const { id, parameters } of catalogue.all()) {
      const left = Object.values(parameters).map(
        (parameter) => parameter.optional === true || 'default' in parameter,
      );
      expect(left, id).toEqual([...left].sort((a, b) => Number(a) - Number(b)));
    }
  });
});
