import { CalcError } from '../../../src/errors.ts';
import { recalculate } from '../../workbook/recalculate.ts';
import { catalogueFunctions } from '../../workbook/catalogue-functions.ts';
import { loadWorkbook } from '../../workbook/file/load-workbook.ts';
import { readPart, readRelationships, workbookPart } from '../../workbook/file/package-parts.ts';
import { openContainer } from '../../workbook/file/recognize.ts';
import { readWorkbookPart } from '../../workbook/file/workbook-part.ts';
import { usualLimits } from '../../workbook/file/limits.ts';
import { unitSystem } from '../../runtime/unit-system.ts';
import { fillCells } from './fill-cells.ts';
import type { Quote, QuoteRequest } from './quote.ts';
import { quoteFor } from './quote.ts';
import { readFleet, registeredUnits } from './read-unit.ts';
import { Template } from './template.ts';

export interface SeasonRequest extends Omit<QuoteRequest, 'unit'> {
  /** The workbook of one sheet that is filled. */
  readonly plan: Uint8Array;
  readonly budget?: number | undefined;
  /** Called before each unit, for whoever waits. */
  readonly onUnit?: ((unit: string, done: number, all: number) => void) | undefined;
}

/** One unit of the plan; costs a year rounded as on its offer. */
export interface SeasonLine {
  readonly unit: string;
  readonly owner: string;
  readonly kind: string;
  readonly answer: string;
  readonly saves: number | undefined;
  readonly asNow: number | undefined;
  readonly replaced: number | undefined;
  readonly priceNow: number | undefined;
  readonly why: string;
}

export interface SeasonPlan {
  readonly bytes: Uint8Array;
  readonly lines: readonly SeasonLine[];
  /** Units that could not be quoted, with the reason; and what did not fit. */
  readonly left: readonly string[];
}

/**
 * An offer for every unit of a fleet that is in use, ranked by what replacing now saves against going on as now.
 *
 * Going on as now is topping up or leaving it, whichever is cheaper; where neither is offered, the repair. A unit that
 * cannot be quoted is named, the others stand.
 *
 * @throws FileError, CalcError when the file holds no register or no visits
 */
export function seasonPlan(request: SeasonRequest): SeasonPlan {
  const { file, bytes, plan, budget, day, onUnit } = request;
  const fleet = readFleet(file, bytes, unitSystem(request.plainUnits ?? request.system));
  const units = registeredUnits(fleet);
  const template = withoutSheet(request.template, 'Sensitivity');
  const lines: SeasonLine[] = [];
  const left: string[] = [];
  for (const [index, unit] of units.entries()) {
    onUnit?.(unit, index, units.length);
    try {
      lines.push(lineOf(quoteFor({ ...request, template, unit }, fleet)));
    } catch (error) {
      if (!(error instanceof CalcError)) throw error;
      left.push(`${unit}: ${error.message}`);
    }
  }
  const ranked = lines.sort(
    (one, other) => (other.saves ?? -Infinity) - (one.saves ?? -Infinity) || (one.unit < other.unit ? -1 : 1),
  );
  const filled = new Template(loadWorkbook(plan));
  const room = filled.values('season_rows').length;
  if (ranked.length > room)
    left.push(
      `${ranked.length - room} units do not fit into ${room} rows: the ones that save least are left out`,
    );
  filled.putByName('season_budget', budget ?? null);
  filled.putByName(
    'season_day',
    `${file.split(/[\\/]/).at(-1) ?? file}, ${new Date(day * 86_400_000).toISOString().slice(0, 10)}`,
  );
  filled.putRows(
    'season_rows',
    ranked
      .slice(0, room)
      .map((line, index) => [
        index + 1,
        line.unit,
        line.owner,
        line.kind,
        line.answer,
        line.saves ?? null,
        line.asNow ?? null,
        line.replaced ?? null,
        line.priceNow ?? null,
        undefined,
        undefined,
        line.why,
      ]),
  );
  const done = recalculate(fillCells(plan, filled.fillings), catalogueFunctions);
  return {
    bytes: printedTo(done.bytes, Math.max(1, Math.min(ranked.length, room)), room),
    lines: ranked,
    left,
  };
}

/** Rows that stayed empty are not printed. */
function printedTo(bytes: Uint8Array, used: number, room: number): Uint8Array {
  const archive = openContainer(bytes, usualLimits);
  const main = workbookPart(archive);
  const xml = readPart(archive, main).replace(
    /(_xlnm\.Print_Area"[^>]*>[^<]*\$)(\d+)(<)/,
    (_all, before: string, last: string, after: string) =>
      `${before}${String(Number(last) - room + used)}${after}`,
  );
  return archive.withReplaced(new Map([[main, new TextEncoder().encode(xml)]]));
}

function lineOf({ unit, verdict, answer, offered, facts }: Quote): SeasonLine {
  const costOf = (title: string): number | undefined =>
    offered.find((choice) => choice.title === title && choice.offered === 'yes')?.costAYear;
  const leaving = [costOf('Top up'), costOf('Do nothing')].filter((cost) => cost !== undefined);
  const asNow = leaving.length > 0 ? Math.min(...leaving) : costOf('Repair');
  const replaced = costOf('Replace');
  const word = verdict.split(':')[0] ?? '';
  // Before a measurement or the maker's answer no saving is known, whatever the figures would give.
  const isKnown = word !== 'Cannot tell yet' && word !== 'Warranty first';
  return {
    unit,
    owner: [facts.owner, facts.site].filter((part) => part !== '').join(', '),
    kind:
      [facts.kind, facts.gas].filter((part) => part !== '').join(', ') +
      (facts.safetyClass === '' ? '' : ` (${facts.safetyClass})`),
    answer: word,
    saves: !isKnown || asNow === undefined || replaced === undefined ? undefined : asNow - replaced,
    asNow,
    replaced,
    priceNow: offered.find(({ title, offered: is }) => title === word && is === 'yes')?.priceNow,
    why: answer,
  };
}

/** The sheet stays, empty: nothing else reads it, and working it out would take most of the time. */
function withoutSheet(bytes: Uint8Array, name: string): Uint8Array {
  const archive = openContainer(bytes, usualLimits);
  const main = workbookPart(archive);
  const entry = readWorkbookPart(readPart(archive, main), main).sheets.find((sheet) => sheet.name === name);
  const part = readRelationships(archive, main).find(({ id }) => id === entry?.relationId)?.part;
  if (part === undefined) throw new Error(`the template has no sheet ${name}`);
  const xml = readPart(archive, part)
    .replace(/<sheetData>[\s\S]*<\/sheetData>/, '<sheetData></sheetData>')
    .replace(/<mergeCells\b[\s\S]*?<\/mergeCells>/, '');
  return archive.withReplaced(new Map([[part, new TextEncoder().encode(xml)]]));
}
