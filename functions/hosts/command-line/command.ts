export interface Command {
  /** One line in the list of commands. */
  readonly summary: string;
  readonly usage: string;
  /** Returns the exit code. */
  readonly run: (words: readonly string[]) => Promise<number>;
}
