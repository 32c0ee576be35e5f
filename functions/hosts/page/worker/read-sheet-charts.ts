import { columnLimit, rowLimit } from '../../../workbook/model/address.ts';
import { FileError } from '../../../workbook/file/file-error.ts';
import { readPart, readRelationships } from '../../../workbook/file/package-parts.ts';
import type { ZipArchive } from '../../../workbook/file/zip-archive.ts';
import { attribute, readXml } from '../../../workbook/file/xml-reader.ts';
import type { ChartCorner } from '../protocol.ts';

/** Formulas of the cells that one series of a chart shows. */
export interface ChartSeries {
  name: string;
  labels: string;
  values: string;
}

/** A chart as the file describes it (ECMA-376 Part 1, 21.2). */
export interface FileChart {
  readonly from: ChartCorner;
  readonly to: ChartCorner;
  readonly title: string;
  /** Upright bars, one series or several on top of each other, or lines through points: what can be drawn here. */
  readonly kind: 'bars' | 'lines' | 'other';
  /** What its axes of values are: across and upward for lines. */
  readonly axes: readonly string[];
  readonly series: readonly ChartSeries[];
  /** Where the scale of the values ends, when the file says so. */
  readonly highest: number | undefined;
}

/** English metric units in a pixel (20.1.10.16). */
const unitsPerPixel = 9525;
/** More charts than these on one sheet are left out. */
const mostCharts = 40;

/**
 * Charts on a sheet, by the name of its part; those whose corners the file does not give are left out. A drawing that
 * cannot be read has none: the cells are worth opening without it.
 */
export function readSheetCharts(archive: ZipArchive, part: string): FileChart[] {
  try {
    return chartsOf(archive, part);
  } catch (problem) {
    if (problem instanceof FileError) return [];
    throw problem;
  }
}

function chartsOf(archive: ZipArchive, part: string): FileChart[] {
  const charts: FileChart[] = [];
  for (const { kind, part: drawing } of readRelationships(archive, part)) {
    if (kind !== 'drawing' || drawing === undefined) continue;
    const links = readRelationships(archive, drawing);
    for (const { from, to, link } of readAnchors(readPart(archive, drawing), drawing).slice(0, mostCharts)) {
      const chart = links.find(({ id }) => id === link)?.part;
      if (chart !== undefined) charts.push({ from, to, ...readChart(readPart(archive, chart), chart) });
    }
  }
  return charts;
}

interface Anchor {
  readonly from: ChartCorner;
  readonly to: ChartCorner;
  readonly link: string;
}

/** Where charts lie: between two corners, each in a cell (20.5.2.33). */
function readAnchors(text: string, part: string): Anchor[] {
  const anchors: Anchor[] = [];
  let corners: Record<string, Record<string, number>> = {};
  let corner = '';
  let place = '';
  let link: string | undefined;
  readXml(text, part, {
    open(element, attributes) {
      if (element === 'twoCellAnchor') [corners, link] = [{}, undefined];
      else if (element === 'from' || element === 'to') corners[(corner = element)] = {};
      else if (element === 'chart') link = attribute(attributes, 'id');
      place = element;
    },
    text(words) {
      const found = corners[corner];
      if (found !== undefined) found[place] = Number(words);
    },
    close(element) {
      place = '';
      if (element === 'from' || element === 'to') corner = '';
      if (element !== 'twoCellAnchor' || link === undefined) return;
      const from = cornerOf(corners.from);
      const to = cornerOf(corners.to);
      if (from !== undefined && to !== undefined) anchors.push({ from, to, link });
    },
  });
  return anchors;
}

function cornerOf(found: Record<string, number> | undefined): ChartCorner | undefined {
  const { row = NaN, col = NaN, rowOff = 0, colOff = 0 } = found ?? {};
  const isPlace = Number.isInteger(row) && Number.isInteger(col) && row >= 0 && col >= 0;
  if (!isPlace || row >= rowLimit || col >= columnLimit) return undefined;
  return { row, column: col, x: colOff / unitsPerPixel, y: rowOff / unitsPerPixel };
}

function readChart(text: string, part: string): Omit<FileChart, 'from' | 'to'> {
  const path: string[] = [];
  const kinds = new Set<string>();
  const series: ChartSeries[] = [];
  let title = '';
  const axes: string[] = [];
  let isUpright = false;
  let grouping = '';
  let highest: number | undefined;
  const isIn = (...steps: readonly string[]): boolean => steps.every((step) => path.includes(step));
  readXml(text, part, {
    open(element, attributes) {
      const value = attribute(attributes, 'val') ?? '';
      if (path.at(-1) === 'plotArea' && element.endsWith('Chart')) kinds.add(element);
      else if (element === 'barDir') isUpright = value === 'col';
      else if (element === 'grouping') grouping = value;
      else if (element === 'valAx') axes.push('');
      else if (element === 'ser') series.push({ name: '', labels: '', values: '' });
      else if (element === 'max' && isIn('valAx', 'scaling')) highest = Number(value);
      path.push(element);
    },
    text(words) {
      const last = series.at(-1);
      const here = path.at(-1);
      if (here === 't' && isIn('title')) {
        // The chart's own title; those of its axes lie inside the plot area.
        if (!path.includes('plotArea')) title += words;
        else if (isIn('valAx')) axes.push(`${axes.pop() ?? ''}${words}`);
      }
      if (here !== 'f' || last === undefined) return;
      if (isIn('ser', 'tx')) last.name += words;
      else if (isIn('ser', 'cat') || isIn('ser', 'xVal')) last.labels += words;
      else if (isIn('ser', 'val') || isIn('ser', 'yVal')) last.values += words;
    },
    close() {
      path.pop();
    },
  });
  const isStacked = grouping === 'stacked' || series.length === 1;
  const only = kinds.size === 1 ? [...kinds][0] : undefined;
  const kind =
    only === 'scatterChart' ? 'lines' : only === 'barChart' && isUpright && isStacked ? 'bars' : 'other';
  return { title, kind, axes, series, highest: Number.isFinite(highest) ? highest : undefined };
}
