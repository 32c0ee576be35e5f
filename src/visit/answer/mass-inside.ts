import { defaultScaleStepKg } from '../../charge/next-step.ts';
import type { Knowledge } from './knowledge.ts';

/** Between what the unit holds at the least and at the most, by the scale [kg]. */
export interface MassInside {
  readonly lowKg: number;
  /** Infinity: nobody weighed it. */
  readonly highKg: number;
  /** Why the mass is not known; undefined when it is. */
  readonly unknown?: 'basis blank' | 'basis unknown' | 'found blank' | 'added blank' | 'nothing weighed in';
}

/** Below this the scale cannot tell [kg]. */
export function scaleDoubtKg(scaleStepKg: number | undefined): number {
  return Math.max(scaleStepKg ?? 0, defaultScaleStepKg);
}

/**
 * What the scale says is in the unit.
 *
 * After emptying: what was added since. Residual weighed: found + added - recovered since. Otherwise at the least what was
 * added in this visit, at the most anything. A blank is never zero: a row that does not say what it added leaves no upper end.
 */
export function massInside(known: Knowledge): MassInside {
  const addedInVisitKg = Math.max(0, known.addedInVisitKg - known.recoveredInVisitKg);
  const open = (lowKg: number, unknown: NonNullable<MassInside['unknown']>): MassInside => ({
    lowKg: Math.max(0, lowKg),
    highKg: Infinity,
    unknown,
  });
  if (known.emptied) {
    if (known.addedUnknown) return open(known.addedKg, 'added blank');
    return exact(known.addedKg - known.recoveredKg);
  }
  switch (known.basis) {
    case undefined:
    case 'unknown':
      // What was found on a scale is inside at the least, whatever the basis says or leaves blank.
      return open(
        known.foundKg === undefined
          ? addedInVisitKg
          : known.foundKg + known.addedKg - known.recoveredKg - known.recoveredWithFoundKg,
        known.basis === undefined ? 'basis blank' : 'basis unknown',
      );
    case 'nameplate weighed in':
      if (known.addedUnknown) return open(known.addedKg, 'added blank');
      return known.addedKg > 0 ? exact(known.addedKg - known.recoveredKg) : open(0, 'nothing weighed in');
    case 'residual weighed': {
      if (known.foundKg === undefined) return open(addedInVisitKg, 'found blank');
      const insideKg = known.foundKg + known.addedKg - known.recoveredKg;
      if (known.addedUnknown) return open(insideKg - known.recoveredWithFoundKg, 'added blank');
      return {
        lowKg: Math.max(0, insideKg - known.recoveredWithFoundKg),
        highKg: Math.max(0, insideKg),
      };
    }
  }
}

function exact(kg: number): MassInside {
  return { lowKg: Math.max(0, kg), highKg: Math.max(0, kg) };
}
