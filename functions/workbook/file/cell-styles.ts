import { attribute, readXml, truth } from './xml-reader.ts';
import type { Attributes } from './xml-reader.ts';

/** How a cell looks. What is undefined is not said by the file. */
export interface CellStyle {
  format: string;
  bold?: boolean;
  italic?: boolean;
  underline?: boolean;
  strike?: boolean;
  /** Points. */
  size?: number;
  /** "#rrggbb". */
  color?: string;
  fill?: string;
  borders?: Partial<Record<'left' | 'right' | 'top' | 'bottom', string>>;
  horizontal?: string;
  vertical?: string;
  wrap?: boolean;
  indent?: number;
}

export interface CellStyles {
  /** By the number that cells carry. */
  readonly cells: readonly CellStyle[];
  /** Looks that conditional formats put over a cell's own, by number. */
  readonly overlays: readonly CellStyle[];
}

/** Built-in number formats in the spelling of US English (ECMA-376 Part 1, 18.8.30). */
const builtIn: Readonly<Record<number, string>> = {
  1: '0',
  2: '0.00',
  3: '#,##0',
  4: '#,##0.00',
  9: '0%',
  10: '0.00%',
  11: '0.00E+00',
  12: '# ?/?',
  13: '# ??/??',
  14: 'yyyy-mm-dd',
  15: 'd-mmm-yy',
  16: 'd-mmm',
  17: 'mmm-yy',
  18: 'h:mm AM/PM',
  19: 'h:mm:ss AM/PM',
  20: 'h:mm',
  21: 'h:mm:ss',
  22: 'yyyy-mm-dd hh:mm',
  37: '#,##0;(#,##0)',
  38: '#,##0;[Red](#,##0)',
  39: '#,##0.00;(#,##0.00)',
  40: '#,##0.00;[Red](#,##0.00)',
  45: 'mm:ss',
  46: '[h]:mm:ss',
  47: 'mm:ss.0',
  48: '##0.0E+0',
  49: '@',
};

type Part = Omit<CellStyle, 'format'>;

/** The looks that a styles part declares, with theme colours worked out. */
export function readCellStyles(text: string, part: string, theme: readonly string[]): CellStyles {
  const formats = new Map<number, string>();
  const fonts: Part[] = [];
  const fills: Part[] = [];
  const borders: Part[] = [];
  const cells: CellStyle[] = [];
  const overlays: CellStyle[] = [];
  const path: string[] = [];
  let current: Part = {};
  let side: 'left' | 'right' | 'top' | 'bottom' | undefined;
  const formatOf = (id: number): string => formats.get(id) ?? builtIn[id] ?? 'General';
  readXml(text, part, {
    open(element, attributes) {
      const parent = path.at(-1);
      const isOverlay = path.includes('dxf');
      path.push(element);
      if (element === 'dxf' || (!isOverlay && ['font', 'fill', 'border'].includes(element))) current = {};
      const list = parent === 'cellXfs' ? cells : undefined;
      switch (element) {
        case 'numFmt': {
          const code = attribute(attributes, 'formatCode') ?? 'General';
          if (!isOverlay) formats.set(Number(attribute(attributes, 'numFmtId')), code);
          break;
        }
        case 'b':
          current.bold = truth(attribute(attributes, 'val'), true);
          break;
        case 'i':
          current.italic = truth(attribute(attributes, 'val'), true);
          break;
        case 'strike':
          current.strike = truth(attribute(attributes, 'val'), true);
          break;
        case 'u':
          current.underline = attribute(attributes, 'val') !== 'none';
          break;
        case 'sz':
          current.size = Number(attribute(attributes, 'val'));
          break;
        case 'color':
          setColor(current, colorOf(attributes, theme), side);
          break;
        case 'fgColor':
        case 'bgColor': {
          // A plain fill of a cell is the foreground of its pattern; of an overlay, the background.
          const wanted = isOverlay ? 'bgColor' : 'fgColor';
          const color = colorOf(attributes, theme);
          if (element === wanted && color !== undefined) current.fill = color;
          break;
        }
        case 'patternFill':
          if (attribute(attributes, 'patternType') === 'none') delete current.fill;
          break;
        case 'left':
        case 'right':
        case 'top':
        case 'bottom':
          side = undefined;
          if ((attribute(attributes, 'style') ?? 'none') !== 'none') {
            side = element;
            current.borders = { ...current.borders, [element]: '#000000' };
          }
          break;
        case 'xf':
          list?.push({
            ...fonts[Number(attribute(attributes, 'fontId') ?? 0)],
            ...fills[Number(attribute(attributes, 'fillId') ?? 0)],
            ...borders[Number(attribute(attributes, 'borderId') ?? 0)],
            format: formatOf(Number(attribute(attributes, 'numFmtId') ?? 0)),
          });
          break;
        case 'alignment': {
          const style = path.includes('cellXfs') ? cells.at(-1) : undefined;
          if (style !== undefined) align(style, attributes);
          break;
        }
        default:
      }
    },
    close(element) {
      path.pop();
      const parent = path.at(-1);
      if (element === 'font' && parent === 'fonts') fonts.push(current);
      else if (element === 'fill' && parent === 'fills') fills.push(current);
      else if (element === 'border' && parent === 'borders') borders.push(current);
      else if (element === 'dxf') overlays.push({ ...current, format: 'General' });
      else if (element === side) side = undefined;
    },
  });
  return { cells, overlays };
}

