import { strFromU8, strToU8 } from 'fflate';
import type { Chance } from './chance.ts';
import { mutateBytes } from './mutate-bytes.ts';
import { mutateXml } from './mutate-xml.ts';

export type Parts = Record<string, Uint8Array>;

/** Parts that say what a workbook holds; the rest, such as pictures of charts, is only carried along. */
const telling =
  /worksheets\/|workbook\.xml|sharedStrings|styles|tables\/|\.rels$|content\.xml|Content_Types|manifest/;

/** Damage to the parts of an office document. Changes `parts`; answers with what was done. */
export function mutateParts(parts: Parts, chance: Chance): string {
  const names = Object.keys(parts);
  const told = names.filter((name) => telling.test(name));
  const sheets = names.filter((name) => /worksheets\/[^/]+\.xml$|^content\.xml$/.test(name));
  const name = chance.pick(chance.oneIn(2) && sheets.length > 0 ? sheets : told);
  const bytes = parts[name] as Uint8Array;
  const edit = (change: (text: string) => string): void => {
    parts[name] = strToU8(change(strFromU8(bytes)));
  };
  switch (chance.below(14)) {
    case 0:
      return `${onPackage(parts, name, chance)}`;
    case 1: {
      const { bytes: damaged, story } = mutateBytes(bytes, chance);
      parts[name] = damaged;
      return `${name}: ${story}`;
    }
    case 2:
      parts[name] = inOtherEncoding(strFromU8(bytes), chance);
      return `${name}: another encoding`;
    case 3: {
      const rows = sheets.length === 0 ? undefined : chance.pick(sheets);
      if (rows === undefined) return 'nothing';
      const story = onCells(parts, rows, chance);
      return `${rows}: ${story}`;
    }
    case 4: {
      const links = names.filter((other) => other.endsWith('.rels'));
      if (links.length === 0) return 'nothing';
      const link = chance.pick(links);
      const text = strFromU8(parts[link] as Uint8Array);
      const targets = [...text.matchAll(/Target="([^"]*)"/g)];
      if (targets.length === 0) return 'nothing';
      const target = chance.pick(targets);
      const fresh = chance.pick([
        ...targets.map(([, to = '']) => to),
        'worksheets/../../xl/workbook.xml',
        '../../../../../etc/passwd',
        '/xl/workbook.xml',
        'C:\\x.xml',
        'http://127.0.0.1/x',
        '',
        '.',
        '/',
        '%2e%2e/x',
      ]);
      parts[link] = strToU8(
        text.slice(0, target.index) + `Target="${fresh}"` + text.slice(target.index + target[0].length),
      );
      return `${link}: leads to ${fresh}`;
    }
    default: {
      const stories: string[] = [];
      const count = chance.pick([1, 1, 1, 2, 4]);
      edit((text) => {
        let changed = text;
        for (let index = 0; index < count && changed.length < 3_000_000; index += 1) {
          const mutated = mutateXml(changed, chance);
          changed = mutated.text;
          stories.push(mutated.story);
        }
        return changed;
      });
      return `${name}: ${stories.join(', ')}`;
    }
  }
}

function onPackage(parts: Parts, name: string, chance: Chance): string {
  const bytes = parts[name] as Uint8Array;
  const other = chance.pick(Object.keys(parts));
  switch (chance.below(7)) {
    case 0:
      Reflect.deleteProperty(parts, name);
      return `without ${name}`;
    case 1: {
      Reflect.deleteProperty(parts, name);
      const fresh = chance.pick([
        `../${name}`,
        `/${name}`,
        name.replaceAll('/', '\\'),
        name.toUpperCase(),
        `${name}/`,
        `./${name}`,
        `\u0000${name}`,
        `\u001b[31m${name}`,
        'x'.repeat(60_000),
      ]);
      parts[fresh] = bytes;
      return `${name} called ${JSON.stringify(fresh.slice(0, 60))}`;
    }
    case 2:
      parts[name.toUpperCase()] = parts[other] as Uint8Array;
      return `${name} once more in capitals`;
    case 3:
      parts[name] = new Uint8Array();
      return `${name} is empty`;
    case 4:
      parts[name] = parts[other] as Uint8Array;
      return `${name} holds ${other}`;
    case 5:
      parts[name] = strToU8(strFromU8(bytes).slice(0, chance.below(bytes.length + 1)));
      return `${name} ends early`;
    default:
      for (let index = 0; index < 3000; index += 1) parts[`xl/more/part${index}.xml`] = bytes.subarray(0, 20);
      return '3000 parts more';
  }
}

function inOtherEncoding(text: string, chance: Chance): Uint8Array {
  const kind = chance.pick([
    'utf-16le',
    'utf-16be',
    'utf-16 without mark',
    'utf-8 with mark',
    'latin1',
    'mark twice',
  ]);
  if (kind === 'utf-8 with mark') return strToU8(`\ufeff${text}`);
  if (kind === 'mark twice') return strToU8(`\ufeff\ufeff${text}`);
  if (kind === 'latin1') return Uint8Array.from([...text].map((letter) => letter.charCodeAt(0) & 255));
  const marked = kind === 'utf-16 without mark' ? text : `\ufeff${text}`;
  const bytes = new Uint8Array(marked.length * 2);
  const view = new DataView(bytes.buffer);
  for (let index = 0; index < marked.length; index += 1)
    view.setUint16(index * 2, marked.charCodeAt(index), kind !== 'utf-16be');
  return bytes;
}

