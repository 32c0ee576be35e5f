import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { parseAddress } from '../../functions/workbook/model/address.ts';
import { CellError } from '../../functions/workbook/model/values.ts';
import { loadWorkbook } from '../../functions/workbook/file/load-workbook.ts';
import { buildXlsx } from '../functions/workbook/build-xlsx.ts';
import { closeLibreOffice, libreOfficeIsHere, recalcInLibreOffice } from './libreoffice.ts';
import { chromiumIsHere, PageBench, PageHand, pictures } from './page/browser.ts';

/** Expected words are those of the sample log's own columns; what a change must do follows from the gates' definition. */
describe.skipIf(!chromiumIsHere())('the worksheet page in Chromium', () => {
  let bench: PageBench;
  beforeAll(async () => {
    bench = await PageBench.open();
  });
  afterAll(async () => {
    await bench.close();
    await closeLibreOffice();
  });

  test('first start shows the sample log and its first verdict', async () => {
    await bench.withTab(async (hand) => {
      expect(await hand.text('strip')).toContain('Clean first');
      expect(await hand.gate('Air')).toContain('stop');
      expect(await hand.text('log-state')).toBe('sample, unchanged');
      await hand.page.screenshot({ path: join(pictures, 'start.png') });
    });
    const origin = new URL(bench.served.address).origin;
    expect(
      bench.asked.filter((address) => !address.startsWith(origin) && !address.startsWith('blob:')),
    ).toEqual([]);
  });

  test('an empty log, a unit of one\u2019s own and its first readings lead to a verdict, in US units and in SI', async () => {
    await bench.withTab(async (hand) => {
      await hand.begin('Empty visit log');
      await hand.page.locator('#notice', { hasText: 'Nothing of the sample is left' }).waitFor();
      await hand.settled();
      await hand.sheet('Units');
      expect(await hand.typed()).toBe('');
      await hand.type('MY-1');
      const put = async (cells: Readonly<Record<string, string>>): Promise<void> => {
        for (const [address, text] of Object.entries(cells)) {
          await hand.goTo(address);
          await hand.type(text, 'Tab');
        }
      };
      await put({ H6: 'R-410A', I6: '14', M6: '115' });
      await hand.sheet('Readings');
      await hand.goTo('B6');
      await hand.type('MY-1', 'Tab');
      await put({
        I6: '20',
        P6: 'blocked',
        Q6: 'clean',
        R6: 'clean',
        S6: 'clean',
        T6: 'clean',
        U6: 'none',
        V6: 'running',
      });
      await put({ Y6: '115', AI6: '88' });
      expect(await hand.text('strip')).toContain('Clean first');
      expect(await hand.gate('Supply')).toContain('ok');
      await put({ P6: 'clean' });
      await hand.goTo('AH6');
      expect(await hand.page.locator('#cell-in-hand').innerText()).toMatch(/^Ready/);
      // 88 read as degC is a hot day all the same; 10 degC is below the 55 degF (12.8 degC) of the weather gate.
      await hand.sheet('Settings');
      await put({ B8: 'SI' });
      await hand.sheet('Readings');
      await put({ AI6: '10' });
      expect(await hand.gate('Weather')).not.toContain('ok');
    });
  });

  test('an edit opens the gate, undo closes it again, redo opens it', async () => {
    await bench.withTab(async (hand) => {
      await hand.goTo('P6');
      await hand.type('clean', 'Tab');
      expect(await hand.gate('Air')).toContain('ok');
      expect(await hand.text('strip')).not.toContain('Clean first');
      expect(await hand.text('log-state')).toContain('kept in this browser');
      await hand.page.keyboard.press('Control+z');
      await hand.settled();
      expect(await hand.gate('Air')).toContain('stop');
      await hand.page.keyboard.press('Control+y');
      await hand.settled();
      expect(await hand.gate('Air')).toContain('ok');
    });
  });

  test('an entry that the cell does not take is refused in words and can be put right', async () => {
    await bench.withTab(async (hand) => {
      await hand.goTo('P6');
      await hand.type('sparkling');
      expect(await hand.text('notice')).toContain('One of: clean, dirty, blocked, not seen');
      await hand.page.keyboard.press('Escape');
      await hand.settled();
      expect(await hand.typed()).toBe('dirty');
    });
  });

  test('a choice is picked from the list by keyboard', async () => {
    await bench.withTab(async (hand) => {
      await hand.goTo('P6');
      await hand.page.keyboard.press('Alt+ArrowDown');
      expect(await hand.page.locator('#suggestion-list [role=option]').allInnerTexts()).toEqual([
        'clean',
        'dirty',
        'blocked',
        'not seen',
      ]);
      await hand.page.keyboard.press('ArrowUp');
      await hand.page.keyboard.press('Enter');
      await hand.settled();
      expect(await hand.gate('Air')).toContain('ok');
    });
  });

  test('tab-separated text is pasted, copied and filled down', async () => {
    await bench.withTab(async (hand) => {
      await hand.goTo('AI6');
      await hand.page.evaluate(() => navigator.clipboard.writeText('91\t79.5\n92\t"78"\n'));
      await hand.page.keyboard.press('Control+v');
      await hand.settled();
      await hand.goTo('AJ7');
      expect(await hand.typed()).toBe('78');
      await hand.goTo('AI6');
      await hand.page.keyboard.press('Shift+ArrowRight');
      await hand.settled();
      await hand.page.keyboard.press('Control+c');
      expect(await hand.page.evaluate(() => navigator.clipboard.readText())).toBe('91.0\t79.5');
      await hand.page.keyboard.press('Shift+ArrowDown');
      await hand.settled();
      await hand.page.keyboard.press('Control+d');
      await hand.settled();
      await hand.goTo('AJ7');
      expect(await hand.typed()).toBe('79.5');
    });
  });

  test('a formula is completed, explained, worked out, and its error told beside the cell', async () => {
    await bench.withTab(async (hand) => {
      await hand.sheet('Start here');
      await hand.goTo('D5');
      await hand.page.keyboard.type('=SATTE');
      await hand.page.locator('#suggestion-list [role=option]').first().waitFor();
      await hand.page.keyboard.press('Tab');
      await hand.page.keyboard.type('"R-410A",');
      expect(await hand.page.locator('.argument-help').innerText()).toContain('pressure');
      await hand.type('118)');
      await hand.goTo('D5');
      // ASHRAE Handbook Fundamentals, R-410A at 40 degF: 118 psig, from memory.
      expect(Number(await hand.page.locator('#cell-in-hand').innerText())).toBeCloseTo(40, 0);
      await hand.type('=OUNCE.SATTEMP("R-999",118)');
      await hand.goTo('D5');
      expect(await hand.text('about')).toContain('#VALUE!');
      expect(await hand.text('bubble')).toContain('R-999');
      await hand.page.screenshot({ path: join(pictures, 'error.png') });
    });
  });

  test('a row is added in the middle of the table', async () => {
    await bench.withTab(async (hand) => {
      await hand.goTo('B7');
      await hand.page.locator('#add-row').click();
      await hand.settled();
      expect(await hand.typed()).toBe('');
      await hand.goTo('B8');
      expect(await hand.typed()).toBe('U-01');
    });
  });

  test.skipIf(!libreOfficeIsHere())('a saved log has the same values in LibreOffice', async () => {
    await bench.withTab(async (hand) => {
      await hand.goTo('P6');
      await hand.type('clean');
      await hand.goTo('DP6');
      await hand.type('<b>&"quoted"</b> 3/8"');
      await hand.sheet('Start here');
      await hand.goTo('D5');
      await hand.type('=OUNCE.SATTEMP("R-410A",118)+1');
      const bytes = await hand.saved();
      await hand.page.locator('#notice', { hasText: 'Saved' }).waitFor();
      const { workbook } = loadWorkbook(bytes);
      const theirs = await recalcInLibreOffice(bytes);
      const differences: string[] = [];
      let compared = 0;
      for (const sheet of workbook.sheets) {
        for (const [address, cell] of Object.entries(theirs[sheet.name] ?? {})) {
          const place = parseAddress(address);
          if (place === undefined || cell.value === undefined) continue;
          const ours = sheet.value(place.row, place.column);
          if (ours instanceof CellError || typeof ours === 'boolean') continue;
          compared++;
          const isSame =
            typeof ours === 'number' && typeof cell.value === 'number'
              ? Math.abs(ours - cell.value) <= 1e-9 * Math.max(1, Math.abs(ours))
              : (ours ?? '') === cell.value;
          if (!isSame) differences.push(`${sheet.name}!${address}: ${String(ours)} and ${cell.value}`);
        }
      }
      expect(compared).toBeGreaterThan(2000);
      expect(differences).toEqual([]);
      const readings = workbook.findSheet('Readings');
      expect(readings?.value(5, 15)).toBe('clean');
      expect(readings?.value(5, 119)).toBe('<b>&"quoted"</b> 3/8"');
    });
  });

  test('a reload, with and without a network, brings back the log with its changes', async () => {
    const context = await bench.context();
    const hand = await bench.tab(context);
    await hand.goTo('P6');
    await hand.type('clean');
    await hand.page.reload();
    await hand.ready();
    expect(await hand.gate('Air')).toContain('ok');
    await hand.page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await context.setOffline(true);
    await hand.page.reload();
    await hand.ready();
    expect(await hand.gate('Air')).toContain('ok');
    expect(await hand.page.title()).toContain('Ouncewise');
    await context.close();
  });

  test('changes of a tab that is gone are offered, and a log is open in one tab only', async () => {
    const context = await bench.context();
    const first = await bench.tab(context);
    await first.goTo('P6');
    await first.type('clean');
    const id = await first.page.evaluate(() => sessionStorage.getItem('ouncewise-open-log'));
    // A duplicated tab begins with a copy of the first one's session.
    const second = await context.newPage();
    await second.addInitScript((known) => {
      if (sessionStorage.length === 0) sessionStorage.setItem('ouncewise-open-log', known ?? '');
    }, id);
    await second.goto(bench.served.address);
    const said = second.locator('#notice', { hasText: 'open in another tab' });
    await said.waitFor();
    // It is still there once the sample is, which this tab begins with.
    await second.locator('.gate', { hasText: 'Air' }).waitFor();
    await new PageHand(second).settled();
    expect(await said.isVisible()).toBe(true);
    await second.close();
    await first.page.close();
    const third = await bench.tab(context);
    expect(await third.gate('Air')).toContain('stop');
    await third.page.getByRole('button', { name: 'Go on with it' }).click();
    await third.page.locator('.gate', { hasText: 'Air' }).filter({ hasText: 'ok' }).waitFor();
    await context.close();
  });

  test('everything by keyboard: out of the sheet, to the tabs, back, and a verdict read aloud', async () => {
    await bench.withTab(async (hand) => {
      await hand.page.locator('#grid').focus();
      await hand.page.keyboard.press('F6');
      expect(await hand.page.evaluate(() => document.activeElement?.id)).toBe('new');
      await hand.page.keyboard.press('F6');
      expect(await hand.page.evaluate(() => document.activeElement?.id)).toBe('formula');
      await hand.page.keyboard.press('F6');
      await hand.page.keyboard.press('ArrowRight');
      await hand.settled();
      expect(await hand.page.locator('#tabs [aria-selected=true]').innerText()).toBe('Answers');
      await hand.page.keyboard.press('ArrowLeft');
      await hand.settled();
      await hand.page.keyboard.press('F6');
      expect(await hand.page.evaluate(() => document.activeElement?.id)).toBe('grid');
      await hand.goTo('P6');
      await hand.type('clean', 'Tab');
      expect(await hand.page.locator('#spoken').innerText()).toContain('next:');
      const name = await hand.page.locator('#cell-in-hand').getAttribute('aria-label');
      expect(name).toBe('Q6, Indoor coil, clean');
    });
  });

  test('axe finds nothing serious, with lists, charts and messages open', async () => {
    const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
    await bench.withTab(async (hand) => {
      await hand.page.locator('#show-charts').click();
      await hand.page.locator('#show-cautions').click();
      await hand.goTo('P6');
      await hand.page.keyboard.press('Alt+ArrowDown');
      await hand.page.screenshot({ path: join(pictures, 'panels.png') });
      await hand.page.evaluate(axe);
      const found = await hand.page.evaluate(async () => {
        const { axe: runner } = globalThis as unknown as {
          axe: {
            run(): Promise<{ violations: { id: string; impact: string; nodes: { html: string }[] }[] }>;
          };
        };
        return (await runner.run()).violations.map(
          ({ id, impact, nodes }) => `${impact} ${id}: ${nodes[0]?.html ?? ''}`,
        );
      });
      expect(found.filter((line) => /^(?:serious|critical)/.test(line))).toEqual([]);
    });
  });

  test('a narrow screen has the strip, the sheet and nothing beside the edge', async () => {
    const context = await bench.context({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    const hand = await bench.tab(context);
    const width = await hand.page.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(390);
    const grid = await hand.page.locator('#grid').boundingBox();
    expect(grid?.height).toBeGreaterThan(280);
    expect(await hand.text('strip')).toContain('Clean first');
    await hand.page.screenshot({ path: join(pictures, 'narrow.png') });
    await context.close();
  });

  test('the visit card is laid out for paper, without the columns beside it', async () => {
    await bench.withTab(async (hand) => {
      await hand.page.evaluate(() => (globalThis.print = () => undefined));
      await hand.page.locator('#print').click();
      await hand.page.locator('#paper table').waitFor({ state: 'attached' });
      await hand.page.emulateMedia({ media: 'print' });
      const paper = await hand.text('paper');
      expect(paper).toContain('Visit card');
      expect(paper).toContain('Before and after');
      expect(paper).not.toContain('row of the log');
      expect(await hand.page.locator('header').isVisible()).toBe(false);
      await hand.page.screenshot({ path: join(pictures, 'paper.png') });
      await hand.page.emulateMedia({ media: 'screen' });
    });
  });

  test('text in cells stays text, and circles and broken files end in a message', async () => {
    const html = '<img src=x onerror="document.title=1"><script>document.title=2</script>';
    const book = buildXlsx({
      sheets: [{ name: 'Odd', cells: { A1: html, A2: '=A3+1', A3: '=A2+1', B1: 5, B2: '=B1*2' } }],
    });
    await bench.withTab(async (hand) => {
      const before = await hand.page.title();
      await hand.openFile('odd.xlsx', book);
      await hand.page.locator('#notice', { hasText: 'wait for each other' }).waitFor();
      expect(await hand.page.locator('#grid img, #grid script').count()).toBe(0);
      expect(await hand.page.locator('.cell', { hasText: '<img src=x' }).count()).toBe(1);
      expect(await hand.page.title()).toBe(before);
      await hand.openFile('broken.xlsx', book.slice(0, 300));
      await hand.page.locator('#notice', { hasText: 'broken.xlsx was not opened' }).waitFor();
      await hand.openFile('words.xlsx', new TextEncoder().encode('no workbook at all'));
      await hand.page.locator('#notice', { hasText: 'the file is no workbook' }).waitFor();
      // The log that was open is still there.
      expect(await hand.text('log-name')).toBe('odd.xlsx');
    });
  });
});
