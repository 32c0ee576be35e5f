import { renderPhrase, renderVerdict } from '../../functions/runtime/render.ts';
import { unitSystem } from '../../functions/runtime/unit-system.ts';
import type { Phrase, Verdict } from '../../src/phrase.ts';

const reader = { units: unitSystem('US'), atmospherePa: 101_325 };

/** A verdict as a technician reads it, US units at sea level. */
export function words(verdict: Verdict): string {
  return renderVerdict(verdict, reader);
}

export function sentence(text: Phrase): string {
  return renderPhrase(text, reader);
}
