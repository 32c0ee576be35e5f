import { decodeEscapes, readXml } from './xml-reader.ts';

/** Texts that cells refer to by number; formatting inside a text and reading aids (phonetic runs) are left out. */
export function readSharedStrings(text: string, part: string): string[] {
  const strings: string[] = [];
  let current = '';
  let inText = false;
  let phonetic = 0;
  readXml(text, part, {
    open(element) {
      if (element === 'si') current = '';
      else if (element === 't') inText = phonetic === 0;
      else if (element === 'rPh') phonetic++;
    },
    text(piece) {
      if (inText) current += piece;
    },
    close(element) {
      if (element === 't') inText = false;
      else if (element === 'rPh') phonetic--;
      else if (element === 'si') strings.push(decodeEscapes(current));
    },
  });
  return strings;
}
