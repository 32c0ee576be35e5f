/**
 * `npm run bench -- properties`: our saturation functions beside the reference library, in one run on one machine.
 * Prints nanoseconds of processor time per call and how many times faster ours is, and checks that both give the same value.
 */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { pythonWithLibrary } from '../../../src/data/tools/python-environment.ts';
import {
  findRefrigerant,
  saturatedVaporDensity,
  saturationPressurePa,
  saturationTemperatureK,
} from '../../../src/refrigerants/index.ts';

/** One or two refrigerants per class; `library` is the name there, a list for a mixture. */
const subjects = [
  { kind: 'pure', designation: 'R-22', library: ['R22'] },
  { kind: 'pure', designation: 'R-32', library: ['R32'] },
  { kind: 'pure', designation: 'R-290', library: ['n-Propane'] },
  { kind: 'pseudo-pure', designation: 'R-410A', library: ['R410A'] },
  { kind: 'blend of 2', designation: 'R-454B', library: ['R32', 'R1234yf'] },
  { kind: 'blend of 3', designation: 'R-407A', library: ['R32', 'R125', 'R134a'] },
  { kind: 'blend of 5', designation: 'R-448A', library: ['R32', 'R125', 'R1234yf', 'R134a', 'R1234ze(E)'] },
];

const temperatures = Array.from({ length: 16 }, (_, i) => 255 + i * 4.3);

const functions = [
  { name: 'SATTEMP', code: 'T', run: saturationTemperatureK },
  { name: 'SATPRESSURE', code: 'P', run: saturationPressurePa },
  {
    name: 'VAPORDENSITY',
    code: 'D',
    run: (gas: ReturnType<typeof findRefrigerant>, temperatureK: number) =>
      saturatedVaporDensity(gas, temperatureK),
  },
] as const;

interface LibraryResult {
  value: number;
  low: number | null;
  high: number | null;
}

const cases = functions.flatMap((f) =>
  subjects.map((subject) => {
    const gas = findRefrigerant(subject.designation);
    const values =
      f.code === 'T' ? temperatures.map((T) => saturationPressurePa(gas, T, 'dew')) : temperatures;
    return { f, subject, gas, values };
  }),
);

let sink = 0;
/** Processor time, not wall time, on both sides, because other programs share the machine. Best of five rounds. */
function oursNs({ f, gas, values }: (typeof cases)[number]): number {
  let best = Infinity;
  for (let round = 0; round < 5; round++) {
    const count = 400_000;
    const start = process.cpuUsage();
    for (let i = 0; i < count; i++) sink += f.run(gas, values[i & 15]!, 'dew');
    const { user, system } = process.cpuUsage(start);
    best = Math.min(best, ((user + system) / count) * 1e3);
  }
  return best;
}

const input = cases.map(({ f, subject, gas, values }) => ({
  fluid: subject.library.join('&'),
  fractions: subject.library.length > 1 ? gas.composition.map((c) => c.moleFraction) : [],
  kind: f.code,
  values,
}));
const script = fileURLToPath(new URL('library.py', import.meta.url));
const theirs = JSON.parse(
  execFileSync(pythonWithLibrary(), [script], { input: JSON.stringify(input), encoding: 'utf8' }),
) as LibraryResult[];

const cell = (value: number | null, width: number) =>
  (value === null ? '–' : value.toFixed(0)).padStart(width);
const times = (value: number | null, ours: number) =>
  (value === null ? '–' : `${(value / ours).toFixed(0)}×`).padStart(9);
console.log(
  'ns of processor time per call'.padEnd(40) + '    ours     low      high   low/ours high/ours  difference',
);
cases.forEach((item, i) => {
  const ours = oursNs(item);
  const result = theirs[i]!;
  const difference = item.f.run(item.gas, item.values[0]!, 'dew') / result.value - 1;
  console.log(
    `${item.f.name.padEnd(13)}${item.subject.designation.padEnd(12)}${item.subject.kind.padEnd(15)}` +
      cell(ours, 8) +
      cell(result.low, 8) +
      cell(result.high, 10) +
      times(result.low, ours).padStart(11) +
      times(result.high, ours).padStart(10) +
      difference.toExponential(1).padStart(12),
  );
});
if (Number.isNaN(sink)) throw new Error('a value was not a number');
