import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { dayOfDate } from '../../../runtime/dates.ts';
import type { GivenFigure } from '../../../office-work/quote/fill-template.ts';
import { papers } from '../../../office-work/quote/finish-file.ts';
import type { OfferedLine, Quote } from '../../../office-work/quote/quote.ts';
import { quoteFor } from '../../../office-work/quote/quote.ts';
import type { SeasonRequest } from '../../../office-work/quote/season-plan.ts';
import { seasonPlan } from '../../../office-work/quote/season-plan.ts';
import { aboutFile } from '../../../workbook/file/about-file.ts';
import { FileError } from '../../../workbook/file/file-error.ts';
import { openFile } from '../../../workbook/file/open-file.ts';
import { saveFile } from '../../../workbook/file/save-file.ts';
import { cautions } from '../cautions.ts';
import type { Command } from '../command.ts';
import { readFileWords } from '../file-words.ts';
import { packageRoot } from '../package-root.ts';
import { printable } from '../printable.ts';
import { requireOther } from '../require-other.ts';
import { UsageError } from '../usage-error.ts';
import { wrap } from '../wrap.ts';

const templates = { others: 'repair-or-replace.xlsx', excel: 'repair-or-replace-excel.xlsx' } as const;

const valued = [
  '--set',
  '--for',
  '--units',
  '--plain-units',
  '--outfit',
  '--by',
  '--address',
  '--tax',
  '--new-gas',
  '--rules',
  '--paper',
  '--budget',
] as const;

export const quoteCommand: Command = {
  summary: 'Repair, replace or wait: the estimate for one unit of a fleet workbook or log.',
  usage: `ouncewise quote FLEET.xlsx UNIT [-o QUOTE.xlsx] [--set "NAME=LIKELY[,LOW,HIGH]; ..."] [--for excel]
                [--units SI] [--plain-units SI] [--outfit NAME] [--by NAME] [--address TEXT]
                [--tax PERCENT] [--new-gas GAS] [--rules EU] [--paper A4]

ouncewise quote FLEET.xlsx --all [-o PLAN.xlsx] [--budget MONEY] [the other options]

Reads the unit's register row and everything that was weighed into it, fills the estimate workbook and works it out.
Columns are found by their headings; a visit log, a fleet workbook or an .ods file will do. Prices come from a price
list in the same file where it has one (codes CALL, REPAIR and the gas); what the file does not know stays an example,
is listed, and makes the quote a draft.

-o             the quote; whole or not at all. repair-or-replace-UNIT.xlsx in this folder if left out, and
               never in place of one that is there
--set          figures of your own: --set "power price=0.19; repair price=420,350,520; years left=4"
--for          excel, or others (LibreOffice and the rest): how the file spells our functions. others if left out
--units        what the quote is written in: US, or SI
--plain-units  what figures are in where neither heading nor row of units says so; as --units if left out
--outfit       your name above the quote, and
--by           the name below it
--address      street and phone under your name
--tax          percent that is added to the prices
--new-gas      gas of the new unit; the offer then says what it means for the room
--rules        US, or EU: which gases may be filled in for service. US if left out
--all          every unit in use on one sheet, ranked by what replacing now saves; season-plan.xlsx if -o is left out
--budget       what the season may cost; the sheet says which units it is enough for
--paper        letter, or A4. A4 with --units SI, letter otherwise`,
  run: async (words) => {
    const isAll = words.includes('--all');
    const { inputs, output, options } = readFileWords(words, {
      inputs: isAll ? 1 : 2,
      options: [...valued],
      flags: ['--all'],
    });
    const [file = '', unit = ''] = inputs;
    const forWhom = oneOf('--for', options.get('--for') ?? 'others', ['others', 'excel']);
    const system = oneOf('--units', options.get('--units') ?? 'US', ['US', 'SI'] as const);
    if (output !== undefined) await requireOther(output, [file]);
    const request = {
      file,
      bytes: await openFile(file),
      unit,
      template: await openFile(samplePath(templates[forWhom])),
      day: today(),
      system,
      plainUnits: oneOf('--plain-units', options.get('--plain-units') ?? system, ['US', 'SI'] as const),
      outfit: options.get('--outfit'),
      by: options.get('--by'),
      given: readGiven(options.get('--set') ?? ''),
      address: options.get('--address'),
      tax: numberFrom('--tax', options.get('--tax')?.replace('%', ''), 100),
      newGas: options.get('--new-gas'),
      region: oneOf('--rules', options.get('--rules') ?? 'US', ['US', 'EU'] as const),
      paper: options.has('--paper') ? oneOf('--paper', options.get('--paper') ?? '', papers) : undefined,
    };
    if (isAll) return planSeason(request, output, numberFrom('--budget', options.get('--budget'), Infinity));
    const quote = aboutFile(file, () => quoteFor(request));
    const target = output ?? `repair-or-replace-${quote.unit.replace(/[^\p{L}\p{N}._-]+/gu, '-')}.xlsx`;
    await requireOther(target, [file]);
    requireFree(output, target);
    await saveFile(target, quote.bytes);
    console.log(printable(describe(quote, target)));
    return 0;
  },
};

function oneOf<T extends string>(option: string, word: string, allowed: readonly T[]): T {
  const found = allowed.find((candidate) => candidate.toLowerCase() === word.trim().toLowerCase());
  if (found === undefined)
    throw new UsageError(`${option} must be ${allowed.join(' or ')}; received "${word}"`);
  return found;
}

