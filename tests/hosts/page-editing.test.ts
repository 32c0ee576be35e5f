import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadWorkbook } from '../../functions/workbook/file/load-workbook.ts';
import { readSheetLayout } from '../../functions/workbook/file/sheet-layout.ts';
import { chromiumIsHere, PageBench, pictures } from './page/browser.ts';
import { hostileBooks, oddBooks } from './page/hostile-books.ts';

/** Expected cells are those of the sample log; what a change must do follows from its name. */
describe.skipIf(!chromiumIsHere())('rows, widths, dates and hostile files on the page', () => {
  let bench: PageBench;
  beforeAll(async () => {
    bench = await PageBench.open();
  });
  afterAll(() => bench.close());

  test('rows are put in from the menu and taken out by keyboard, and undo brings them back', async () => {
    await bench.withTab(async (hand) => {
      await hand.goTo('E7');
      await hand.press('Shift+F10');
      await hand.page.screenshot({ path: join(pictures, 'menu.png') });
      await hand.press('Enter');
      expect(await hand.typedIn('E7')).toBe('');
      expect(await hand.typedIn('E8')).toBe('after cleaning');
      await hand.press('Control+z');
      expect(await hand.typedIn('E7')).toBe('after cleaning');
      await hand.press('Shift+Space', 'Shift+ArrowDown', 'Control+-');
      expect(await hand.text('notice')).toContain('2 rows were deleted');
      expect(await hand.typedIn('E7')).toBe('after step 2');
      // The computed answer of the row moved up with its readings.
      expect(await hand.page.locator('#strip .next').innerText()).toContain('after step 2');
      await hand.press('Control+z');
      expect(await hand.typedIn('E7')).toBe('after cleaning');
      await hand.press('Shift+ArrowRight', 'Delete');
      expect(await hand.typedIn('E7')).toBe('');
      await hand.press('Control+z');
      expect(await hand.typedIn('E7')).toBe('after cleaning');
    });
  });

  test('a column is sized by its edge and by keyboard; the width is kept and saved', async () => {
    await bench.withTab(async (hand) => {
      const head = hand.page.locator('.head[data-column="4"]').first();
      const width = async (): Promise<number> => (await head.boundingBox())?.width ?? 0;
      const before = await width();
      const box = await head.boundingBox();
      if (box === null) throw new Error('the heading is not in sight');
      await hand.page.mouse.move(box.x + box.width - 2, box.y + 8);
      await hand.page.mouse.down();
      await hand.page.mouse.move(box.x + box.width + 58, box.y + 8, { steps: 3 });
      await hand.page.mouse.up();
      await hand.settled();
      expect(Math.abs((await width()) - before - 60)).toBeLessThanOrEqual(1);
      await hand.goTo('E7');
      await hand.press('Alt+Shift+ArrowLeft');
      expect(Math.abs((await width()) - before - 50)).toBeLessThanOrEqual(1);
      await hand.press('Control+z', 'Control+z');
      expect(await width()).toBe(before);
      await hand.press('Control+y');
      await hand.page.reload();
      await hand.ready();
      expect(Math.abs((await width()) - before - 60)).toBeLessThanOrEqual(1);
      const { sheets } = loadWorkbook(await hand.saved());
      const part = sheets.find(({ sheet }) => sheet.name === 'Readings');
      // 7.4 pixels a character and 5 of padding, as the page shows widths.
      const characters = readSheetLayout(part?.text ?? '', '').columnWidths.get(4) ?? 0;
      expect(Math.abs(characters * 7.4 + 5 - before - 60)).toBeLessThanOrEqual(2);
      const wide = await head.boundingBox();
      if (wide === null) throw new Error('the heading is not in sight');
      await hand.page.mouse.dblclick(wide.x + wide.width - 2, wide.y + 8);
      await hand.settled();
      expect(await width()).toBeLessThan(before + 40);
    });
  });

  test('a typed date shows as one, and is one in the saved file', async () => {
    await bench.withTab(async (hand) => {
      await hand.sheet('Start here');
      await hand.goTo('D5');
      for (const text of ['2026-11-25', '03/04/2026', '25/11/2026', '15%', '13:45']) await hand.type(text);
      const shown: string[] = [];
      for (const row of [5, 6, 7, 8, 9]) {
        await hand.goTo(`D${row}`);
        shown.push(await hand.page.locator('#cell-in-hand').innerText());
      }
      // The sample is written in US units: the month stands first, and 25/11/2026 has no such month.
      expect(shown).toEqual(['2026-11-25', '2026-03-04', '25/11/2026', '15%', '13:45']);
      expect(await hand.typed()).toBe('13:45');
      const bytes = await hand.saved();
      const { workbook } = loadWorkbook(bytes);
      // Serial 46351 is 2026-11-25: days from 1899-12-30, definition of the 1900 date system.
      expect(workbook.findSheet('Start here')?.value(4, 3)).toBe(46_351);
      await hand.openFile('dates.xlsx', bytes);
      await hand.page.locator('#log-name', { hasText: 'dates.xlsx' }).waitFor();
      await hand.sheet('Start here');
      await hand.goTo('D5');
      expect(await hand.page.locator('#cell-in-hand').innerText()).toBe('2026-11-25');
      await hand.sheet('Settings');
      await hand.goTo('B8');
      await hand.type('SI');
      await hand.sheet('Start here');
      await hand.goTo('D6');
      await hand.type('03/04/2026');
      await hand.goTo('D6');
      expect(await hand.page.locator('#cell-in-hand').innerText()).toBe('2026-04-03');
    });
  });

  test('the list of choices stands below its cell, the card fits a page, and a change of units is told', async () => {
    await bench.withTab(async (hand) => {
      await hand.goTo('P6');
      await hand.press('Alt+ArrowDown');
      const field = await hand.page.locator('.cell-editor').boundingBox();
      const list = await hand.page.locator('#suggestions').boundingBox();
      expect(Math.abs((list?.x ?? 0) - (field?.x ?? -99))).toBeLessThanOrEqual(2);
      await hand.press('Escape', 'Escape');
      await hand.page.evaluate(() => (globalThis.print = () => undefined));
      await hand.page.locator('#print').click();
      await hand.page.locator('#paper table').waitFor({ state: 'attached' });
      for (const format of ['Letter', 'A4']) {
        const pages = (await hand.page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b/g);
        expect(pages?.length, format).toBe(1);
      }
      await hand.sheet('Settings');
      await hand.goTo('B8');
      await hand.type('SI');
      expect(await hand.text('notice')).toContain('read as SI from now on, and are not converted');
      await hand.sheet('Readings');
      // 88 degC is beyond what outdoor air may be: the strip says so in words, not by a code.
      expect(await hand.text('strip')).toContain('Read again');
      expect(await hand.text('strip')).toContain('88.0 degC is above');
    });
  });

  test('hostile files end in a message and leave the open log as it was', async () => {
    const words: Readonly<Record<string, RegExp>> = {
      'zip bomb': /would unpack to \d+ times its size/,
      'more cells than a page holds': /has more cells than this program accepts/,
      'entity expansion': /declares a document type/,
    };
    await bench.withTab(async (hand) => {
      for (const [name, reason] of Object.entries(words)) {
        await hand.openFile(`${name}.xlsx`, hostileBooks[name]?.() ?? new Uint8Array());
        await hand.page
          .locator('#notice', { hasText: `${name}.xlsx was not opened` })
          .waitFor({ timeout: 120_000 });
        expect(await hand.text('notice')).toMatch(reason);
        expect(await hand.text('log-name')).toBe('visit-log.xlsx');
      }
      await hand.goTo('P6');
      await hand.type('clean', 'Tab');
      expect(await hand.gate('Air')).toContain('ok');
    });
  });

  test('odd files open, and the page goes on working in them', async () => {
    await bench.withTab(async (hand) => {
      const title = await hand.page.title();
      for (const [name, make] of Object.entries(oddBooks)) {
        await hand.openFile(`${name}.xlsx`, make());
        await hand.page.waitForFunction(
          (wanted) => document.getElementById('log-name')?.textContent === wanted,
          `${name}.xlsx`,
          { timeout: 120_000 },
        );
        await hand.settled();
        await hand.press('Control+a', 'Delete');
        await hand.goTo('D4');
        await hand.type('=20+22');
        await hand.goTo('D4');
        expect(await hand.page.locator('#cell-in-hand').innerText(), name).toBe('42');
      }
      expect(await hand.page.title()).toContain('Ouncewise');
      expect(title).toContain('Ouncewise');
    });
  });
});
