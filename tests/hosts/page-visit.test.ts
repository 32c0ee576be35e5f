import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { BrowserContextOptions } from 'playwright-core';
import type { PageHand } from './page/browser.ts';
import { chromiumIsHere, PageBench, pictures } from './page/browser.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const sizes: readonly (readonly [string, BrowserContextOptions])[] = [
  ['laptop', { viewport: { width: 1366, height: 768 } }],
  ['phone', { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }],
  ['sideways', { viewport: { width: 844, height: 390 }, hasTouch: true, isMobile: true }],
];

/** Lines whose control lies whole within the part of the sets that is in sight. */
function fieldsInSight(hand: PageHand): Promise<number> {
  return hand.page.evaluate(() => {
    const box = document.getElementById('visit-sets')?.getBoundingClientRect();
    const heads = document.querySelector('.heads-group')?.getBoundingClientRect();
    if (box === undefined || heads === undefined) return 0;
    const lines = [...document.querySelectorAll('.lines:not([hidden]) .line:not(.is-figure)')];
    return lines.filter((line) => {
      const { top, bottom } = line.getBoundingClientRect();
      return top >= heads.bottom - 1 && bottom <= box.bottom + 1 && bottom <= innerHeight + 1;
    }).length;
  });
}

async function seriousFindings(hand: PageHand): Promise<string[]> {
  await hand.page.evaluate(axe);
  const found = await hand.page.evaluate(async () => {
    const { axe: runner } = globalThis as unknown as {
      axe: { run(): Promise<{ violations: { id: string; impact: string; nodes: { html: string }[] }[] }> };
    };
    return (await runner.run()).violations.map(
      ({ id, impact, nodes }) => `${impact} ${id}: ${nodes[0]?.html ?? ''}`,
    );
  });
  return found.filter((line) => /^(?:serious|critical)/.test(line));
}

/**
 * Counts what is pressed. A reading is its characters, a choice the one key that chooses it; Enter, Ctrl+Down to the next
 * section, Ctrl+; for "read now" and Ctrl+Enter for the next set come on top.
 */
class Keyboard {
  readonly hand: PageHand;
  beyond = 0;
  readings = 0;

  constructor(hand: PageHand) {
    this.hand = hand;
  }

  /** Types readings one after the other, each where the keyboard is by then. */
  async read(readings: Readonly<Record<string, string>>, end = 'Enter'): Promise<void> {
    for (const [line, reading] of Object.entries(readings)) {
      expect(await this.at()).toBe(line);
      await this.hand.page.keyboard.type(reading);
      this.readings += reading.length;
      await this.press(end);
    }
  }

  async choose(choices: Readonly<Record<string, string>>): Promise<void> {
    for (const [line, key] of Object.entries(choices)) {
      expect(await this.at()).toBe(line);
      await this.hand.page.keyboard.press(key);
      this.readings++;
      await this.hand.settled();
    }
  }

  async press(...keys: readonly string[]): Promise<void> {
    for (const key of keys) {
      await this.hand.page.keyboard.press(key);
      this.beyond++;
      await this.hand.settled();
    }
  }

  at(): Promise<string> {
    return this.hand.page.evaluate(() => {
      const active = document.activeElement as HTMLElement | null;
      return active?.dataset['line'] ?? active?.id ?? '';
    });
  }
}

