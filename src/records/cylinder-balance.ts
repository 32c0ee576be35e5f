/** One booking on a cylinder: what was written down against what the scale showed. */
export interface Booking {
  /** Order of the bookings: days since 1970-01-01, with a fraction where known. */
  readonly moment: number;
  /** Into the cylinder positive, out of it negative, as booked [kg]. */
  readonly bookedKg: number;
  /** Gross weights [kg]; undefined when not weighed. */
  readonly beforeKg?: number | undefined;
  readonly afterKg?: number | undefined;
  /** What it is known by: "V-12 set 2". */
  readonly label?: string | undefined;
  /** Gas that was booked, as designated. */
  readonly gas?: string | undefined;
  /** It came filled from the supplier. */
  readonly isPurchase?: boolean | undefined;
}

export interface CylinderAccount {
  readonly openingGrossKg: number;
  readonly closingGrossKg?: number | undefined;
  readonly bookings: readonly Booking[];
  readonly scaleStepKg: number;
}

export type BalanceAnswer = 'Balances' | 'Unexplained' | 'Open';

export interface CylinderBalance {
  readonly inKg: number;
  readonly outKg: number;
  readonly expectedClosingGrossKg: number;
  /** What left without a booking; negative: more is there than booked. Undefined without a closing weight. */
  readonly unexplainedKg: number | undefined;
  /** Share of what went out. */
  readonly unexplainedShare: number | undefined;
  readonly toleranceKg: number;
  readonly answer: BalanceAnswer;
  /** Went missing while nothing was booked: after one weighing and before the next [kg]. */
  readonly betweenKg: number;
  /** Median of shown less booked over the weighed bookings [kg]; undefined with too few. */
  readonly driftKg: number | undefined;
}

/** Fewer weighed bookings do not tell a drift from chance. Common practice, no source. */
const leastForDrift = 5;

/**
 * The account of one cylinder.
 *
 * unexplained = opening + in - out - closing; tolerance = 2 steps x sqrt(bookings + 1)
 *
 * Each booking rests on two weighings, each good to a step, whose errors are independent.
 *
 * @source mass balance; the tolerance is common practice, no source
 */
export function cylinderBalance(account: CylinderAccount): CylinderBalance {
  const { openingGrossKg, closingGrossKg, bookings, scaleStepKg } = account;
  const inKg = sum(bookings.map(({ bookedKg }) => Math.max(0, bookedKg)));
  const outKg = sum(bookings.map(({ bookedKg }) => Math.max(0, -bookedKg)));
  const expectedClosingGrossKg = openingGrossKg + inKg - outKg;
  const unexplainedKg = closingGrossKg === undefined ? undefined : expectedClosingGrossKg - closingGrossKg;
  const toleranceKg = 2 * scaleStepKg * Math.sqrt(bookings.length + 1);
  return {
    inKg,
    outKg,
    expectedClosingGrossKg,
    unexplainedKg,
    unexplainedShare: unexplainedKg === undefined || outKg === 0 ? undefined : unexplainedKg / outKg,
    toleranceKg,
    answer:
      unexplainedKg === undefined
        ? 'Open'
        : Math.abs(unexplainedKg) <= toleranceKg + 1e-9
          ? 'Balances'
          : 'Unexplained',
    betweenKg: between(account),
    driftKg: drift(bookings),
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function between({ openingGrossKg, bookings }: CylinderAccount): number {
  let missing = 0;
  let lastKg: number | undefined = openingGrossKg;
  for (const { beforeKg, afterKg } of [...bookings].sort((a, b) => a.moment - b.moment)) {
    if (lastKg !== undefined && beforeKg !== undefined) missing += lastKg - beforeKg;
    // After a booking without weights nobody knows what the cylinder weighed.
    lastKg = afterKg;
  }
  return missing;
}

function drift(bookings: readonly Booking[]): number | undefined {
  const residuals = bookings.flatMap(({ bookedKg, beforeKg, afterKg }) =>
    beforeKg === undefined || afterKg === undefined
      ? []
      : [Math.abs(afterKg - beforeKg) - Math.abs(bookedKg)],
  );
  if (residuals.length < leastForDrift) return undefined;
  // Of one row that is wrong a mean makes a scale that is; the middle one does not.
  const inOrder = [...residuals].sort((one, other) => one - other);
  const middle = inOrder.length >> 1;
  const [below = 0, above = 0] = [inOrder[(inOrder.length - 1) >> 1], inOrder[middle]];
  return (below + above) / 2;
}

/** A drift that the scale step alone does not explain: two steps over the square root of the weighed bookings. */
export function driftIsReal(driftKg: number, weighed: number, scaleStepKg: number): boolean {
  return Math.abs(driftKg) > (2 * scaleStepKg) / Math.sqrt(weighed) + 1e-9;
}
