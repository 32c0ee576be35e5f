/// <reference lib="dom" />
import { App } from './app.ts';
import { openCellMenu } from './cell-menu.ts';
import { ask } from './dialogs.ts';
import { part } from './element.ts';
import { FindBar } from './find-bar.ts';
import { LogFiles } from './log-files.ts';
import { WorkerClient } from './worker-client.ts';

/** After this long the page says that it is still at work, and offers to stop. */
const patienceMs = 400;
const longMs = 10_000;

const worker = new WorkerClient('worker.js');
const app = new App(worker);
const files = new LogFiles(app);
const find = new FindBar(app);

let busySince = 0;
let timer: ReturnType<typeof setTimeout> | undefined;
worker.onBusy = (isBusy) => {
  clearTimeout(timer);
  document.documentElement.dataset.busy = String(isBusy);
  const sign = part('busy');
  if (!isBusy) {
    sign.hidden = true;
    part('stop').hidden = true;
    return;
  }
  busySince = performance.now();
  timer = setTimeout(() => {
    sign.hidden = false;
    timer = setTimeout(() => (part('stop').hidden = false), longMs);
  }, patienceMs);
};
part('stop').addEventListener('click', () => {
  void ask(
    'Stop working?',
    [
      `The log has been worked on for ${Math.round((performance.now() - busySince) / 1000)} s. Stopping closes it; what was changed before is kept in this browser.`,
    ],
    [
      { text: 'Stop and close the log', value: true },
      { text: 'Go on', value: false, isMain: true },
    ],
  ).then((stops) => {
    if (stops !== true) return;
    worker.stop();
    files.forgetOpenLog();
    location.reload();
  });
});

function onClick(id: string, action: () => unknown): void {
  part(id).addEventListener('click', () => {
    Promise.resolve(action()).catch((problem: unknown) => {
      app.tell(problem instanceof Error ? problem.message : String(problem), true);
    });
  });
}

const refocus = (work: Promise<unknown>): Promise<unknown> =>
  work.then(() => {
    if (!app.isInVisit) app.grid.root.focus({ preventScroll: true });
  });
onClick('show-visit', () => {
  if (!app.isInVisit) app.showVisit();
});
onClick('show-table', () => {
  if (app.isInVisit) app.showTable();
});
onClick('new', () => files.begin());
onClick('open', () => files.open());
onClick('save', () => files.save());
onClick('undo', () => refocus(app.act((gaze) => worker.ask('undo', gaze))));
onClick('redo', () => refocus(app.act((gaze) => worker.ask('redo', gaze))));
onClick('add-row', () => refocus(app.addRow()));
onClick('cell-menu', () => {
  const box = part('cell-menu').getBoundingClientRect();
  openCellMenu(app, { x: box.left, y: box.bottom + 2 });
});
onClick('fill', () => refocus(app.fillDown()));
onClick('show-find', () => find.open());
onClick('print', () => {
  const sheets = app.log?.sheets ?? [];
  const card = sheets.findIndex(({ name }) => name === 'Visit card' || name === 'Offer');
  return app.print(card >= 0 ? card : app.grid.sheetNumber);
});
function showCharts(isShown: boolean): void {
  part('show-charts').setAttribute('aria-pressed', String(isShown));
  app.showCharts(isShown);
}
onClick('show-charts', () => {
  showCharts(part('show-charts').getAttribute('aria-pressed') !== 'true');
});
onClick('show-cautions', () => {
  const button = part('show-cautions');
  const isShown = button.getAttribute('aria-pressed') !== 'true';
  button.setAttribute('aria-pressed', String(isShown));
  part('cautions-panel').hidden = !isShown;
});

/** The regions F6 goes through: the way out of the grid, where Tab moves among cells. */
const tableRegions = ['grid', 'new', 'formula', 'tabs'];
const visitRegions = ['visit-sets', 'visit-bar', 'new'];
document.addEventListener('keydown', (event) => {
  const isCommand = event.ctrlKey || event.metaKey;
  if (event.key === 'F6') {
    event.preventDefault();
    const regions = app.isInVisit ? visitRegions : tableRegions;
    const at = regions.findIndex((id) => part(id).contains(document.activeElement));
    const next = regions[(at + (event.shiftKey ? regions.length - 1 : 1)) % regions.length] ?? 'grid';
    const first: Readonly<Record<string, string>> = {
      tabs: '#tabs [aria-selected="true"]',
      'visit-sets': '#visit-sets [tabindex="0"]',
      'visit-bar': '#next-set',
    };
    const target = document.querySelector<HTMLElement>(first[next] ?? `#${next}`);
    target?.focus();
  } else if (isCommand && event.key.toLowerCase() === 's') {
    event.preventDefault();
    void app.editor.finish(0, 0).then(() => files.save());
  } else if (isCommand && event.key.toLowerCase() === 'o') {
    event.preventDefault();
    void files.open();
  } else if (isCommand && !event.shiftKey && /^[fg]$/i.test(event.key)) {
    event.preventDefault();
    void app.editor.finish(0, 0).then(() => find.open());
  }
});

document.addEventListener('dragover', (event) => event.preventDefault());
document.addEventListener('drop', (event) => {
  event.preventDefault();
  const file = event.dataTransfer?.files[0];
  if (file !== undefined) void files.take(file);
});

if ('serviceWorker' in navigator) {
  navigator.serviceWorker.register('offline.js').catch(() => {
    // Without it the page works as long as its server does.
  });
}

void files.start();
