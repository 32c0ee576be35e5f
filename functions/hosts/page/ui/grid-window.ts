/// <reference lib="dom" />
import type { Area } from '../protocol.ts';
import { element } from './element.ts';
import { paintColumnHeads, PaneCells, paintFrames, paintRowHeads } from './grid-panes.ts';
import type { Painting } from './grid-panes.ts';

type PaneName = 'corner' | 'above' | 'beside' | 'main';
const paneNames: readonly PaneName[] = ['corner', 'above', 'beside', 'main'];

interface Pane {
  readonly box: HTMLElement;
  readonly layer: HTMLElement;
  readonly cells: PaneCells;
  readonly frames: HTMLElement;
  /** Over the cells, moving along with them. */
  readonly over: HTMLElement;
}

/** Sizes in pixels that say where the panes lie. */
export interface WindowLayout {
  readonly width: number;
  readonly height: number;
  /** Size of the frozen rows and columns. */
  readonly heldWidth: number;
  readonly heldHeight: number;
  readonly scrollLeft: number;
  readonly scrollTop: number;
}

/** The four panes of a sheet, held still by frozen rows and columns, and their headings: elements and where they lie. */
export class GridWindow {
  readonly root: HTMLElement;
  readonly #headHeight: number;
  readonly #headWidth: number;
  readonly #panes: Readonly<Record<PaneName, Pane>>;
  readonly #heads: Readonly<Record<'leftTop' | 'top' | 'left' | 'leftBottom', HTMLElement>>;

  constructor(headWidth: number, headHeight: number) {
    this.#headWidth = headWidth;
    this.#headHeight = headHeight;
    this.root = element('div', { class: 'window' });
    this.#panes = {
      corner: makePane('corner'),
      above: makePane('above'),
      beside: makePane('beside'),
      main: makePane('main'),
    };
    const head = (): HTMLElement => element('div', { class: 'heads', 'aria-hidden': 'true' });
    this.#heads = { leftTop: head(), top: head(), left: head(), leftBottom: head() };
    const origin = element('div', { class: 'heads origin', 'aria-hidden': 'true' });
    origin.style.width = `${headWidth}px`;
    origin.style.height = `${headHeight}px`;
    this.root.append(
      ...Object.values(this.#heads),
      ...paneNames.map((name) => this.#panes[name].box),
      origin,
    );
  }

  /** Puts panes and headings where they belong. */
  layOut({ width, height, heldWidth, heldHeight, scrollLeft, scrollTop }: WindowLayout): void {
    const x = this.#headWidth + heldWidth;
    const y = this.#headHeight + heldHeight;
    this.root.style.width = `${width}px`;
    this.root.style.height = `${height}px`;
    const { corner, above, beside, main } = this.#panes;
    place(corner.box, this.#headWidth, this.#headHeight, x, y);
    place(above.box, x, this.#headHeight, width, y);
    place(beside.box, this.#headWidth, y, x, height);
    place(main.box, x, y, width, height);
    const { leftTop, top, left, leftBottom } = this.#heads;
    place(leftTop, this.#headWidth, 0, x, this.#headHeight);
    place(top, x, 0, width, this.#headHeight);
    place(left, 0, this.#headHeight, this.#headWidth, y);
    place(leftBottom, 0, y, this.#headWidth, height);
    for (const layer of [above.layer, above.frames, above.over]) shift(layer, heldWidth + scrollLeft, 0);
    for (const layer of [beside.layer, beside.frames, beside.over]) shift(layer, 0, heldHeight + scrollTop);
    for (const layer of [main.layer, main.frames, main.over])
      shift(layer, heldWidth + scrollLeft, heldHeight + scrollTop);
    // Long titles in frozen columns run on over the others as long as those stand at their beginning.
    corner.box.classList.toggle('at-start', scrollLeft === 0);
  }

  /** Shows elements over the cells; their places are counted from the sheet's own corner. */
  showOver(elements: readonly HTMLElement[], frozen: { rows: number; columns: number }): void {
    // A picture may reach over frozen rows and columns: each pane that is there shows its part.
    const isThere = {
      corner: frozen.rows > 0 && frozen.columns > 0,
      above: frozen.rows > 0,
      beside: frozen.columns > 0,
      main: true,
    };
    for (const name of paneNames) {
      const copies = isThere[name] ? elements.map((one) => one.cloneNode(true)) : [];
      this.#panes[name].over.replaceChildren(...copies);
    }
  }

  /** Moves the headings along with what they head; after painting, which makes them anew. */
  shiftHeads({ heldWidth, heldHeight, scrollLeft, scrollTop }: WindowLayout): void {
    const { top, leftBottom } = this.#heads;
    if (top.firstElementChild instanceof HTMLElement) shift(top.firstElementChild, heldWidth + scrollLeft, 0);
    if (leftBottom.firstElementChild instanceof HTMLElement)
      shift(leftBottom.firstElementChild, 0, heldHeight + scrollTop);
  }

  /** Fills the panes: the area in sight, and the frozen rows and columns beside it. */
  paint(
    painting: Painting,
    area: Area,
    frozen: { rows: number; columns: number },
    selection: Area,
    isAtStart: boolean,
  ): void {
    const { rows, columns } = painting;
    const top = { top: 0, bottom: frozen.rows - 1 };
    const left = { left: 0, right: frozen.columns - 1 };
    const areas: Readonly<Record<PaneName, Area>> = {
      corner: { ...top, ...left },
      above: { ...area, ...top },
      beside: { ...area, ...left },
      main: area,
    };
    for (const name of paneNames) {
      // Titles in frozen columns may run on over what stands beside them.
      const runsOn = name === 'corner' && isAtStart;
      this.#panes[name].cells.paint(painting, areas[name], runsOn ? area.right : areas[name].right);
      this.#panes[name].frames.replaceChildren(...paintFrames(painting, selection));
    }
    const fill = (box: HTMLElement, heads: HTMLElement[]): void =>
      box.replaceChildren(element('div', { class: 'layer' }, ...heads));
    fill(this.#heads.leftTop, paintColumnHeads(columns, 0, frozen.columns - 1, selection));
    fill(this.#heads.top, paintColumnHeads(columns, area.left, area.right, selection));
    fill(this.#heads.left, paintRowHeads(rows, 0, frozen.rows - 1, selection));
    fill(this.#heads.leftBottom, paintRowHeads(rows, area.top, area.bottom, selection));
  }
}

function makePane(name: PaneName): Pane {
  const layer = element('div', { class: 'layer', role: 'rowgroup' });
  const frames = element('div', { class: 'layer frames', 'aria-hidden': 'true' });
  const over = element('div', { class: 'layer over', 'aria-hidden': 'true' });
  const box = element('div', { class: `pane ${name}`, role: 'presentation' }, layer, over, frames);
  return { box, layer, cells: new PaneCells(layer), frames, over };
}

function shift(layer: HTMLElement, dx: number, dy: number): void {
  layer.style.transform = `translate(${-dx}px, ${-dy}px)`;
}

function place(box: HTMLElement, left: number, top: number, right: number, bottom: number): void {
  const isEmpty = right <= left || bottom <= top;
  box.hidden = isEmpty;
  if (isEmpty) return;
  Object.assign(box.style, {
    left: `${left}px`,
    top: `${top}px`,
    width: `${right - left}px`,
    height: `${bottom - top}px`,
  });
}
