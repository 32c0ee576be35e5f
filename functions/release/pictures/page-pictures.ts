/// <reference lib="dom" />
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import { servePage } from '../../hosts/page/server/serve.ts';

const chromiumPath = process.env.OUNCEWISE_CHROMIUM ?? '/usr/bin/chromium';

/** Row of the sample log, counted from 1, in which its readings begin. */
const firstSetRow = 6;

/** The worksheet page as a reader sees it, with the sample workbooks. Put into `folder` as PNG. */
export async function takePagePictures(pageFolder: string, folder: string): Promise<void> {
  const { address, server } = await servePage({ folder: pageFolder, texts: {}, port: 0 });
  const browser = await chromium.launch({
    executablePath: chromiumPath,
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-sync'],
  });
  try {
    const context = await browser.newContext({ viewport: { width: 1180, height: 640 }, locale: 'en-US' });
    const page = await context.newPage();
    await page.goto(address);
    await page.locator('html[data-ready]').waitFor({ state: 'attached', timeout: 180_000 });
    const shoot = async (name: string): Promise<void> => {
      await settled(page);
      await page.screenshot({ path: join(folder, `${name}.png`) });
    };
    // A log opens as its last visit; the pictures are of its first one, in the table.
    await page.locator('#show-table').click();
    await page.locator('#grid').focus();
    await page.keyboard.press('Control+Home');
    for (let row = 1; row < firstSetRow; row++) await page.keyboard.press('ArrowDown');
    await shoot('page-clean-first');
    // The second set of the first visit: clean now, and an ounce may go in.
    await page.keyboard.press('ArrowDown');
    await shoot('page-next-step');
    await page.locator('#new').click();
    await page.getByRole('button', { name: 'Empty visit log' }).waitFor();
    await shoot('page-new');
    await page.getByRole('button', { name: /fleet summary$/i }).click();
    await page.locator('.over figure').first().waitFor({ timeout: 120_000 });
    await shoot('page-fleet');
  } finally {
    await browser.close();
    server.closeAllConnections();
    server.close();
  }
}

/** Until the worker has answered everything and the screen shows it. */
async function settled(page: Page): Promise<void> {
  for (let quiet = 0; quiet < 3; quiet++) {
    await page.waitForTimeout(150);
    await page.locator('html:not([data-busy=true])').waitFor({ state: 'attached', timeout: 180_000 });
  }
}
