import { catalogueFunctions } from '../../workbook/catalogue-functions.ts';
import type { CellValue } from '../../workbook/model/values.ts';
import { CellError } from '../../workbook/model/values.ts';
import { loadWorkbook } from '../../workbook/file/load-workbook.ts';
import { recalculate } from '../../workbook/recalculate.ts';
import { unitSystem } from '../../runtime/unit-system.ts';
import { readValues } from '../gather/read-values.ts';
import { fillCells } from './fill-cells.ts';
import type { Paper } from './finish-file.ts';
import { finishFile } from './finish-file.ts';
import type { GivenFigure } from './fill-template.ts';
import { fillTemplate } from './fill-template.ts';
import { readPrices } from './read-prices.ts';
import type { SettingName } from './read-settings.ts';
import { readSettings } from './read-settings.ts';
import type { Fleet } from './read-unit.ts';
import { readFleet, readUnit } from './read-unit.ts';
import { Template } from './template.ts';

export interface QuoteRequest {
  /** Name of the fleet workbook or log, for messages. */
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly unit: string;
  /** The estimate workbook to fill. */
  readonly template: Uint8Array;
  /** Day of the quote, counted from 1970-01-01. */
  readonly day: number;
  readonly system: 'US' | 'SI';
  /** What figures of the file are in where nothing says so; as `system` when absent. */
  readonly plainUnits?: 'US' | 'SI' | undefined;
  /** Printed on the quote; what the file says when absent. */
  readonly outfit?: string | undefined;
  readonly by?: string | undefined;
  readonly given: readonly GivenFigure[];
  /** What the sheet Unit asks for besides; what the template says when absent. */
  readonly address?: string | undefined;
  readonly tax?: number | undefined;
  readonly newGas?: string | undefined;
  readonly region?: 'US' | 'EU' | undefined;
  /** A4 with SI, letter with US units when absent. */
  readonly paper?: Paper | undefined;
}

/** One choice as the customer reads it: offered, not, or not yet, and why. Costs a year rounded. */
export interface OfferedLine {
  readonly title: string;
  readonly offered: string;
  readonly priceNow: number | undefined;
  readonly costAYear: number | undefined;
  readonly from: number | undefined;
  readonly to: number | undefined;
  /** Percent of outcomes in which it costs least. */
  readonly bestIn: number | undefined;
  readonly why: string;
}

/** One choice as the quote gives it; undefined figures could not be worked out, and the note says why. */
export interface QuotedChoice {
  readonly name: string;
  readonly costAYear: number | undefined;
  readonly lowest: number | undefined;
  readonly highest: number | undefined;
  readonly priceNow: number | undefined;
  readonly note: string;
}

export interface Quote {
  /** The filled workbook, recalculated. */
  readonly bytes: Uint8Array;
  readonly unit: string;
  readonly facts: Readonly<Record<'owner' | 'site' | 'kind' | 'gas' | 'safetyClass', string>>;
  readonly verdict: string;
  /** The recommendation and its reason, as the customer reads them. */
  readonly answer: string;
  readonly offered: readonly OfferedLine[];
  /** To the cent, and what cannot be worked out. */
  readonly choices: readonly QuotedChoice[];
  /** Highest repair price worth paying; undefined when there is none. */
  readonly worthPaying: number | undefined;
  /** What moves the answer most: name, from, to. */
  readonly drivers: readonly (readonly [string, string, string])[];
  /** Assumptions that are still the examples of the template. */
  readonly examples: readonly string[];
  /** Assumptions without which there is no answer, with what is said of each. */
  readonly missing: readonly (readonly [string, string])[];
  readonly remarks: readonly string[];
}

/**
 * Fills the estimate workbook for one unit and works it out.
 *
 * @param read - the file, where it has been read already
 * @throws FileError, CalcError when the file does not hold what is needed; nothing is written here
 */
