import type { CellStyle } from '../../workbook/file/cell-styles.ts';
import type { VisitList, VisitPlace, VisitView } from './visit-protocol.ts';

/** What the page and its worker say to each other. Rows and columns are counted from 0; areas include their ends. */
export interface Area {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export interface Spot {
  readonly row: number;
  readonly column: number;
}

/** How a cell's text is set when the cell's look does not say: numbers right, words left, truth and errors in the middle. */
export type ValueKind = 'number' | 'text' | 'truth' | 'error' | 'blank';

export interface ShownCell extends Spot {
  readonly text: string;
  readonly kind: ValueKind;
  /** Number of its look, and of the looks that conditional formats put over it. */
  readonly style: number | undefined;
  readonly overlays: readonly number[];
}

export interface SheetInfo {
  readonly name: string;
  readonly isHidden: boolean;
  readonly rowCount: number;
  readonly columnCount: number;
  /** Pixels. */
  readonly columnWidths: readonly (readonly [number, number])[];
  readonly defaultColumnWidth: number;
  readonly rowHeights: readonly (readonly [number, number])[];
  readonly defaultRowHeight: number;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly showsGridLines: boolean;
  readonly merges: readonly Area[];
  readonly links: readonly (readonly [string, string])[];
  readonly tables: readonly (Area & { readonly name: string })[];
  readonly hasCharts: boolean;
}

export interface LogInfo {
  readonly id: string;
  readonly name: string;
  readonly sheets: readonly SheetInfo[];
  readonly styles: readonly CellStyle[];
  readonly overlays: readonly CellStyle[];
  /** Sheet to show first. */
  readonly first: number;
  /** It has readings that can be shown visit by visit. */
  readonly hasVisits: boolean;
}

/** What the page looks at: a part of a sheet, the cell in hand and the selected area. */
export interface Gaze {
  readonly sheet: number;
  readonly areas: readonly Area[];
  readonly cell: Spot;
  readonly selection: Area;
  /** Set while the page shows a visit: a row of it. */
  readonly visit?: VisitPlace | undefined;
}

export interface Gate {
  readonly name: string;
  readonly state: 'good' | 'care' | 'stop' | 'none';
  readonly text: string;
}

/** The row in hand in one line: its gates, what to do next, and the words behind it. */
export interface Hand {
  readonly title: string;
  readonly next: string;
  readonly nextState: Gate['state'];
  readonly why: string;
  /** What comes before everything else on this unit: its gas burns. Empty otherwise. */
  readonly danger: string;
  readonly gates: readonly Gate[];
  readonly facts: readonly { readonly name: string; readonly text: string }[];
}

export interface CellInHand extends Spot {
  readonly address: string;
  /** Heading of its column in its table. */
  readonly heading: string;
  readonly shown: string;
  /** As it is edited. */
  readonly typed: string;
  /** Why it shows an error, or what it may hold. */
  readonly error: string;
  readonly prompt: string;
  readonly choices: readonly string[];
  readonly hasFormula: boolean;
  /** Of a table: where Tab goes on, and back, over what is worked out. */
  readonly tabTo: { readonly next: Spot | undefined; readonly previous: Spot | undefined };
  /** What Ctrl+; puts down here. */
  readonly stamp: 'day' | 'moment';
}

export interface FoundCell extends Spot {
  readonly sheet: number;
}

export interface View {
  readonly cells: readonly ShownCell[];
  readonly inHand: CellInHand;
  readonly hand: Hand | undefined;
  /** The visit that was asked for; undefined when none was, or the log has none. */
  readonly visit: VisitView | undefined;
  /** The unit that the row in hand is about; empty when it names none. */
  readonly unit: string;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Changed since it was saved to a file. */
  readonly isChanged: boolean;
  /** Selected cells as tab-separated text; undefined when there are too many. */
  readonly selected: string | undefined;
  /** Something to tell: a refused entry, cells that break a rule. */
  readonly notice: string;
  readonly wasRefused: boolean;
  /** Set when sheets changed their size or tables. */
  readonly sheets: readonly SheetInfo[] | undefined;
  readonly milliseconds: number;
}

export interface Typed extends Spot {
  readonly typed: string;
}

/** Bars over names: one series beside its names, several on top of each other. */
export interface BarChart {
  readonly title: string;
  readonly labels: readonly string[];
  readonly series: readonly { readonly name: string; readonly values: readonly (number | undefined)[] }[];
  /** Where the scale ends whatever the bars say. */
  readonly highest?: number;
}

/** A place in a cell, in pixels from its upper left corner. */
export interface ChartCorner extends Spot {
  readonly x: number;
  readonly y: number;
}

/** Lines through points, with what their axes are. */
export interface LineChart {
  readonly across: string;
  readonly upward: string;
  readonly series: readonly {
    readonly name: string;
    readonly points: readonly (readonly [number, number])[];
  }[];
}

/** A chart of the file over the cells it lies on; with neither bars nor lines it is of a kind that is not drawn here. */
export interface PlacedChart {
  readonly from: ChartCorner;
  readonly to: ChartCorner;
  readonly title: string;
  readonly bars: BarChart | undefined;
  readonly lines: LineChart | undefined;
}

export interface CurveCharts {
  /** Bar charts that the file has on any sheet, such as those of a fleet; they do not go by the row in hand. */
  readonly fleet: readonly BarChart[];
  readonly pressure:
    | {
        readonly title: string;
        readonly gas: string;
        readonly temperatureUnit: string;
        readonly pressureUnit: string;
        readonly curve: readonly (readonly [number, number])[];
        readonly points: readonly { readonly name: string; readonly x: number; readonly y: number }[];
        readonly band: { readonly name: string; readonly from: number; readonly to: number } | undefined;
      }
    | undefined;
  readonly charge:
    | {
        readonly title: string;
        readonly unit: string;
        readonly visits: readonly {
          readonly label: string;
          readonly added: number;
          readonly recovered: number;
        }[];
        readonly nameplate: number | undefined;
      }
    | undefined;
}

export interface FunctionHelp {
  readonly name: string;
  readonly summary: string;
  readonly guide: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description: string;
    readonly optional: boolean;
    readonly choices: readonly string[];
  }[];
}

