import { columnLetters } from '../../writing/address.ts';
import { looks } from '../../writing/palette.ts';
import type { CellRecipe, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { titled } from '../../writing/title-block.ts';

/** Gas and curve of each column as delivered; both can be changed. Colours and dashes differ together. */
const curves = [
  { gas: 'R-32', curve: 'dew', colour: '0B3C66', dash: 'solid' },
  { gas: 'R-410A', curve: 'dew', colour: '2E86C1', dash: 'dash' },
  { gas: 'R-22', curve: 'dew', colour: 'D55E00', dash: 'solid' },
  { gas: 'R-290', curve: 'dew', colour: '8A6D1B', dash: 'dash' },
  { gas: 'R-407C', curve: 'dew', colour: '7A4B8C', dash: 'solid' },
  { gas: 'R-407C', curve: 'bubble', colour: '7A4B8C', dash: 'dot' },
  { gas: 'R-134a', curve: 'dew', colour: '3D4852', dash: 'dash dot' },
] as const;

const firstRow = 9;
/** 0 to 130 °F in steps of 5, or -18 to 55 °C in steps of about 2.8. */
const rows = 27;
const lastRow = firstRow + rows - 1;
const name = 'Pressure chart';

const cells: CellRecipe[] = [
  ...titled(
    name,
    'Saturation pressure on a gauge against temperature. Change gas, curve or elevation: table and curves follow.',
  ),
  { at: 'A4', content: 'Elevation', look: looks.label },
  { at: 'B4', content: formula('log_elevation'), look: { ...looks.input, align: 'right', format: '#,##0' } },
  { at: 'C4', content: formula('IF(log_units="SI","m","ft")'), look: looks.unit },
  { at: 'A5', content: 'Gas', look: { ...looks.label, bold: true } },
  { at: 'A6', content: 'Curve', look: { ...looks.label, bold: true } },
  { at: 'A7', content: formula('IF(log_units="SI","°C","°F")'), look: looks.heading },
];
curves.forEach(({ gas, curve }, index) => {
  const letters = columnLetters(index + 2);
  cells.push(
    { at: `${letters}5`, content: gas, look: { ...looks.input, align: 'center', bold: true } },
    { at: `${letters}6`, content: curve, look: { ...looks.input, align: 'center' } },
    { at: `${letters}7`, content: formula(`${letters}5&" "&${letters}6`), look: looks.heading },
    { at: `${letters}8`, content: formula('IF(log_units="SI","kPa","psig")'), look: looks.unit },
  );
});
for (let row = firstRow; row <= lastRow; row += 1) {
  const temperature =
    row === firstRow ? 'IF(log_units="SI",-20,0)' : `A${String(row - 1)}+IF(log_units="SI",2.5,5)`;
  cells.push({
    at: `A${String(row)}`,
    content: formula(temperature),
    look: { ...looks.computed, bold: true, align: 'center', format: '0.0' },
  });
  curves.forEach((_curve, index) => {
    const letters = columnLetters(index + 2);
    cells.push({
      at: `${letters}${String(row)}`,
      content: formula(
        `IF(${letters}$5="","",OUNCE.SATPRESSURE(${letters}$5,$A${String(row)},${letters}$6,$B$4,log_units))`,
      ),
      look: { ...looks.computed, align: 'right', format: '0.0' },
    });
  });
}

const lastLetters = columnLetters(curves.length + 1);

export const pressureChartSheet: SheetRecipe = {
  name,
  tabColour: '3F6484',
  gridLines: false,
  freeze: { columns: 1, rows: 8 },
  widths: { A: 10, [`B:${lastLetters}`]: 10.5, I: 3, J: 10 },
  heights: { 1: 26, 2: 16, 7: 30 },
  cells: [
    ...cells,
    {
      at: `A${String(lastRow + 2)}`,
      content:
        'Dew is read for superheat, bubble for subcooling and for standing pressure. For a blend with glide the two differ.',
      look: looks.subtitle,
    },
  ],
  checks: [
    {
      range: `B5:${lastLetters}5`,
      allow: { kind: 'list', from: 'gas_list' },
      title: 'Gas',
      message: 'A gas of the Settings sheet, or any designation.',
      strict: false,
    },
    {
      range: `B6:${lastLetters}6`,
      allow: { kind: 'choices', choices: ['dew', 'bubble'] },
      title: 'Curve',
      message: 'dew or bubble.',
      strict: true,
    },
  ],
  charts: [
    {
      at: 'J4',
      kind: 'curve',
      title: 'Saturation pressure',
      widthPx: 720,
      heightPx: 600,
      acrossTitle: 'Temperature',
      valueTitle: 'Gauge pressure',
      series: curves.map(({ colour, dash }, index) => {
        const letters = columnLetters(index + 2);
        return {
          name: `'${name}'!$${letters}$7`,
          across: `'${name}'!$A$${String(firstRow)}:$A$${String(lastRow)}`,
          values: `'${name}'!$${letters}$${String(firstRow)}:$${letters}$${String(lastRow)}`,
          colour,
          dash,
        };
      }),
    },
  ],
  print: { landscape: true, pagesWide: 1, pagesTall: 1 },
};
