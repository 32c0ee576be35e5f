import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, readdirSync, rmSync, watch } from 'node:fs';
import { join } from 'node:path';
import type { Chance } from '../files/chance.ts';
import type { Scene } from './scenes.ts';

/** What became of the runs of one command. */
export interface KillReport {
  readonly scene: string;
  readonly runs: number;
  /** Runs that were dead before they had ended by themselves. */
  readonly killed: number;
  readonly foundOld: number;
  readonly foundNew: number;
  /** Part files that dead runs left, all gone after the next run. */
  readonly partsLeft: number;
  readonly failures: readonly string[];
}

const dieAt = join(import.meta.dirname, 'die-at.js');
/** Steps of writing in `die-at.js`; a number behind the last one lets the run end by itself. */
const steps = 9;

interface Run {
  readonly signal: string | null;
  readonly code: number | null;
  readonly ms: number;
  readonly said: string;
}

type Death =
  { readonly afterMs: number } | { readonly atStep: number } | { readonly onSight: number } | undefined;

/**
 * Runs a command again and again and kills each run: at a random moment, at a step of writing the file, or as soon as
 * something new shows in the folder.
 */
export async function killRuns(given: {
  readonly program: string;
  readonly scene: Scene;
  readonly folder: string;
  readonly runs: number;
  readonly chance: Chance;
}): Promise<KillReport> {
  const { program, scene, folder, runs, chance } = given;
  const target = join(folder, scene.target);
  const prepare = (): void => {
    mkdirSync(folder, { recursive: true });
    scene.prepare(folder);
  };
  const failures: string[] = [];
  prepare();
  const old = readFileSync(target);
  const whole = await run(program, scene, folder, undefined);
  const complete = readFileSync(target);
  if (whole.code !== 0 || complete.equals(old)) throw new Error(`${scene.name} does not work: ${whole.said}`);
  const inputs = inputsOf(folder, scene);
  let killed = 0;
  let foundOld = 0;
  let foundNew = 0;
  let partsLeft = 0;
  for (let index = 0; index < runs; index += 1) {
    prepare();
    const death = chooseDeath(index, whole.ms, chance);
    const { signal } = await run(program, scene, folder, death);
    if (signal === 'SIGKILL') killed += 1;
    const left = readFileSync(target);
    if (left.equals(old)) foundOld += 1;
    else if (left.equals(complete)) foundNew += 1;
    else
      failures.push(
        `${scene.name}, ${JSON.stringify(death)}: neither the old file nor the new one, ${left.length} bytes`,
      );
    // Now and then somebody starts the command again; a few dead runs lie before it.
    if (index % 10 === 9 || index === runs - 1) {
      partsLeft += partsIn(folder).length;
      prepare();
      const next = await run(program, scene, folder, undefined);
      if (next.code !== 0 || !readFileSync(target).equals(complete))
        failures.push(`${scene.name}: the next run does not work: ${next.said}`);
      const parts = partsIn(folder);
      if (parts.length > 0)
        failures.push(`${scene.name}: still there after the next run: ${parts.join(', ')}`);
      if (inputsOf(folder, scene) !== inputs)
        failures.push(`${scene.name}: the inputs or the other files of the folder have changed`);
    }
  }
  rmSync(folder, { recursive: true, force: true });
  return { scene: scene.name, runs, killed, foundOld, foundNew, partsLeft, failures };
}

function chooseDeath(index: number, wholeMs: number, chance: Chance): Death {
  switch (index % 3) {
    case 0:
      return { afterMs: wholeMs * (0.3 + 0.75 * chance.share()) };
    case 1:
      return { atStep: 1 + chance.below(steps) };
    default:
      return { onSight: chance.below(4) };
  }
}

function partsIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true })
    .map(String)
    .filter((name) => name.includes('.part'));
}

/** Names and contents of everything but the target. */
function inputsOf(folder: string, { target }: Scene): string {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name !== target && !entry.name.includes('.part'))
    .map(({ parentPath, name }) => `${name} ${readFileSync(join(parentPath, name)).toString('base64')}`)
    .sort()
    .join('\n');
}

function run(program: string, { words }: Scene, folder: string, death: Death): Promise<Run> {
  const started = performance.now();
  const atStep = death !== undefined && 'atStep' in death ? death.atStep : undefined;
  const child = spawn(
    process.execPath,
    [...(atStep === undefined ? [] : ['--import', dieAt]), program, ...words],
    {
      cwd: folder,
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, DIE_AT_STEP: String(atStep ?? 0) },
    },
  );
  let said = '';
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (data: Buffer) => (said += data.toString()));
  const kill = (): void => {
    child.kill('SIGKILL');
  };
  const timer = death !== undefined && 'afterMs' in death ? setTimeout(kill, death.afterMs) : undefined;
  const watcher =
    death !== undefined && 'onSight' in death
      ? watch(folder, () => (death.onSight === 0 ? kill() : setTimeout(kill, death.onSight)))
      : undefined;
  return new Promise((resolve) => {
    child.once('close', (code, signal) => {
      clearTimeout(timer);
      watcher?.close();
      resolve({ code, signal, ms: performance.now() - started, said });
    });
  });
}
