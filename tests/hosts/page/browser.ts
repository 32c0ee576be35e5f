import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { catalogue } from '../../../functions/catalogue/index.ts';
import { emitGuide } from '../../../functions/handbook/function-guide/emit.ts';
import { servePage } from '../../../functions/hosts/page/server/serve.ts';
import type { PageServer } from '../../../functions/hosts/page/server/serve.ts';

const root = join(import.meta.dirname, '../../..');
export const pageFolder = join(root, '.cache/built', `page-${String(process.pid)}`);
export const pictures = join(root, '.cache/pictures');
const chromiumPath = '/usr/bin/chromium';

export function chromiumIsHere(): boolean {
  // On CI it has to be there: nothing is skipped in silence.
  return process.env.CI !== undefined || existsSync(chromiumPath);
}

/** The real page in a real browser: built with the project's own configuration, served as `npm start` serves it. */
export class PageBench {
  readonly browser: Browser;
  readonly served: PageServer;
  /** Every address any page asked for. */
  readonly asked: string[] = [];
  readonly complaints: string[] = [];

  private constructor(browser: Browser, served: PageServer) {
    this.browser = browser;
    this.served = served;
  }

  static async open(): Promise<PageBench> {
    mkdirSync(pageFolder, { recursive: true });
    mkdirSync(pictures, { recursive: true });
    const webpack = join(root, 'node_modules/webpack/bin/webpack.js');
    execFileSync(process.execPath, [webpack, '--config-name', 'page', '--output-path', pageFolder], {
      cwd: root,
      stdio: 'pipe',
    });
    const texts = Object.fromEntries(
      Object.entries(emitGuide(catalogue.all(), 'test')).map(([name, text]) => [`guide/${name}`, text]),
    );
    const served = await servePage({ folder: pageFolder, texts, port: 0 });
    const browser = await chromium.launch({
      executablePath: chromiumPath,
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    });
    return new PageBench(browser, served);
  }

  async context(options: BrowserContextOptions = {}): Promise<BrowserContext> {
    const context = await this.browser.newContext({ viewport: { width: 1366, height: 768 }, ...options });
    await context.grantPermissions(['clipboard-read', 'clipboard-write'], {
      origin: new URL(this.served.address).origin,
    });
    // Without the file pickers, which no test can press, the page saves and opens as in browsers that lack them.
    await context.addInitScript(() => {
      Reflect.deleteProperty(globalThis, 'showSaveFilePicker');
      Reflect.deleteProperty(globalThis, 'showOpenFilePicker');
    });
    context.on('request', (request) => this.asked.push(request.url()));
    return context;
  }

  /** A tab with the page, ready for work in the table; `view` "visit" leaves it at the visit that it begins with. */
  async tab(context: BrowserContext, view: 'table' | 'visit' = 'table'): Promise<PageHand> {
    const page = await context.newPage();
    page.on('pageerror', (error) => this.complaints.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') this.complaints.push(message.text());
    });
    const hand = new PageHand(page, view);
    await page.goto(this.served.address);
    await hand.ready();
    return hand;
  }

  /** Lets someone work in a tab of a fresh browser profile; the page must not have complained meanwhile. */
  async withTab(work: (hand: PageHand) => Promise<void>, view: 'table' | 'visit' = 'table'): Promise<void> {
    const context = await this.context();
    this.complaints.length = 0;
    try {
      await work(await this.tab(context, view));
    } finally {
      await context.close();
    }
    if (this.complaints.length > 0) throw new Error(`the page complained: ${this.complaints.join('; ')}`);
  }

  async close(): Promise<void> {
    await this.browser.close();
    this.served.server.closeAllConnections();
    this.served.server.close();
    rmSync(pageFolder, { recursive: true, force: true });
  }
}

/** What a person does on the page. */
export class PageHand {
  readonly page: Page;
  readonly view: 'table' | 'visit';

  constructor(page: Page, view: 'table' | 'visit' = 'table') {
    this.page = page;
    this.view = view;
  }

  /** A log opens as its last visit; work in the table begins in its first row. */
  async #atTable(): Promise<void> {
    if (this.view === 'visit') return;
    if ((await this.page.locator('html[data-mode=visit]').count()) === 0) return;
    await this.page.locator('#show-table').click();
    await this.settled();
    await this.goTo('A6');
  }

  async ready(): Promise<void> {
    await this.page.locator('html[data-ready]').waitFor({ state: 'attached', timeout: 120_000 });
    await this.settled();
    await this.#atTable();
  }

  /** Until the worker has answered everything and the screen shows it. */
  async settled(): Promise<void> {
    // Questions follow answers, such as the look after an edit: quiet twice in a row is quiet.
    for (let quiet = 0; quiet < 2; quiet++) {
      await this.page.waitForTimeout(50);
      await this.page.locator('html:not([data-busy=true])').waitFor({ state: 'attached', timeout: 120_000 });
    }
  }

  async sheet(name: string): Promise<void> {
    await this.page.locator(`#tabs button`, { hasText: new RegExp(`^${name}$`) }).click();
    await this.settled();
  }

  /** Goes to a cell by keyboard: to the first cell, then down and across. */
  async goTo(address: string): Promise<void> {
    const [, letters = 'A', digits = '1'] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
    let column = 0;
    for (const letter of letters) column = column * 26 + letter.charCodeAt(0) - 64;
    await this.page.locator('#grid').focus();
    await this.page.keyboard.press('Control+Home');
    for (let row = 1; row < Number(digits); row++) await this.page.keyboard.press('ArrowDown');
    for (let step = 1; step < column; step++) await this.page.keyboard.press('ArrowRight');
    await this.page.waitForFunction(
      (wanted) => document.getElementById('address')?.textContent === wanted,
      address,
    );
    await this.settled();
  }

  async type(text: string, end = 'Enter'): Promise<void> {
    await this.page.keyboard.type(text);
    await this.page.keyboard.press(end);
    await this.settled();
  }

  /** Presses keys one after the other. */
  async press(...keys: readonly string[]): Promise<void> {
    for (const key of keys) await this.page.keyboard.press(key);
    await this.settled();
  }

  /** Chooses what to work on from the menu of new logs. */
  async begin(name: string | RegExp): Promise<void> {
    await this.page.locator('#new').click();
    await this.page.getByRole('button', { name }).click();
    await this.settled();
    await this.#atTable();
  }

  async typedIn(address: string): Promise<string> {
    await this.goTo(address);
    return this.typed();
  }

  /** What the cell in hand holds, as it is typed. */
  typed(): Promise<string> {
    return this.page.locator('#formula').inputValue();
  }

  text(id: string): Promise<string> {
    return this.page.locator(`#${id}`).innerText();
  }

  /** What a gate of the strip says to those who listen. */
  gate(name: string): Promise<string> {
    return this.page.locator('#strip .gate', { hasText: name }).innerText();
  }

  async saved(): Promise<Uint8Array> {
    const waiting = this.page.waitForEvent('download');
    await this.page.keyboard.press('Control+s');
    const download = await waiting;
    const stream = await download.createReadStream();
    const pieces: Buffer[] = [];
    for await (const piece of stream) pieces.push(piece as Buffer);
    return new Uint8Array(Buffer.concat(pieces));
  }

  async openFile(name: string, bytes: Uint8Array): Promise<void> {
    await this.page.locator('#file').evaluate(() => undefined);
    const chooser = this.page.waitForEvent('filechooser');
    await this.page.locator('#open').click();
    await (
      await chooser
    ).setFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(bytes) });
    await this.settled();
    await this.#atTable();
  }
}
