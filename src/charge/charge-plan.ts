import { figure, phrase } from '../phrase.ts';
import type { Phrase } from '../phrase.ts';
import { settlingS } from '../visit/gates.ts';
import { requireOpenGates } from './charging-gates.ts';
import { notHeard, requireNoObjection, superheatReached } from './heard-evidence.ts';
import { massFigure } from './mass-basis.ts';
import { chargeRoomKg } from './charge-room.ts';
import { aimReached, defaultAimK, permittedKg, requireFineScale, stepKg } from './next-step.ts';
import type { StepRequest } from './next-step.ts';

export interface PlanRequest extends StepRequest {
  /** The gas is a blend that shifts when drawn as vapor. */
  readonly leavesAsLiquid?: boolean | undefined;
}

export interface PlanRow {
  /** 1, 2, 3 …; undefined in the row that says stop. */
  readonly step: number | undefined;
  readonly addKg: number | undefined;
  readonly addedSoFarKg: number;
  readonly roomAfterKg: number;
  readonly what: Phrase;
}

/** A finer scale than the charge deserves would make a list nobody reads. */
const mostSteps = 200;

/**
 * All steps from here to the stop, by the rule of the next step, and what to watch at each.
 * Readings decide earlier: the list is the most that may be needed.
 *
 * @throws CalcError as for the next step
 * @source common practice, no source
 */
export function chargePlan(request: PlanRequest): readonly PlanRow[] {
  requireOpenGates(request);
  requireNoObjection(request);
  requireFineScale(request);
  const rows: PlanRow[] = [];
  const roomKg = chargeRoomKg(request);
  const allowedKg = permittedKg(request);
  let givenKg = 0;
  while (rows.length < mostSteps) {
    const addKg = stepKg({ ...request, permittedKg: allowedKg - givenKg });
    if (addKg === 0) break;
    givenKg += addKg;
    rows.push({
      step: rows.length + 1,
      addKg,
      addedSoFarKg: request.addedKg + givenKg,
      roomAfterKg: roomKg - givenKg,
      what:
        rows.length === 0 ? phrase`${watch(request)}${cautions(request)}${unheard(request)}` : watch(request),
    });
  }
  rows.push({
    step: undefined,
    addKg: undefined,
    addedSoFarKg: request.addedKg + givenKg,
    roomAfterKg: Math.max(0, roomKg - givenKg),
    what: stop(request, rows.length),
  });
  return rows;
}

/** Ounces that rest on the mass alone say so. */
function unheard(request: PlanRequest): Phrase {
  const missing = notHeard(request);
  return missing.length === 0 ? [] : phrase`. Not heard: ${missing.join(', ')}; each may forbid it`;
}

function watch(request: PlanRequest): Phrase {
  const wait = phrase`Weigh in, wait ${figure(settlingS, 'minutes')}, read again`;
  if (aimReached(request) || superheatReached(request)) return phrase`${wait}; margin for a slow leak`;
  return phrase`${wait}; stop at ${figure(request.aimK ?? defaultAimK, 'temperature')} coil saturation`;
}

function cautions(request: PlanRequest): Phrase {
  const blend = request.leavesAsLiquid
    ? phrase`. Blend: draw liquid from the cylinder and throttle it to vapor before the suction side`
    : [];
  const margin =
    (request.marginKg ?? 0) > 0
      ? phrase`. A capillary-tube unit suffers from overcharge: a margin costs capacity before it saves a call`
      : [];
  return phrase`${blend}${margin}`;
}

function stop(request: PlanRequest, steps: number): Phrase {
  if (superheatReached(request)) {
    return steps === 0
      ? phrase`Stop: the superheat is on target; more charge does not cool better`
      : phrase`Stop: the margin is used up`;
  }
  if (aimReached(request)) {
    return steps === 0
      ? phrase`Stop: the coil is at the aim; more charge does not cool better`
      : phrase`Stop: the margin is used up`;
  }
  return phrase`Stop: the nameplate, ${massFigure(request.nameplateKg)}, is reached as near as the scale can show. If the coil is still colder than the aim, charge is not what it lacks`;
}