export interface KeptLog {
  readonly id: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly changedAt: number;
}

/** A file in memory. */
export interface NamedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A workbook filled from others, with what is to be told of it. */
export interface MadeWorkbook extends NamedFile {
  /** The sheet to look at first; the first one when absent. */
  readonly opensOn?: string;
  readonly words: string;
  readonly remarks: readonly string[];
}

/** The worker's methods: name, what they take and what they answer. */
export interface Calls {
  functions(): readonly FunctionHelp[];
  kept(): readonly KeptLog[];
  discard(id: string): void;
  open(name: string, bytes: Uint8Array): LogInfo;
  /** Opens a log kept in the browser; undefined when another tab has it open or it is gone. */
  reopen(id: string): LogInfo | undefined;
  /** Works out all formulas; the number of formulas and of groups that wait for each other. */
  recalculate(): { readonly formulas: number; readonly circles: number; readonly left: number };
  /** A fleet summary from many logs. */
  gather(logs: readonly NamedFile[], template: Uint8Array, units: 'US' | 'SI'): MadeWorkbook;
  /** Repair or replace for a unit of the open log. */
  estimate(unit: string, template: Uint8Array): MadeWorkbook;
  look(gaze: Gaze): View;
  /** The next place of a text, or the one before it; an address is gone to. */
  find(text: string, from: FoundCell, isBackwards: boolean): FoundCell | undefined;
  type(cells: readonly Typed[], isPasted: boolean, gaze: Gaze): View;
  clear(area: Area, gaze: Gaze): View;
  /** Copies cells with their formulas, which move along. */
  copy(fromSheet: number, from: Area, to: Area, gaze: Gaze): View;
  addRows(row: number, count: number, gaze: Gaze): View;
  deleteRows(row: number, count: number, gaze: Gaze): View;
  /** Pixels; columns include their ends. */
  setWidths(from: number, to: number, pixels: number, gaze: Gaze): View;
  undo(gaze: Gaze): View;
  redo(gaze: Gaze): View;
  /** What may be begun or gone back to; undefined for a workbook that is no visit log. */
  visits(): VisitList | undefined;
  /** Times are local, as yyyy-mm-dd hh:mm. */
  beginVisit(unit: string, technician: string, at: string, gaze: Gaze): View;
  nextSet(at: string, gaze: Gaze): View;
  readNow(at: string, gaze: Gaze): View;
  charts(sheet: number, row: number): CurveCharts;
  /** The charts that stand on a sheet. */
  sheetCharts(sheet: number): readonly PlacedChart[];
  /** A whole area for printing. */
  print(sheet: number): { readonly area: Area; readonly cells: readonly ShownCell[] };
  file(): Uint8Array;
  savedToFile(name: string): void;
}

export type CallName = keyof Calls;
