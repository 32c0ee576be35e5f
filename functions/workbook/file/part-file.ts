import { createHash, randomBytes } from 'node:crypto';
import { readdir, stat, unlink } from 'node:fs/promises';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';

/** A new file is written under such a name, beside its target, until it is whole. */
const pattern = /^\.ouncewise-([0-9a-f]{8})-([0-9a-f]{6})-(\d+)-[0-9a-f]+\.part(?:\.\w+)?$/;

const hour = 3_600_000;

/** Part files this process is writing. */
const underWay = new Set<string>();

function digest(text: string, length: number): string {
  return createHash('sha256').update(text).digest('hex').slice(0, length);
}

/**
 * Name of a part file for a target, short whatever the target is called. It says for which target and which process it is,
 * so that what a killed run left can be told from what another one is writing.
 */
export function partFile(target: string, ending = ''): string {
  const random = randomBytes(6).toString('hex');
  const name = `.ouncewise-${digest(basename(target), 8)}-${digest(hostname(), 6)}-${process.pid}-${random}.part${ending}`;
  underWay.add(name);
  return join(dirname(target), name);
}

/** Takes away a part file that is of no use any more, if it is still there. */
export async function dropPartFile(path: string): Promise<void> {
  underWay.delete(basename(path));
  await unlink(path).catch(() => undefined);
}

/** Takes away what runs that were killed left beside a target. */
export async function removeLeftParts(target: string): Promise<void> {
  const folder = dirname(target);
  const names = await readdir(folder).catch(() => []);
  for (const name of names) {
    const match = pattern.exec(name);
    if (match?.[1] !== digest(basename(target), 8) || underWay.has(name)) continue;
    const path = join(folder, name);
    if (await isLeft(path, { host: match[2] ?? '', process: Number(match[3]) })) {
      await unlink(path).catch(() => undefined);
    }
  }
}

/** Of this computer's processes it is known whether they live; another computer gets an hour, and a day is too long for any. */
async function isLeft(path: string, writer: { host: string; process: number }): Promise<boolean> {
  const about = await stat(path).catch(() => undefined);
  if (about === undefined) return false;
  const age = Date.now() - about.mtimeMs;
  if (writer.host !== digest(hostname(), 6)) return age > hour;
  return writer.process === process.pid || !isAlive(writer.process) || age > 24 * hour;
}

function isAlive(id: number): boolean {
  try {
    process.kill(id, 0);
    return true;
  } catch (problem) {
    return (problem as NodeJS.ErrnoException).code === 'EPERM';
  }
}
