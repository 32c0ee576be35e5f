import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { PluginKind, declareFactoryPlugin } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  MutantRunStatus,
  TestStatus,
  determineHitLimitReached,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import vm from 'node:vm';
import { bundleTests } from './bundle.js';
import { testsDeclaredBy } from './collected-tests.js';
import { isDrawn, keyOf, notDrawn } from './sample.js';

/** The form of the library that the bundle of tests gets. */
const requireHere = createRequire(import.meta.url);

/** A mutant must meet the same cases as the run that measured what each test reaches. */
const seed = 20_261_125;

/**
 * Runs the tests inside the process that Stryker starts, with fresh modules for every mutant.
 *
 * Starting the usual test runner once a mutant took 7 s on the machine this was written on, the tests themselves a
 * fraction of that.
 */
class InProcessRunner {
  /** Where the mutated code looks up which mutant is in force. */
  namespace = (globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {});
  /** What each test took in the first run: the quick ones go first. */
  took = new Map();

  /** Share of all mutants that is tried. */
  share = Number(process.env.MUTATION_SAMPLE ?? 1);
  /** With tests only added since the last report, what they noticed then they notice now. */
  killedBefore = killedIn(process.env.MUTATION_KILLED_BEFORE);

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    requireHere('fast-check').configureGlobal({ seed });
    this.fresh = await bundleTests(process.cwd(), (process.env.MUTATION_FOLDERS ?? '').split(' '));
  }

  async dryRun() {
    const coverage = { static: {}, perTest: {} };
    const tests = [];
    for (const file of Object.keys(this.fresh())) {
      // Each file anew: what one remembers must not hide what the next one reaches.
      this.namespace.mutantCoverage = undefined;
      this.namespace.activeMutant = undefined;
      tests.push(...(await this.runFile(this.fresh()[file], file)));
      const found = this.namespace.mutantCoverage;
      if (!found) continue;
      Object.assign(coverage.perTest, found.perTest);
      for (const [mutant, hits] of Object.entries(found.static))
        coverage.static[mutant] = (coverage.static[mutant] ?? 0) + hits;
    }
    for (const { id, timeSpentMs } of tests) this.took.set(id, timeSpentMs);
    return { status: DryRunStatus.Complete, tests, mutantCoverage: coverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit, disableBail }) {
    const key = keyOf(activeMutant.fileName, reportedAt(activeMutant));
    if (!isDrawn(key, this.share)) return { status: MutantRunStatus.Error, errorMessage: notDrawn };
    const before = this.killedBefore.get(key);
    if (before)
      return { status: MutantRunStatus.Killed, killedBy: before, failureMessage: 'as before', nrOfTests: 0 };
    this.namespace.activeMutant = activeMutant.id;
    this.namespace.hitLimit = hitLimit;
    this.namespace.hitCount = hitLimit === undefined ? undefined : 0;
    const loaders = this.fresh();
    const only = testFilter && new Set(testFilter);
    const tests = [];
    try {
      for (const file of this.quickestFirst(Object.keys(loaders), only, folderOf(activeMutant))) {
        const found = await this.runFile(loaders[file], file, only, !disableBail);
        tests.push(...found);
        if (!disableBail && found.some(({ status }) => status === TestStatus.Failed)) break;
      }
    } catch (error) {
      if (error.code !== endless) throw error;
      return { status: MutantRunStatus.Timeout, reason: error.message };
    }
    const timedOut = determineHitLimitReached(this.namespace.hitCount, hitLimit);
    return toMutantRunResult(timedOut ?? { status: DryRunStatus.Complete, tests });
  }

  /**
   * Tests of the mutated folder before those of others, and the quick before the slow: a mutant is soon found out.
   *
   * What is worked out while modules load cannot be traced to tests. For it (no `only`) the tests of its folder and the
   * examples of the catalogue must do: fewer than there are, so that the score errs on the low side.
   */
  quickestFirst(files, only, folder) {
    const wanted = new Set([...(only ?? [])].map(fileOf));
    const cost = new Map();
    for (const [id, took] of this.took)
      if (!only || only.has(id)) cost.set(fileOf(id), (cost.get(fileOf(id)) ?? 0) + took);
    const own = (file) => (file.includes(`/${folder}/`) ? 0 : 1);
    return files
      .filter((file) => (only ? wanted.has(file) : own(file) === 0 || file.endsWith('examples.test.ts')))
      .sort((a, b) => own(a) - own(b) || (cost.get(a) ?? 0) - (cost.get(b) ?? 0));
  }

  async runFile(load, file, only, bail = false) {
    let declared;
    try {
      declared = stoppable(() => testsDeclaredBy(load), longest);
    } catch (error) {
      if (error.code === endless) throw error;
      return [{ ...named(file, 'loading'), timeSpentMs: 0, ...failed(error) }];
    }
    const results = [];
    for (const { name, body } of declared) {
      if (timed.test(name)) continue;
      const test = named(file, name);
      if (only && !only.has(test.id)) continue;
      this.namespace.currentTestId = test.id;
      const began = performance.now();
      let outcome = { status: TestStatus.Success };
      try {
        await stoppable(body, this.took.has(test.id) ? 5000 + 10 * this.took.get(test.id) : longest);
      } catch (error) {
        if (error.code === endless) throw error;
        outcome = failed(error);
      }
      this.namespace.currentTestId = undefined;
      results.push({ ...test, timeSpentMs: performance.now() - began, ...outcome });
      if (bail && outcome.status === TestStatus.Failed) break;
    }
    return results;
  }
}

