/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { cautions } from '../../../handbook/cautions.ts';
import { columnLetters, parseArea } from '../../../workbook/model/address.ts';
import type { Gaze, LogInfo, Spot, View } from '../protocol.ts';
import type { VisitPlace } from '../visit-protocol.ts';
import { CellLooks } from './cell-looks.ts';
import { openCellMenu } from './cell-menu.ts';
import { paintCharts } from './chart-drawing.ts';
import { Clipboard } from './clipboard.ts';
import { sizeByPointer, sizeByStep } from './column-sizing.ts';
import { Editor } from './editor.ts';
import { element, part } from './element.ts';
import { Grid } from './grid.ts';
import { giveHands } from './grid-hands.ts';
import { momentNow } from './moment-now.ts';
import { layOutForPrint } from './print.ts';
import { paintStrip } from './strip.ts';
import { Suggestions } from './suggestions.ts';
import { SheetTabs } from './tabs.ts';
import { showMode, type ViewMode } from './view-mode.ts';
import { VisitScreen } from './visit/visit-screen.ts';
import type { WorkerClient } from './worker-client.ts';

/** The open log on the screen, and everything that is done to it. */
export class App {
  readonly grid: Grid;
  readonly editor: Editor;
  readonly worker: WorkerClient;
  log: LogInfo | undefined;
  view: View | undefined;
  onChange: (view: View) => void = () => undefined;
  readonly visit: VisitScreen;
  #mode: ViewMode = 'table';
  readonly #looks: CellLooks;
  readonly #tabs: SheetTabs;
  readonly #clipboard: Clipboard;
  readonly #places = new Map<number, Spot>();
  #isLooking = false;
  #looksAgain = false;
  #chartedRow = '';

  constructor(worker: WorkerClient) {
    this.worker = worker;
    // Fingers need more room than a mouse.
    const scale = matchMedia('(pointer: coarse)').matches ? 1.35 : 1;
    this.#looks = new CellLooks(scale);
    const root = part('grid');
    root.setAttribute('aria-activedescendant', 'cell-in-hand');
    this.grid = new Grid(root, this.#looks, scale);
    const suggestions = new Suggestions(part('suggestions'));
    this.editor = new Editor(this.grid, part<HTMLInputElement>('formula'), suggestions, {
      typed: () => (this.#isViewOfCell() ? (this.view?.inHand.typed ?? '') : ''),
      choices: () => (this.#isViewOfCell() ? (this.view?.inHand.choices ?? []) : []),
      tab: (step) => this.#tab(step),
      commit: (text, { row, column }) =>
        this.act((gaze) => worker.ask('type', [{ row, column, typed: text }], false, gaze)),
    });
    this.#clipboard = new Clipboard(this);
    this.#tabs = new SheetTabs(part('tabs'), (index, byPointer) => {
      this.goTo(index);
      if (byPointer) root.focus({ preventScroll: true });
    });
    this.grid.onGaze = () => this.look();
    this.grid.onPaint = () => this.editor.follow();
    giveHands(this.grid, this.editor, {
      clear: () => void this.clear(),
      addRows: () => void this.addRow(),
      deleteRows: () => void this.deleteRows(),
      size: (step) => sizeByStep(this.grid, step, (...sizes) => void this.setWidths(...sizes)),
      menu: (at) => openCellMenu(this, at),
      fillDown: () => void this.fillDown(),
      undo: () => void this.act((gaze) => worker.ask('undo', gaze)),
      redo: () => void this.act((gaze) => worker.ask('redo', gaze)),
      follow: (spot) => this.#follow(spot),
      hasChoices: () => (this.view?.inHand.choices.length ?? 0) > 0,
      tab: (step) => this.#tab(step),
      stamp: () => void this.#stamp(),
    });
    sizeByPointer(this.grid, (...sizes) => void this.setWidths(...sizes));
    void worker.ask('functions').then((functions) => suggestions.setFunctions(functions));
    part('cautions').replaceChildren(...cautions.map((line) => element('li', {}, line)));
    this.visit = new VisitScreen({
      worker,
      act: (change) => this.act(change),
      notice: () => this.view?.notice ?? '',
      look: () => this.look(),
      speak: (words) => (part('spoken').textContent = words),
    });
    part('choices').addEventListener('click', () => this.editor.open(true, true));
  }

  /** Shows a log from its first sheet, or from the readings when it has some. */
  show(log: LogInfo): void {
    this.log = log;
    this.view = undefined;
    this.#places.clear();
    this.#looks.set(log.styles, log.overlays);
    this.#clipboard.forget();
    paintStrip(part('strip'), undefined);
    paintCharts(part('charts'), { fleet: [], pressure: undefined, charge: undefined });
    this.grid.root.focus({ preventScroll: true });
    this.#chartedRow = '';
    const readings = log.sheets.findIndex((sheet) => sheet.tables.some(({ name }) => name === 'Readings'));
    this.#tabs.set(log.sheets);
    // A fleet carries sets of readings in its ledger, but no readings sheet to type them into.
    part('views').hidden = !log.hasVisits || readings < 0;
    this.#setMode('table');
    this.goTo(readings >= 0 ? readings : log.first);
    if (log.hasVisits && readings >= 0) this.showVisit({ sheet: readings, row: 0 });
  }

  get isInVisit(): boolean {
    return this.#mode === 'visit';
  }

  /** One visit on the screen: that of a row, or the last one of the log. */
  showVisit(place?: VisitPlace): void {
    const { sheetNumber, inHand } = this.grid;
    this.#setMode('visit');
    this.visit.begin(place ?? { sheet: sheetNumber, row: inHand.row });
    this.look();
  }

  /** The whole table, at the reading that was in hand. */
  showTable(): void {
    const cell = this.visit.cellInHand;
    const place = this.visit.place;
    this.#setMode('table');
    const sheet = cell?.sheet ?? place?.sheet ?? this.grid.sheetNumber;
    const row = cell?.row ?? place?.row ?? 0;
    const table = this.log?.sheets[sheet]?.tables[0];
    this.goTo(sheet, { row: Math.max(row, (table?.top ?? 0) + 1), column: cell?.column ?? table?.left ?? 0 });
    this.grid.root.focus({ preventScroll: true });
  }

  #setMode(mode: ViewMode): void {
    this.#mode = mode;
    showMode(mode);
  }

