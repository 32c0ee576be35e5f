import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeCase } from './make-case.ts';
import { tryCase } from './try-case.ts';
import type { FromChild, ToChild } from './watch.ts';

/**
 * Tries one case after the other, in a process of its own that may be stopped at any time. The parent counts time and memory
 * from "begun" on.
 */
const folder = process.argv[2] ?? mkdtempSync(join(tmpdir(), 'ouncewise-fuzz-'));

function tell(message: FromChild): void {
  process.send?.(message);
}

async function work({ seed, number }: ToChild): Promise<void> {
  const made = makeCase(seed, number);
  // What it took to make a large one is no part of what it takes to read it.
  if (made.fileName.startsWith('crafted')) globalThis.gc?.();
  resetPeak();
  tell({ kind: 'begun', number, fileName: made.fileName, story: made.story });
  const before = process.cpuUsage();
  const { outcome, findings } = await tryCase(made, folder);
  const { user, system } = process.cpuUsage(before);
  tell({ kind: 'done', number, outcome, findings, processorMs: (user + system) / 1000, peakBytes: peak() });
}

/** Linux forgets the largest size a process ever had when asked to; elsewhere the largest of all cases is told. */
function resetPeak(): void {
  try {
    writeFileSync('/proc/self/clear_refs', '5');
  } catch {
    // Not Linux.
  }
}

function peak(): number {
  return peakOf('/proc/self/status') ?? process.resourceUsage().maxRSS * 1024;
}

function peakOf(file: string): number | undefined {
  try {
    const kilobytes = /VmHWM:\s+(\d+) kB/.exec(readFileSync(file, 'utf8'))?.[1];
    return kilobytes === undefined ? undefined : Number(kilobytes) * 1024;
  } catch {
    return undefined;
  }
}

let queue = Promise.resolve();
process.on('message', (message: ToChild) => {
  queue = queue.then(() => work(message));
  // A throw outside a step ends the process; the parent counts it as a crash.
  queue.catch((problem: unknown) => {
    console.error(problem);
    process.exit(70);
  });
});
tell({ kind: 'ready' });