/** Milliseconds for a test of which it is not known what it takes. */
const longest = 60_000;
const endless = 'ERR_SCRIPT_EXECUTION_TIMEOUT';
const caller = new vm.Script('globalThis.stoppableBody()');

/** Calls a function, and stops it when it goes on for too long: a mutant may turn a loop into an endless one. */
function stoppable(body, timeout) {
  globalThis.stoppableBody = body;
  return caller.runInThisContext({ timeout: Math.ceil(timeout) });
}

/** Tests that hold a time to a limit would fail for the instruments alone. */
const timed = /in a time that/;

/** Positions in a report count from one, those of a run from zero. */
function reportedAt({ location: { start, end }, ...mutant }) {
  const fromOne = ({ line, column }) => ({ line: line + 1, column: column + 1 });
  return { ...mutant, location: { start: fromOne(start), end: fromOne(end) } };
}

/** @param folder - with reports, one for each folder of src */
function killedIn(folder) {
  const killed = new Map();
  if (folder === undefined) return killed;
  const names = readdirSync(folder).filter((name) => /^[a-z]+\.json$/.test(name));
  for (const name of names) {
    const report = JSON.parse(readFileSync(join(folder, name), 'utf8'));
    const tests = new Map();
    for (const [testFile, declared] of Object.entries(report.testFiles))
      for (const test of declared.tests) tests.set(test.id, named(testFile, test.name).id);
    for (const [source, { mutants }] of Object.entries(report.files)) {
      for (const mutant of mutants)
        if (mutant.status === 'Killed')
          killed.set(
            keyOf(source, mutant),
            mutant.killedBy.map((id) => tests.get(id)),
          );
    }
  }
  return killed;
}

const folderOf = ({ fileName }) => /\/src\/([a-z]+)\//.exec(fileName)?.[1];

const fileOf = (id) => id.slice(0, id.indexOf('#'));

const named = (file, name) => ({ id: `${file}#${name}`, name, fileName: file });

const failed = (error) => ({
  status: TestStatus.Failed,
  failureMessage: error instanceof Error ? error.message : String(error),
});

const createRunner = () => new InProcessRunner();

export const strykerPlugins = [declareFactoryPlugin(PluginKind.TestRunner, 'in-process', createRunner)];
