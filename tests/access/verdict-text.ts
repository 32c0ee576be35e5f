import { renderVerdict } from '../../functions/runtime/render.ts';
import { unitSystem } from '../../functions/runtime/unit-system.ts';
import type { Verdict } from '../../src/phrase.ts';

/** A verdict as a reader in US units at sea level sees it. */
export function inUsUnits(verdict: Verdict): string {
  return renderVerdict(verdict, { units: unitSystem('US'), atmospherePa: 101_325 });
}
