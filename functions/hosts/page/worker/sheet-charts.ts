import type { Sheet } from '../../../workbook/model/sheet.ts';
import type { CellValue } from '../../../workbook/model/values.ts';
import { CellError } from '../../../workbook/model/values.ts';
import type { BarChart, LineChart, PlacedChart } from '../protocol.ts';
import { evaluateAside } from './evaluate.ts';
import type { EditedLog } from './edited-log.ts';
import type { FileChart } from './read-sheet-charts.ts';

/** Most bars side by side. */
const mostBars = 60;
const mostPoints = 2000;

/** The charts of a sheet with the values its cells have now. */
export function sheetCharts(log: EditedLog, sheet: Sheet): PlacedChart[] {
  return (log.log.charts.get(sheet) ?? []).map((chart) => {
    const { from, to, title } = chart;
    return {
      from,
      to,
      title,
      bars: chart.kind === 'bars' ? barsOf(log, sheet, chart) : undefined,
      lines: chart.kind === 'lines' ? linesOf(log, sheet, chart) : undefined,
    };
  });
}

/** The bar charts of all sheets that have anything to show, for the panel beside whatever sheet is open. */
export function barCharts(log: EditedLog): BarChart[] {
  return log.workbook.sheets
    .flatMap((sheet) => sheetCharts(log, sheet))
    .flatMap(({ bars }) => bars ?? [])
    .filter(({ series }) => series.some(({ values }) => values.some((value) => (value ?? 0) !== 0)));
}

function barsOf(log: EditedLog, sheet: Sheet, { title, series, highest }: FileChart): BarChart {
  const cells = (formula: string): CellValue[] => valuesOf(log, sheet, formula);
  const labels = cells(series[0]?.labels ?? '').map(words);
  const found = series
    .map(({ name, values }) => ({ name: words(cells(name)[0] ?? null), values: cells(values).map(figure) }))
    // What was nothing all along takes no room in the legend.
    .filter(({ values }, _index, all) => all.length === 1 || values.some((value) => (value ?? 0) !== 0));
  let count = Math.max(labels.length, ...found.map(({ values }) => values.length));
  while (count > 0 && isBlank(labels, found, count - 1)) count--;
  count = Math.min(count, mostBars);
  return {
    title,
    labels: Array.from({ length: count }, (_, index) => labels[index] ?? ''),
    series: found.map(({ name, values }) => ({ name, values: values.slice(0, count) })),
    ...(highest === undefined ? {} : { highest }),
  };
}

function linesOf(log: EditedLog, sheet: Sheet, { axes, series }: FileChart): LineChart {
  const cells = (formula: string): CellValue[] => valuesOf(log, sheet, formula);
  const found = series.map(({ name, labels, values }) => {
    const across = cells(labels).slice(0, mostPoints);
    const upward = cells(values);
    const points = across.flatMap((x, index): [number, number][] => {
      const y = upward[index];
      return typeof x === 'number' && typeof y === 'number' ? [[x, y]] : [];
    });
    return { name: words(cells(name)[0] ?? null), points };
  });
  return {
    across: axes[0] ?? '',
    upward: axes[1] ?? '',
    series: found.filter(({ points }) => points.length > 0),
  };
}

function isBlank(
  labels: readonly string[],
  series: readonly { readonly values: readonly (number | undefined)[] }[],
  index: number,
): boolean {
  return (labels[index] ?? '') === '' && series.every(({ values }) => (values[index] ?? 0) === 0);
}

function valuesOf({ workbook }: EditedLog, sheet: Sheet, formula: string): CellValue[] {
  if (formula === '') return [];
  const place = { sheet, baseRow: 0, baseColumn: 0, row: 0, column: 0 };
  const answer = evaluateAside(workbook, formula, place);
  if (answer === undefined) return [];
  if ('value' in answer) return [answer.value];
  return 'list' in answer ? answer.list : answer.reference.toMatrix(workbook).flat();
}

function words(value: CellValue): string {
  return value === null || value instanceof CellError ? '' : String(value);
}

function figure(value: CellValue): number | undefined {
  return typeof value === 'number' ? value : undefined;
}
