/** What goes into a cell; undefined leaves it blank. A text stays a text, whatever it begins with. */
export type FillValue = number | string | boolean | undefined;

/** Rows for a table of the template; its one row is the model for looks and formulas. */
export interface TableFill {
  readonly name: string;
  /** By heading. A column with a formula in the model row keeps it and takes no values. */
  readonly rows: readonly Readonly<Record<string, FillValue>>[];
  /** Heights of the rows in points, where text is broken into lines; those of the model row when absent. */
  readonly heights?: readonly number[];
}

/**
 * An area with one formula whose result has headings and rows, such as a fleet summary. The defined name spans the
 * heading row and the model row.
 */
export interface BlockFill {
  readonly name: string;
  readonly rows: number;
}

export interface TemplateFill {
  readonly tables: readonly TableFill[];
  readonly blocks: readonly BlockFill[];
  /** Single cells, by defined name. */
  readonly cells: Readonly<Record<string, FillValue>>;
  /** Chart series to leave out, by the cell of their name as the chart spells it: "Figures!$H$5". */
  readonly absentSeries: readonly string[];
  /** For titles of charts: "{mass}" becomes the word given here for mass. */
  readonly words: Readonly<Record<string, string>>;
}
