/** What is wrong with a file, for programs; the message says it to people. */
export type FileErrorCode =
  | 'missing'
  | 'folder'
  | 'unreadable'
  | 'corrupt'
  | 'not-a-workbook'
  | 'password-protected'
  | 'other-format'
  | 'too-large'
  | 'unwritable';

/** A file that cannot be read or written, with the reason in plain words. Nothing has been written when it is thrown. */
export class FileError extends Error {
  override readonly name = 'FileError';
  readonly code: FileErrorCode;

  constructor(code: FileErrorCode, message: string) {
    super(message);
    this.code = code;
  }
}
