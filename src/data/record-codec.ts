/**
 * Packs records into one line of text each, so that all data together stays small in a one-file add-in.
 * The readable files beside it are the source; `npm run derive` packs them and a test unpacks and compares.
 */
export type FieldKind =
  | 'text'
  /** Text that many records share: an index into a list of words. */
  | 'word'
  | 'texts'
  | 'number'
  | 'numbers'
  /** Whole numbers of either sign, mostly small. */
  | 'counts'
  /** Names with a number each: "R-32:0.5;R-125:0.5". */
  | 'shares'
  | 'flag';

/** A path of names ("gwp.AR4") and how its value is written. */
export type Field = readonly [path: string, kind: FieldKind];

type Value = string | number | boolean | readonly unknown[] | undefined;

const separator = '|';

/**
 * Digits of whole numbers: 90 printable characters without the separator, quotes and backslash. The first 45 end a number,
 * the others say that another digit follows; the sign is folded into the lowest bit.
 */
const digits = Array.from({ length: 94 }, (_, i) => String.fromCharCode(33 + i))
  .filter((character) => !'"\'\\|'.includes(character))
  .join('');
const base = 45;

function writeNumber(value: number): string {
  return String(value).replace(/^(-?)0\./, '$1.');
}

function writeCounts(counts: readonly number[]): string {
  let text = '';
  for (const count of counts) {
    let rest = count < 0 ? -2 * count - 1 : 2 * count;
    while (rest >= base) {
      text += digits[base + (rest % base)]!;
      rest = Math.floor(rest / base);
    }
    text += digits[rest]!;
  }
  return text;
}

function readCounts(text: string): number[] {
  const counts: number[] = [];
  let value = 0;
  let weight = 1;
  for (const character of text) {
    const digit = digits.indexOf(character);
    if (digit >= base) {
      value += (digit - base) * weight;
      weight *= base;
    } else {
      value += digit * weight;
      counts.push(value % 2 === 1 ? -(value + 1) / 2 : value / 2);
      value = 0;
      weight = 1;
    }
  }
  return counts;
}

function write(kind: FieldKind, value: Value, words: string[]): string {
  if (value === undefined || value === false) return '';
  switch (kind) {
    case 'text':
      return value as string;
    case 'word': {
      const index = words.indexOf(value as string);
      return String(index < 0 ? words.push(value as string) - 1 : index);
    }
    case 'texts':
      return (value as string[]).join(';');
    case 'number':
      return writeNumber(value as number);
    case 'numbers':
      return (value as number[]).map(writeNumber).join(' ');
    case 'counts':
      return writeCounts(value as number[]);
    case 'shares':
      return (value as [string, number][]).map(([name, share]) => `${name}:${writeNumber(share)}`).join(';');
    case 'flag':
      return '1';
  }
}

function read(kind: FieldKind, text: string, words: readonly string[]): Value {
  switch (kind) {
    case 'text':
      return text;
    case 'word':
      return words[Number(text)];
    case 'texts':
      return text.split(';');
    case 'number':
      return Number(text);
    case 'numbers':
      return text.split(' ').map(Number);
    case 'counts':
      return readCounts(text);
    case 'shares':
      return text.split(';').map((part) => {
        const at = part.lastIndexOf(':');
        return [part.slice(0, at), Number(part.slice(at + 1))];
      });
    case 'flag':
      return true;
  }
}

/** One line per record. New words are added to `words`. */
export function packRecords(records: readonly object[], fields: readonly Field[], words: string[]): string {
  return records
    .map((record) =>
      fields
        .map(([path, kind]) => {
          let value: unknown = record;
          for (const name of path.split('.')) value = (value as Record<string, unknown> | undefined)?.[name];
          const text = write(kind, value as Value, words);
          if (kind !== 'counts' && /[|\n']/.test(text))
            throw new Error(`${path}: "${text}" cannot be packed`);
          return text;
        })
        .join(separator)
        .replace(/\|+$/, ''),
    )
    .join('\n');
}

/** The records back: an empty field is absent, except that lists of texts come back empty. */
export function unpackRecords<T>(packed: string, fields: readonly Field[], words: readonly string[]): T[] {
  return packed.split('\n').map((line) => {
    const cells = line.split(separator);
    const record: Record<string, unknown> = {};
    fields.forEach(([path, kind], i) => {
      const text = cells[i] ?? '';
      if (text === '' && kind !== 'texts') return;
      const names = path.split('.');
      let owner = record;
      for (const name of names.slice(0, -1)) owner = (owner[name] ??= {}) as Record<string, unknown>;
      owner[names.at(-1)!] = text === '' ? [] : read(kind, text, words);
    });
    return record as T;
  });
}
