/** What the user typed or pointed at is wrong; the message says how to put it right. No stack is shown. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}