function setColor(style: Part, color: string | undefined, side: string | undefined): void {
  if (color === undefined) return;
  if (side === undefined) style.color = color;
  else style.borders = { ...style.borders, [side]: color };
}

function align(style: CellStyle, attributes: Attributes): void {
  const horizontal = attribute(attributes, 'horizontal');
  const vertical = attribute(attributes, 'vertical');
  if (horizontal !== undefined && horizontal !== 'general') style.horizontal = horizontal;
  if (vertical !== undefined) style.vertical = vertical;
  if (truth(attribute(attributes, 'wrapText'), false)) style.wrap = true;
  const indent = Number(attribute(attributes, 'indent') ?? 0);
  if (indent > 0) style.indent = indent;
}

/** The first eight indexed colours and the two of the system (18.8.27). */
const indexed = ['000000', 'ffffff', 'ff0000', '00ff00', '0000ff', 'ffff00', 'ff00ff', '00ffff'];

function colorOf(attributes: Attributes, theme: readonly string[]): string | undefined {
  const rgb = attribute(attributes, 'rgb');
  if (rgb !== undefined && /^[0-9a-f]{6}(?:[0-9a-f]{2})?$/i.test(rgb))
    return `#${rgb.slice(-6).toLowerCase()}`;
  const number = attribute(attributes, 'indexed');
  if (number !== undefined) {
    const known = Number(number) < 16 ? indexed[Number(number) % 8] : undefined;
    return known === undefined ? undefined : `#${known}`;
  }
  const position = attribute(attributes, 'theme');
  const base = position === undefined ? undefined : theme[Number(position)];
  return base === undefined ? undefined : tinted(base, Number(attribute(attributes, 'tint') ?? 0));
}

/** A colour made lighter (tint above 0) or darker, channel by channel: near enough to lightness for a screen. */
function tinted(color: string, tint: number): string {
  const channels = [1, 3, 5].map((at) => Number.parseInt(color.slice(at, at + 2), 16));
  const changed = channels.map((value) => (tint < 0 ? value * (1 + tint) : value + (255 - value) * tint));
  return `#${changed.map((value) => Math.round(value).toString(16).padStart(2, '0')).join('')}`;
}

/** Colours of a theme in the order cells count them: light and dark are swapped in the first two pairs (20.1.6.2). */
export function readThemeColors(text: string, part: string): string[] {
  const found: string[] = [];
  let inScheme = false;
  readXml(text, part, {
    open(element, attributes) {
      if (element === 'clrScheme') inScheme = true;
      else if (inScheme && element === 'srgbClr') found.push(`#${attribute(attributes, 'val') ?? '000000'}`);
      else if (inScheme && element === 'sysClr')
        found.push(`#${attribute(attributes, 'lastClr') ?? '000000'}`);
    },
    close(element) {
      if (element === 'clrScheme') inScheme = false;
    },
  });
  const [dark1 = '#000000', light1 = '#ffffff', dark2 = '#000000', light2 = '#ffffff', ...rest] = found;
  return [light1, dark1, light2, dark2, ...rest].map((color) =>
    /^#[0-9a-f]{6}$/i.test(color) ? color.toLowerCase() : '#000000',
  );
}
