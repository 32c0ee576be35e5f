/**
 * What a workbook is made of, as plain data. A recipe names no writer library and no host:
 * formulas are spelled `OUNCE.NAME(` and are respelled for each target when the file is written.
 */

/** How a cell looks. Colours are six hexadecimal digits. */
export interface Look {
  readonly fill?: string;
  readonly ink?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly size?: number;
  readonly align?: 'left' | 'center' | 'right';
  readonly vertical?: 'top' | 'center' | 'bottom';
  readonly wrap?: boolean;
  readonly indent?: number;
  readonly turned?: number;
  /** Number format code. */
  readonly format?: string;
  /** Thin line around, or below only. */
  readonly line?: { readonly colour: string; readonly sides: 'all' | 'bottom' | 'top' | 'left' };
  /** False: stays open when the sheet is protected. */
  readonly locked?: boolean;
}

export interface Formula {
  /** Without the leading equals sign. */
  readonly formula: string;
  /** The area of an array formula, from its own cell on; an ordinary formula when absent. */
  readonly over?: string;
}

export type Content = number | string | boolean | Formula;

export function formula(text: string): Formula {
  return { formula: text };
}

export interface CellRecipe {
  readonly at: string;
  readonly content?: Content | undefined;
  readonly look?: Look | undefined;
  /** Bottom right corner when the cell spans several. */
  readonly through?: string | undefined;
  /** Place inside the workbook to jump to: "Readings!A1". */
  readonly jump?: string | undefined;
}

export interface Rule {
  readonly range: string;
  /** Formula for the first cell of the range, without the equals sign. */
  readonly when: string;
  readonly look: Pick<Look, 'fill' | 'ink' | 'bold' | 'italic'>;
}

export interface Check {
  readonly range: string;
  readonly allow:
    | { readonly kind: 'choices'; readonly choices: readonly string[] }
    /** A range or a defined name. */
    | { readonly kind: 'list'; readonly from: string }
    | { readonly kind: 'between'; readonly minimum: string; readonly maximum: string; readonly whole?: true };
  readonly title: string;
  readonly message: string;
  /** True: the host refuses other entries; false: it asks. */
  readonly strict: boolean;
  /** Shown when the cell is picked. */
  readonly prompt?: string;
}

export interface NoteRecipe {
  readonly at: string;
  readonly text: string;
}

export interface ChartRecipe {
  readonly at: string;
  readonly kind: 'curve' | 'columns' | 'stacked' | 'bars';
  /** False: no legend, for a chart of one series. */
  readonly legend?: false;
  /** Space between columns or bars, percent of their width. */
  readonly gapWidth?: number;
  readonly title: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly series: readonly {
    readonly name: string;
    readonly across: string;
    readonly values: string;
    readonly colour: string;
    readonly dash?: 'solid' | 'dash' | 'dot' | 'dash dot';
    /** A line that stands behind the others. */
    readonly thin?: true;
    readonly marker?: 'circle' | 'square' | 'triangle' | 'diamond';
  }[];
  /** Joins the points of a curve by straight lines, for values that jump. */
  readonly straight?: boolean;
  /** Empty: no title on the axis. */
  readonly acrossTitle: string;
  readonly valueTitle: string;
  readonly acrossLimits?: readonly [number, number];
  readonly valueLimits?: readonly [number, number];
}

export interface NativeTable {
  readonly name: string;
  readonly range: string;
  /** Headings with the formula that a new row is filled with, where there is one. */
  readonly columns: readonly { readonly heading: string; readonly fill?: string | undefined }[];
}

export interface PrintSetup {
  readonly landscape: boolean;
  readonly pagesWide: number;
  /** 0: as many as it takes. */
  readonly pagesTall: number;
  readonly area?: string;
  readonly repeatRows?: string;
  readonly repeatColumns?: string;
  readonly pageOrder?: 'overThenDown' | 'downThenOver';
  /** Column letters before which a new page begins. */
  readonly breakBefore?: readonly string[];
}

export interface SheetRecipe {
  readonly name: string;
  readonly tabColour?: string;
  readonly gridLines: boolean;
  readonly zoom?: number;
  readonly freeze?: { readonly columns: number; readonly rows: number };
  /** "A" or "C:F" to a width in characters. */
  readonly widths: Readonly<Record<string, number>>;
  readonly heights?: Readonly<Record<number, number>>;
  readonly cells: readonly CellRecipe[];
  readonly tables?: readonly NativeTable[];
  readonly checks?: readonly Check[];
  readonly rules?: readonly Rule[];
  readonly notes?: readonly NoteRecipe[];
  readonly charts?: readonly ChartRecipe[];
  /** "AX:BA" groups of columns that can be folded away; folded when written if `folded`. */
  readonly groups?: readonly { readonly columns: string; readonly folded: boolean }[];
  readonly print: PrintSetup;
  /** Cells that are not left open cannot be typed into; there is no password, whoever wants to takes it off. */
  readonly protect?: true;
}

export interface WorkbookRecipe {
  readonly title: string;
  readonly subject: string;
  /** Base of the file name; the target adds its own ending. */
  readonly file: string;
  readonly names: Readonly<Record<string, string>>;
  readonly sheets: readonly SheetRecipe[];
}
