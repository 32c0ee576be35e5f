import { defaultScaleStepKg } from '../../../charge/next-step.ts';
import type { Phrase } from '../../../phrase.ts';
import { figure, phrase } from '../../../phrase.ts';
import { answerOf } from '../answer-form.ts';
import { headings } from '../ask.ts';
import type { Evidence, Rule } from '../evidence.ts';
import { massCrumbKg } from '../knowledge.ts';
import { scaleDoubtKg } from '../mass-inside.ts';

/** "found 9.0 oz + added 2.0 oz, nameplate 14.0 oz". */
export function massSum({ known, unit, inside }: Evidence): Phrase {
  const parts: Phrase[] = [];
  if (!known.emptied && known.basis === 'residual weighed' && known.foundKg !== undefined)
    parts.push(phrase`found ${figure(known.foundKg, 'mass')}`);
  const added = parts.length > 0 || !Number.isFinite(inside.highKg) ? known.addedInVisitKg : known.addedKg;
  parts.push(phrase`added ${figure(parts.length > 0 ? known.addedKg : added, 'mass')}`);
  if (known.recoveredKg > 0) parts.push(phrase`recovered ${figure(known.recoveredKg, 'mass')}`);
  const plate =
    unit.nameplateKg === undefined ? phrase`` : phrase`, nameplate ${figure(unit.nameplateKg, 'mass')}`;
  return [...parts.flatMap((part, index) => (index === 0 ? part : [', ', ...part])), ...plate];
}

/** What may still go in [kg]; undefined when the mass or the nameplate is not known. */
export function roomKg({ unit, inside }: Evidence): number | undefined {
  if (unit.nameplateKg === undefined || !Number.isFinite(inside.highKg)) return undefined;
  return unit.nameplateKg - inside.highKg;
}

/** More inside than the nameplate, by more than the scale can be wrong. */
export const aboveNameplate: Rule = (evidence) => {
  const { unit, inside, set } = evidence;
  if (unit.nameplateKg === undefined) return undefined;
  const excessKg = inside.lowKg - unit.nameplateKg;
  if (excessKg <= scaleDoubtKg(set.scaleStepKg) + 1e-9) return undefined;
  const at = Number.isFinite(inside.highKg) ? '' : 'at least ';
  return answerOf('recover-excess', phrase`Recover ${figure(excessKg, 'mass')}`, [
    phrase`the unit holds ${at}${figure(excessKg, 'mass')} more than its nameplate allows: ${massSum(evidence)}`,
    phrase`take the excess out on a scale, or recover all of it and weigh the nameplate in; an overcharge floods the compressor`,
  ]);
};

/** At the nameplate the scale ends the charging, whatever the readings say. */
export const atNameplate: Rule = (evidence) => {
  const left = roomKg(evidence);
  const step = evidence.set.scaleStepKg ?? defaultScaleStepKg;
  if (left === undefined || evidence.known.open || left > 2 * step + massCrumbKg) return undefined;
  return answerOf(
    'stop-mass-limit',
    phrase`Stop: nameplate reached`,
    [phrase`the nameplate charge is in the unit: ${massSum(evidence)}`, ...afterwards(evidence)],
    evidence.set.compressor === 'off' ? [headings.settledS] : [],
  );
};

/** What to do once nothing more goes in. */
function afterwards(evidence: Evidence): readonly Phrase[] {
  if (evidence.set.compressor === 'off')
    return [phrase`run the unit until it has settled and take the final set`];
  const closed = evidence.gates.find(({ state }) => state === 'closed');
  if (closed) return [phrase`before the final set: ${closed.finding}`];
  if (evidence.gates.some(({ state }) => state === 'not seen')) return [];
  const [lead] = evidence.diagnosis().causes;
  if (lead === undefined) return [];
  if (lead.cause === 'nothing wrong')
    return [phrase`the readings agree with it: close up, check the tap for leaks, take the final set`];
  return [
    phrase`if it still does not cool, charge is not what it lacks: ${lead.cause}, ${lead.confidence} (${lead.inFavor})`,
  ];
}
