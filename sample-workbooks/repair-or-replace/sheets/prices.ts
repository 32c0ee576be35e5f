import { unitKinds } from '../../../src/cost/index.ts';
import { dateSerial } from '../../writing/address.ts';
import { bandLooks, looks } from '../../writing/palette.ts';
import type { Look } from '../../writing/recipe.ts';
import type { ColumnRecipe, LaidOutTable } from '../../writing/table.ts';
import { layOutTable } from '../../writing/table.ts';
import { kindRows, priceRows } from '../scenario/figures.ts';

const tableLooks = {
  heading: looks.heading,
  unit: looks.unit,
  input: { ...looks.input, size: 9 },
  computed: { ...looks.computed, size: 9 },
};

const column = (heading: string, width: number, look: Look, note?: string): ColumnRecipe => ({
  heading,
  width,
  origin: 'input',
  look,
  note,
});

const money: Look = { align: 'right', format: '#,##0.00' };
const whole: Look = { align: 'right', format: '#,##0' };
const day: Look = { align: 'center', format: 'yyyy-mm-dd' };
const words: Look = { align: 'left', indent: 1 };

/** Widths are those of the assumption table above: one sheet, one set of columns. */
export function kindTable(headingRow: number): LaidOutTable {
  return layOutTable({
    name: 'Kinds',
    firstColumn: 1,
    headingRow,
    bands: [
      {
        title: 'By kind of unit',
        ...bandLooks.input,
        columns: [
          column('Kind', 18, words, unitKinds.join(', ')),
          column('New unit', 9.5, whole, 'Price of a new unit, fitted, the old one disposed of.'),
          column('New unit, low', 9.5, whole),
          column('New unit, high', 9.5, whole),
          column(
            'Where from',
            34,
            words,
            'Replace the word "example" with where your own figure comes from.',
          ),
          column('As of', 11, day),
          column(
            'New efficiency',
            11,
            { align: 'right', format: '0.0' },
            'Of the new unit, Btu/Wh in either unit system.',
          ),
          column(
            'Hours a month',
            10,
            whole,
            'Full-load hours in a month of service; times the months of the register.',
          ),
          column('Hours, low', 10, whole),
          column('Hours, high', 9, whole),
        ],
      },
    ],
    rows: kindRows.map(({ kind, price, efficiency, hoursAMonth, source, asOf }) => ({
      Kind: kind,
      'New unit': price[0],
      'New unit, low': price[1],
      'New unit, high': price[2],
      'Where from': source,
      'As of': dateSerial(asOf),
      'New efficiency': efficiency,
      'Hours a month': hoursAMonth[0],
      'Hours, low': hoursAMonth[1],
      'Hours, high': hoursAMonth[2],
    })),
    spareRows: 0,
    looks: tableLooks,
  });
}

export function priceTable(headingRow: number): LaidOutTable {
  return layOutTable({
    name: 'Prices',
    firstColumn: 1,
    headingRow,
    bands: [
      {
        title: 'Price list',
        ...bandLooks.input,
        columns: [
          column(
            'Code',
            18,
            words,
            'CALL: one top-up call. REPAIR: the repair. A gas: one weighed ounce, in either unit system.',
          ),
          column('Sell', 9.5, money),
          column('Sell, low', 9.5, money, 'Blank: known exactly.'),
          column('Sell, high', 9.5, money),
          column(
            'Where from',
            34,
            words,
            'Replace the word "example" with where your own figure comes from.',
          ),
          column('Valid from', 11, day, 'A dated price lets an old quote be rebuilt.'),
          column('Per', 11, { align: 'center' }),
        ],
      },
    ],
    rows: priceRows.map(({ code, sell, low, high, source, validFrom, per }) => ({
      Code: code,
      Sell: sell,
      'Sell, low': low,
      'Sell, high': high,
      'Where from': source,
      'Valid from': dateSerial(validFrom),
      Per: per,
    })),
    spareRows: 4,
    looks: tableLooks,
  });
}
