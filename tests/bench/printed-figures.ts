import { libraryVersion } from '../../src/data/tools/python-environment.ts';
import { leastAndMedian } from './table-rows.ts';
import type { TableRow } from './table-rows.ts';

/** Measurements of one thing over several runs, in the order in which they were first seen. */
class Gathered {
  readonly #values = new Map<string, number[]>();

  add(key: string, value: number): void {
    if (!Number.isFinite(value)) throw new Error(`${key}: no figure was printed`);
    this.#values.set(key, [...(this.#values.get(key) ?? []), value]);
  }

  rows(part: string, unit: string, size: (key: string) => string = () => ''): TableRow[] {
    if (this.#values.size === 0) throw new Error(`${part}: no figures were printed`);
    return [...this.#values].map(([key, values]) => ({
      part,
      what: key,
      size: size(key),
      unit,
      ours: leastAndMedian(values),
    }));
  }

  get(key: string): readonly number[] {
    return this.#values.get(key) ?? [];
  }

  get keys(): readonly string[] {
    return [...this.#values.keys()];
  }
}

/** Lines such as "SATTEMP  R-22  pure  85  2100  9000 …": ours, the library's fastest call, its usual call. */
export function figuresOfProperties(outputs: readonly string[]): TableRow[] {
  const ours = new Gathered();
  const theirs = new Gathered();
  let widest = 0;
  for (const output of outputs) {
    for (const line of output.split('\n')) {
      const match = /^([A-Z]+) +(R-\S+) +(\S.*?) {2,}(\d+) +(\d+|–) +(\d+|–) .*?(\S+)$/.exec(line);
      if (match === null) continue;
      const [, name = '', gas = '', kind = '', own = '', low = '', , difference = ''] = match;
      const key = `${name} of ${gas} (${kind})`;
      ours.add(key, Number(own));
      if (low !== '–') theirs.add(key, Number(low));
      widest = Math.max(widest, Math.abs(Number(difference)));
    }
  }
  // Mixture models differ a little by their mixing parameters; a wrong unit or curve would differ by far more.
  if (!(widest < 0.05)) throw new Error(`properties: values differ by ${widest}`);
  return ours.rows('properties', 'ns a call').map((row) => {
    const values = theirs.get(row.what);
    const figure = values.length === 0 ? 'not offered' : leastAndMedian(values);
    return { ...row, other: { name: `CoolProp ${libraryVersion}, reused state`, figure } };
  });
}

/** Processor seconds of gathering 200 logs and of the fleet workbook that comes of it. */
export function figuresOfGather(outputs: readonly string[]): TableRow[] {
  const seconds = new Gathered();
  for (const output of outputs) {
    if (!/: equal$/m.test(output))
      throw new Error(`gather: the ounces are not those that were put in\n${output}`);
    for (const line of output.split('\n')) {
      const match = /^(?:(gather, .*?)|.*?(read|recalculated|written)): .*?processor ([\d.]+) s/.exec(line);
      if (match === null) continue;
      seconds.add(match[1] ?? `fleet workbook ${match[2] ?? ''}`, Number(match[3]));
    }
  }
  return seconds.rows('gather', 's', (key) => (key.startsWith('gather') ? '' : '9,900 sets'));
}

/** Milliseconds by the clock, as the person before the page sees them. */
export function figuresOfPage(outputs: readonly string[]): TableRow[] {
  const times = new Gathered();
  for (const output of outputs) {
    let file = '';
    for (const line of output.split('\n')) {
      const start = /^start \d+: first cells (\d+) ms, all formulas worked out (\d+) ms/.exec(line);
      if (start !== null) {
        times.add('start, first cells', Number(start[1]));
        times.add('start, all formulas worked out', Number(start[2]));
      }
      const opened = /^(.*), [\d.]+ MiB: opened and worked out in ([\d.]+) s/.exec(line);
      if (opened !== null) {
        file = opened[1] ?? '';
        times.add(`${file}: opened and worked out`, Number(opened[2]) * 1_000);
      }
      const edited = /^ {2}edit (\S+): ([\d, ]+) ms to repaint/.exec(line);
      for (const time of edited?.[2]?.split(', ') ?? []) {
        times.add(`${file}: edit of ${edited?.[1] ?? ''}`, Number(time));
      }
      const scrolled = /^ {2}scrolling: (\d+) ms a frame/.exec(line);
      if (scrolled !== null) times.add(`${file}: scrolling, a frame`, Number(scrolled[1]));
    }
  }
  return times.rows('page', 'ms by the clock');
}
