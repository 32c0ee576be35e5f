import { Dice } from '../../../../sample-workbooks/fleet-summary/scenario/random.ts';
import { habits, ounces, two, utf8 } from './year-habits.ts';
import type { Habit, WrittenSet } from './year-habits.ts';

/** A log as it lies in the folder of a month. */
export interface YearFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What the office knows to be right: asked on the sheet Settled, it answers by this. */
export interface Answers {
  readonly units: ReadonlyMap<string, string>;
  readonly dateOrder: ReadonlyMap<string, 'month first' | 'day first'>;
  /** Files that were sent to put others right. */
  readonly rightFiles: ReadonlySet<string>;
}

export interface SimulatedYear {
  readonly months: readonly (readonly YearFile[])[];
  /** Tenths of an ounce that reached each unit. */
  readonly truth: ReadonlyMap<string, number>;
  readonly sets: number;
  readonly answers: Answers;
  /** Faults that must be told: a word of the id or the file, by kind. */
  readonly faults: readonly { readonly kind: string; readonly word: string }[];
}

function cellText(text: string, separator: string): string {
  return text.includes(separator) || text.includes('"') ? `"${text.replaceAll('"', '""')}"` : text;
}

function fileOf(habit: Habit, sets: readonly WrittenSet[]): Uint8Array {
  const lines = [habit.headings, ...sets.map(habit.row)];
  if (habit.total === true) {
    const sum = sets.reduce((all, { addedTenths }) => all + addedTenths, 0);
    lines.push([ounces(sum), 'TOTAL', '', '', '', '', '', '', '']);
  }
  const text = lines
    .map((line) => line.map((cell) => cellText(cell, habit.separator)).join(habit.separator))
    .join('\r\n');
  return (habit.encode ?? ((words: string) => utf8.encode(words)))(`${text}\r\n`);
}

/**
 * A year of an outfit: units of which a part leaks, six people who write in their own ways, and what goes wrong in an office:
 * misspelt ids, files sent twice and sent again corrected, a visit under two numbers, a set under the wrong unit, dates that
 * make sense both ways, a weight in words, lines with totals.
 */
export function simulateYear(seed: number, unitCount = 140, people = 6): SimulatedYear {
  const dice = new Dice(seed);
  const units = Array.from({ length: unitCount }, (_, index) => `W-${String(index + 1).padStart(3, '0')}`);
  const truth = new Map(units.map((unit) => [unit, 0]));
  const cylinders = Array.from({ length: 8 }, (_, index) => ({ id: `C-${31 + index}`, weight: 4000 }));
  const answers = {
    units: new Map<string, string>(),
    dateOrder: new Map<string, 'month first' | 'day first'>(),
    rightFiles: new Set<string>(),
  };
  const faults: { kind: string; word: string }[] = [];
  let visits = 1000;
  let count = 0;
  const year: YearFile[][] = [];
  const staff = habits.slice(0, people);
  for (let month = 1; month <= 12; month += 1) {
    const files: YearFile[] = [];
    for (const habit of staff) {
      const sets: WrittenSet[] = [];
      const howMany = dice.whole(4, 6);
      for (let index = 0; index < howMany; index += 1) {
        const unit = dice.pick(units);
        visits += 1;
        // The last visit of a month is late in it, but for one person in spring: then nothing tells day and month apart.
        const isTwofold = habit.technician === 'Finn' && month === 2;
        const day = isTwofold ? dice.whole(3, 12) : index === 0 ? dice.whole(14, 28) : dice.whole(1, 28);
        const minute = dice.whole(8 * 60, 17 * 60);
        const steps = dice.whole(1, 2);
        const cylinder = dice.pick(cylinders);
        for (let set = 1; set <= steps; set += 1) {
          const addedTenths = set === steps && dice.chance(0.7) ? dice.whole(5, 40) : 0;
          const before = cylinder.weight;
          cylinder.weight -= Math.round((addedTenths / 160) * 100);
          if (cylinder.weight < 1000) cylinder.weight = 4000;
          truth.set(unit, (truth.get(unit) ?? 0) + addedTenths);
          count += 1;
          sets.push({
            unit,
            unitWritten: (habit.unit ?? ((id: string) => id))(unit),
            visit: `V-${visits}`,
            set,
            year: 2026,
            month,
            day: isTwofold && day === month ? day + 1 : day,
            minute: minute + 20 * set,
            technician: habit.technician,
            addedTenths,
            cylinder: cylinder.id,
            before,
            after: before - Math.round((addedTenths / 160) * 100),
            note: dice.chance(0.2) ? 'hot roof, fan slow' : '',
          });
        }
      }
      const name = `${habit.technician.toLowerCase()}-${two(month)}.csv`;
      const spoilt = spoil(sets, { month, habit, dice, units, answers, faults });
      files.push({ name, bytes: fileOf(habit, spoilt.sets) });
      files.push(...spoilt.more);
      if (habit.technician === 'Finn' && month === 2) {
        answers.dateOrder.set(name, 'day first');
        faults.push({ kind: 'date order', word: name });
      }
      if (habit.total === true) faults.push({ kind: 'no unit', word: 'TOTAL' });
    }
    if (month === 1)
      files.push(
        ...registers(
          units,
          cylinders.map(({ id }) => id),
        ),
      );
    year.push(files);
  }
  return { months: year, truth, sets: count, answers, faults };
}

