import { expect, test } from 'vitest';
import { fromSi, toSi } from '../../../src/units/conversion.ts';
import { SheetUnits } from '../../../sample-workbooks/visit-sheet/sheet-units.ts';
import type { Grade } from '../../visit/answer/scripted-visits.ts';
import { gradeOf, scriptedVisits } from '../../visit/answer/scripted-visits.ts';
import { sheetsOf } from './scripted.ts';
import { SheetInHand } from './sheet-in-hand.ts';

/** Ounces of weight, whatever the units of the sheet. */
function ouncesOf(word: string, units: SheetUnits): number | null {
  const figure = /^Add ([\d.,]+)/.exec(word)?.[1];
  if (figure === undefined) return null;
  const kg = toSi(Number(figure.replaceAll(',', '')), units.unit('mass'), 0);
  return fromSi(kg, new SheetUnits('US').unit('mass'), 0);
}

test('scripted visits typed into the sheet: nothing dangerous, nothing closed too early', async () => {
  const sheets = { US: await SheetInHand.open('US'), SI: await SheetInHand.open('SI') };
  const grades = new Map<Grade | 'the functions can tell', number>();
  const bad: string[] = [];
  let sets = 0;
  for (const script of scriptedVisits) {
    const sheet = sheets[script.units];
    for (const { visit, scripted } of sheetsOf(script, sheet.placed)) {
      sheet.type(visit);
      scripted.forEach((index, column) => {
        const set = script.sets[index];
        if (set === undefined) throw new Error('no such set');
        sets += 1;
        const action = String(sheet.value('action', column + 1));
        const word = String(sheet.value('shown_word', column + 1));
        const told = [
          String(sheet.value('detail', column + 1)),
          String(sheet.value('answer_key', column + 1)),
        ];
        const grade =
          action === '–'
            ? 'the functions can tell'
            : gradeOf(set, {
                action,
                word,
                ounces: ouncesOf(word, sheet.placed.units),
                because: told,
                ask: [word],
              });
        grades.set(grade, (grades.get(grade) ?? 0) + 1);
        if (grade === 'dangerous' || grade === 'closed too early' || grade === 'wrong')
          bad.push(
            `${script.id} set ${String(index + 1)}: ${grade}, ${action} (${told.join('; ')}), right: ${set.allow.join(', ')}`,
          );
      });
    }
  }
  console.log(
    `${String(sets)} sets: ${[...grades].map(([grade, count]) => `${String(count)} ${grade}`).join(', ')}`,
  );
  expect(bad.filter((line) => /dangerous|closed too early/.test(line))).toEqual([]);
  expect(bad).toEqual([]);
  expect(sets).toBe(scriptedVisits.reduce((sum, script) => sum + script.sets.length, 0));
}, 120_000);
