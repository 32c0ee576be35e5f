/** One row of the log as the sample scenario states it: field names of the visit-log records, US units. */
export interface ReadingSet {
  readonly at: string;
  readonly stage: string;
  readonly minutes: number;
  /** Outdoor, return dry and wet bulb, supply dry bulb. */
  readonly air: readonly [outdoor: number, returnDry: number, returnWet: number, supplyDry: number];
  readonly supplyWet?: number;
  /** Filter, indoor coil, outdoor coil, vents, fan; all clean when left out. */
  readonly look?: readonly [filter: string, indoor: string, outdoor: string, vents: string, fan: string];
  readonly frost?: string;
  readonly compressor?: string;
  /** Suction, liquid, discharge line. */
  readonly pipes?: readonly [suction: number, liquid?: number | undefined, discharge?: number];
  readonly suction?: number;
  readonly liquid?: number;
  readonly gauge?: string;
  readonly standing?: readonly [minutesOff: number, spread: number];
  /** Volts idle, volts running, amps total, compressor, fan. */
  readonly power?: readonly [idle: number, running: number, total: number, compressor: number, fan: number];
  readonly watts?: number;
  readonly capacitor?: readonly [measured: number, label: number];
  readonly basis?: string;
  readonly found?: number;
  readonly added?: number;
  readonly recovered?: number;
  readonly hose?: number;
  readonly why?: string;
  /** Cylinder, before, after [lb]. */
  readonly cylinder?: readonly [id: string, before: number, after: number];
  readonly leak?: {
    readonly place?: string;
    readonly method: string;
    readonly fixed: boolean;
    readonly on?: string;
  };
  readonly test?: readonly [p1: number, t1: number, p2: number, t2: number];
  readonly vacuum?: readonly [start: number, end: number, minutes: number];
  readonly tapsFitted?: number;
  readonly tapsLeft?: number;
  readonly tapSize?: string;
  readonly note?: string;
}

export interface SampleVisit {
  readonly visit: string;
  readonly unit: string;
  readonly technician: string;
  readonly reason: string;
  readonly supply: string;
  readonly airflow?: readonly [cfm: number, how: string];
  readonly sets: readonly ReadingSet[];
}
