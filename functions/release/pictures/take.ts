import { mkdirSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { takePagePictures } from './page-pictures.ts';
import { takeSheetPictures } from './sheet-pictures.ts';

/** `npm run pictures`: the pictures of the guides, from the page in Chromium and from the workbooks in LibreOffice. */
const root = join(import.meta.dirname, '../../..');
const folder = join(root, 'manifest/guides/pictures');
mkdirSync(folder, { recursive: true });
const [only] = process.argv.slice(2);
if (only !== 'page') takeSheetPictures(join(root, 'sample-workbooks'), folder);
if (only !== 'sheets') await takePagePictures(join(root, 'dist/page'), folder);
let total = 0;
for (const name of readdirSync(folder)) {
  const { size } = statSync(join(folder, name));
  total += size;
  console.log(`${String(Math.ceil(size / 1024)).padStart(5)} KB  ${name}`);
}
console.log(`${String(Math.ceil(total / 1024)).padStart(5)} KB in all`);