  /** What the page looks at now. */
  #gaze(): Gaze {
    const { place } = this.visit;
    if (this.#mode === 'table' || place === undefined) return this.grid.gaze();
    const cell = { row: place.row, column: 0 };
    const selection = { top: place.row, bottom: place.row, left: 0, right: 0 };
    return { sheet: place.sheet, areas: [], cell, selection, visit: place };
  }

  goTo(index: number, spot?: Spot): void {
    const sheet = this.log?.sheets[index];
    if (sheet === undefined) return;
    if (this.#mode === 'visit') this.#setMode('table');
    this.#places.set(this.grid.sheetNumber, this.grid.inHand);
    // Where headings are frozen, work begins in the first row below them.
    const table = sheet.frozenRows > 0 ? sheet.tables[0] : undefined;
    const usual = table === undefined ? { row: 0, column: 0 } : { row: table.top + 1, column: table.left };
    const place = spot ?? this.#places.get(index) ?? usual;
    this.#tabs.mark(index);
    part('grid').setAttribute('aria-label', `Sheet ${sheet.name}`);
    this.grid.show(index, sheet, place);
    this.grid.select(place);
  }

  /** Asks for what is in sight; one question at a time, the latest wins. */
  look(): void {
    if (this.log === undefined) return;
    if (this.#isLooking) {
      this.#looksAgain = true;
      return;
    }
    this.#isLooking = true;
    const gaze = this.#gaze();
    this.worker
      .ask('look', gaze)
      .then(
        (view) => this.#looked(gaze, view),
        (problem: unknown) => this.tell(String(problem), true),
      )
      .finally(() => {
        this.#isLooking = false;
        if (this.#looksAgain) {
          this.#looksAgain = false;
          this.look();
        }
      });
  }

  /** Changes the log; false when the change was refused. */
  async act(change: (gaze: Gaze) => Promise<View>): Promise<boolean> {
    const gaze = this.#gaze();
    try {
      const view = await change(gaze);
      if (view.sheets !== undefined && this.log !== undefined) {
        this.log = { ...this.log, sheets: view.sheets };
        const sheet = view.sheets[this.grid.sheetNumber];
        if (sheet !== undefined) this.grid.setSheet(sheet);
      }
      this.#chartedRow = '';
      this.#looked(gaze, view);
      if (view.notice !== '') this.tell(view.notice, view.wasRefused);
      else this.tell('', false);
      return !view.wasRefused;
    } catch (problem) {
      this.tell(problem instanceof Error ? problem.message : String(problem), true);
      return false;
    }
  }

  fillDown(): Promise<boolean> {
    const { top, left, bottom, right } = this.grid.selection;
    const from = bottom > top ? top : Math.max(top - 1, 0);
    if (from === bottom) return Promise.resolve(false);
    const source = { top: from, left, bottom: from, right };
    return this.act((gaze) =>
      this.worker.ask('copy', this.grid.sheetNumber, source, { top: from + 1, left, bottom, right }, gaze),
    );
  }

  addRow(): Promise<boolean> {
    const { top, bottom } = this.grid.selection;
    return this.act((gaze) => this.worker.ask('addRows', top, bottom - top + 1, gaze));
  }

  deleteRows(): Promise<boolean> {
    const { top, bottom } = this.grid.selection;
    return this.act((gaze) => this.worker.ask('deleteRows', top, bottom - top + 1, gaze));
  }

  clear(): Promise<boolean> {
    return this.act((gaze) => this.worker.ask('clear', this.grid.selection, gaze));
  }

  /** Columns from one to another, both included, in pixels of the screen. */
  setWidths(from: number, to: number, pixels: number): Promise<boolean> {
    return this.act((gaze) => this.worker.ask('setWidths', from, to, pixels / this.grid.scale, gaze));
  }

  async fitColumns(): Promise<void> {
    const { left, right } = this.grid.selection;
    for (let column = left; column <= right; column++) {
      await this.setWidths(column, column, this.grid.fittingWidth(column));
    }
  }

  async print(index: number): Promise<void> {
    const sheet = this.log?.sheets[index];
    if (sheet === undefined) return;
    layOutForPrint(part('paper'), sheet, await this.worker.ask('print', index));
    globalThis.print();
  }

  tell(words: string, isTrouble: boolean): void {
    const notice = part('notice');
    notice.textContent = words;
    notice.classList.toggle('trouble', isTrouble);
    notice.hidden = words === '';
  }

  #hasTable(wanted: string): boolean {
    return this.log?.sheets.some(({ tables }) => tables.some(({ name }) => name === wanted)) === true;
  }

