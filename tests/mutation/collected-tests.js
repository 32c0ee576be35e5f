import {
  chai,
  GLOBAL_EXPECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from '@vitest/expect';

/**
 * The test functions of this project's test files, without the program around them: they only note what is to be run.
 * The matchers are those of the real test runner.
 */
chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
const { expect } = chai;
globalThis[GLOBAL_EXPECT] = expect;
setState({ assertionCalls: 0, isExpectingAssertions: false }, expect);

let collected = [];
let group = [];

function describe(name, body) {
  group.push(String(name));
  body();
  group.pop();
}

function it(name, body) {
  collected.push({ name: [...group, String(name)].join(' > '), body });
}

/** Rows of a table get their place in it as a name. */
const each = (declare) => (rows) => (name, body) => {
  [...rows].forEach((row, index) => {
    const given = Array.isArray(row) ? row : [row];
    declare(`${name} [${index}]`, () => body(...given));
  });
};
describe.each = each(describe);
it.each = each(it);

/** What stands for the module 'vitest' in the bundle of tests. */
export const testFunctions = { describe, it, test: it, expect };

/** Runs a test file and returns the tests it declares. */
export function testsDeclaredBy(load) {
  collected = [];
  group = [];
  load();
  const names = new Map();
  // Two tests of one name would share what they reach.
  return collected.map(({ name, body }) => {
    const times = names.get(name) ?? 0;
    names.set(name, times + 1);
    return { name: times === 0 ? name : `${name} (${times})`, body };
  });
}