function numberFrom(option: string, word: string | undefined, below: number): number | undefined {
  if (word === undefined) return undefined;
  const number = Number(word);
  if (word.trim() === '' || !(number >= 0 && number < below)) {
    const limit = below === Infinity ? 'a number, 0 or more' : `a number from 0 to ${String(below)}`;
    throw new UsageError(`${option} must be ${limit}; received "${word}"`);
  }
  return number;
}

/** One sheet for the whole fleet. */
async function planSeason(
  request: Omit<SeasonRequest, 'plan'>,
  output: string | undefined,
  budget: number | undefined,
): Promise<number> {
  const target = output ?? 'season-plan.xlsx';
  await requireOther(target, [request.file]);
  requireFree(output, target);
  const plan = await openFile(samplePath('season-plan.xlsx'));
  const { bytes, lines, left } = aboutFile(request.file, () => seasonPlan({ ...request, plan, budget }));
  await saveFile(target, bytes);
  const shown = lines.map(({ unit, answer, saves, priceNow }) => {
    const saving =
      saves === undefined
        ? 'not to be said yet'
        : saves < 0
          ? `replacing costs ${whole(-saves)} a year more`
          : `replacing saves ${whole(saves)} a year`;
    const price = priceNow === undefined ? '' : ` price now ${whole(priceNow)}`;
    return `  ${unit.padEnd(12)} ${answer.padEnd(18)} ${saving.padEnd(32)}${price}`;
  });
  console.log(
    printable(
      [
        ...shown,
        '',
        ...left.flatMap((line) => wrap(`Note: ${line}`, width)),
        cautions,
        '',
        `The plan: ${target}`,
      ].join('\n'),
    ),
  );
  return 0;
}

function requireFree(output: string | undefined, target: string): void {
  if (output !== undefined || !existsSync(target)) return;
  throw new FileError(
    'unwritable',
    `${target} is there already, perhaps with figures of yours in it; name this one with -o`,
  );
}

function samplePath(name: string): string {
  const path = join(packageRoot(), 'sample-workbooks', name);
  if (!existsSync(path)) throw new UsageError(`${path} is missing from the installed package`);
  return path;
}

function today(): number {
  const day = dayOfDate(new Date());
  if (day === undefined) throw new Error('the clock of this computer shows no day');
  return day;
}

/** "power price=0.19; repair price=420,350,520". @throws UsageError */
export function readGiven(text: string): readonly GivenFigure[] {
  return text
    .split(';')
    .filter((part) => part.trim() !== '')
    .map((part) => {
      const [name = '', figures] = part.split('=');
      const numbers = (figures ?? '').split(',').map((word) => (word.trim() === '' ? NaN : Number(word)));
      const [likely = NaN, low, high] = numbers;
      if (numbers.some((number) => !Number.isFinite(number)) || ![1, 3].includes(numbers.length)) {
        throw new UsageError(
          `--set "${part.trim()}" must be NAME=LIKELY or NAME=LIKELY,LOW,HIGH in plain numbers`,
        );
      }
      if (low !== undefined && high !== undefined && !(low <= likely && likely <= high)) {
        throw new UsageError(`--set "${part.trim()}": low, likely and high must rise; write LIKELY,LOW,HIGH`);
      }
      return {
        input: name.trim(),
        values: low === undefined || high === undefined ? [likely] : [likely, low, high],
      };
    });
}

const width = 100;

function describe(quote: Quote, target: string): string {
  const { unit, verdict, offered, worthPaying, drivers, examples, missing, remarks } = quote;
  return [
    ...wrap(`${unit} ${verdict}`, width),
    '',
    ...offered.flatMap(choiceLine),
    ...(worthPaying === undefined
      ? []
      : ['', `A repair is worth at most ${whole(worthPaying)} at the likely figures.`]),
    ...(drivers.length === 0
      ? []
      : wrap(
          `It hangs most on ${drivers.map(([name, from, to]) => `${name} (${from} to ${to})`).join(', ')}.`,
          width,
        )),
    ...missing.map(([input, words]) => `Missing: ${input}: ${words}`),
    ...(examples.length === 0
      ? []
      : [
          '',
          ...wrap(
            `Still examples, to be replaced in Assumptions or with --set: ${examples.join(', ')}.`,
            width,
          ),
        ]),
    ...remarks.flatMap((remark) => wrap(`Note: ${remark}`, width)),
    '',
    cautions,
    '',
    `The quote: ${target}`,
  ].join('\n');
}

function choiceLine({ title, offered, costAYear, from, to, priceNow, bestIn, why }: OfferedLine): string[] {
  const name = title.padEnd(18);
  if (offered !== 'yes')
    return wrap(`  ${name} ${offered === 'no' ? 'not offered' : offered}: ${why}`, width);
  if (costAYear === undefined || from === undefined || to === undefined) return [`  ${name} first`];
  const range = `${whole(costAYear)} a year (${whole(from)} to ${whole(to)})`;
  const share = bestIn === undefined ? '' : ` least in ${whole(Math.floor(bestIn))} of 100`;
  return [
    `  ${name} ${range.padEnd(28)}${priceNow === undefined ? '' : ` price now ${whole(priceNow)}`.padEnd(18)}${share}`,
  ];
}

function whole(money: number): string {
  return String(Math.round(money));
}
