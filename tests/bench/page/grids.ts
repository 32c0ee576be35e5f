/**
 * Prints size, start and edit times of the worksheet page beside two plain open grid libraries that calculate by
 * themselves, on one ledger that all of them can work out. `npm run bench -- grids`. The libraries are fetched from the
 * package registry into a cache folder; nothing of them is part of this project.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { cpus, loadavg } from 'node:os';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { buildXlsx } from '../../functions/workbook/build-xlsx.ts';
import { pageFolder, PageBench } from '../../hosts/page/browser.ts';
import { editTime } from './edit-time.ts';
import { cellsOfLedger } from './shared-ledger.ts';

const folder = join(import.meta.dirname, '../../../.cache/grids');
/** Versions measured; MIT. */
const libraries = ['jspreadsheet-ce@5.0.4', 'x-data-spreadsheet@1.1.9'];

interface Grid {
  readonly name: string;
  readonly scripts: readonly string[];
  readonly styles: readonly string[];
  /** Makes the grid from `cells`, rows of texts, and gives `edit(row, column, text)` and `shown(row, column)`. */
  readonly make: string;
}

const modules = 'node_modules';
const grids: readonly Grid[] = [
  {
    name: 'jspreadsheet-ce 5.0.4 with its formula engine',
    scripts: [
      `${modules}/jsuites/dist/jsuites.js`,
      `${modules}/@jspreadsheet/formula/dist/index.js`,
      `${modules}/jspreadsheet-ce/dist/index.js`,
    ],
    styles: [`${modules}/jsuites/dist/jsuites.css`, `${modules}/jspreadsheet-ce/dist/jspreadsheet.css`],
    make: `
      const [sheet] = jspreadsheet(document.getElementById('grid'), {
        worksheets: [{ data: cells, minDimensions: [10, cells.length], tableOverflow: true, tableHeight: '700px' }],
      });
      const name = (row, column) => String.fromCharCode(65 + column) + (row + 1);
      return {
        edit: (row, column, text) => sheet.setValue(name(row, column), text),
        shown: (row, column) => sheet.getValue(name(row, column), true),
      };`,
  },
  {
    name: 'x-data-spreadsheet 1.1.9 with its formula engine',
    scripts: [`${modules}/x-data-spreadsheet/dist/xspreadsheet.js`],
    styles: [`${modules}/x-data-spreadsheet/dist/xspreadsheet.css`],
    make: `
      const rows = { len: cells.length + 20 };
      cells.forEach((line, row) => {
        rows[row] = { cells: Object.fromEntries(line.map((text, column) => [column, { text: String(text) }])) };
      });
      const sheet = x_spreadsheet('#grid', { view: { height: () => 700, width: () => 1340 }, row: { len: rows.len, height: 25 } });
      sheet.loadData([{ name: 'Ledger', rows }]);
      return {
        edit: (row, column, text) => sheet.cellText(row, column, text).reRender(),
        // It paints on a canvas and works out what it paints; its own calculation gives the text.
        shown: undefined,
      };`,
  },
];

const say = (line: string): void => console.log(line);
const kibibytes = (files: readonly string[]): string => {
  const size = files.reduce((sum, file) => sum + gzipSync(readFileSync(file), { level: 9 }).length, 0);
  return `${(size / 1024).toFixed(0)} KiB gzip`;
};

mkdirSync(folder, { recursive: true });
if (!existsSync(join(folder, 'package.json')))
  writeFileSync(join(folder, 'package.json'), '{"private":true}');
execFileSync(
  'npm',
  ['install', '--no-audit', '--no-fund', '--ignore-scripts', '--no-package-lock', ...libraries],
  { cwd: folder, stdio: ['ignore', 'ignore', 'inherit'] },
);

const types: Readonly<Record<string, string>> = { '.js': 'text/javascript', '.css': 'text/css' };
const server = createServer((request, answer) => {
  const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
  const grid = grids[Number(path.slice(1))];
  if (/^\/\d$/.test(path) && grid !== undefined) {
    answer.setHeader('content-type', 'text/html');
    answer.end(
      `<!doctype html><meta charset="utf-8">${grid.styles.map((file) => `<link rel="stylesheet" href="/${file}">`).join('')}${grid.scripts.map((file) => `<script src="/${file}"></script>`).join('')}<div id="grid"></div>`,
    );
    return;
  }
  const file = join(folder, path);
  const isThere = file.startsWith(join(folder, modules)) && existsSync(file);
  answer.statusCode = isThere ? 200 : 404;
  answer.setHeader('content-type', types[extname(path)] ?? 'application/octet-stream');
  answer.end(isThere ? readFileSync(file) : '');
});
await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;

