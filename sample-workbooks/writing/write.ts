import { address, columnLetters, columnNumber } from './address.ts';
import { chartOf } from './charts.ts';
import { loadExcelize, must, type Excelize, type Workbook } from './excelize.ts';
import { ruleStyleOf, styleOf } from './looks.ts';
import { setUpPrinting } from './printing.ts';
import type { CellRecipe, Check, Look, SheetRecipe, WorkbookRecipe } from './recipe.ts';
import { reproducible } from './reproducible.ts';
import { spellFormula, type Target } from './spelling.ts';

/** A fixed date: the file says what it was built from, not when. */
const builtAt = '2026-01-01T00:00:00Z';

/**
 * Writes a recipe as .xlsx for one target. Formula cells carry no values yet; `withCachedValues` adds them.
 * Same recipe and target, same bytes.
 */
export async function writeWorkbook(recipe: WorkbookRecipe, target: Target): Promise<Uint8Array> {
  const excelize = await loadExcelize();
  const file = excelize.NewFile();
  must(file, 'new workbook');
  must(file.SetDefaultFont('Arial'), 'font');
  recipe.sheets.forEach((sheet, index) => {
    if (index === 0) must(file.SetSheetName('Sheet1', sheet.name), sheet.name);
    else must(file.NewSheet(sheet.name), sheet.name);
  });
  for (const sheet of recipe.sheets) writeSheet(file, sheet, target, excelize);
  for (const [name, refersTo] of Object.entries(recipe.names)) {
    must(file.SetDefinedName({ Name: name, RefersTo: refersTo }), `name ${name}`);
  }
  must(
    file.SetDocProps({
      Title: recipe.title,
      Subject: recipe.subject,
      Creator: 'Ouncewise',
      LastModifiedBy: 'Ouncewise',
      Created: builtAt,
      Modified: builtAt,
      Language: 'en-US',
    }),
    'properties',
  );
  must(file.SetActiveSheet(0), 'first sheet');
  // The writer's own types say BlobPart, which Node does not have.
  const written: { readonly buffer: unknown; readonly error: string | null } = file.WriteToBuffer();
  const { buffer } = must(written, 'write');
  const tables = recipe.sheets.flatMap((sheet) => sheet.tables ?? []);
  const spelled = tables.map((table) => ({
    ...table,
    columns: table.columns.map((column) => ({
      heading: column.heading,
      fill: column.fill === undefined ? undefined : spellFormula(column.fill, target),
    })),
  }));
  return reproducible(buffer as Uint8Array, spelled);
}

function writeSheet(file: Workbook, sheet: SheetRecipe, target: Target, excelize: Excelize): void {
  const name = sheet.name;
  for (const [columns, width] of Object.entries(sheet.widths)) {
    const [from = columns, to = from] = columns.split(':');
    must(file.SetColWidth(name, from, to, width), `${name} width ${columns}`);
  }
  for (const [row, height] of Object.entries(sheet.heights ?? {})) {
    must(file.SetRowHeight(name, Number(row), height), `${name} height ${row}`);
  }
  writeCells(file, sheet, target);
  for (const table of sheet.tables ?? []) {
    must(
      file.AddTable(name, {
        Range: table.range,
        Name: table.name,
        StyleName: '',
        ShowRowStripes: false,
        ShowColumnStripes: false,
      }),
      `table ${table.name}`,
    );
  }
  for (const rule of sheet.rules ?? []) {
    const { style } = must(file.NewConditionalStyle(ruleStyleOf(rule.look)), `${name} rule`);
    must(
      file.SetConditionalFormat(name, rule.range, [{ Type: 'formula', Criteria: rule.when, Format: style }]),
      `${name} rule ${rule.when}`,
    );
  }
  for (const check of sheet.checks ?? []) writeCheck(file, name, check);
  for (const note of sheet.notes ?? []) {
    must(
      file.AddComment(name, {
        Cell: note.at,
        Author: 'Ouncewise',
        Width: 260,
        Height: 40 + 18 * Math.ceil(note.text.length / 38),
        Paragraph: [{ Text: note.text, Font: { Family: 'Arial', Size: 9 } }],
      }),
      `${name} note ${note.at}`,
    );
  }
  for (const chart of sheet.charts ?? []) {
    must(file.AddChart(name, chart.at, chartOf(chart, excelize)), `${name} chart`);
  }
  for (const group of sheet.groups ?? []) foldColumns(file, name, group);
  setUpPrinting(file, sheet);
  setUpView(file, sheet);
  if (sheet.protect === true) {
    const allowed = { SelectLockedCells: true, SelectUnlockedCells: true };
    // Widths and heights are everybody's own business.
    must(
      file.ProtectSheet(name, { ...allowed, FormatColumns: true, FormatRows: true, FormatCells: true }),
      `${name} protection`,
    );
  }
}

