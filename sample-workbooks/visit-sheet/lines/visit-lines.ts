import { fieldOfEntry, isEntry, labelOf, visitLayout, visitLog } from '../../../src/records/index.ts';
import type { VisitEntry, VisitFigure, VisitSection } from '../../../src/records/index.ts';
import { fieldOf } from '../../writing/record-column.ts';
import { checkLines } from '../formulas/checks.ts';
import { figureLines } from '../formulas/figures.ts';
import type { SheetUnits } from '../sheet-units.ts';
import type { ComputedLine, SetLine, VisitPageLine } from './line.ts';
import { onceLines, saidOnce } from './once-lines.ts';

/**
 * The lines of the visit page: what is said once, then the sections of the shared layout of a visit with their readings and
 * the figures under them, then the checks. A field of the layout stands once: a column is a standing set or a running one.
 */
export function visitLines(units: SheetUnits): readonly VisitPageLine[] {
  const once = onceLines(units);
  const taken = new Set([...once.map(({ key }) => key), ...saidOnce]);
  const lines: VisitPageLine[] = [...once];
  for (const section of visitLayout) {
    lines.push({ kind: 'section', key: `s-${section.name}`, label: titleOf(section), holds: 'typed' });
    for (const line of section.lines) {
      if (!isEntry(line)) {
        lines.push(...figureOf(line, units));
        continue;
      }
      const { field } = line;
      if (taken.has(field)) continue;
      if (section.sets === 'standing' && standsInRunning(field)) continue;
      taken.add(field);
      lines.push(setLine(line));
    }
    if (section.sets === 'standing') lines.push(elsewhere(section));
  }
  return [
    ...lines,
    { kind: 'section', key: 's-checks', label: 'Checks', holds: 'worked out' },
    ...checkLines(units),
  ];
}

const titleOf = ({ name, title }: VisitSection): string => (name === 'unit' ? 'This set' : title);

function standsInRunning(field: string): boolean {
  return visitLayout.some(
    ({ sets, lines }) => sets === 'running' && lines.some((line) => isEntry(line) && line.field === field),
  );
}

/** Says where the readings stand that both kinds of set have. */
function elsewhere(section: VisitSection): VisitPageLine {
  const labels = section.lines
    .filter(isEntry)
    .filter(({ field }) => standsInRunning(field) && !saidOnce.includes(field));
  const told = labels.map(
    (line) => `${labelOf(line)}: write it at "${fieldOf(visitLog, line.field).heading}"`,
  );
  return { kind: 'remark', key: 'r-standing', label: `${told.join('. ')}, below.` };
}

function setLine(entry: VisitEntry): SetLine {
  const field = fieldOfEntry(entry);
  const choices = field.kind === 'yesNo' ? ['yes', 'no'] : field.choices;
  return {
    kind: 'set',
    key: field.name,
    // Where both kinds of set share a line it bears its full name.
    label: sharedWithStanding(field.name) ? field.heading : labelOf(entry),
    field,
    tables: ['log'],
    help: field.help,
    ...(field.quantity === undefined ? {} : { quantity: field.quantity }),
    ...(choices === undefined ? {} : { choices }),
  };
}

function sharedWithStanding(field: string): boolean {
  return (
    standsInRunning(field) &&
    visitLayout.some(
      ({ sets, lines }) => sets === 'standing' && lines.some((line) => isEntry(line) && line.field === field),
    )
  );
}

/** The figure, what to expect, and the check over it, as far as plain formulas go. */
function figureOf(
  { figure, expected, verdict, label }: VisitFigure,
  units: SheetUnits,
): readonly ComputedLine[] {
  const known = figureLines(units);
  return [figure, expected, verdict].flatMap((name, index): ComputedLine[] => {
    if (name === undefined) return [];
    const line = known.get(name);
    if (line === undefined) throw new Error(`the visit sheet works out no "${name}"`);
    return [index === 0 ? { ...line, label } : line];
  });
}
