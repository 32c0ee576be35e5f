import { CalcError } from '../errors.ts';
import { verdictWordOf } from '../verdict-words.ts';

/** What other checks said of the same readings, as the texts stand in their cells. */
export interface HeardEvidence {
  readonly superheat?: string | undefined;
  readonly split?: string | undefined;
  readonly standing?: string | undefined;
  /** The cause that leads, such as "low charge" or "low charge, likely". */
  readonly cause?: string | undefined;
}

export type Witness = keyof HeardEvidence;

const witnesses = ['standing', 'cause', 'split', 'superheat'] as const satisfies readonly Witness[];

const objections: Readonly<Record<Witness, (text: string) => string | undefined>> = {
  standing: (text) =>
    verdictWordOf(text) === 'Matches' ? undefined : 'the standing pressure does not clear the gas inside',
  cause: (text) =>
    /^low charge\b/i.test(text) && !/\b(unlikely|excluded|unproven)\b/i.test(text)
      ? undefined
      : 'the readings do not point to a low charge',
  split: (text) =>
    ['High', 'Refused'].includes(verdictWordOf(text) ?? 'Refused')
      ? 'the air over the coil comes first'
      : undefined,
  superheat: (text) =>
    ['High', 'On target'].includes(verdictWordOf(text) ?? '')
      ? undefined
      : 'the superheat does not show a starved coil',
};

/**
 * No ounces against what has been heard. A check that was refused, or left in doubt where only a clear answer lets gas in,
 * speaks against them; a blank was not heard and says nothing.
 *
 * @throws CalcError refused, naming the check and what it said
 */
export function requireNoObjection(heard: HeardEvidence): void {
  for (const witness of witnesses) {
    const text = heard[witness]?.trim() ?? '';
    const objection = text === '' ? undefined : objections[witness](text);
    if (objection === undefined) continue;
    throw new CalcError(`no gas goes in: ${objection} (${text})`, {
      code: 'refused',
      parameter: witness,
      received: text,
      limit: allowed[witness],
    });
  }
}

const allowed: Readonly<Record<Witness, string>> = {
  standing: 'a standing check that begins with "Matches"',
  cause: 'low charge',
  split: 'a split check that is neither High nor Refused',
  superheat: 'a superheat check that says High; On target is the stop',
};

/** The superheat has come to its target: nothing more goes in. */
export function superheatReached({ superheat }: HeardEvidence): boolean {
  return verdictWordOf(superheat ?? '') === 'On target';
}

/** What nobody handed over, in words; empty when all was heard. */
export function notHeard(heard: HeardEvidence): readonly string[] {
  const names = { standing: 'standing pressure', cause: 'cause', split: 'split', superheat: 'superheat' };
  return witnesses
    .filter((witness) => (heard[witness]?.trim() ?? '') === '')
    .map((witness) => names[witness]);
}