  get #isFleet(): boolean {
    return this.#hasTable('TechnicianFigures');
  }

  #tab(step: number): Spot | undefined {
    const { tabTo } = this.view?.inHand ?? {};
    return this.#isViewOfCell() ? (step > 0 ? tabTo?.next : tabTo?.previous) : undefined;
  }

  #stamp(): Promise<boolean> {
    const now = momentNow();
    const typed = this.view?.inHand.stamp === 'moment' ? now : now.slice(0, 10);
    return this.act((gaze) => this.worker.ask('type', [{ ...this.grid.inHand, typed }], false, gaze));
  }

  #isViewOfCell(): boolean {
    const { inHand } = this.grid;
    return this.view?.inHand.row === inHand.row && this.view.inHand.column === inHand.column;
  }

  #looked(gaze: Gaze, view: View): void {
    if (gaze.visit !== undefined || this.#mode === 'visit') {
      // An answer to a question of the other view comes too late.
      if (gaze.visit === undefined || this.#mode === 'table') return;
      this.view = view;
      this.visit.paint(view.visit);
      this.onChange(view);
      return;
    }
    if (gaze.sheet !== this.grid.sheetNumber) return;
    this.view = view;
    this.grid.setCells(view.cells);
    const { row, column } = this.grid.inHand;
    if (view.inHand.row !== row || view.inHand.column !== column) {
      this.look();
      return;
    }
    this.#showCell(view);
    this.#clipboard.ready(view.selected, gaze);
    if (view.hand !== undefined) paintStrip(part('strip'), view.hand);
    // A workbook without gates and answers gets the room for its cells.
    part('strip').hidden = view.hand === undefined && !this.#hasTable('Readings');
    this.onChange(view);
    this.#chart(gaze);
    this.#chartSheet(gaze);
  }

  #showCell({ inHand, hand }: View): void {
    const { selection } = this.grid;
    const isSingle = selection.top === selection.bottom && selection.left === selection.right;
    part('address').textContent = isSingle
      ? inHand.address
      : `${columnLetters(selection.left)}${selection.top + 1}:${columnLetters(selection.right)}${selection.bottom + 1}`;
    if (!this.editor.isOpen) this.editor.bar.value = inHand.typed;
    const about = part('about');
    about.replaceChildren(
      element('b', {}, inHand.heading),
      inHand.heading === '' ? '' : ' ',
      inHand.error === '' ? inHand.prompt : element('span', { class: 'error-words' }, inHand.error),
    );
    const hasChoices = inHand.choices.length > 0;
    part('choices').hidden = !hasChoices;
    // Screen readers hear the cell by name, not by its place alone.
    const words = [
      inHand.address,
      inHand.heading,
      inHand.shown === '' ? 'blank' : inHand.shown,
      inHand.error,
    ].filter((word) => word !== '');
    this.grid.inHandWords = words.join(', ');
    this.grid.repaint();
    part('spoken').textContent = [...words, hand?.next === undefined ? '' : `next: ${hand.next}`].join('. ');
    this.#placeErrorBubble(inHand.error);
  }

  /** The reason of an error stands beside its cell. */
  #placeErrorBubble(words: string): void {
    const bubble = part('bubble');
    bubble.hidden = words === '';
    if (words === '') return;
    bubble.textContent = words;
    const box = this.grid.boxOf(this.grid.inHand);
    const place = this.grid.window.getBoundingClientRect();
    const left = Math.min(place.left + box.left, document.documentElement.clientWidth - 320);
    bubble.style.left = `${Math.max(left, 4)}px`;
    bubble.style.top = `${place.top + box.top + box.height + 4}px`;
  }

  /** Charts that stand on the sheet itself, with the values its cells have now. */
  #chartSheet({ sheet }: Gaze): void {
    if (this.log?.sheets[sheet]?.hasCharts !== true) return;
    void this.worker
      .ask('sheetCharts', sheet)
      .then((charts) => {
        if (sheet === this.grid.sheetNumber) this.grid.setCharts(charts);
      })
      .catch((problem: unknown) => this.tell(String(problem), true));
  }

  #chart(gaze: Gaze): void {
    const panel = part('charts-panel');
    const key = this.#isFleet ? 'fleet' : `${gaze.sheet} ${gaze.cell.row}`;
    if (panel.hidden || key === this.#chartedRow) return;
    if (this.view?.hand === undefined && !this.#isFleet) return;
    this.#chartedRow = key;
    void this.worker
      .ask('charts', gaze.sheet, gaze.cell.row)
      .then((charts) => paintCharts(part('charts'), charts))
      .catch((problem: unknown) => this.tell(String(problem), true));
  }

  showCharts(isShown: boolean): void {
    part('charts-panel').hidden = !isShown;
    this.#chartedRow = '';
    if (isShown) this.look();
  }

  #follow(spot: Spot): boolean {
    const sheet = this.grid.sheet;
    const link = sheet?.links.find(([ref]) => {
      const area = parseArea(ref);
      return area !== undefined && area.top === spot.row && area.left === spot.column;
    });
    const [, name, address = 'A1'] = /^'?(.*?)'?!\$?([A-Z]+\$?\d+)/.exec(link?.[1] ?? '') ?? [];
    const index = this.log?.sheets.findIndex((each) => each.name === name?.replaceAll("''", "'")) ?? -1;
    if (index < 0) return false;
    const area = parseArea(address.replaceAll('$', ''));
    // A link to the sheet as a whole leaves the place in it as it was.
    this.goTo(
      index,
      area === undefined || address === 'A1' ? undefined : { row: area.top, column: area.left },
    );
    return true;
  }
}
