import { readFile, stat } from 'node:fs/promises';
import { FileError } from './file-error.ts';
import { usualLimits } from './limits.ts';

/** Bytes of a file. Throws FileError when there is none, when it is a folder, or when it may not be read. */
export async function openFile(path: string, fileBytes = usualLimits.fileBytes): Promise<Uint8Array> {
  try {
    const about = await stat(path);
    if (about.isDirectory()) throw new FileError('folder', `${path} is a folder, not a workbook`);
    // A device or a pipe may never end.
    if (!about.isFile()) throw new FileError('unreadable', `${path} is no ordinary file`);
    if (about.size > fileBytes) {
      throw new FileError('too-large', `${path} is larger than this program accepts`);
    }
    return new Uint8Array(await readFile(path));
  } catch (problem) {
    if (problem instanceof FileError) throw problem;
    const code = (problem as NodeJS.ErrnoException).code;
    if (code === 'ENOENT' || code === 'ENOTDIR') throw new FileError('missing', `there is no file ${path}`);
    if (code === 'EACCES' || code === 'EPERM') throw new FileError('unreadable', `${path} may not be read`);
    if (code === 'EBUSY') {
      throw new FileError('unreadable', `${path} cannot be read: another program holds it; close it there`);
    }
    if (code === 'ENAMETOOLONG')
      throw new FileError('unreadable', `${path} cannot be read: the name is too long`);
    throw new FileError('unreadable', `${path} cannot be read (${code ?? String(problem)})`);
  }
}
