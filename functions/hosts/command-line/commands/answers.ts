import { openFile } from '../../../workbook/file/open-file.ts';
import type { LogAnswer, NamedFile } from '../../../office-work/answers/answers-of-log.ts';
import { answersOfLog } from '../../../office-work/answers/answers-of-log.ts';
import type { Command } from '../command.ts';
import { readFileWords } from '../file-words.ts';
import { cautions } from '../cautions.ts';
import { printable } from '../printable.ts';
import { wrap } from '../wrap.ts';

export const answersCommand: Command = {
  summary: 'Tell what to do next after every set of readings of a log, and why.',
  usage: `ouncewise answers LOG [--units UNITS.csv] [--staff STAFF.csv] [--earlier EARLIER.csv] [--json]

Reads a visit log (.csv, .xlsx, .ods) and tells for every filled row what to do next, from everything known by then: the
unit's register row (--units), the person's certificate and training (--staff), the sets of the visit so far, and earlier
visits (--earlier). A workbook that carries its register and staff list needs no other file. Headings are those of the
visit log or its field names, in any order, with the unit in brackets: suction_pressure (psig), added (g). A blank cell is
"not measured", never zero; what a file left out would tell is not known. --json prints one object a line. Files are only
read. Exit code 1 when a file cannot be read or lacks its headings.`,
  run: async (words) => {
    const { inputs, flags, options } = readFileWords(words, {
      inputs: 1,
      flags: ['--json'],
      options: ['--units', '--staff', '--earlier'],
    });
    const [input = ''] = inputs;
    const answers = answersOfLog({
      log: await named(input),
      register: await maybe(options.get('--units')),
      staff: await maybe(options.get('--staff')),
      earlier: await maybe(options.get('--earlier')),
    });
    if (flags.has('--json')) {
      for (const answer of answers) console.log(JSON.stringify(answer));
      return 0;
    }
    for (const answer of answers) console.log(printable(`${asText(answer)}\n`));
    console.log(cautions);
    return 0;
  },
};

async function named(name: string): Promise<NamedFile> {
  return { name, bytes: await openFile(name) };
}

async function maybe(name: string | undefined): Promise<NamedFile | undefined> {
  return name === undefined ? undefined : named(name);
}

/** For people: the sentence first, then why, then what would settle it. */
export function asText({ unit, visit, set, word, because, ask }: LogAnswer): string {
  const where = [`Unit ${unit ?? '?'}`, `visit ${visit ?? '?'}`, `set ${set ?? '?'}`].join(', ');
  const lines = because.flatMap((sentence) =>
    wrap(sentence, 96).map((line, index) => `  ${index === 0 ? '-' : ' '} ${line}`),
  );
  const asked = ask.length === 0 ? [] : wrap(`To measure or write down: ${ask.join(', ')}`, 98);
  return [`${where}`, `  > ${word}`, ...lines, ...asked.map((line) => `  ${line}`)].join('\n');
}
