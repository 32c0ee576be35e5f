import { strToU8, unzipSync, Zip, ZipDeflate, zipSync } from 'fflate';
import { buildXlsx } from '../../functions/workbook/build-xlsx.ts';

const start = '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>';
const end = '</sheetData></worksheet>';

function withSheet(xml: string): Uint8Array {
  return buildXlsx({ sheets: [{ name: 'S', xml }] });
}

/** A workbook of a few kilobytes whose sheet unpacks to 400 MB of blanks. */
function zipBomb(): Uint8Array {
  const parts = unzipSync(withSheet(start + end));
  const pieces: Uint8Array[] = [];
  const zip = new Zip((problem, piece) => {
    if (problem !== null) throw problem;
    pieces.push(piece);
  });
  const blanks = new Uint8Array(4 * 2 ** 20).fill(32);
  for (const [name, bytes] of Object.entries(parts)) {
    const file = new ZipDeflate(name, { level: 9 });
    zip.add(file);
    const isSheet = name.startsWith('xl/worksheets/');
    if (isSheet) for (let count = 0; count < 100; count++) file.push(blanks);
    file.push(bytes, true);
  }
  zip.end();
  return new Uint8Array(Buffer.concat(pieces));
}

function cells(rows: number, columns: number): Uint8Array {
  const row = `<row>${'<c><v>1</v></c>'.repeat(columns)}</row>`;
  return withSheet(start + row.repeat(rows) + end);
}

/** As `cells`, with figures that do not repeat, as a long log has them. */
function figures(rows: number, columns: number): Uint8Array {
  const row = (number: number): string =>
    `<row>${Array.from({ length: columns }, (_, column) => `<c><v>${(number * 7919 + column * 104_729) % 99_991}</v></c>`).join('')}</row>`;
  return withSheet(start + Array.from({ length: rows }, (_, number) => row(number)).join('') + end);
}

/** A workbook with another file in its zip under a name that leads out of it. */
function withPath(name: string): Uint8Array {
  const parts = unzipSync(buildXlsx({ sheets: [{ name: 'S', cells: { A1: 'inside' } }] }));
  return zipSync({ ...parts, [name]: strToU8('outside') });
}

const bombEntities = [...'abcdefghij']
  .map((name, index, all) => `<!ENTITY ${name} "${index === 0 ? 'ha' : `&${all[index - 1]};`.repeat(10)}">`)
  .join('');

export const hostileBooks: Readonly<Record<string, () => Uint8Array>> = {
  'zip bomb': zipBomb,
  'more cells than a page holds': () => figures(4_100, 1_000),
  'entity expansion': () =>
    withSheet(`<!DOCTYPE w [${bombEntities}]>${start}<row><c t="str"><v>&j;</v></c></row>${end}`),
  'deep XML': () => withSheet(`${start}${'<x>'.repeat(200_000)}${'</x>'.repeat(200_000)}${end}`),
};

/** Odd, but workbooks: the page shows them and says what is wrong. */
export const oddBooks: Readonly<Record<string, () => Uint8Array>> = {
  'a million cells': () => cells(1_000, 1_000),
  'cells in the last corner': () =>
    buildXlsx({ sheets: [{ name: 'S', cells: { A1: 'corner', XFD1048576: 1, B2: '=SUM(A:XFD)' } }] }),
  'path names': () => withPath('../../../../etc/outside.txt'),
  cycles: () =>
    buildXlsx({ sheets: [{ name: 'S', cells: { A1: '=B1+1', B1: '=C1+1', C1: '=A1+1', D1: 5 } }] }),
  'a chain of 100,000 cells': () =>
    buildXlsx({
      sheets: [
        {
          name: 'S',
          cells: Object.fromEntries(
            Array.from({ length: 100_000 }, (_one, index) => [
              `A${index + 1}`,
              index === 99_999 ? 1 : `=A${index + 2}+1`,
            ]),
          ),
        },
      ],
    }),
  'a formula nested 4,000 deep': () =>
    buildXlsx({
      sheets: [{ name: 'S', cells: { A1: `=${'('.repeat(4_000)}1${')'.repeat(4_000)}`, A2: 7 } }],
    }),
  'functions nested 1,200 deep': () =>
    buildXlsx({
      sheets: [{ name: 'S', cells: { A1: `=${'ABS('.repeat(1_200)}1${')'.repeat(1_200)}`, A2: 7 } }],
    }),
  'names like markup': () =>
    buildXlsx({ sheets: [{ name: '<b onclick=x>', cells: { A1: '<script>document.title=1</script>' } }] }),
};
