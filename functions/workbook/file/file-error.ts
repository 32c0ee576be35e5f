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
  | 'too-long'
  | 'unwritable';

/** A file that cannot be read or written, with the reason in plain words. Nothing has been written when it is thrown. */
export class FileError extends Error {
  override readonly name = 'FileError';
  readonly code: FileErrorCode;

  constructor(code: FileErrorCode, message: string) {
    super(printable(message));
    this.code = code;
  }
}

/** Longest piece of what a file says that is repeated to people. */
const longest = 600;

/** A message may quote a part name or a cell of a hostile file, which must not steer the terminal or fill it. */
function printable(message: string): string {
  const short =
    message.length > longest ? `${message.slice(0, longest - 200)} ... ${message.slice(-150)}` : message;
  // eslint-disable-next-line no-control-regex -- these are the ones to be taken out
  return short.replace(/[\u0000-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]+/g, '?');
}
