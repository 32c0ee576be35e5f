/** One visit as the office ledger keeps it: what was weighed in and out that day, and why. */
export interface LedgerVisit {
  readonly visit: string;
  readonly unit: string;
  readonly on: string;
  readonly addedOz: number;
  readonly recoveredOz: number;
  readonly why?: string | undefined;
  readonly verifiedOn?: string | undefined;
  readonly note?: string | undefined;
}

type Row = readonly [
  visit: string,
  unit: string,
  on: string,
  addedOz: number,
  why?: string | undefined,
  note?: string | undefined,
  verifiedOn?: string,
];

/** Invented: what happened to the units of the visit log in the seasons before it. */
// prettier-ignore
const before: readonly Row[] = [
  ['V-011', 'U-05', '2022-07-07', 2.6, 'leak', 'No leak found.'],
  ['V-014', 'U-12', '2022-08-11', 0, undefined, 'Coils washed.'],
  ['V-023', 'U-10', '2023-05-30', 1.5, 'leak', 'Tap fitted on the process tube.'],
  ['V-029', 'U-09', '2023-07-19', 1.8, 'leak'],
  ['V-033', 'U-04', '2023-08-24', 2.1, 'leak', 'Tap fitted on the process tube.'],
  ['V-041', 'U-02', '2024-06-05', 2.2, 'leak', 'Tap fitted; no leak found.'],
  ['V-044', 'U-07', '2024-06-26', 2.4, 'leak', 'Oil at the evaporator; cannot be reached.'],
  ['V-048', 'U-05', '2024-07-16', 2.9, 'leak'],
  ['V-052', 'U-10', '2024-08-20', 1.7, 'leak'],
  ['V-063', 'U-02', '2025-06-18', 2.5, 'leak', 'Oil at the evaporator.'],
  ['V-066', 'U-01', '2025-07-02', 2.3, 'leak', 'Tap fitted.'],
  ['V-071', 'U-07', '2025-07-30', 3.1, 'leak'],
  ['V-078', 'U-10', '2025-09-03', 1.6, 'leak'],
];

/** And in the autumn after it. */
// prettier-ignore
const after: readonly Row[] = [
  ['V-115', 'U-02', '2026-10-07', 3.4, 'leak', 'Leak is in the evaporator. Quote asked for.'],
  ['V-116', 'U-07', '2026-10-13', 4.2, 'leak', 'Dearer every year. Quote asked for.'],
  ['V-117', 'U-10', '2026-10-20', 1.9, 'leak', 'Stem of the tap weeps.'],
];

function visitOf([visit, unit, on, addedOz, why, note, verifiedOn]: Row): LedgerVisit {
  return { visit, unit, on, addedOz, recoveredOz: 0, why, note, verifiedOn };
}

export const earlierVisits = before.map(visitOf);
export const laterVisits = after.map(visitOf);
