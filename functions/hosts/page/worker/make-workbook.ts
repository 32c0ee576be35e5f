import { unitRegister } from '../../../../src/records/index.ts';
import { dayOfDate } from '../../../runtime/dates.ts';
import { unitSystem } from '../../../runtime/unit-system.ts';
import { fillTemplate } from '../../../office-work/fill/fill-template.ts';
import { fleetFill } from '../../../office-work/gather/fleet-fill.ts';
import { gatherContents } from '../../../office-work/gather/gather-contents.ts';
import { gatheredText } from '../../../office-work/gather/gathered-text.ts';
import { Judge } from '../../../office-work/gather/judge.ts';
import { quoteFor } from '../../../office-work/quote/quote.ts';
import { FileError } from '../../../workbook/file/file-error.ts';
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
  const units = unitSystem(unitsWord);
  const gathered = await gatherContents(
    [...contents.keys()],
    (file) => Promise.resolve(contents.get(file) ?? new Uint8Array()),
    units,
  );
  const left = gathered.broken.map(({ file, reason }) => `${shownName(file)}: ${reason}`);
  if (gathered.filesRead === 0) {
    throw new FileError('not-a-workbook', `no log could be read: ${left.join('; ')}`);
  }
  const { gathering } = gathered;
  const text = gatheredText(gathered, left.length);
  const fill = fleetFill(gathering, {
    units,
    unitsWord,
    judge: new Judge(gathering.rows(unitRegister), new Date()),
    gathered: text,
    fileName: shownName,
  });
  const remarks = gathered.remarks.map(({ file, remark }) => `${shownName(file)}: ${remark}`);
  return {
    name: 'fleet.xlsx',
    bytes: fillTemplate(template, fill),
    words: `Gathered: ${text}.`,
    remarks: [...left.map((line) => `${line}; left out`), ...remarks],
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
    words: `Estimate for ${quote.unit}.${draft}`,
    remarks: [
      ...quote.missing.map(([input, words]) => `missing: ${input}, ${words}`),
      ...quote.remarks.map(withoutOptions),
    ],
  };
}
