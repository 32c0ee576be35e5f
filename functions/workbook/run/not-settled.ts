import type { Reference } from '../model/reference.ts';

/** Thrown while a formula is worked out that reads a range nobody could know beforehand, and that is not ready yet. */
export class NotSettled extends Error {
  readonly reference: Reference;

  constructor(reference: Reference) {
    super('a range is not ready yet');
    this.reference = reference;
  }
}