/** Expected words are those of the sample log's own columns; readings are invented. */
describe.skipIf(!chromiumIsHere())('one visit on one screen', () => {
  let bench: PageBench;
  beforeAll(async () => {
    bench = await PageBench.open();
  });
  afterAll(() => bench.close());

  test.each(sizes)(
    '%s: the answer on top, five fields in sight, nothing serious for axe',
    async (name, size) => {
      const context = await bench.context(size);
      const hand = await bench.tab(context, 'visit');
      expect(await hand.page.locator('#visit').isVisible()).toBe(true);
      await hand.page.locator('#visits').click();
      await hand.page.locator('.pick', { hasText: 'V-101' }).click();
      await hand.settled();
      await hand.page.locator('#next-set').click();
      await hand.settled();
      expect(await hand.page.locator('#visit-answer strong').innerText()).toMatch(/\p{L}/u);
      expect(await hand.page.locator('.clock').innerText()).toMatch(/^Settled in 1[45]:\d\d, at \d\d:\d\d$/);
      expect(await fieldsInSight(hand)).toBeGreaterThanOrEqual(5);
      await hand.page.screenshot({ path: join(pictures, `visit-${name}.png`) });
      expect(await seriousFindings(hand)).toEqual([]);
      const across = await hand.page.evaluate(() => document.documentElement.scrollWidth);
      expect(across).toBeLessThanOrEqual(size.viewport?.width ?? 0);
      // Thumbs: no control of the set in hand is lower than 34 px or off the screen to a side.
      const small = await hand.page.evaluate(() =>
        [...document.querySelectorAll('.lines:not([hidden]) [data-line], #visit-bar button')]
          .map((control) => control.getBoundingClientRect())
          .filter(
            ({ height, width, left, right }) => width > 0 && (height < 34 || left < 0 || right > innerWidth),
          ),
      );
      expect(small).toEqual([]);
      await context.close();
    },
  );

  test('three sets of a new unit in an empty log, by keyboard, in at most 40 presses beyond the readings', async () => {
    await bench.withTab(async (hand) => {
      await hand.begin('Empty visit log');
      await hand.page.locator('#visit-unit').waitFor();
      const keys = new Keyboard(hand);
      await keys.read({ 'visit-technician': 'PL', 'visit-unit': 'R-7' });
      await keys.read({
        'unit refrigerant': 'R-410A',
        'unit nameplate': '14',
        'unit rated_volts': '115',
        'unit rated_amps': '9.6',
      });
      await keys.choose({ 'unit metering': 'c' });
      await keys.read({ 'unit elevation': '640' });
      await keys.choose({ reason: '2', compressor_state: 'r' });
      await keys.read({ minutes_since_change: '20' });
      await keys.choose({ filter: 'd', evap_coil: 'c', cond_coil: 'c', vents: 'c', fan: 'c', frost: '1' });
      await keys.choose({ source: 'h' });
      await keys.read({ volts_run: '116' });
      await keys.read({ amps_total: '8.4' }, 'Control+ArrowDown');
      const running = [
        'outdoor_db',
        'return_db',
        'return_wb',
        'supply_db',
        'suction_line',
        'suction_pressure',
      ];
      const setOf = (...readings: readonly string[]): Record<string, string> =>
        Object.fromEntries(running.map((line, index) => [line, readings[index] ?? '']));
      await keys.read(setOf('95', '80', '67', '69', '64', '96'));
      await keys.choose({ mass_basis: 'r' });
      await keys.read({ found: '9', added: '0' }, 'Enter');
      await hand.page.screenshot({ path: join(pictures, 'visit-first-set.png') });
      expect(await hand.text('visit-answer')).toContain('Clean first');
      await keys.press('Control+Enter');
      // The dirty filter is asked for anew, what was clean is not.
      await keys.choose({ filter: 'c', frost: '1' });
      await keys.read({
        volts_run: '115',
        amps_total: '8.2',
        ...setOf('95', '80', '67', '66', '61', '108'),
        added: '0',
      });
      await keys.press('Control+;');
      await keys.press('Control+Enter');
      await keys.choose({ frost: '1' });
      await keys.read({
        volts_run: '115',
        amps_total: '8.2',
        ...setOf('95', '80', '67', '65', '60', '110'),
        added: '1.5',
      });
      await keys.press('Control+;');
      console.log(`a visit of three sets: ${keys.beyond} presses beyond ${keys.readings} of the readings`);
      expect(keys.beyond).toBeLessThanOrEqual(40);
      await hand.page.screenshot({ path: join(pictures, 'visit-three-sets.png') });
      // It is the record of the table: the same cells, three rows.
      await hand.page.locator('#show-table').click();
      await hand.settled();
      await hand.goTo('A6');
      await hand.page.keyboard.press('Shift+ArrowDown');
      await hand.page.keyboard.press('Shift+ArrowDown');
      for (let step = 0; step < 4; step++) await hand.page.keyboard.press('Shift+ArrowRight');
      await hand.settled();
      await hand.page.keyboard.press('Control+c');
      await hand.settled();
      const copied = await hand.page.evaluate(() => navigator.clipboard.readText());
      for (const set of ['1', '2', '3']) expect(copied).toContain(`R-7\tV-1\t${set}\t`);
    }, 'visit');
  });

  test('what is typed in the visit stands in the table, is checked where it was typed, and undone', async () => {
    await bench.withTab(async (hand) => {
      const field = hand.page.locator('input[data-line="outdoor_db"]');
      await field.fill('150');
      await field.press('Enter');
      await hand.settled();
      // Refused by the cell: the words stand under the field, and what was typed stays to be put right.
      expect(await field.getAttribute('aria-invalid')).toBe('true');
      expect(await field.inputValue()).toBe('150');
      expect(await hand.page.locator('.is-number', { has: field }).innerText()).toContain('135');
      await field.fill('50');
      await field.press('Enter');
      await hand.settled();
      expect(await hand.page.locator('.is-number', { has: field }).innerText()).toContain('below 55');
      await field.focus();
      await hand.page.locator('#show-table').click();
      await hand.settled();
      expect(await hand.typed()).toBe('50');
      await hand.page.keyboard.press('Control+z');
      await hand.settled();
      expect(await hand.typed()).toBe('48');
    }, 'visit');
  });

  test.each(sizes.slice(1))(
    '%s: a set by thumb alone, from the next set to its answer',
    async (name, size) => {
      const context = await bench.context(size);
      const hand = await bench.tab(context, 'visit');
      await hand.page.locator('#new-visit').tap();
      await hand.page.locator('.pick', { hasText: 'U-01' }).tap();
      await hand.settled();
      for (const [line, word] of [
        ['reason', 'weak cool'],
        ['compressor_state', 'running'],
        ['filter', 'clean'],
        ['evap_coil', 'clean'],
        ['cond_coil', 'blocked'],
        ['vents', 'clean'],
        ['fan', 'clean'],
        ['frost', 'none'],
      ] as const) {
        await hand.page.locator(`[data-group="${line}"] button`, { hasText: new RegExp(`^${word}$`) }).tap();
        await hand.settled();
      }
      await hand.page.locator('input[data-line="minutes_since_change"]').fill('20');
      await hand.page.locator('input[data-line="volts_run"]').fill('115');
      await hand.page.locator('input[data-line="outdoor_db"]').fill('90');
      await hand.page.locator('input[data-line="outdoor_db"]').press('Enter');
      await hand.settled();
      expect(await hand.page.locator('#visit-answer strong').innerText()).toContain('Clean first');
      await hand.page.screenshot({ path: join(pictures, `visit-thumb-${name}.png`) });
      await context.close();
    },
  );
});
