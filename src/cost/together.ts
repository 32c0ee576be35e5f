import type { Assumptions, CostInput, Values } from './inputs.ts';
import { costInputNames } from './inputs.ts';
import { isExact } from './range.ts';

/** An input that cannot be high while its leader is low, or, crosswise, cannot be high with it. */
interface Follower {
  readonly name: CostInput;
  readonly crosswise: boolean;
}

const isUncertain = (assumptions: Assumptions, name: CostInput): boolean => {
  const range = assumptions[name];
  return range !== undefined && !isExact(range);
};

/** The loss in use: a rate stands before ounces, as in the calculation. */
function lossOf(assumptions: Assumptions): CostInput {
  return assumptions.leakRate === undefined ? 'ouncesAYear' : 'leakRate';
}

/**
 * Inputs that move with another one:
 * calls a year with the loss, the charge now against it, and years left that were worked out from the life with that life.
 */
function followersOf(assumptions: Assumptions, leader: CostInput): readonly Follower[] {
  const followers: Follower[] = [];
  if (leader === lossOf(assumptions)) {
    followers.push({ name: 'visitsAYear', crosswise: false }, { name: 'chargeNow', crosswise: true });
  }
  if (leader === 'newLife' && assumptions.yearsLeft?.follows === 'newLife') {
    followers.push({ name: 'yearsLeft', crosswise: false });
  }
  return followers.filter(({ name }) => isUncertain(assumptions, name));
}

/** Inputs that are not known exactly and follow no other. */
export function uncertainInputs(assumptions: Assumptions): readonly CostInput[] {
  const uncertain = costInputNames.filter((name) => isUncertain(assumptions, name));
  const following = new Set(
    uncertain.flatMap((leader) => followersOf(assumptions, leader).map(({ name }) => name)),
  );
  return uncertain.filter((name) => !following.has(name));
}

/** Puts an input at a value of its range, and what moves with it equally far between its own ends. */
export function moved(assumptions: Assumptions, values: Values, name: CostInput, value: number): Values {
  const mover = moverOf(assumptions, name);
  const copy = { ...values };
  mover(copy, value);
  return copy;
}

/** The same for one input and many values, changing what it is given. */
export function moverOf(
  assumptions: Assumptions,
  name: CostInput,
): (values: Partial<Record<CostInput, number>>, value: number) => void {
  const range = assumptions[name];
  const followers = followersOf(assumptions, name);
  if (range === undefined || followers.length === 0) {
    return (values, value) => {
      values[name] = value;
    };
  }
  const { low, likely, high } = range;
  return (values, value) => {
    values[name] = value;
    const towards = value < likely ? likely - low : high - likely;
    const place = towards === 0 ? 0 : (value - likely) / towards;
    for (const follower of followers) {
      const own = assumptions[follower.name];
      if (own === undefined) continue;
      const there = follower.crosswise ? -place : place;
      values[follower.name] = own.likely + there * (there < 0 ? own.likely - own.low : own.high - own.likely);
    }
  };
}