export function quoteFor(request: QuoteRequest, read?: Fleet): Quote {
  const { file, bytes, day, system, given } = request;
  const units = unitSystem(system);
  const plain = unitSystem(request.plainUnits ?? system);
  const unit = readUnit(read ?? readFleet(file, bytes, plain), request.unit);
  const sheets = readValues(file, bytes);
  const template = new Template(loadWorkbook(request.template));
  const remarks = fillTemplate(template, unit, {
    file,
    day,
    system,
    units,
    prices: readPrices(sheets, day, units),
    settings: settingsOf(request, readSettings(bytes, sheets)),
    given,
    extras: {
      quote_address: request.address ?? null,
      quote_tax: request.tax ?? null,
      quote_new_gas: request.newGas ?? null,
      quote_region: request.region ?? 'US',
    },
  });
  const result = recalculate(fillCells(request.template, template.fillings), catalogueFunctions);
  const filled = new Template(result.loaded);
  const offered = filled
    .values('offer_choices')
    .slice(1)
    .map(offeredOf)
    .filter(({ title }) => title !== '');
  return {
    bytes: finishFile(result.bytes, {
      opensOn: 'Offer',
      paper: request.paper ?? (system === 'SI' ? 'A4' : 'letter'),
      withoutChart: offered.every(({ costAYear }) => costAYear === undefined),
    }),
    unit: unit.id,
    facts: {
      owner: wordOf(unit.register['owner']),
      site: wordOf(unit.register['site']),
      kind: textOf(filled.value('unit_kind')),
      gas: textOf(filled.value('unit_gas')),
      safetyClass: textOf(filled.value('unit_class')),
    },
    verdict: textOf(filled.value('estimate_verdict')),
    answer: textOf(filled.value('estimate_answer')),
    offered,
    choices: filled.values('estimate_choices').slice(1).map(choiceOf),
    worthPaying: numberOf(filled.value('estimate_worth')),
    drivers: filled
      .values('estimate_drivers')
      .map(([name, , from, to]) => [textOf(name), textOf(from), textOf(to)] as const)
      .filter(([name]) => name !== ''),
    ...assumptionsOf(filled),
    remarks: [...unit.remarks, ...remarks],
  };
}

function settingsOf({ outfit, by }: QuoteRequest, found: ReadonlyMap<SettingName, string>) {
  const settings = new Map(found);
  if (outfit !== undefined) settings.set('quote_outfit', outfit);
  if (by !== undefined) settings.set('quote_by', by);
  return settings;
}

function choiceOf(cells: readonly CellValue[]): QuotedChoice {
  const [name, costAYear, lowest, highest, , priceNow] = cells;
  return {
    name: textOf(name),
    costAYear: numberOf(costAYear),
    lowest: numberOf(lowest),
    highest: numberOf(highest),
    priceNow: numberOf(priceNow),
    note: textOf(cells[10]),
  };
}

function offeredOf(cells: readonly CellValue[]): OfferedLine {
  const [title, offered, priceNow, costAYear, from, to, bestIn] = cells;
  return {
    title: textOf(title),
    offered: textOf(offered),
    priceNow: numberOf(priceNow),
    costAYear: numberOf(costAYear),
    from: numberOf(from),
    to: numberOf(to),
    bestIn: numberOf(bestIn),
    why: textOf(cells[9]),
  };
}

function assumptionsOf(template: Template): Pick<Quote, 'examples' | 'missing'> {
  const table = template.table('Assumptions');
  const examples: string[] = [];
  const missing: (readonly [string, string])[] = [];
  for (let row = table.firstRow; row <= table.lastRow; row += 1) {
    const cell = (heading: string): CellValue => table.sheet.value(row, template.columnOf(table, heading));
    const input = textOf(cell('Input'));
    const lacks = textOf(cell('Missing'));
    if (lacks !== '') missing.push([input, lacks]);
    else if (numberOf(cell('Likely')) !== undefined && /example/i.test(textOf(cell('Source'))))
      examples.push(input);
  }
  return { examples, missing };
}

const wordOf = (value: unknown): string => (typeof value === 'string' ? value : '');

function textOf(value: CellValue | undefined): string {
  if (value === null || value === undefined) return '';
  return value instanceof CellError ? value.code : String(value);
}

function numberOf(value: CellValue | undefined): number | undefined {
  return typeof value === 'number' ? value : undefined;
}
