import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { presenceRow, presenceShare } from '../../../../functions/catalogue/records/presence.ts';
import { sheetReader } from '../../../../functions/catalogue/records/read-table.ts';
import type { CellInput } from '../../../../functions/runtime/cells.ts';
import { unitSystem } from '../../../../functions/runtime/unit-system.ts';
import { completenessOf, visitLog } from '../../../../src/records/index.ts';

const headings = visitLog.fields.map(({ heading }) => heading);

/** What decides which other fields a row must have: typed well, typed badly, blank. */
const deciding = ['off', 'running', 'yes', 'no', 'nitrogen', '240', 240, 115, 0, 3, -2, '1 lb 4 oz', 'x'];
const cell = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom<CellInput>(null, '', ' ', undefined) },
  { weight: 3, arbitrary: fc.constantFrom<CellInput>(...deciding) },
);

describe('the share of a row that is filled in', () => {
  it('is that of completeness, whatever is typed and whichever columns there are', () => {
    const shares = new Set<number>();
    fc.assert(
      fc.property(
        fc.shuffledSubarray(headings, { minLength: 1 }),
        fc.array(cell, { minLength: headings.length, maxLength: headings.length }),
        (columns, cells) => {
          const sheet = sheetReader(visitLog, columns, { units: unitSystem('US'), parameter: 'ledger' });
          const row = cells.slice(0, columns.length);
          const share = presenceShare(sheet, row);
          shares.add(share);
          // Definition: filled required fields / required fields, by the function that lists them one by one.
          expect(share).toBe(completenessOf(visitLog, presenceRow(sheet, row)).share);
        },
      ),
      { numRuns: 300 },
    );
    expect(shares.size).toBeGreaterThan(20);
  });
});
