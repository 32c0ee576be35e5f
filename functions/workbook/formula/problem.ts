import type { KeptReason } from '../model/kept-reason.ts';

/** Stops the compilation of a formula that this host must leave alone. Never leaves the engine. */
export class FormulaProblem extends Error {
  readonly reason: KeptReason;

  constructor(kind: KeptReason['kind'], message: string) {
    super(message);
    this.reason = { kind, message };
  }
}
