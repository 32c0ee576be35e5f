import { strToU8, zipSync } from 'fflate';
import { cellAddress } from '../../../../functions/workbook/model/address.ts';
import { buildXlsx, escapeXml } from '../../workbook/build-xlsx.ts';

/** A number that looks thrown, the same for the same seed (linear congruence modulo 2^32, Numerical Recipes' constants). */
export function dice(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 4_294_967_296;
  };
}

/** A set of readings as the generator knows it: tenths of an ounce, so that sums are exact. */
export interface TrueSet {
  readonly unit: string;
  readonly visit: string;
  readonly set: number;
  readonly date: string;
  readonly gas: string;
  readonly addedTenths: number;
  readonly hoseTenths: number;
  readonly outdoorF: number;
}

export interface GeneratedLog {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export interface GeneratedLogs {
  readonly logs: readonly GeneratedLog[];
  readonly truth: readonly TrueSet[];
  readonly repeated: number;
  readonly conflicts: number;
  readonly corrupt: readonly string[];
}

const gases = ['R-410A', 'R-22', 'R-407C'] as const;

const gramsPerOunce = 28.349523125;

type Row = readonly (string | number)[];
type Column = readonly [
  heading: (si: boolean) => string,
  value: (set: TrueSet, si: boolean) => string | number,
];

/** Decimals enough that grams lead back to the same ounce. */
const grams = (tenths: number): number => Number(((tenths / 10) * gramsPerOunce).toFixed(6));
const mass = (tenths: number, si: boolean): number => (si ? grams(tenths) : tenths / 10);
const unit = (us: string, metric: string) => (si: boolean) => (si ? metric : us);

const columns: readonly Column[] = [
  [unit('Unit', 'unit_id'), ({ unit: name }) => name],
  [() => 'Visit', ({ visit }) => visit],
  [unit('Set', 'set number'), ({ set }) => set],
  [() => 'Date and time', ({ date }) => date],
  [() => 'Gas in unit', ({ gas }) => gas],
  [unit('Added (oz)', 'added [g]'), ({ addedTenths }, si) => mass(addedTenths, si)],
  [unit('Lost in hoses (oz)', 'hose loss (g)'), ({ hoseTenths }, si) => mass(hoseTenths, si)],
  [
    unit('Outdoor dry bulb (degF)', 'Outdoor dry bulb (°C)'),
    ({ outdoorF }, si) => (si ? Number((((outdoorF - 32) * 5) / 9).toFixed(6)) : outdoorF),
  ],
  // Columns that no record knows stay where they are.
  [() => 'Weather', () => 'fair'],
  [() => 'Helper', () => 7],
];

/**
 * Logs of many technicians: three kinds of files, columns in any order, US and metric, rows that stand in two logs, rows
 * that two logs tell differently, two files that are damaged, and what is in all of them together.
 */
export function generateLogs(count: number, setsPerLog: number, seed = 7): GeneratedLogs {
  const throwDie = dice(seed);
  const truth: TrueSet[] = [];
  const sets: TrueSet[][] = [];
  let visit = 0;
  for (let log = 0; log < count; log += 1) {
    const own: TrueSet[] = [];
    while (own.length < setsPerLog) {
      visit += 1;
      const gas = gases[visit % gases.length] ?? 'R-22';
      for (let set = 1; set <= 3 && own.length < setsPerLog; set += 1) {
        own.push({
          unit: `U-${visit % 300}`,
          visit: `V-${visit}`,
          set,
          date: `2026-${String((visit % 12) + 1).padStart(2, '0')}-${String((visit % 28) + 1).padStart(2, '0')} 1${set}:30`,
          gas,
          addedTenths: set === 3 ? Math.floor(throwDie() * 40) : 0,
          hoseTenths: set === 3 ? Math.floor(throwDie() * 4) : 0,
          outdoorF: 70 + Math.floor(throwDie() * 30),
        });
      }
    }
    sets.push(own);
  }
  const corruptAt = new Set([Math.floor(count / 3), Math.floor((2 * count) / 3)]);
  const names = sets.map(
    (_, log) => `log-${String(log).padStart(4, '0')}${['.xlsx', '.ods', '.csv'][log % 3] ?? ''}`,
  );
  sets.forEach((own, log) => {
    if (!corruptAt.has(log)) truth.push(...own);
  });
  let repeated = 0;
  let conflicts = 0;
  const logs = sets.map((own, log): GeneratedLog => {
    const rows = [...own];
    const earlier = log > 0 && !corruptAt.has(log - 1) && !corruptAt.has(log) ? sets[log - 1] : undefined;
    const [first, second] = earlier ?? [];
    // Every fifth log has a row of its neighbour, every tenth tells one differently.
    if (log % 5 === 4 && first !== undefined) {
      rows.push(first);
      repeated += 1;
    }
    if (log % 10 === 9 && second !== undefined) {
      rows.push({ ...second, addedTenths: second.addedTenths + 5 });
      conflicts += 1;
    }
    const bytes = fileOf(names[log] ?? '', rows, { isMetric: log % 2 === 1, throwDie });
    return { name: names[log] ?? '', bytes: corruptAt.has(log) ? damaged(names[log] ?? '', bytes) : bytes };
  });
  return { logs, truth, repeated, conflicts, corrupt: names.filter((_, log) => corruptAt.has(log)) };
}

function fileOf(
  name: string,
  sets: readonly TrueSet[],
  { isMetric, throwDie }: { isMetric: boolean; throwDie: () => number },
): Uint8Array {
  const order = columns
    .map((column) => ({ column, place: throwDie() }))
    .sort((one, other) => one.place - other.place);
  const rows: Row[] = [
    order.map(({ column: [heading] }) => heading(isMetric)),
    ...sets.map((set) => order.map(({ column: [, value] }) => value(set, isMetric))),
  ];
  // A title above the headings now and then.
  const sheet: Row[] = throwDie() < 0.3 ? [['Log of the week'], [], ...rows] : rows;
  if (name.endsWith('.xlsx')) return xlsx(sheet);
  return name.endsWith('.ods') ? ods(sheet) : csv(sheet, throwDie() < 0.5 ? ';' : ',');
}

function damaged(name: string, bytes: Uint8Array): Uint8Array {
  // Torn off in the middle, as by a broken upload; a CSV loses the end of a quoted cell.
  return name.endsWith('.csv')
    ? strToU8(`${new TextDecoder().decode(bytes)}"never closed,1\n`)
    : bytes.slice(0, Math.floor(bytes.length / 2));
}

function xlsx(rows: readonly Row[]): Uint8Array {
  const cells: Record<string, string | number> = {};
  rows.forEach((row, at) => row.forEach((value, column) => (cells[cellAddress(at, column)] = value)));
  return buildXlsx({ sheets: [{ name: 'Readings', cells }] });
}

function csv(rows: readonly Row[], delimiter: string): Uint8Array {
  const cell = (value: string | number): string => {
    const text =
      typeof value === 'number' && delimiter === ';' ? String(value).replace('.', ',') : String(value);
    return text.includes(delimiter) || text.includes('"') ? `"${text.replaceAll('"', '""')}"` : text;
  };
  return strToU8(rows.map((row) => row.map(cell).join(delimiter)).join('\r\n'));
}

/** The smallest OpenDocument spreadsheet (OpenDocument 1.3 Part 2, 3.1 and Part 3, 9.1). */
export function ods(rows: readonly Row[]): Uint8Array {
  const type = 'application/vnd.oasis.opendocument.spreadsheet';
  const cell = (value: string | number): string =>
    typeof value === 'number'
      ? `<table:table-cell office:value-type="float" office:value="${value}"><text:p>${value}</text:p></table:table-cell>`
      : `<table:table-cell office:value-type="string"><text:p>${escapeXml(value)}</text:p></table:table-cell>`;
  const body = rows.map((row) => `<table:table-row>${row.map(cell).join('')}</table:table-row>`).join('');
  const space = 'urn:oasis:names:tc:opendocument:xmlns';
  const content = `<?xml version="1.0" encoding="UTF-8"?><office:document-content xmlns:office="${space}:office:1.0" xmlns:table="${space}:table:1.0" xmlns:text="${space}:text:1.0" office:version="1.3"><office:body><office:spreadsheet><table:table table:name="Readings">${body}</table:table></office:spreadsheet></office:body></office:document-content>`;
  const manifest = `<?xml version="1.0" encoding="UTF-8"?><manifest:manifest xmlns:manifest="${space}:manifest:1.0" manifest:version="1.3"><manifest:file-entry manifest:full-path="/" manifest:media-type="${type}"/><manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/></manifest:manifest>`;
  return zipSync({
    mimetype: [strToU8(type), { level: 0 }],
    'content.xml': strToU8(content),
    'META-INF/manifest.xml': strToU8(manifest),
  });
}
