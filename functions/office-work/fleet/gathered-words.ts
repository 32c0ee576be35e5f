import { unitRegister, visitLog } from '../../../src/records/index.ts';
import type { ReadLogs } from '../gather/gather-contents.ts';
import type { GatheredRow } from '../gather/gathered-row.ts';
import type { AsideRow, FleetGathering } from '../gather/settle/fleet-gathering.ts';
import { isOpen } from '../gather/settle/ruling.ts';
import type { SettledRow } from '../gather/settle/ruling.ts';

const ounceKg = 0.45359237 / 16;

function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

function massText(massKg: number, units: 'US' | 'SI'): string {
  return units === 'SI' ? `${(massKg * 1000).toFixed(0)} g` : `${(massKg / ounceKg).toFixed(1)} oz`;
}

function addedKg(rows: readonly GatheredRow[]): number {
  return rows.reduce((sum, { values }) => sum + Number(values['added'] ?? 0), 0);
}

/** How much the fleet rests on, as the overview says it below its title; the same after every gathering of the same files. */
export function gatheredWords(
  gathering: FleetGathering,
  { broken }: ReadLogs,
  fileName: (file: string) => string,
  missing: number,
): string {
  const sets = gathering.rows(visitLog);
  const files = new Set(sets.map(({ place }) => fileName(place.file)));
  const left = broken.map(({ file }) => fileName(file));
  const parts = [`${counted(sets.length, 'set')} of readings from ${counted(files.size, 'file')}`];
  if (gathering.conflicts.length > 0) parts.push(counted(gathering.conflicts.length, 'conflict'));
  if (left.length > 0)
    parts.push(
      `left out: ${left.slice(0, 5).join(', ')}${left.length > 5 ? ` and ${left.length - 5} more` : ''}`,
    );
  if (missing > 0) parts.push(`${counted(missing, 'file')} not found`);
  return parts.join(', ');
}

const causes: readonly (readonly [cause: AsideRow['cause'], words: string])[] = [
  ['date', 'no date that can be read'],
  ['unit', 'a unit that nobody knows'],
  ['weight', 'a weight that cannot be read'],
];

/** What is in no sum, in ounces and sets: the first thing that is said. */
export function notCountedWords(gathering: FleetGathering, units: 'US' | 'SI', filesLeftOut: number): string {
  const open = gathering.aside.filter(({ state }) => state === 'open');
  const sets = gathering.rows(visitLog);
  const left = filesLeftOut === 0 ? '' : `; ${counted(filesLeftOut, 'file')} left out whole`;
  if (open.length === 0) {
    const all = `${massText(addedKg(sets), units)} in ${counted(sets.length, 'set')}`;
    return filesLeftOut === 0 ? `Everything counts: ${all}` : `All sets that were read count: ${all}${left}`;
  }
  const why = causes.flatMap(([cause, words]) => {
    const own = open.filter((entry) => entry.cause === cause);
    if (own.length === 0) return [];
    return [
      `${counted(own.length, 'set')} with ${words} (${massText(addedKg(own.map(({ row }) => row)), units)})`,
    ];
  });
  const total = `${massText(addedKg(open.map(({ row }) => row)), units)} in ${counted(open.length, 'set')}`;
  const verb = open.length === 1 ? 'does' : 'do';
  return `${total} ${verb} not count: ${why.join(', ')}${left}. See the sheet Set aside`;
}

/** What is told beside: what counts once, what waits for a ruling. */
export function besideWords(gathering: FleetGathering, settled: readonly SettledRow[]): string[] {
  const twice = gathering.aside.filter(({ state }) => state === 'twice').length;
  const totals = gathering.aside.filter(({ state }) => state === 'no set').length;
  const ruled = new Set(
    settled.filter((row) => !isOpen(row)).map(({ kind, written }) => `${kind}\u0001${written}`),
  );
  const open = gathering.questions.filter(({ kind, written }) => !ruled.has(`${kind}\u0001${written}`));
  const lines: string[] = [];
  if (twice > 0)
    lines.push(
      `${counted(twice, 'set')} ${twice === 1 ? 'stands' : 'stand'} there twice and ${twice === 1 ? 'counts' : 'count'} once`,
    );
  if (totals > 0)
    lines.push(
      `${counted(totals, 'line')} that ${totals === 1 ? 'adds' : 'add'} up others left out as no sets`,
    );
  if (open.length > 0) {
    lines.push(`${counted(open.length, 'question')} for the sheet Settled:`);
    for (const { kind, written, file, suggested } of open.slice(0, 10))
      lines.push(`  ${kind}: "${written}" in ${file}${suggested === '' ? '' : `, ${suggested}?`}`);
    if (open.length > 10) lines.push(`  ... and ${open.length - 10} more there`);
  }
  return lines;
}

/** What a gathering brought, changed and left. */
export function changeWords(gathering: FleetGathering, isNew: boolean, units: 'US' | 'SI'): string[] {
  const sets = gathering.rows(visitLog);
  const register = gathering.rows(unitRegister);
  const fresh = register.filter(({ at }) => at === undefined).length;
  const changed = [...sets, ...register].filter((row) => (row.changed?.size ?? 0) > 0).length;
  const added = `${counted(gathering.added.length, 'set')} (${massText(addedKg(gathering.added), units)}), ${counted(fresh, 'unit')} in the register`;
  if (isNew) return [`Brought in: ${added}; ${counted(gathering.repeated, 'repeated row')} counted once`];
  const kept = sets.length - gathering.added.length;
  return [
    `Added: ${added}; changed by rulings and new copies: ${counted(changed, 'row')}; left as ${kept === 1 ? 'it was' : 'they were'}: ${counted(kept, 'set')}, and every cell that was typed; ${counted(gathering.repeated, 'repeated row')} counted once`,
  ];
}
