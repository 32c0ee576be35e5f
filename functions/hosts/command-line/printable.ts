/** Text for a terminal: what a file holds must not steer it. Lines and tabs stay. */
export function printable(text: string): string {
  // eslint-disable-next-line no-control-regex -- these are the ones to be taken out
  return text.replace(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g, '?');
}
