/// <reference lib="dom" />
import { part } from './element.ts';

/** One visit on the screen, or the sheets of the workbook. */
export type ViewMode = 'visit' | 'table';

const ofVisit = ['visit', 'visit-bar'];
const ofTable = ['work-bar', 'work', 'tabs', 'strip', 'fill', 'add-row', 'cell-menu', 'show-charts'];

export function showMode(mode: ViewMode): void {
  const isVisit = mode === 'visit';
  document.documentElement.dataset.mode = mode;
  for (const id of ofVisit) part(id).hidden = !isVisit;
  for (const id of ofTable) part(id).hidden = isVisit;
  for (const id of ['bubble', 'find-bar']) part(id).hidden = true;
  part('show-visit').setAttribute('aria-pressed', String(isVisit));
  part('show-table').setAttribute('aria-pressed', String(!isVisit));
}
