import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { call } from '../../functions/catalogue/call.ts';
import type { CalcOptions } from './libreoffice.ts';
import { Calc } from './libreoffice.ts';

const unavailable = 525;
const formula = '=OUNCE.SATTEMP("R-410A";62)';
const expected = call('SATTEMP', ['R-410A', 62]) as number;

async function withCalc(options: CalcOptions, body: (calc: Calc) => Promise<void>): Promise<void> {
  const calc = await Calc.open(options);
  try {
    await body(calc);
  } finally {
    await calc.close();
  }
}

/** A stand-in for Node.js: greets, then never answers. */
const hung = `#!/bin/sh
echo '{"ready":"hung"}'
exec sleep 1000
`;

/** Hangs the first time it is started, is Node.js afterwards. */
const hungOnce = `#!/bin/sh
if [ ! -e "$HOME/hung-once" ]; then
  touch "$HOME/hung-once"
  echo '{"ready":"hung"}'
  exec sleep 1000
fi
exec node "$@"
`;

describe('the Node.js process', () => {
  test('that hangs costs two waits, not one per cell, and says so', () =>
    withCalc({ programs: { hung }, settings: { node: 'hung', timeout_seconds: 1 } }, async (calc) => {
      const formulas = Object.fromEntries(Array.from({ length: 300 }, (_, i) => [`A${i + 1}`, formula]));
      const { cells, seconds } = await calc.evaluate(formulas);
      expect(new Set(Object.values(cells).map(({ error }) => error))).toEqual(new Set([unavailable]));
      expect(Object.keys(cells)).toHaveLength(300);
      console.log(`300 cells with a hung Node.js and a time limit of 1 s: ${seconds.toFixed(1)} s`);
      expect(seconds).toBeGreaterThan(1.9);
      expect(seconds).toBeLessThan(15);
      expect(await calc.report()).toContain('longer than 1 seconds');
    }));

  test('that hung is started again by the next cell', () =>
    withCalc({ programs: { hungOnce }, settings: { node: 'hungOnce', timeout_seconds: 1 } }, async (calc) => {
      const { cells } = await calc.evaluate({ A1: formula, A2: formula, A3: formula });
      const values = [cells.A1, cells.A2, cells.A3];
      expect(values.filter((cell) => cell?.error === unavailable)).toHaveLength(1);
      const good = values.flatMap((cell) => (typeof cell?.value === 'number' ? [cell.value] : []));
      expect(good).toHaveLength(2);
      for (const value of good) expect(value).toBeCloseTo(expected, 9);
    }));

  test('that was killed is started again without a lost cell; none is left when the office ends', async () => {
    let calc: Calc | undefined;
    await withCalc({}, async (opened) => {
      calc = opened;
      await opened.evaluate({ A1: formula });
      const [before, ...others] = await opened.nodeChildren();
      expect(before).toBeGreaterThan(0);
      expect(others).toEqual([]);
      process.kill(before ?? 0, 'SIGKILL');
      const { cells } = await opened.evaluate({ A1: formula });
      expect(cells.A1?.value).toBeCloseTo(expected, 9);
      const after = await opened.nodeChildren();
      expect(after).toHaveLength(1);
      expect(after[0]).not.toBe(before);
    });
    expect(await calc?.nodeChildren()).toEqual([]);
  });

  test('that is not where the environment variable says gives #NAME? and the reason', () =>
    withCalc({ environment: { OUNCEWISE_NODE: '/nowhere/node' } }, async (calc) => {
      const { cells } = await calc.evaluate({
        A1: formula,
        A2: '=1+1',
        A3: '=IFERROR(OUNCE.SATTEMP("R-22";60);"no")',
      });
      expect(cells.A1?.error).toBe(unavailable);
      expect(cells.A2?.value).toBe(2);
      expect(cells.A3?.value).toBe('no');
      const report = await calc.report();
      expect(report).toContain(
        'Node.js is not at /nowhere/node, which the environment variable OUNCEWISE_NODE names',
      );
      expect(report).toContain('settings.json');
    }));

  test('is taken from the settings file', () =>
    withCalc({ settings: { node: process.execPath } }, async (calc) => {
      const { cells } = await calc.evaluate({ A1: formula });
      expect(cells.A1?.value).toBeCloseTo(expected, 9);
      expect(await calc.report()).toContain(`Node.js ${process.versions.node} at ${process.execPath}`);
    }));
});

test('after removal formulas give #NAME?, other work goes on and nothing is left in the profile', async () => {
  const calc = await Calc.open();
  await calc.evaluate({ A1: formula });
  await calc.stop();
  try {
    await calc.profile.unopkg('remove', 'ouncewise.libreoffice');
    expect(await calc.profile.unopkg('list')).not.toContain('ouncewise');
    const packages = join(calc.profile.folder, 'profile/user/uno_packages/cache/uno_packages');
    const left = existsSync(packages) ? readdirSync(packages, { recursive: true }).map(String) : [];
    expect(left.filter((name) => name.includes('ouncewise') || name.includes('server.cjs'))).toEqual([]);
    const again = await calc.restart();
    const { cells } = await again.evaluate({ A1: formula, A2: '=1+1' });
    expect(cells.A1?.error).toBe(unavailable);
    expect(cells.A2?.value).toBe(2);
    await again.stop();
  } finally {
    calc.profile.remove();
  }
});

test('throughput: single cells, and one array formula', () =>
  withCalc({}, async (calc) => {
    const count = 5000;
    const pressure = '=60+ROW()/100';
    // The start of Node.js is not part of it.
    await calc.evaluate({ A1: formula });
    const single = await calc.evaluate({ A1: pressure, B1: '=OUNCE.SATTEMP("R-410A";A1)' }, {}, [
      `A1:B${count}`,
    ]);
    const array = await calc.evaluate(
      { A1: pressure },
      { [`B1:B${count}`]: `=OUNCE.SATTEMP("R-410A";A1:A${count})` },
      [`A1:A${count}`],
    );
    for (const { cells } of [single, array]) {
      expect(cells[`B${count}`]?.value).toBeCloseTo(
        call('SATTEMP', ['R-410A', 60 + count / 100]) as number,
        9,
      );
    }
    const load = execFileSync('uptime').toString().trim().split('load average:')[1];
    console.log(
      `${count} single cells ${single.seconds.toFixed(2)} s (${Math.round(count / single.seconds)} a second), ` +
        `one array formula over ${count} cells ${array.seconds.toFixed(3)} s; load average${load}`,
    );
    // Generous for a busy machine: a start of Node.js per cell would take minutes.
    expect(single.seconds).toBeLessThan(30);
    expect(array.seconds).toBeLessThan(10);
  }));
