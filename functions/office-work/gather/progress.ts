const barWidth = 30;
const pauseMs = 80;

/** A bar on a terminal; silent when the words go into a file or another program. */
export class Progress {
  readonly #total: number;
  readonly #stream: NodeJS.WriteStream;
  #last = 0;
  #shown = false;

  constructor(total: number, stream: NodeJS.WriteStream = process.stderr) {
    this.#total = total;
    this.#stream = stream;
  }

  at(done: number, what: string): void {
    const now = performance.now();
    if (!this.#stream.isTTY || (now - this.#last < pauseMs && done < this.#total)) return;
    this.#last = now;
    this.#shown = true;
    const filled = this.#total === 0 ? barWidth : Math.round((barWidth * done) / this.#total);
    const bar = `${'#'.repeat(filled)}${'.'.repeat(barWidth - filled)}`;
    const line = `${bar} ${String(done)} of ${String(this.#total)}  ${what}`;
    // To the start of the line, and what is left of the old one wiped out.
    this.#stream.write(`\r${line.slice(0, Math.max(20, (this.#stream.columns || 80) - 1))}\u001b[K`);
  }

  /** Takes the bar away. */
  end(): void {
    if (this.#shown) this.#stream.write('\r\u001b[K');
    this.#shown = false;
  }
}