/** What goes wrong with the file of one person in one month. */
function spoil(
  sets: readonly WrittenSet[],
  about: {
    readonly month: number;
    readonly habit: Habit;
    readonly dice: Dice;
    readonly units: readonly string[];
    readonly answers: { units: Map<string, string>; rightFiles: Set<string> };
    readonly faults: { kind: string; word: string }[];
  },
): { readonly sets: readonly WrittenSet[]; readonly more: readonly YearFile[] } {
  const { month, habit, answers, faults } = about;
  const written = [...sets];
  const more: YearFile[] = [];
  const change = (index: number, to: Partial<WrittenSet>): void => {
    const old = written[index];
    if (old !== undefined) written[index] = { ...old, ...to };
  };
  const weighed = written.findIndex(({ addedTenths }) => addedTenths > 0);
  const chosen = written[Math.max(0, weighed)];
  if (chosen === undefined) return { sets: written, more };
  const at = Math.max(0, weighed);
  if (habit.technician === 'Ann' && month % 3 === 1) {
    const id = chosen.unit.replace(/0/, 'O');
    change(at, { unitWritten: id });
    if (id !== chosen.unit) faults.push({ kind: 'unit id', word: id });
  }
  if (habit.technician === 'Cleo' && (month === 2 || month === 6)) {
    // One figure too many: no such unit, and more than one that it may be.
    const id = `${chosen.unit}9`;
    change(at, { unitWritten: id });
    answers.units.set(id, chosen.unit);
    faults.push({ kind: 'unit id', word: id });
  }
  if (habit.technician === 'Dan' && month === 3)
    more.push({ name: `dan-${two(month)} copy.csv`, bytes: fileOf(habit, written) });
  if (habit.technician === 'Bob' && month === 2) {
    // Sent again with a weight put right: the first one was a slip.
    const wrong = written.map((set, index) =>
      index === at ? { ...set, addedTenths: set.addedTenths + 30 } : set,
    );
    more.push({ name: `bob-${two(month)} corrected.csv`, bytes: fileOf(habit, written) });
    answers.rightFiles.add(more.at(-1)?.name ?? '');
    faults.push({ kind: 'version', word: chosen.visit });
    return { sets: wrong, more };
  }
  if (habit.technician === 'Eve' && month === 3 && chosen.addedTenths > 0) {
    const again = { ...chosen, visit: chosen.visit.replace('V-', 'V-9') };
    more.push({ name: `eve-${two(month)} late.csv`, bytes: fileOf({ ...habit, total: false }, [again]) });
    faults.push({ kind: 'same visit', word: again.visit });
  }
  if (habit.technician === 'Ann' && month === 2 && chosen.addedTenths > 0) {
    // The set stood under the unit beside it; the file comes again with the right one.
    const beside = about.units.find((unit) => unit !== chosen.unit) ?? '';
    const wrong = written.map((set, index) => (index === at ? { ...set, unitWritten: beside } : set));
    more.push({ name: `ann-${two(month)} moved.csv`, bytes: fileOf(habit, written) });
    answers.rightFiles.add(more.at(-1)?.name ?? '');
    faults.push({ kind: 'version', word: chosen.visit });
    return { sets: wrong, more };
  }
  return { sets: written, more };
}

function registers(units: readonly string[], cylinders: readonly string[]): YearFile[] {
  const register = [
    'Unit,Owner,Site,Refrigerant,Nameplate charge (oz),Installed,Status',
    ...units.map(
      (unit, index) => `${unit},Owner ${index % 12},Site ${index % 20},R-410A,14,2019-05-01,in use`,
    ),
  ];
  const list = [
    'Cylinder,Kind,Gas,Tare (lb),Status',
    ...cylinders.map((id) => `${id},disposable,R-410A,6.0,in use`),
  ];
  return [
    { name: 'units.csv', bytes: utf8.encode(register.join('\n')) },
    { name: 'cylinders.csv', bytes: utf8.encode(list.join('\n')) },
  ];
}