function writeCells(file: Workbook, sheet: SheetRecipe, target: Target): void {
  const styles = new Map<string, number>();
  const styleFor = (look: Look): number => {
    const key = JSON.stringify(look);
    const known = styles.get(key);
    if (known !== undefined) return known;
    const { style } = must(file.NewStyle(styleOf(look)), `look ${key}`);
    styles.set(key, style);
    return style;
  };
  for (const { from, to, look } of styleRuns(sheet.cells)) {
    must(file.SetCellStyle(sheet.name, from, to, styleFor(look)), `${sheet.name}!${from}`);
  }
  for (const cell of sheet.cells) {
    const where = `${sheet.name}!${cell.at}`;
    const content = cell.content;
    if (typeof content === 'object') {
      const text = spellFormula(content.formula, target);
      const array = content.over === undefined ? undefined : { Type: 'array', Ref: content.over };
      must(
        array === undefined
          ? file.SetCellFormula(sheet.name, cell.at, text)
          : file.SetCellFormula(sheet.name, cell.at, text, array),
        where,
      );
    } else if (content !== undefined) {
      must(file.SetCellValue(sheet.name, cell.at, content), where);
    }
    if (cell.through !== undefined) must(file.MergeCell(sheet.name, cell.at, cell.through), where);
    if (cell.jump !== undefined) {
      must(file.SetCellHyperLink(sheet.name, cell.at, cell.jump, 'Location'), where);
    }
  }
}

/** One call for a run of cells below each other that look alike; single calls take most of the time otherwise. */
function styleRuns(cells: readonly CellRecipe[]): { from: string; to: string; look: Look }[] {
  const runs: { from: string; to: string; look: Look; key: string }[] = [];
  for (const cell of cells) {
    if (cell.look === undefined) continue;
    const last = runs.at(-1);
    const key = JSON.stringify(cell.look);
    const to = cell.through ?? cell.at;
    if (last?.key === key && cell.through === undefined && isBelow(last.to, cell.at)) last.to = to;
    else runs.push({ from: cell.at, to, look: cell.look, key });
  }
  return runs;
}

function isBelow(upper: string, lower: string): boolean {
  const split = /^([A-Z]+)(\d+)$/;
  const [, column, row] = split.exec(upper) ?? [];
  const [, nextColumn, nextRow] = split.exec(lower) ?? [];
  return column === nextColumn && Number(row) + 1 === Number(nextRow);
}

function writeCheck(file: Workbook, sheet: string, check: Check): void {
  const allow = check.allow;
  const [type, first, second] =
    allow.kind === 'choices'
      ? ['list', `"${allow.choices.join(',')}"`, '']
      : allow.kind === 'list'
        ? ['list', allow.from, '']
        : [allow.whole === true ? 'whole' : 'decimal', allow.minimum, allow.maximum];
  must(
    file.AddDataValidation(sheet, {
      Sqref: check.range,
      Type: type,
      Operator: allow.kind === 'between' ? 'between' : '',
      Formula1: first.replace(/&/g, '&amp;').replace(/</g, '&lt;'),
      Formula2: second,
      AllowBlank: true,
      ShowErrorMessage: true,
      ErrorStyle: check.strict ? 'stop' : 'warning',
      ErrorTitle: check.title,
      Error: check.message,
      ...(check.prompt === undefined
        ? {}
        : { ShowInputMessage: true, PromptTitle: check.title, Prompt: check.prompt }),
    }),
    `${sheet} check ${check.range}`,
  );
}

function foldColumns(
  file: Workbook,
  sheet: string,
  group: { readonly columns: string; readonly folded: boolean },
): void {
  const [from = '', to = from] = group.columns.split(':');
  const first = columnNumber(from);
  const last = columnNumber(to);
  for (let column = first; column <= last; column += 1) {
    must(file.SetColOutlineLevel(sheet, columnLetters(column), 1), `${sheet} group ${group.columns}`);
  }
  if (group.folded) must(file.SetColVisible(sheet, group.columns, false), `${sheet} fold ${group.columns}`);
}

function setUpView(file: Workbook, sheet: SheetRecipe): void {
  must(
    file.SetSheetView(sheet.name, 0, {
      ShowGridLines: sheet.gridLines,
      ZoomScale: sheet.zoom ?? 100,
      TopLeftCell: 'A1',
      View: 'normal',
    }),
    `${sheet.name} view`,
  );
  if (sheet.tabColour !== undefined) {
    must(file.SetSheetProps(sheet.name, { TabColorRGB: sheet.tabColour }), `${sheet.name} tab`);
  }
  if (sheet.freeze === undefined) return;
  const { columns, rows } = sheet.freeze;
  const corner = address(columns + 1, rows + 1);
  const pane = columns > 0 && rows > 0 ? 'bottomRight' : rows > 0 ? 'bottomLeft' : 'topRight';
  must(
    file.SetPanes(sheet.name, {
      Freeze: true,
      XSplit: columns,
      YSplit: rows,
      TopLeftCell: corner,
      ActivePane: pane,
      Selection: [{ SQRef: corner, ActiveCell: corner, Pane: pane }],
    }),
    `${sheet.name} freeze`,
  );
}
