import { must, type Workbook } from './excelize.ts';
import type { SheetRecipe } from './recipe.ts';

const letterPaper = 1;

/** Paper, scaling, repeated headings and page footers, so that every sheet prints without further work. */
export function setUpPrinting(file: Workbook, sheet: SheetRecipe): void {
  const { name, print } = sheet;
  const quoted = `'${name.replaceAll("'", "''")}'`;
  must(file.SetSheetProps(name, { FitToPage: true }), `${name} fit`);
  must(
    file.SetPageLayout(name, {
      Size: letterPaper,
      Orientation: print.landscape ? 'landscape' : 'portrait',
      FitToWidth: print.pagesWide,
      FitToHeight: print.pagesTall,
      ...(print.pageOrder === undefined ? {} : { PageOrder: print.pageOrder }),
    }),
    `${name} page`,
  );
  must(
    file.SetPageMargins(name, {
      Left: 0.45,
      Right: 0.45,
      Top: 0.5,
      Bottom: 0.6,
      Header: 0.3,
      Footer: 0.3,
      Horizontally: true,
    }),
    `${name} margins`,
  );
  must(
    file.SetHeaderFooter(name, { OddFooter: '&L&8&F · &A&R&8Page &P of &N', ScaleWithDoc: false }),
    `${name} footer`,
  );
  for (const column of print.breakBefore ?? []) {
    must(file.InsertPageBreak(name, `${column}1`), `${name} break ${column}`);
  }
  if (print.area !== undefined) {
    must(
      file.SetDefinedName({ Name: '_xlnm.Print_Area', RefersTo: `${quoted}!${print.area}`, Scope: name }),
      `${name} print area`,
    );
  }
  const repeated = [print.repeatColumns, print.repeatRows]
    .filter((part) => part !== undefined)
    .map((part) => `${quoted}!${part}`);
  if (repeated.length > 0) {
    must(
      file.SetDefinedName({ Name: '_xlnm.Print_Titles', RefersTo: repeated.join(','), Scope: name }),
      `${name} headings`,
    );
  }
}
