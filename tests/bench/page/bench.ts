/** Prints how large and how quick the worksheet page is in headless Chromium. `npm run bench -- page`. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { pageFolder, PageBench } from '../../hosts/page/browser.ts';
import { editTime } from './edit-time.ts';
import { plainLedger, wholeLog } from './logs.ts';

const bench = await PageBench.open();
const say = (line: string): void => console.log(line);

const first = [
  'index.html',
  'page.css',
  'page.js',
  'worker.js',
  'offline.js',
  'icon.svg',
  'samples/visit-log.xlsx',
];
const sizes = first.map((name) => gzipSync(readFileSync(join(pageFolder, name)), { level: 9 }).length);
say(
  `first load, gzip: ${(sizes.reduce((sum, size) => sum + size, 0) / 1024).toFixed(0)} KiB in ${first.length} files`,
);
say(first.map((name, index) => `  ${name} ${((sizes[index] ?? 0) / 1024).toFixed(1)} KiB`).join('\n'));
say(`  (all files of the build: ${readdirSync(pageFolder).length})`);

for (let run = 0; run < 3; run++) {
  const context = await bench.context();
  const page = await context.newPage();
  const began = performance.now();
  await page.goto(bench.served.address);
  await page.locator('.cell .words').first().waitFor();
  const seen = performance.now() - began;
  await page.locator('html[data-ready]').waitFor({ state: 'attached', timeout: 120_000 });
  say(
    `start ${run + 1}: first cells ${seen.toFixed(0)} ms, all formulas worked out ${(performance.now() - began).toFixed(0)} ms`,
  );
  await context.close();
}

async function measure(
  name: string,
  bytes: Uint8Array,
  cells: Record<string, readonly string[]>,
): Promise<void> {
  const context = await bench.context();
  const hand = await bench.tab(context);
  const began = performance.now();
  await hand.openFile('big.xlsx', bytes);
  await hand.settled();
  say(
    `${name}, ${(bytes.length / 2 ** 20).toFixed(1)} MiB: opened and worked out in ${((performance.now() - began) / 1000).toFixed(1)} s; ${await hand.text('notice')}`,
  );
  for (const [address, texts] of Object.entries(cells)) {
    await hand.goTo(address);
    const times: number[] = [];
    for (const text of texts) times.push(await editTime(hand, text));
    say(`  edit ${address}: ${times.map((time) => time.toFixed(0)).join(', ')} ms to repaint`);
  }
  const scrolled = await hand.page.evaluate(async () => {
    const grid = document.getElementById('grid') as HTMLElement;
    const began = performance.now();
    for (let step = 1; step <= 40; step++) {
      grid.scrollTop += 300;
      await new Promise((resolve) => requestAnimationFrame(resolve));
    }
    return (performance.now() - began) / 40;
  });
  say(`  scrolling: ${scrolled.toFixed(0)} ms a frame`);
  await context.close();
}

await measure('plain ledger, 1,000 rows', plainLedger(1000), {
  C3: ['120', '121', '122'],
  G3: ['3', '4', '5'],
});
await measure('plain ledger, 10,000 rows', plainLedger(10_000), {
  C3: ['120', '121', '122'],
  G3: ['3', '4', '5'],
});
await measure('whole log, 1,000 rows', wholeLog(1000), {
  O6: ['dirty', 'clean', 'dirty', 'clean'],
  AH6: ['88', '89', '90'],
});
await bench.close();
