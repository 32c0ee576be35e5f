import type { Chance } from './chance.ts';

/** A changed text, and what was done in a few words. */
export interface MutatedText {
  readonly text: string;
  readonly story: string;
}

interface Element {
  readonly name: string;
  readonly start: number;
  /** Behind the start tag, and behind the whole element. */
  readonly tagEnd: number;
  readonly end: number;
}

/** Elements of a machine-written XML text. */
function elementsOf(text: string): Element[] {
  const elements: Element[] = [];
  const open: { name: string; start: number; tagEnd: number }[] = [];
  for (const { 0: tag, index } of text.matchAll(/<(?!\?|!)[^>]*>/g)) {
    const name = /^<\/?([^\s/>]+)/.exec(tag)?.[1] ?? '';
    const end = index + tag.length;
    if (tag.startsWith('</')) {
      const opened = open.pop();
      if (opened !== undefined) elements.push({ ...opened, end });
    } else if (tag.endsWith('/>')) elements.push({ name, start: index, tagEnd: end, end });
    else open.push({ name, start: index, tagEnd: end });
  }
  return elements;
}

const oddValues = [
  '',
  '0',
  '-1',
  '1.5',
  'NaN',
  '1e308',
  '1e999',
  '99999999999999999999',
  '4294967296',
  '2147483648',
  '1048577',
  'A1',
  'XFD1048576',
  'A1:XFD1048576',
  'XFE1',
  'A0',
  'B2:A1',
  '$A$1',
  '../../../../etc/passwd',
  '__proto__',
  'constructor',
  'true',
  '\u{1f600}',
  '&#10;',
  '&amp;lt;',
  "'",
  '_x0000_',
  '_x000',
  'x'.repeat(40_000),
];

const oddTexts = [
  ...oddValues,
  '#REF!',
  '#N/A',
  '1/0',
  'A1',
  'OFFSET(A1,0,0,1048576,16384)',
  'INDIRECT("A1:XFD1048576")',
  'SUM(1:1048576)',
  'SUMPRODUCT(A:XFD*1)',
  'REPT("x",1E9)',
  'SEQUENCE(1048576,16384)',
  'MMULT(ROW(A1:A3000),COLUMN(A1:XFD1))',
  '[1]Sheet1!A1',
  "'[x.xlsx]S'!A1",
  'LAMBDA(x,x(x))(LAMBDA(x,x(x)))',
  'LET(x,1,x,2,x)',
  '{1,2;3}',
  '"',
  '(((',
  '1E400',
  '@@@A1',
  'A1#',
  'A1:A2:A3',
  'A:A 1:1',
  '-'.repeat(300),
  'TEXT(1,"[>=9]\\;;;@")',
  'DATE(9999,99,99)',
  'OUNCE.SATTEMP(A:A,B:B)',
  'OUNCE.FLEETSUMMARY(A1:XFD1048576)',
  'FACT(1E9)',
  'BASE(2^53,2,255)',
  'COMBIN(1E9,5E8)',
  'NETWORKDAYS(1,2958465)',
  'WORKDAY(1,1E9)',
  `${'('.repeat(8000)}1${')'.repeat(8000)}`,
  `${'IF(1,'.repeat(8000)}1${')'.repeat(8000)}`,
  `${'1+'.repeat(8000)}1`,
  `${'SUM('.repeat(2000)}1${')'.repeat(2000)}`,
];