const bench = await PageBench.open();
say(`${cpus().length} processors, load ${loadavg()[0]?.toFixed(1)}; times in ms, three edits each`);
const list = (times: readonly number[]): string => times.map((time) => time.toFixed(0)).join(', ');
const edited = ['120', '121', '122'];

const own = ['index.html', 'page.css', 'page.js', 'worker.js', 'offline.js', 'icon.svg'];
say(
  `\nOuncewise page: ${kibibytes(own.map((name) => join(pageFolder, name)))} (76 functions of ours included)`,
);
for (const rows of [1_000, 10_000]) {
  const lines = cellsOfLedger(rows);
  const cells = Object.fromEntries(
    lines.flatMap((line, row) =>
      line.map((cell, column) => [`${String.fromCharCode(65 + column)}${row + 1}`, cell] as const),
    ),
  );
  const bytes = buildXlsx({ sheets: [{ name: 'Ledger', cells }] });
  const context = await bench.context();
  const hand = await bench.tab(context);
  const began = performance.now();
  await hand.openFile('ledger.xlsx', bytes);
  await hand.page.locator('#log-name', { hasText: 'ledger.xlsx' }).waitFor();
  await hand.settled();
  const ready = performance.now() - began;
  await hand.goTo('C3');
  const times: number[] = [];
  for (const text of edited) times.push(await editTime(hand, text));
  await hand.goTo('J1');
  const total = await hand.page.locator('#cell-in-hand').innerText();
  say(
    `  ${rows} rows: ready ${ready.toFixed(0)} (file read included), edit to repaint ${list(times)}; total ${total}`,
  );
  await context.close();
}

for (const [index, grid] of grids.entries()) {
  say(`\n${grid.name}: ${kibibytes([...grid.scripts, ...grid.styles].map((file) => join(folder, file)))}`);
  for (const rows of [1_000, 10_000]) {
    const context = await bench.browser.newContext({ viewport: { width: 1366, height: 768 } });
    const page = await context.newPage();
    page.setDefaultTimeout(240_000);
    // The loader of this script marks functions with their names by this helper.
    await page.addInitScript('globalThis.__name = (one) => one');
    try {
      await page.goto(`${address}/${index}`);
      const work = page.evaluate(
        async ({ cells, make, texts }) => {
          const painted = (): Promise<void> =>
            new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
          interface Made {
            edit(row: number, column: number, text: string): void;
            shown?: (row: number, column: number) => string | number;
          }
          // eslint-disable-next-line @typescript-eslint/no-implied-eval -- the libraries' pages are written here as text
          const build = new Function('cells', make) as (rows: unknown) => Made;
          let began = performance.now();
          const made = build(cells);
          await painted();
          const ready = performance.now() - began;
          const times: number[] = [];
          for (const text of texts) {
            began = performance.now();
            made.edit(2, 2, text);
            await painted();
            times.push(performance.now() - began);
          }
          return { ready, times, total: String(made.shown?.(0, 9) ?? 'painted, not told') };
        },
        { cells: cellsOfLedger(rows), make: grid.make, texts: edited },
      );
      const patience = new Promise<undefined>((resolve) =>
        setTimeout(() => resolve(undefined), 240_000).unref(),
      );
      const result = await Promise.race([work, patience]);
      if (result === undefined) say(`  ${rows} rows: not ready after 240 s`);
      else {
        say(
          `  ${rows} rows: ready ${result.ready.toFixed(0)}, edit to repaint ${list(result.times)}; total ${result.total}`,
        );
      }
    } catch (problem) {
      say(`  ${rows} rows: ${String(problem).split('\n')[0] ?? ''}`);
    }
    await context.close();
  }
}
await bench.close();
server.closeAllConnections();
server.close();
process.exit();
