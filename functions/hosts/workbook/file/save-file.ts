import { randomBytes } from 'node:crypto';
import { access, constants, open, realpath, rename, stat, unlink } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { FileError } from './file-error.ts';

/**
 * Saves a file whole or not at all: the bytes go to a new file beside the target, are forced to the disk, and take the
 * target's name in one step. Whoever looks sees the old file or the new one, also after a power cut.
 */
export async function saveFile(path: string, bytes: Uint8Array): Promise<void> {
  const target = await finalTarget(path);
  const temporary = join(
    dirname(target.path),
    `.${basename(target.path)}.${randomBytes(6).toString('hex')}.part`,
  );
  try {
    const file = await open(temporary, 'wx', target.mode);
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(temporary, target.path);
  } catch (problem) {
    await unlink(temporary).catch(() => undefined);
    throw unwritable(path, problem);
  }
  await syncFolder(dirname(target.path));
}

/** Follows a link to the file it stands for and takes over the permissions of a file that is replaced. */
async function finalTarget(path: string): Promise<{ path: string; mode: number }> {
  try {
    const resolved = await realpath(path);
    const about = await stat(resolved);
    if (about.isDirectory()) throw new FileError('folder', `${path} is a folder; name a file in it`);
    // Renaming would replace a write-protected file all the same; whoever protected it meant it.
    await access(resolved, constants.W_OK);
    return { path: resolved, mode: about.mode & 0o777 };
  } catch (problem) {
    if (problem instanceof FileError) throw problem;
    if ((problem as NodeJS.ErrnoException).code === 'ENOENT') return { path, mode: 0o666 };
    throw unwritable(path, problem);
  }
}

/** Makes the new name itself survive a power cut. Not every system lets a folder be opened; then it is left to the system. */
async function syncFolder(folder: string): Promise<void> {
  try {
    const handle = await open(folder, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch {
    // Windows refuses; the file itself is on the disk already.
  }
}

function unwritable(path: string, problem: unknown): FileError {
  const code = (problem as NodeJS.ErrnoException).code;
  switch (code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return new FileError('unwritable', `${path} cannot be written: there is no folder ${dirname(path)}`);
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return new FileError(
        'unwritable',
        `${path} cannot be written: the folder ${dirname(path)} is not writable`,
      );
    case 'ENOSPC':
    case 'EDQUOT':
      return new FileError('unwritable', `${path} cannot be written: the disk is full`);
    default:
      return new FileError('unwritable', `${path} cannot be written (${code ?? String(problem)})`);
  }
}
