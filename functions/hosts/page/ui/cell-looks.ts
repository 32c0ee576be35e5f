/// <reference lib="dom" />
import type { CellStyle } from '../../../workbook/file/cell-styles.ts';

/** Looks of a workbook as rules of a style sheet the page makes: no style attribute, which the page's policy forbids. */
export class CellLooks {
  readonly #sheet = new CSSStyleSheet();
  #styles: readonly CellStyle[] = [];
  readonly scale: number;

  constructor(scale: number) {
    this.scale = scale;
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, this.#sheet];
  }

  set(styles: readonly CellStyle[], overlays: readonly CellStyle[]): void {
    this.#styles = styles;
    const rules = [
      ...styles.map((style, number) => `.cell.s${number}{${this.#declarations(style)}}`),
      // Of several overlays the first counts: it is written last.
      ...overlays.map((style, number) => `.cell.o${number}{${this.#declarations(style)}}`).reverse(),
    ];
    this.#sheet.replaceSync(rules.join('\n'));
  }

  style(number: number | undefined): CellStyle | undefined {
    return this.#styles[number ?? 0];
  }

  #declarations(style: CellStyle): string {
    const lines: string[] = [];
    if (style.bold !== undefined) lines.push(`font-weight:${style.bold ? 700 : 400}`);
    if (style.italic === true) lines.push('font-style:italic');
    const decoration = [style.underline === true && 'underline', style.strike === true && 'line-through'];
    if (decoration.some(Boolean)) lines.push(`text-decoration:${decoration.filter(Boolean).join(' ')}`);
    if (style.size !== undefined && style.size > 0) {
      // Small print of a sheet is made for paper; on a screen in the sun it needs more.
      const pixels = Math.max(Math.min(style.size, 60) * (96 / 72), 12.5) * this.scale;
      lines.push(`font-size:${pixels.toFixed(1)}px`);
    }
    if (style.color !== undefined) lines.push(`color:${style.color}`);
    if (style.fill !== undefined) lines.push(`background-color:${style.fill}`);
    for (const [side, color] of Object.entries(style.borders ?? {})) {
      lines.push(`border-${side}:1px solid ${color}`);
    }
    const indent = Math.min(style.indent ?? 0, 15) * 9 * this.scale + 4;
    if (style.horizontal === 'right') lines.push('text-align:right', `padding-right:${indent}px`);
    else if (style.horizontal === 'center' || style.horizontal === 'centerContinuous') {
      lines.push('text-align:center');
    } else if (style.horizontal !== undefined) lines.push('text-align:left', `padding-left:${indent}px`);
    if (style.vertical === 'center') lines.push('align-items:safe center');
    else if (style.vertical === 'top') lines.push('align-items:flex-start');
    if (style.wrap === true)
      lines.push('white-space:pre-wrap', 'overflow-wrap:break-word', 'line-height:1.2');
    return lines.join(';');
  }
}
