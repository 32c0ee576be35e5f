/// <reference lib="dom" />
import type { CallName, Calls } from '../protocol.ts';

interface Waiting {
  readonly resolve: (answer: never) => void;
  readonly reject: (problem: Error) => void;
}

/** Asks the worker in which the workbook lives. */
export class WorkerClient {
  readonly #worker: Worker;
  readonly #waiting = new Map<number, Waiting>();
  #next = 0;
  /** Told when the number of unanswered requests changes between none and some. */
  onBusy: (isBusy: boolean) => void = () => undefined;

  constructor(address: string) {
    this.#worker = new Worker(address);
    this.#worker.onmessage = ({ data }: MessageEvent<{ id: number; answer?: never; fault?: string }>) => {
      const waiting = this.#waiting.get(data.id);
      this.#waiting.delete(data.id);
      if (this.#waiting.size === 0) this.onBusy(false);
      if (data.fault === undefined) waiting?.resolve(data.answer as never);
      else waiting?.reject(new Error(data.fault));
    };
    this.#worker.onerror = (event) => {
      const problem = new Error(`The part that calculates stopped: ${event.message || 'out of memory'}`);
      for (const waiting of this.#waiting.values()) waiting.reject(problem);
      this.#waiting.clear();
      this.onBusy(false);
    };
  }

  ask<K extends CallName>(name: K, ...args: Parameters<Calls[K]>): Promise<ReturnType<Calls[K]>> {
    const id = this.#next++;
    if (this.#waiting.size === 0) this.onBusy(true);
    return new Promise((resolve, reject) => {
      this.#waiting.set(id, { resolve, reject });
      this.#worker.postMessage({ id, name, args });
    });
  }

  stop(): void {
    this.#worker.terminate();
  }
}
