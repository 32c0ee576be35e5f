import { looks } from '../../writing/palette.ts';
import type { CellRecipe, Content, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { ruled, titled } from '../../writing/title-block.ts';
import { sheetNames } from '../names.ts';

interface Setting {
  readonly name: string;
  readonly label: string;
  readonly value: Content;
  readonly help: string;
  readonly format?: string;
}

/** What the sheets go by. `gather` fills in the ones it knows. */
const settings: readonly Setting[] = [
  { name: 'fleet_outfit', label: 'Outfit', value: 'Your outfit', help: 'Printed above the overview.' },
  {
    name: 'log_units',
    label: 'Unit system',
    value: 'US',
    help: 'What the ledger is written in: US (oz, °F, psig) or SI (g, °C, kPa). To change it, gather again.',
  },
  {
    name: 'fleet_as_of',
    label: 'Through',
    value: formula('IF(COUNT(Ledger[Date and time])=0,"",INT(MAX(Ledger[Date and time])))'),
    format: 'yyyy-mm-dd',
    help: 'Last day of the ledger. Type another day to look back at it.',
  },
  {
    name: 'fleet_limit',
    label: 'Call at',
    value: 85,
    format: '0',
    help: 'Percent of the nameplate charge at which a unit is due.',
  },
  { name: 'fleet_soon', label: 'Due soon', value: 60, format: '0', help: 'Days ahead that count as soon.' },
  {
    name: 'fleet_visit_price',
    label: 'Price of a visit',
    value: '',
    format: '#,##0.00',
    help: 'For the cost so far. Blank: no cost.',
  },
  {
    name: 'fleet_gas_price',
    label: 'Price of refrigerant',
    value: '',
    format: '#,##0.00',
    help: 'Per ounce (US) or kilogram (SI) that reached a unit. Blank: no cost.',
  },
  {
    name: 'fleet_scale_step',
    label: 'Scale step',
    value: '0.1 oz',
    help: 'Smallest step of the scales, with its unit. Decides what the cylinder account may miss.',
  },
  { name: 'fleet_gathered', label: 'Gathered from', value: '', help: 'Written by gather.' },
];

const firstRow = 4;

export const settingNames: Readonly<Record<string, string>> = Object.fromEntries(
  settings.map(({ name }, index) => [name, `${sheetNames.settings}!$B$${firstRow + index}`]),
);

export const settingsSheet: SheetRecipe = {
  name: sheetNames.settings,
  tabColour: '5B6B78',
  gridLines: false,
  widths: { A: 22, B: 40, C: 72 },
  heights: {
    1: 26,
    2: 16,
    3: 8,
    ...Object.fromEntries(
      settings.map((_, index) => [firstRow + index, index === settings.length - 1 ? 46 : 22]),
    ),
  },
  cells: [
    ...titled('Settings', 'Every sheet reads from here. Cream cells are yours.'),
    ...settings.flatMap(({ label, value, help, format }, index): CellRecipe[] => {
      const row = String(firstRow + index);
      const look: Look = {
        ...(typeof value === 'object' ? looks.computed : looks.input),
        align: 'left',
        indent: 1,
        wrap: true,
        ...(format === undefined ? {} : { format }),
      };
      return [
        { at: `A${row}`, content: label, look: { ...looks.label, ...ruled } },
        { at: `B${row}`, content: value, look },
        { at: `C${row}`, content: help, look: { size: 9, ink: '5B6B78', indent: 1, ...ruled } },
      ];
    }),
  ],
  print: { landscape: true, pagesWide: 1, pagesTall: 1 },
};
