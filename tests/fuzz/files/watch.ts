import type { ChildProcess } from 'node:child_process';
import { fork } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface ToChild {
  readonly seed: number;
  readonly number: number;
}

export type FromChild =
  | { readonly kind: 'ready' }
  | { readonly kind: 'begun'; readonly number: number; readonly fileName: string; readonly story: string }
  | {
      readonly kind: 'done';
      readonly number: number;
      readonly outcome: 'result' | 'refused';
      readonly findings: readonly string[];
      readonly processorMs: number;
      readonly peakBytes: number;
    };

/** One case and what came of it. */
export interface Watched {
  readonly number: number;
  readonly fileName: string;
  readonly story: string;
  readonly outcome: 'result' | 'refused' | 'ended';
  readonly findings: readonly string[];
  readonly processorMs: number;
  readonly peakBytes: number;
}

/** Every case must end within these. Time is the processor's: on a busy machine the clock says little. */
export const mostProcessorMs = 10_000;
export const mostBytes = 2 ** 30;
/** A case that stands still altogether, and one whose making stands still. */
const mostClockMs = 600_000;

const child = join(import.meta.dirname, 'child.ts');

/** Tries cases in a child process; one that hangs, grows or crashes is ended, noted, and the next goes on in a new one. */
export async function watch(given: {
  readonly seed: number;
  readonly numbers: Iterable<number>;
  readonly folder: string;
  readonly onCase: (watched: Watched) => void;
  /** Lets the cases end early. */
  readonly isEnough?: () => boolean;
}): Promise<void> {
  mkdirSync(given.folder, { recursive: true });
  const numbers = given.numbers[Symbol.iterator]();
  for (let next = numbers.next(); next.done !== true;) {
    next = await oneChild(given, numbers, next.value);
  }
}

/** Runs cases until they or the child come to an end. */
function oneChild(
  { seed, folder, onCase, isEnough = () => false }: Parameters<typeof watch>[0],
  numbers: Iterator<number>,
  first: number,
): Promise<IteratorResult<number>> {
  return new Promise((resolve) => {
    const process_ = start(folder);
    let number: number | undefined;
    let begun: Extract<FromChild, { kind: 'begun' }> | undefined;
    let since = Date.now();
    let processorAtStart = 0;
    let reason = '';
    let said = '';
    process_.stderr?.on('data', (data: Buffer) => (said = (said + data.toString()).slice(-2000)));
    const send = (wanted: number): void => {
      number = wanted;
      begun = undefined;
      since = Date.now();
      process_.send({ seed, number } satisfies ToChild);
    };
    process_.on('message', (message: FromChild) => {
      if (message.kind === 'ready') send(first);
      else if (message.kind === 'begun') {
        begun = message;
        since = Date.now();
        processorAtStart = processorMsOf(process_.pid) ?? 0;
      } else {
        onCase({
          ...message,
          fileName: begun?.fileName ?? '',
          story: begun?.story ?? '',
          findings: [...message.findings, ...excess(message)],
        });
        const next = numbers.next();
        number = undefined;
        if (next.done !== true && !isEnough()) send(next.value);
        else process_.kill('SIGKILL');
      }
    });
    const timer = setInterval(() => {
      const used = begun === undefined ? 0 : (processorMsOf(process_.pid) ?? 0) - processorAtStart;
      if (used > mostProcessorMs * 1.5)
        reason = `still at work after ${Math.round(used / 1000)} s of processor time`;
      else if (Date.now() - since > mostClockMs) reason = 'stands still';
      if (reason !== '') process_.kill('SIGKILL');
    }, 500);
    // Not "close": what the child has started may hold its error stream open.
    process_.once('exit', (code, signal) => {
      clearInterval(timer);
      if (number === undefined) {
        resolve({ done: true, value: undefined });
        return;
      }
      const why =
        reason === '' ? `the process ended with ${signal ?? code ?? '?'}: ${lastWords(said)}` : reason;
      onCase({
        number,
        fileName: begun?.fileName ?? '',
        story: begun?.story ?? 'before it was made',
        outcome: 'ended',
        findings: [why],
        processorMs: 0,
        peakBytes: 0,
      });
      resolve(numbers.next());
    });
  });
}

function start(folder: string): ChildProcess {
  return fork(child, [folder], {
    // The heap is held small enough that a case which needs more ends here and not in the machine's memory.
    execArgv: ['--import', 'tsx', '--expose-gc', '--max-old-space-size=800'],
    stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
  });
}

function excess({ processorMs, peakBytes }: Extract<FromChild, { kind: 'done' }>): string[] {
  const found: string[] = [];
  if (processorMs > mostProcessorMs) found.push(`took ${Math.round(processorMs)} ms of processor time`);
  if (peakBytes > mostBytes) found.push(`took ${Math.round(peakBytes / 2 ** 20)} MiB`);
  return found;
}

function lastWords(said: string): string {
  return said
    .split('\n')
    .filter((line) => /error|fatal|heap/i.test(line))
    .slice(0, 3)
    .join(' | ');
}

/** Processor time of another process; known on Linux only, elsewhere the clock has to do. */
function processorMsOf(pid: number | undefined): number | undefined {
  try {
    const fields = readFileSync(`/proc/${String(pid)}/stat`, 'utf8')
      .replace(/^.*\) /, '')
      .split(' ');
    // Ticks of a hundredth of a second in user and in system mode (proc(5), fields 14 and 15).
    return (Number(fields[11]) + Number(fields[12])) * 10;
  } catch {
    return undefined;
  }
}
