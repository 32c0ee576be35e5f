import { FileError } from './file-error.ts';
import type { ReadLimits } from './limits.ts';
import { ZipArchive } from './zip-archive.ts';

/** First bytes of the container of old binary and of encrypted workbooks ([MS-CFB] 2.2). */
const compoundFile = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
/** Name of the stream with the encrypted contents, as UTF-16LE in the container's directory. */
const encryptedStream = 'EncryptedPackage';

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}

function hasUtf16(bytes: Uint8Array, text: string): boolean {
  const pattern = [...text].flatMap((letter) => [letter.charCodeAt(0), 0]);
  const first = pattern[0] ?? 0;
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (pattern.every((byte, index) => bytes[at + index] === byte)) return true;
  }
  return false;
}

/** Opens the zip container of an .xlsx or .ods file, or says what the bytes are instead. */
export function openContainer(bytes: Uint8Array, limits: ReadLimits): ZipArchive {
  if (bytes.length > limits.fileBytes) {
    throw new FileError('too-large', 'the file is larger than this program accepts');
  }
  if (bytes.length === 0) throw new FileError('corrupt', 'the file is empty');
  if (startsWith(bytes, compoundFile)) {
    throw hasUtf16(bytes, encryptedStream)
      ? new FileError(
          'password-protected',
          'the workbook is protected by a password; save it without one and try again',
        )
      : new FileError(
          'other-format',
          'the file is an old binary document such as .xls; save it as .xlsx and try again',
        );
  }
  if (!startsWith(bytes, [0x50, 0x4b])) {
    throw new FileError(
      'not-a-workbook',
      'the file is no workbook: an .xlsx file is a zip file, this is none',
    );
  }
  return new ZipArchive(bytes, limits);
}

/** Which kind of document a container holds. */
export function documentKind(archive: ZipArchive): 'xlsx' | 'ods' {
  if (archive.findName('[Content_Types].xml') !== undefined) {
    if (archive.findName('xl/workbook.bin') !== undefined) {
      throw new FileError(
        'other-format',
        'the file is a binary .xlsb workbook; save it as .xlsx and try again',
      );
    }
    return 'xlsx';
  }
  const mimetype = archive.findName('mimetype');
  if (mimetype !== undefined) {
    const kind = new TextDecoder().decode(archive.read(mimetype)).trim();
    if (kind.startsWith('application/vnd.oasis.opendocument.spreadsheet')) return 'ods';
  }
  throw new FileError('not-a-workbook', 'the file is a zip file but holds no workbook');
}
