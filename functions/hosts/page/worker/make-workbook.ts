import { dayOfDate } from '../../../runtime/dates.ts';
import { gatherFleet } from '../../../office-work/fleet/gather-fleet.ts';
import { besideWords, changeWords, notCountedWords } from '../../../office-work/fleet/gathered-words.ts';
import { quoteFor } from '../../../office-work/quote/quote.ts';
import type { MadeWorkbook, NamedFile } from '../protocol.ts';

type UnitsWord = 'US' | 'SI';

/**
 * One fleet workbook from the logs of many technicians, the same as the command `gather` makes.
 *
 * @throws FileError when none of the files is a log
 */
export async function fleetOf(
  logs: readonly NamedFile[],
  template: Uint8Array,
  unitsWord: UnitsWord,
): Promise<MadeWorkbook> {
  // Two files of one name stay two.
  const contents = new Map(logs.map(({ name, bytes }, index) => [`${index + 1}/${name}`, bytes]));
  const shownName = (file: string): string => file.replace(/^\d+\//, '');
  const {
    bytes,
    gathering,
    logs: read,
    isNew,
  } = await gatherFleet({
    files: [...contents.keys()],
    contents: (file) => Promise.resolve(contents.get(file) ?? new Uint8Array()),
    template,
    unitsWord,
    plainWord: unitsWord,
    fileName: shownName,
    now: new Date(),
    worksOut: false,
  });
  const left = read.broken.map(({ file, reason }) => `${shownName(file)}: ${reason}; left out`);
  const remarks = read.remarks.map(({ file, remark }) => `${shownName(file)}: ${remark}`);
  return {
    name: 'fleet.xlsx',
    bytes,
    words: `${notCountedWords(gathering, unitsWord, read.broken.length)}.`,
    remarks: [
      ...left,
      ...changeWords(gathering, isNew, unitsWord),
      ...besideWords(gathering, []),
      ...remarks,
    ],
  };
}

/** Options are of the command line; on the page there are none. */
function withoutOptions(remark: string): string {
  return remark.replace(/,? or (?:give|with) --[\w-]+(?: [A-Z]+)?/g, '');
}

/**
 * The estimate for one unit of a log or a fleet, the same as the command `quote` makes.
 *
 * @throws FileError, CalcError when the log does not hold what is needed
 */
export function estimateOf(
  log: NamedFile,
  unit: string,
  template: Uint8Array,
  system: UnitsWord,
): MadeWorkbook {
  const quote = quoteFor({
    file: log.name,
    bytes: log.bytes,
    unit,
    template,
    day: dayOfDate(new Date()) ?? 0,
    system,
    given: [],
  });
  const examples = quote.examples.length;
  const draft =
    examples === 0
      ? ''
      : ` A draft: ${examples === 1 ? 'one figure is' : `${examples} figures are`} still the example of the form; see Assumptions.`;
  return {
    name: `repair-or-replace-${quote.unit.replace(/[^\p{L}\p{N}._-]+/gu, '-')}.xlsx`,
    bytes: quote.bytes,
    opensOn: 'Offer',
    words: `Estimate for ${quote.unit}.${draft}`,
    remarks: [
      ...quote.missing.map(([input, words]) => `missing: ${input}, ${words}`),
      ...quote.remarks.map(withoutOptions),
    ],
  };
}
