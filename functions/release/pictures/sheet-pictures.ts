import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

interface SheetPicture {
  readonly name: string;
  readonly workbook: string;
  /** Words that stand on the printed page of this sheet and on no other. */
  readonly words: RegExp;
  /** Of the printed page, from its left upper corner [px at 84 dots per inch]. */
  readonly cut: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}

const dotsPerInch = 84;
const pictures: readonly SheetPicture[] = [
  {
    name: 'sheet-visit-card',
    workbook: 'visit-log.xlsx',
    words: /Customer: I have seen/,
    cut: { x: 50, y: 30, width: 620, height: 845 },
  },
  {
    name: 'sheet-fleet',
    workbook: 'fleet-summary.xlsx',
    words: /: the fleet[\s\S]*Call these first/,
    cut: { x: 30, y: 30, width: 660, height: 780 },
  },
  {
    name: 'sheet-result',
    workbook: 'repair-or-replace.xlsx',
    words: /The answer[\s\S]*The choices side by side/,
    cut: { x: 90, y: 30, width: 745, height: 645 },
  },
  {
    name: 'sheet-quote',
    workbook: 'repair-or-replace.xlsx',
    words: /What is wrong[\s\S]*Your choices/,
    cut: { x: 25, y: 30, width: 665, height: 715 },
  },
];

/** Printed sheets of the sample workbooks by LibreOffice. Needs `soffice`, `pdftotext` and `pdftoppm`. */
export function takeSheetPictures(samples: string, folder: string): void {
  const work = mkdtempSync(join(tmpdir(), 'ouncewise-pictures-'));
  try {
    const workbooks = [...new Set(pictures.map(({ workbook }) => workbook))];
    execFileSync('soffice', [
      `-env:UserInstallation=file://${join(work, 'profile')}`,
      ...['--headless', '--norestore', '--convert-to', 'pdf', '--outdir', work],
      ...workbooks.map((name) => join(samples, name)),
    ]);
    for (const { name, workbook, words, cut } of pictures) {
      const pdf = join(work, workbook.replace(/\.xlsx$/, '.pdf'));
      const printed = execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8' }).split('\f');
      const pages = printed.flatMap((text, index) => (words.test(text) ? [index + 1] : []));
      const [page] = pages;
      if (page === undefined || pages.length > 1)
        throw new Error(`${String(pages.length)} printed pages of ${workbook} read like ${String(words)}`);
      const { x, y, width, height } = cut;
      const area = ['-x', x, '-y', y, '-W', width, '-H', height];
      const sheet = ['-f', page, '-l', page, '-singlefile', '-r', dotsPerInch];
      execFileSync('pdftoppm', ['-png', ...[...sheet, ...area].map(String), pdf, join(folder, name)]);
    }
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}