const escapeText = (text: string): string => text.replace(/&(?!#|amp;)/g, '&amp;').replace(/</g, '&lt;');
const escapeValue = (text: string): string => escapeText(text).replace(/"/g, '&quot;');

/** Damage to the text of one part: elements, attributes, texts, and what XML itself allows that workbooks never hold. */
export function mutateXml(text: string, chance: Chance): MutatedText {
  const elements = elementsOf(text);
  if (elements.length === 0) return { text: `${text}<`, story: 'a tag begun' };
  const element = chance.pick(elements);
  const whole = text.slice(element.start, element.end);
  const tag = text.slice(element.start, element.tagEnd);
  const replaced = (start: number, end: number, fresh: string): string =>
    text.slice(0, start) + fresh + text.slice(end);
  const about = (what: string): string => `${what} ${element.name} at ${element.start}`;
  switch (chance.below(16)) {
    case 0:
      return { text: replaced(element.start, element.end, ''), story: about('without') };
    case 1:
      return { text: replaced(element.end, element.end, whole), story: about('twice') };
    case 2: {
      const other = chance.pick(elements);
      const [first, second] = element.start < other.start ? [element, other] : [other, element];
      if (second.start < first.end)
        return { text: replaced(element.start, element.tagEnd, tag + tag), story: about('opened twice') };
      return {
        text:
          text.slice(0, first.start) +
          text.slice(second.start, second.end) +
          text.slice(first.end, second.start) +
          text.slice(first.start, first.end) +
          text.slice(second.end),
        story: about(`${other.name} swapped with`),
      };
    }
    case 3:
    case 4:
    case 5:
      return onAttribute(text, element, chance, about);
    case 6:
    case 7:
      return onText(text, elements, chance);
    case 8: {
      const depth = chance.pick([50, 5000, 100_000]);
      return {
        text: replaced(
          element.tagEnd,
          element.tagEnd,
          tag.endsWith('/>') ? '' : `${'<x>'.repeat(depth)}${'</x>'.repeat(depth)}`,
        ),
        story: about(`${depth} elements deep in`),
      };
    }
    case 9:
      return {
        text: replaced(
          element.start,
          element.start,
          chance.pick([
            '<!---->',
            '<!-- <c> -->',
            '<![CDATA[<c/>]]>',
            '<?x y?>',
            '<?xml version="1.0"?>',
            ' ',
            '\r\n\t',
            'stray text',
            '\u0001',
            '\ufffe',
            '\ud800',
          ]),
        ),
        story: about('something before'),
      };
    case 10:
      return {
        text: replaced(
          element.start,
          element.start,
          chance.pick(['&b;', '&#0;', '&#x110000;', '&#xD800;', '&nbsp;', '&#99999999999;', '&lt;', '&']),
        ),
        story: about('an entity before'),
      };
    case 11: {
      const doctype = chance.pick([
        '<!DOCTYPE x>',
        '<!DOCTYPE x [<!ENTITY b "bbbb">]>',
        '<!DOCTYPE x SYSTEM "file:///etc/passwd">',
        '<!DOCTYPE x [<!ENTITY % p SYSTEM "http://127.0.0.1/"> %p;]>',
      ]);
      return { text: doctype + text.replace(/^<\?xml[^>]*\?>\s*/, ''), story: `document type ${doctype}` };
    }
    case 12: {
      const prefix = chance.pick(['x', 'xml', 'r', 'ns_1']);
      return {
        text: text
          .replace(/<(\/?)(?![?!])([^\s/>:]+)(?=[\s/>])/g, `<$1${prefix}:$2`)
          .replace(/\sxmlns="/, ` xmlns:${prefix}="`),
        story: `every element with the prefix ${prefix}`,
      };
    }
    case 13:
      return {
        text: text.replace(
          /^<\?xml[^>]*\?>/,
          chance.pick([
            '<?xml version="1.1"?>',
            '<?xml version="9"?>',
            '<?xml version="1.0" encoding="UTF-7"?>',
            '<?xml version="1.0" encoding="ISO-8859-1"?>',
            ' <?xml version="1.0"?>',
          ]),
        ),
        story: 'another XML declaration',
      };
    case 14:
      return {
        text: replaced(
          element.start,
          element.tagEnd,
          tag.replace(
            /^<([^\s/>]+)/,
            (_all, name: string) =>
              `<${chance.pick(['c', 'row', 'v', 'f', 'is', 't', 'sheetData', `${name}s`])}`,
          ),
        ),
        story: about('another name for'),
      };
    default: {
      const at = chance.below(text.length);
      return {
        text: replaced(
          at,
          at + chance.below(6),
          chance.pick(['<', '>', '"', '/', '&', '=', ' ', "'", '', '</c>', '<f>', ']]>']),
        ),
        story: `characters changed at ${at}`,
      };
    }
  }
}

function onAttribute(
  text: string,
  element: Element,
  chance: Chance,
  about: (what: string) => string,
): MutatedText {
  const tag = text.slice(element.start, element.tagEnd);
  const found = [...tag.matchAll(/\s([^\s=]+)="([^"]*)"/g)];
  if (found.length === 0) {
    const fresh = tag.replace(
      /(\/?)>$/,
      ` ${chance.pick(['r', 's', 't', 'cm', 'ref', 'si', 'name', 'xml:space'])}="${escapeValue(chance.pick(oddValues))}"$1>`,
    );
    return {
      text: text.slice(0, element.start) + fresh + text.slice(element.tagEnd),
      story: about('an attribute more in'),
    };
  }
  const match = chance.pick(found);
  const [all, name = '', value = ''] = match;
  const odd = chance.pick(oddValues);
  const [fresh, what] = chance.pick<readonly [string, string]>([
    ['', `without ${name} in`],
    [all + all, `${name} twice in`],
    [` ${name}="${escapeValue(odd)}"`, `${name}=${odd.slice(0, 30)} in`],
    [` ${name}="${escapeValue(odd)}"`, `${name}=${odd.slice(0, 30)} in`],
    [` x:${name}="${value}"`, `${name} with a prefix in`],
    [` ${name.toUpperCase()}="${value}"`, `${name} in capitals in`],
    [` ${name}='${value.replaceAll("'", '&apos;')}'`, `${name} in other quotes in`],
    [`\n${name} \t=\n"${value}"`, `${name} spread over lines in`],
  ]);
  const start = element.start + match.index;
  return { text: text.slice(0, start) + fresh + text.slice(start + all.length), story: about(what) };
}

/** Texts of cells, formulas and names are where the meaning is. */
function onText(text: string, elements: readonly Element[], chance: Chance): MutatedText {
  const leaves = elements.filter(
    ({ tagEnd, end }) => end > tagEnd && !text.slice(tagEnd, text.lastIndexOf('</', end - 1)).includes('<'),
  );
  if (leaves.length === 0) return { text: text + text, story: 'the part twice in a row' };
  const formulas = leaves.filter(({ name }) => name === 'f' || name === 'definedName');
  const leaf = chance.pick(formulas.length > 0 && chance.oneIn(2) ? formulas : leaves);
  const odd = chance.pick(oddTexts);
  const close = text.lastIndexOf('</', leaf.end - 1);
  return {
    text: text.slice(0, leaf.tagEnd) + escapeText(odd) + text.slice(close),
    story: `${leaf.name} at ${leaf.start} says ${odd.slice(0, 40)}`,
  };
}
