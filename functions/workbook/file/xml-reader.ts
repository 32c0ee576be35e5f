import { SaxesParser } from 'saxes';
import { FileError } from './file-error.ts';

export type Attributes = Readonly<Record<string, string>>;

/** What to do with the pieces of an XML document. Names come without their namespace prefix. */
export interface XmlHandlers {
  /** `start` is where the tag's "<" stands and `end` is behind its ">"; an empty element is opened and closed at once. */
  open?: (name: string, attributes: Attributes, start: number, end: number) => void;
  /** `start` and `end` as for the closing tag; for an empty element both are behind it. */
  close?: (name: string, start: number, end: number) => void;
  text?: (text: string) => void;
}

/**
 * Walks through an XML document. Document type declarations are refused, and with them every entity that is not one of
 * XML's own five, so that nothing can expand.
 */
export function readXml(text: string, part: string, handlers: XmlHandlers): void {
  const parser = new SaxesParser({ xmlns: false });
  const fail = (why: string): never => {
    throw new FileError('corrupt', `the part ${part} is no sound XML: ${why}`);
  };
  parser.on('error', (error) => fail(error.message));
  parser.on('doctype', () => fail('it declares a document type, which workbooks never do'));
  const { open, close, text: words } = handlers;
  if (open !== undefined) {
    parser.on('opentag', (tag) => {
      const end = parser.position;
      const start = text.lastIndexOf('<', end - 1);
      open(localName(tag.name), tag.attributes, start, end);
    });
  }
  if (close !== undefined) {
    parser.on('closetag', (tag) => {
      const end = parser.position;
      const start = tag.isSelfClosing ? end : text.lastIndexOf('<', end - 1);
      close(localName(tag.name), start, end);
    });
  }
  if (words !== undefined) {
    parser.on('text', (piece) => {
      words(piece);
    });
    parser.on('cdata', (piece) => {
      words(piece);
    });
  }
  parser.write(text);
  parser.close();
}

function localName(name: string): string {
  const colon = name.indexOf(':');
  return colon < 0 ? name : name.slice(colon + 1);
}

/** Attribute by local name, whatever prefix the file uses for it. */
export function attribute(attributes: Attributes, name: string): string | undefined {
  const plain = attributes[name];
  if (plain !== undefined) return plain;
  for (const key of Object.keys(attributes)) {
    if (key.endsWith(`:${name}`)) return attributes[key];
  }
  return undefined;
}

/** Truth of an XML Schema boolean; `absent` when the attribute is missing. */
export function truth(value: string | undefined, absent: boolean): boolean {
  return value === undefined ? absent : value === '1' || value === 'true' || value === 'on';
}

/** Text of a part. Workbooks are UTF-8 in practice; UTF-16 is read too but cannot be patched. */
export function decodeXml(bytes: Uint8Array, part: string): string {
  const encoding =
    bytes[0] === 0xff && bytes[1] === 0xfe
      ? 'utf-16le'
      : bytes[0] === 0xfe && bytes[1] === 0xff
        ? 'utf-16be'
        : 'utf-8';
  try {
    return new TextDecoder(encoding, { fatal: true, ignoreBOM: encoding === 'utf-8' }).decode(bytes);
  } catch {
    throw new FileError('corrupt', `the part ${part} is no ${encoding} text`);
  }
}

const escaped = /_x([0-9A-Fa-f]{4})_/g;

/** Text in which characters that XML cannot hold are spelled _xHHHH_ (ECMA-376 Part 1, 22.9.2.19, ST_Xstring). */
export function decodeEscapes(text: string): string {
  return text.includes('_x')
    ? text.replace(escaped, (_all, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
    : text;
}

/** The reverse, together with XML's own escapes. */
export function encodeText(text: string): string {
  return (
    text
      .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
      // eslint-disable-next-line no-control-regex -- XML cannot hold these characters in any other way
      .replace(/[\u0000-\u0008\u000b-\u001f\ufffe\uffff]/g, (character) => {
        return `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`;
      })
      .replace(/[&<>]/g, (character) => (character === '&' ? '&amp;' : character === '<' ? '&lt;' : '&gt;'))
      .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd')
  );
}
