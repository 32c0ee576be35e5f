import { access, constants, open, realpath, rename, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import { FileError } from './file-error.ts';
import { lockFile } from './lock-file.ts';
import { dropPartFile, partFile, removeLeftParts } from './part-file.ts';

/**
 * Saves a file whole or not at all: the bytes go to a new file beside the target, are forced to the disk, and take the
 * target's name in one step. Whoever looks sees the old file or the new one, also after a power cut. What a killed run left
 * behind goes with the next one.
 *
 * @throws FileError also when another program has the target open: its next save would undo this one
 */
export async function saveFile(path: string, bytes: Uint8Array): Promise<void> {
  const target = await finalTarget(path);
  await removeLeftParts(target.path);
  const temporary = partFile(target.path);
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
    throw unwritable(path, problem);
  } finally {
    await dropPartFile(temporary);
  }
  await syncFolder(dirname(target.path));
}

/**
 * Where a file is to be saved and with which permissions.
 *
 * @throws FileError when it may not, or should not, be replaced
 */
export async function finalTarget(path: string): Promise<{ path: string; mode: number }> {
  try {
    const resolved = await realpath(path);
    const about = await stat(resolved);
    if (about.isDirectory()) throw new FileError('folder', `${path} is a folder; name a file in it`);
    // Renaming would put a file in the place of a device or a pipe.
    if (!about.isFile()) throw new FileError('unwritable', `${path} is no ordinary file`);
    // It would replace a write-protected file all the same, too; whoever protected it meant it.
    await access(resolved, constants.W_OK).catch(() => {
      throw new FileError('unwritable', `${path} is write-protected; nothing is changed`);
    });
    const lock = await lockFile(resolved);
    if (lock !== undefined) {
      throw new FileError(
        'unwritable',
        `${path} is open in another program: close it there, or give another name with -o. If no program has it open, delete its lock file ${lock}`,
      );
    }
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
    case 'EBUSY':
      return new FileError(
        'unwritable',
        `${path} cannot be written: another program holds it; close it there`,
      );
    case 'ENAMETOOLONG':
      return new FileError('unwritable', `${path} cannot be written: the name is too long`);
    case 'ENOSPC':
    case 'EDQUOT':
      return new FileError('unwritable', `${path} cannot be written: the disk is full`);
    default:
      return new FileError('unwritable', `${path} cannot be written (${code ?? String(problem)})`);
  }
}
