/// <reference lib="dom" />

/** Runs until a moment, second by second, and tells once when it is reached. */
export class Countdown {
  readonly #out: HTMLElement;
  readonly #onEnd: () => void;
  #until = 0;
  #timer: ReturnType<typeof setInterval> | undefined;

  constructor(out: HTMLElement, onEnd: () => void) {
    this.#out = out;
    this.#onEnd = onEnd;
  }

  /** Local time as yyyy-mm-ddThh:mm; empty when there is nothing to wait for. */
  set(settledAt: string): void {
    const until = settledAt === '' ? 0 : new Date(settledAt).getTime();
    if (until === this.#until) return;
    this.#until = until;
    clearInterval(this.#timer);
    this.#timer = undefined;
    this.#show(settledAt);
    if (until > Date.now()) this.#timer = setInterval(() => this.#show(settledAt), 1000);
  }

  #show(settledAt: string): void {
    const out = this.#out;
    out.hidden = settledAt === '';
    if (settledAt === '') return;
    const left = Math.ceil((this.#until - Date.now()) / 1000);
    const clock = settledAt.slice(11);
    if (left > 0) {
      out.textContent = `Settled in ${clockOf(left)}, at ${clock}`;
      return;
    }
    out.textContent = `Settled since ${clock}: read again`;
    if (this.#timer === undefined) return;
    clearInterval(this.#timer);
    this.#timer = undefined;
    this.#onEnd();
  }
}

function clockOf(seconds: number): string {
  const two = (part: number): string => String(part).padStart(2, '0');
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  const short = `${hours > 0 ? two(minutes) : minutes}:${two(seconds % 60)}`;
  return hours > 0 ? `${hours}:${short}` : short;
}
