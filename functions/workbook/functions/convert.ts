import type { CellValue } from '../model/values.ts';
import { notAvailable } from '../model/values.ts';
import { pure } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

interface Unit {
  readonly kind: string;
  readonly factor: number;
  /** Units of the metric system take prefixes. */
  readonly isMetric: boolean;
}

/** NIST Special Publication 811 (2008), appendix B; exact unless the last digit says otherwise. */
const pound = 0.45359237;
const foot = 0.3048;
const gallon = 3.785411784e-3;
const gravity = 9.80665;

const metric: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  mass: { g: 1e-3 },
  length: { m: 1 },
  time: { sec: 1, s: 1 },
  pressure: { Pa: 1, p: 1, atm: 101_325, at: 101_325, mmHg: 133.322387415, Torr: 101_325 / 760 },
  force: { N: 1, dyn: 1e-5, dy: 1e-5 },
  energy: { J: 1, e: 1e-7, cal: 4.1868, c: 4.184, Wh: 3600, wh: 3600, eV: 1.602176634e-19 },
  power: { W: 1, w: 1 },
  volume: { l: 1e-3, L: 1e-3, lt: 1e-3, m3: 1 },
  area: { m2: 1, ha: 1e4 },
  speed: { 'm/s': 1, 'm/sec': 1, 'm/h': 1 / 3600, 'm/hr': 1 / 3600 },
};

const other: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  mass: {
    lbm: pound,
    ozm: pound / 16,
    grain: pound / 7000,
    stone: 14 * pound,
    ton: 2000 * pound,
    uk_ton: 2240 * pound,
    sg: (pound * gravity) / foot,
  },
  length: { in: foot / 12, ft: foot, yd: 3 * foot, mi: 5280 * foot, Nmi: 1852, ang: 1e-10 },
  time: { mn: 60, min: 60, hr: 3600, day: 86_400, d: 86_400, yr: 365.25 * 86_400 },
  pressure: { psi: (pound * gravity) / (foot / 12) ** 2 },
  force: { lbf: pound * gravity },
  energy: {
    BTU: 1055.05585262,
    btu: 1055.05585262,
    HPh: 550 * foot * pound * gravity * 3600,
    hh: 550 * foot * pound * gravity * 3600,
    flb: foot * pound * gravity,
  },
  power: { HP: 550 * foot * pound * gravity, h: 550 * foot * pound * gravity, PS: 75 * gravity },
  volume: {
    gal: gallon,
    qt: gallon / 4,
    pt: gallon / 8,
    cup: gallon / 16,
    oz: gallon / 128,
    tbs: gallon / 256,
    tsp: gallon / 768,
    uk_gal: 4.54609e-3,
    ft3: foot ** 3,
    in3: (foot / 12) ** 3,
    yd3: (3 * foot) ** 3,
  },
  area: {
    ft2: foot ** 2,
    in2: (foot / 12) ** 2,
    yd2: (3 * foot) ** 2,
    mi2: (5280 * foot) ** 2,
    us_acre: 4046.872609874252,
    uk_acre: 4046.8564224,
  },
  speed: { mph: (5280 * foot) / 3600, kn: 1852 / 3600 },
};

const prefixes: Readonly<Record<string, number>> = {
  Y: 1e24,
  Z: 1e21,
  E: 1e18,
  P: 1e15,
  T: 1e12,
  G: 1e9,
  M: 1e6,
  k: 1e3,
  h: 1e2,
  da: 10,
  e: 10,
  d: 1e-1,
  c: 1e-2,
  m: 1e-3,
  u: 1e-6,
  n: 1e-9,
  p: 1e-12,
  f: 1e-15,
  a: 1e-18,
};

const units = new Map<string, Unit>();
for (const [table, isMetric] of [
  [metric, true],
  [other, false],
] as const) {
  for (const [kind, members] of Object.entries(table)) {
    for (const [name, factor] of Object.entries(members)) units.set(name, { kind, factor, isMetric });
  }
}

/** Temperatures differ by an offset: kelvin from degrees and back. */
const temperatures: Readonly<
  Record<string, { toKelvin: (t: number) => number; fromKelvin: (t: number) => number }>
> = {
  C: { toKelvin: (t) => t + 273.15, fromKelvin: (t) => t - 273.15 },
  F: { toKelvin: (t) => ((t + 459.67) * 5) / 9, fromKelvin: (t) => (t * 9) / 5 - 459.67 },
  K: { toKelvin: (t) => t, fromKelvin: (t) => t },
  Rank: { toKelvin: (t) => (t * 5) / 9, fromKelvin: (t) => (t * 9) / 5 },
};
const temperatureNames: Readonly<Record<string, string>> = { cel: 'C', fah: 'F', kel: 'K' };

function findUnit(name: string): Unit | undefined {
  const plain = units.get(name);
  if (plain !== undefined) return plain;
  for (const length of [2, 1]) {
    const prefix = prefixes[name.slice(0, length)];
    const unit = units.get(name.slice(length));
    if (prefix === undefined || unit?.isMetric !== true) continue;
    const power = /[23]$/.test(name) && /^m[23]$/.test(name.slice(length)) ? Number(name.at(-1)) : 1;
    return { ...unit, factor: unit.factor * prefix ** power };
  }
  return undefined;
}

function convert(value: number, from: string, to: string): CellValue {
  const warm = temperatures[temperatureNames[from] ?? from];
  const cold = temperatures[temperatureNames[to] ?? to];
  if (warm !== undefined && cold !== undefined) {
    if (warm === cold) return value;
    // Undoes the noise of the two offsets, which lies around 1e-13.
    return Number(cold.fromKelvin(warm.toKelvin(value)).toPrecision(13));
  }
  const source = findUnit(from);
  const target = findUnit(to);
  if (source === undefined || target === undefined || source.kind !== target.kind) return notAvailable;
  return source === target ? value : (value * source.factor) / target.factor;
}

/** Conversion between units by their worksheet abbreviations. */
export const convertFunctions: FunctionTable = {
  CONVERT: pure(['number', 'text', 'text'], convert),
};
