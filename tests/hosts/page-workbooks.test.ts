import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadWorkbook } from '../../functions/workbook/file/load-workbook.ts';
import { chromiumIsHere, PageBench, pictures } from './page/browser.ts';

const samples = join(import.meta.dirname, '../../sample-workbooks');
const sample = (name: string): Buffer => readFileSync(join(samples, name));

/** Expected figures are those of the sample workbooks' own cells, which LibreOffice confirms in tests of their own. */
describe.skipIf(!chromiumIsHere())('fleet summary and repair or replace on the page', () => {
  let bench: PageBench;
  beforeAll(async () => {
    bench = await PageBench.open();
  });
  afterAll(() => bench.close());

  test('the sample fleet shows its charts on the sheet and beside it, and an edited ledger moves them', async () => {
    await bench.withTab(async (hand) => {
      await hand.begin('Sample: fleet summary');
      await hand.page.locator('.over figure').first().waitFor();
      const titles = await hand.page.locator('.over figcaption').allInnerTexts();
      expect(titles).toEqual([
        'Added by month and gas, oz',
        'Losing most, oz a year',
        'Units due for a call, by month',
        'Log filled in by technician, %',
      ]);
      // A workbook without gates leaves their room to its cells.
      expect(await hand.page.locator('#strip').isVisible()).toBe(false);
      await hand.page.screenshot({ path: join(pictures, 'fleet.png') });
      // The picture lies over the cells the file says, whatever their sizes here.
      const first = await hand.page.locator('.over figure').first().boundingBox();
      await hand.goTo('B7');
      const cell = await hand.page.locator('#cell-in-hand').boundingBox();
      expect(Math.abs((first?.x ?? 0) - (cell?.x ?? 0))).toBeLessThan(3);
      expect(Math.abs((first?.y ?? 0) - (cell?.y ?? 0))).toBeLessThan(3);
      const aprilBar = (): Promise<string | null> =>
        hand.page.locator('.over figure').first().locator('rect.series-0').nth(4).getAttribute('height');
      const barBefore = Number(await aprilBar());
      await hand.page.locator('#show-charts').click();
      await hand.page.locator('#charts figure').first().waitFor();
      expect(await hand.page.locator('#charts figcaption').allInnerTexts()).toEqual(titles);
      const april = (): Promise<string> =>
        hand.page
          .locator('#charts figure')
          .first()
          .locator('tbody tr', { hasText: 'Apr 26' })
          .innerText()
          .catch(() => '');
      await hand.page.locator('#charts summary').first().click();
      const { workbook } = loadWorkbook(new Uint8Array(sample('fleet-summary.xlsx')));
      const figures = workbook.findSheet('Figures');
      // Row 11 of the figures is the sixth month; column D the first gas.
      expect(figures?.value(10, 0)).toBe('Apr 26');
      const before = Number(figures?.value(10, 3));
      expect(await april()).toContain(before.toFixed(1).replace(/\.0$/, ''));
      const ledger = workbook.findTable('Ledger');
      const place = (heading: string): number => (ledger?.left ?? 0) + (ledger?.columnPosition(heading) ?? 0);
      const gas = figures?.value(4, 3);
      let row = ledger?.firstRow ?? 0;
      const inApril = (value: unknown): boolean =>
        typeof value === 'number' &&
        value >= Number(figures?.value(10, 1)) &&
        value < Number(figures?.value(10, 2));
      while (!(
        inApril(ledger?.sheet.value(row, place('Date and time'))) &&
        ledger?.sheet.value(row, place('Gas in unit')) === gas
      ))
        row++;
      const old = Number(ledger?.sheet.value(row, place('Added')) ?? 0);
      await hand.sheet('Ledger');
      const letters = (column: number): string =>
        column < 26
          ? String.fromCharCode(65 + column)
          : `${letters(Math.floor(column / 26) - 1)}${String.fromCharCode(65 + (column % 26))}`;
      await hand.goTo(`${letters(place('Added'))}${row + 1}`);
      await hand.type(String(old + 10));
      await hand.page.locator('#charts summary').first().click();
      expect(await april()).toContain((before + 10).toFixed(1).replace(/\.0$/, ''));
      await hand.sheet('Overview');
      await hand.page.locator('.over figure').first().waitFor();
      expect(Number(await aprilBar())).not.toBeCloseTo(barBefore, 1);
    });
  });

  test('a fleet is gathered from logs, and a unit of it estimated', async () => {
    await bench.withTab(async (hand) => {
      const chooser = hand.page.waitForEvent('filechooser');
      await hand.page.locator('#new').click();
      await hand.page.getByRole('button', { name: 'Fleet summary from logs…' }).click();
      const log = sample('visit-log.xlsx');
      const mimeType = 'application/octet-stream';
      await (
        await chooser
      ).setFiles([
        { name: 'north.xlsx', mimeType, buffer: log },
        { name: 'north.xlsx', mimeType, buffer: log },
        { name: 'torn.xlsx', mimeType, buffer: log.subarray(0, 4000) },
      ]);
      await hand.page.getByRole('button', { name: 'US: oz' }).click();
      await hand.page.locator('#log-name', { hasText: 'fleet.xlsx' }).waitFor();
      await hand.settled();
      const words = await hand.text('notice');
      // The same log twice counts once, a torn one not at all.
      expect(words).toContain('52.3 oz in 42 sets');
      expect(words).toContain('repeated rows counted once');
      expect(words).toContain('torn.xlsx');
      expect(words).toContain('left out');
      await hand.page.locator('.over figure').first().waitFor();
      expect(await hand.page.locator('.over figure').count()).toBeGreaterThan(1);
      await hand.sheet('Units');
      await hand.goTo('A6');
      expect(await hand.page.locator('#cell-in-hand').innerText()).toBe('U-01');
      await hand.begin('Repair or replace U-01');
      await hand.page.locator('#log-name', { hasText: 'repair-or-replace-U-01.xlsx' }).waitFor();
      await hand.settled();
      expect(await hand.text('strip')).toContain('U-01');
      expect(await hand.text('notice')).not.toContain('--');
      expect(await hand.text('log-state')).toBe('new, not yet in a file');
    });
  });

  test('an estimate tells its answer while its assumptions are edited', async () => {
    await bench.withTab(async (hand) => {
      await hand.begin('Sample: repair or replace');
      expect(await hand.text('strip')).toContain('Too close to call');
      await hand.sheet('Assumptions');
      await hand.page.screenshot({ path: join(pictures, 'estimate.png') });
      const row = 7 + (await rowOf('repair price'));
      await hand.goTo(`B${row}`);
      await hand.type('90', 'Tab');
      await hand.type('80', 'Tab');
      await hand.type('100', 'Tab');
      // 90 is below what a repair is worth at most, 421.68 in the sample: then repair costs least a year, by its definition.
      expect(await hand.text('strip')).toContain('Repair asked 90');
      expect(await hand.text('strip')).toMatch(/leans to repair|U-02\s+Repair/);
      await hand.page.keyboard.press('Control+z');
      await hand.page.keyboard.press('Control+z');
      await hand.page.keyboard.press('Control+z');
      await hand.settled();
      expect(await hand.text('strip')).toContain('Too close to call');
    });
  });

  test('an empty estimate asks for what it lacks', async () => {
    await bench.withTab(async (hand) => {
      await hand.begin('Empty repair or replace');
      await hand.page.locator('#notice', { hasText: 'pick it on the sheet Unit' }).waitFor();
      await hand.settled();
      expect(await hand.text('strip')).toContain('No unit picked');
      expect(await hand.text('strip')).toContain('Cannot tell yet');
    });
  });

  async function rowOf(input: string): Promise<number> {
    const { workbook } = loadWorkbook(new Uint8Array(sample('repair-or-replace.xlsx')));
    const table = workbook.findTable('Assumptions');
    for (let row = table?.firstRow ?? 0; row <= (table?.lastRow ?? 0); row++) {
      if (table?.sheet.value(row, table.left) === input) return Promise.resolve(row - table.firstRow);
    }
    throw new Error(`the sample has no ${input}`);
  }
});