/** Well-formed worksheets that say impossible or expensive things. */
function onCells(parts: Parts, sheet: string, chance: Chance): string {
  const text = strFromU8(parts[sheet] as Uint8Array);
  const put = (fresh: string, story: string): string => {
    parts[sheet] = strToU8(fresh);
    return story;
  };
  const before = (mark: string, piece: string, story: string): string =>
    put(
      text.replace(mark, () => piece + mark),
      story,
    );
  const end = '</sheetData>';
  switch (chance.below(12)) {
    case 0:
      return put(
        text.replace(
          /(<c [^>]*t="s"[^>]*><v>)[^<]*/,
          (_all, start: string) => start + chance.pick(['999999999', '-1', '1.5', 'abc', '', '1e5', '0x1']),
        ),
        'a shared text that is not there',
      );
    case 1:
      return put(
        text.replace(/ s="\d+"/g, () => ` s="${chance.pick(['999999', '-1', '1.5', 'x', '4294967296'])}"`),
        'looks that are not there',
      );
    case 2:
      return put(text.replace(/<dimension[^>]*>/, '<dimension ref="A1:XFD1048576"/>'), 'a huge dimension');
    case 3:
      return before(
        '</worksheet>',
        '<mergeCells count="3"><mergeCell ref="A1:C3"/><mergeCell ref="B2:D4"/><mergeCell ref="A1:XFD1048576"/></mergeCells>',
        'overlapping merged cells',
      );
    case 4:
      return before(
        end,
        `<row r="1048576"><c r="XFD1048576"><f>${chance.pick(['SUM(A:XFD)', 'SUMPRODUCT(A:XFC*1)', 'COUNTA(1:1048575)', 'A1', 'SUM(A1:XFD1048576)'])}</f></c></row>`,
        'a formula in the last cell',
      );
    case 5:
      return before(
        end,
        `<row r="9"><c r="A9"><f t="array" ref="${chance.pick(['A9:XFD130', 'A1:XFD1048576', 'B9:C10', 'A9:A9', 'C5:A1'])}">ROW()</f></c></row>`.repeat(
          chance.pick([1, 30]),
        ),
        'array formulas over each other',
      );
    case 6:
      return before(
        end,
        '<row r="3"><c r="A1"><v>1</v></c><c r="A1"><f>A1+1</f></c><c r="Z1"/><c r="C3"><v>2</v></c></row><row r="2"><c><v>5</v></c></row><row r="2"/>',
        'cells twice and out of order',
      );
    case 7:
      return before(
        end,
        `<row r="20">${Array.from({ length: 2000 }, (_, index) => `<c><f t="shared" si="${index % 3}"${index === 7 ? ' ref="A20:CX20"' : ''}>${index === 7 ? 'A$1+SUM(A:A)' : ''}</f></c>`).join('')}</row>`,
        'shared formulas that begin late',
      );
    case 8:
      return before(
        end,
        `<row r="30">${'<c><v>1</v></c>'.repeat(chance.pick([16_384, 16_385]))}</row>`,
        'a full row',
      );
    case 9:
      return before(
        end,
        `<row r="40"><c r="A40" t="str"><v>${'x'.repeat(30_000)}</v></c>${Array.from({ length: 60 }, () => '<c><f>OFFSET($A$40,0,COLUMN()-2)&amp;OFFSET($A$40,0,COLUMN()-2)</f></c>').join('')}</row>`,
        'a text that doubles from cell to cell',
      );
    case 10: {
      const depth = chance.pick([30, 8000]);
      const name = 'xl/workbook.xml';
      const book = parts[name];
      if (book === undefined) return 'nothing';
      const cyclic = chance.oneIn(2);
      const names = Array.from({ length: depth }, (_, index) => {
        const next = index === depth - 1 ? (cyclic ? 'nm.0' : '1') : `nm.${index + 1}`;
        return `<definedName name="nm.${index}">${depth > 100 ? `${next}+1` : `${next}+${next}`}</definedName>`;
      });
      parts[name] = strToU8(
        strFromU8(book).replace('</workbook>', `<definedNames>${names.join('')}</definedNames></workbook>`),
      );
      return before(
        end,
        '<row r="50"><c r="A50"><f>nm.0</f></c></row>',
        `${depth} names that ${cyclic ? 'run in a circle' : 'lead on'}`,
      );
    }
    default:
      return before(
        end,
        `<row r="60"><c r="A60"><f>${chance.pick(['OFFSET(A60,-1,0)+A61', 'INDIRECT("A60")', 'INDIRECT("A"&amp;ROW()+1)', 'SUM(A59:A61)'])}</f></c></row><row r="61"><c r="A61"><f>A60</f></c></row>`,
        'cells that wait for each other',
      );
  }
}
