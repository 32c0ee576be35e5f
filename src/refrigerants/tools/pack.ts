import type { DepartureFunction, FluidEquation, MixingPair } from '../../data/equation-form.ts';
import type { BlendFacts, PureFacts } from '../../data/facts-form.ts';
import { packRecords } from '../../data/record-codec.ts';
import {
  blendFields,
  departureFields,
  equationFields,
  pairFields,
  pureFields,
  tableFields,
} from '../../data/record-fields.ts';
import type { SaturationTable } from '../../data/saturation-form.ts';

export interface Readable {
  readonly pure: readonly PureFacts[];
  readonly blends: readonly BlendFacts[];
  readonly equations: readonly FluidEquation[];
  readonly pairs: readonly MixingPair[];
  readonly departures: Readonly<Record<string, DepartureFunction>>;
  readonly tables: readonly (SaturationTable & { readonly designation: string })[];
}

/** Text of src/data/packed.ts. */
export function packedModule(readable: Readable): string {
  const words: string[] = [];
  const departures = Object.entries(readable.departures).map(([name, terms]) => ({ name, ...terms }));
  const parts = {
    pure: packRecords(readable.pure, pureFields, words),
    blends: packRecords(readable.blends, blendFields, words),
    equations: packRecords(readable.equations, equationFields, words),
    pairs: packRecords(readable.pairs, pairFields, words),
    departures: packRecords(departures, departureFields, words),
    tables: packRecords(readable.tables, tableFields, words),
  };
  const literal = (text: string) => `'${text.replaceAll('\n', "\\n' +\n    '")}'`;
  const members = Object.entries({ words: words.join('\n'), ...parts }).map(
    ([name, text]) => `  ${name}:\n    ${literal(text)},`,
  );
  return `/** All of src/data in the form of record-codec.ts: what the running program reads. */\n// prettier-ignore\nexport const packed = {\n${members.join('\n')}\n};\n`;
}
