import type { DepartureFunction, FluidEquation, MixingPair } from './equation-form.ts';
import type { BlendFacts, PureFacts } from './facts-form.ts';
import { packed } from './packed.ts';
import { unpackRecords } from './record-codec.ts';
import {
  blendFields,
  departureFields,
  equationFields,
  pairFields,
  pureFields,
  tableFields,
} from './record-fields.ts';
import type { SaturationTable } from './saturation-form.ts';

/** Everything in src/data by designation, as the running program uses it. */
export interface Catalogue {
  readonly pureFacts: ReadonlyMap<string, PureFacts>;
  readonly blendFacts: ReadonlyMap<string, BlendFacts>;
  readonly equations: ReadonlyMap<string, FluidEquation>;
  /** Published pairs first, then the estimated ones (their `source` begins with "estimated"). */
  readonly pairs: readonly MixingPair[];
  readonly departures: Readonly<Record<string, DepartureFunction>>;
  readonly tables: ReadonlyMap<string, SaturationTable>;
}

let unpacked: Catalogue | undefined;

function byDesignation<T extends { readonly designation: string }>(records: readonly T[]): Map<string, T> {
  return new Map(records.map((record) => [record.designation, record]));
}

export function catalogue(): Catalogue {
  if (unpacked !== undefined) return unpacked;
  const words = packed.words.split('\n');
  const departures = unpackRecords<DepartureFunction & { name: string }>(
    packed.departures,
    departureFields,
    words,
  );
  unpacked = {
    pureFacts: byDesignation(unpackRecords<PureFacts>(packed.pure, pureFields, words)),
    blendFacts: byDesignation(unpackRecords<BlendFacts>(packed.blends, blendFields, words)),
    equations: byDesignation(unpackRecords<FluidEquation>(packed.equations, equationFields, words)),
    pairs: unpackRecords<MixingPair>(packed.pairs, pairFields, words),
    departures: Object.fromEntries(departures.map((departure) => [departure.name, departure])),
    tables: byDesignation(
      unpackRecords<SaturationTable & { designation: string }>(packed.tables, tableFields, words),
    ),
  };
  return unpacked;
}
