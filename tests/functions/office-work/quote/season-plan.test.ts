import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { seasonPlan } from '../../../../functions/office-work/quote/season-plan.ts';
import { quoteFor } from '../../../../functions/office-work/quote/quote.ts';
import { Template } from '../../../../functions/office-work/quote/template.ts';
import { loadWorkbook } from '../../../../functions/workbook/file/load-workbook.ts';
import { contrastingFleet } from './contrasting-fleet.ts';

const samples = join(import.meta.dirname, '../../../../sample-workbooks');
const template = readFileSync(join(samples, 'repair-or-replace.xlsx'));
const plan = readFileSync(join(samples, 'season-plan.xlsx'));
const request = {
  file: 'fleet.xlsx',
  bytes: contrastingFleet(),
  template,
  day: 20_759,
  system: 'US',
  given: [],
} as const;

/** By definition: an offer a unit, ranked by the saving, the figures those of the offer itself. */
test(
  'a fleet is ranked by what replacing saves, against the budget of the season',
  { timeout: 300_000 },
  () => {
    const budget = 1500;
    const { lines, bytes, left } = seasonPlan({ ...request, plan, budget });
    expect(left).toEqual([]);
    expect(lines).toHaveLength(8);
    const saved = lines.map(({ saves }) => saves ?? -Infinity);
    expect(saved).toEqual([...saved].sort((one, other) => other - one));
    // The maker has not answered, nobody has looked: no saving is known.
    expect(lines.filter(({ saves }) => saves === undefined).map(({ unit }) => unit)).toEqual([
      'UNSEEN',
      'WARRANTY',
    ]);

    const [first] = lines;
    const offer = quoteFor({ ...request, unit: first?.unit ?? '' });
    const cost = (title: string) => offer.offered.find((choice) => choice.title === title)?.costAYear ?? NaN;
    expect(first?.saves).toBe(cost('Top up') - cost('Replace'));
    expect(first?.why).toBe(offer.answer);

    const sheet = new Template(loadWorkbook(bytes)).values('season_rows');
    expect(sheet.slice(0, 8).map(([rank, unit]) => [rank, unit])).toEqual(
      lines.map(({ unit }, index) => [index + 1, unit]),
    );
    let total = 0;
    for (const row of sheet.slice(0, 8)) {
      const [price, soFar, within] = [row[8], row[9], row[10]];
      if (typeof price !== 'number' || price === 0) {
        expect([soFar ?? '', within ?? '']).toEqual(['', '']);
        continue;
      }
      total += price;
      expect(soFar).toBe(total);
      expect(within).toBe(total <= budget ? 'yes' : 'no');
    }
  },
);
