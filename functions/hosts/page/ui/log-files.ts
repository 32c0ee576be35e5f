/// <reference lib="dom" />
import type { KeptLog, View } from '../protocol.ts';
import type { App } from './app.ts';
import { ask } from './dialogs.ts';
import { element, part } from './element.ts';
import type { ChosenFile, SaveTarget } from './files.ts';
import { chooseFile, isChangedOutside, readChosen, writeFile } from './files.ts';

/** Which log this tab shows: a reload brings it back. */
const openLogKey = 'ouncewise-open-log';

interface Sample {
  readonly file: string;
  readonly title: string;
}

/** Logs from files, from samples and from what the browser kept; saving to files. */
export class LogFiles {
  readonly #app: App;
  #name = '';
  #target: SaveTarget | undefined;
  #isFresh = true;

  constructor(app: App) {
    this.#app = app;
    app.onChange = (view) => this.#state(view);
  }

  /** What a starting page shows: the log it had, or the sample; and logs left unsaved elsewhere are offered. */
  async start(): Promise<void> {
    try {
      const known = sessionStorage.getItem(openLogKey);
      const isBack = known !== null && (await this.#reopen(known));
      if (!isBack) {
        if (known !== null) {
          this.#app.tell(
            'The log of this tab is open in another tab. So that neither writes over the other, this tab begins with the sample.',
            true,
          );
        }
        await this.#sample(await this.#firstSample());
      }
      await this.#offerKept();
    } catch (problem) {
      this.#app.tell(wordsOf(problem), true);
    }
  }

  forgetOpenLog(): void {
    sessionStorage.removeItem(openLogKey);
  }

  async begin(): Promise<void> {
    const samples = await this.#samples();
    const choice = await ask<Sample | 'empty'>(
      'New log',
      ['The present log stays in this browser until it is saved. A new one begins as:'],
      [
        { text: 'Empty visit log', value: 'empty', isMain: true },
        ...samples.map((sample) => ({ text: `Sample: ${sample.title}`, value: sample })),
      ],
    );
    if (choice === undefined) return;
    if (choice !== 'empty') {
      await this.#sample(choice);
      return;
    }
    await this.#sample({ file: 'visit-log.xlsx', title: 'visit log' }, 'my-visit-log.xlsx');
    const sheets = this.#app.log?.sheets ?? [];
    for (const name of ['Readings', 'Units']) {
      const index = sheets.findIndex(({ tables }) => tables.some((table) => table.name === name));
      const table = sheets[index]?.tables.find((each) => each.name === name);
      if (table === undefined) continue;
      this.#app.goTo(index);
      await this.#app.act((gaze) => this.#app.worker.ask('clear', { ...table, top: table.top + 1 }, gaze));
    }
    const settings = sheets.findIndex(({ name }) => name === 'Settings');
    if (settings >= 0) this.#app.goTo(settings);
    this.#app.tell(
      'Begin with the settings, then the units; they still hold an invented outfit and staff.',
      false,
    );
  }

  async open(): Promise<void> {
    const chosen = await chooseFile(part<HTMLInputElement>('file'));
    if (chosen !== undefined) await this.#use(chosen);
  }

  async take(file: File): Promise<void> {
    try {
      await this.#use(await readChosen(file, undefined));
    } catch (problem) {
      this.#app.tell(wordsOf(problem), true);
    }
  }

  async save(): Promise<void> {
    if (this.#app.log === undefined) return;
    let handle = this.#target?.handle;
    if (this.#target !== undefined && (await isChangedOutside(this.#target))) {
      const choice = await ask(
        'The file was changed by another program or tab',
        [
          `${this.#name} is not the file it was when it was opened here. Saving would lose what was changed there.`,
        ],
        [
          { text: 'Save as another file', value: 'other', isMain: true },
          { text: 'Write over it', value: 'over' },
        ],
      );
      if (choice === undefined) return;
      if (choice === 'other') handle = undefined;
    }
    const bytes = await this.#app.worker.ask('file');
    const written = await writeFile(bytes, this.#name, handle);
    if (written === undefined) return;
    this.#name = written.name;
    this.#target = written.target;
    await this.#app.worker.ask('savedToFile', written.name);
    this.#isFresh = false;
    this.#app.look();
    this.#app.tell(`Saved to ${written.name}.`, false);
  }

  async #use(chosen: ChosenFile): Promise<void> {
    const { name, bytes, handle, lastModified } = chosen;
    if (!(await this.#show(name, bytes))) return;
    this.#target = handle === undefined ? undefined : { handle, lastModified };
    this.#isFresh = false;
  }

  async #show(name: string, bytes: Uint8Array): Promise<boolean> {
    try {
      const log = await this.#app.worker.ask('open', name, bytes);
      this.#opened(log.id, name);
      this.#app.show(log);
      await this.#recalculate();
      return true;
    } catch (problem) {
      this.#app.tell(`${name} was not opened: ${wordsOf(problem)}.`, true);
      return false;
    }
  }

  async #reopen(id: string): Promise<boolean> {
    const log = await this.#app.worker.ask('reopen', id);
    if (log === undefined) return false;
    this.#opened(log.id, log.name);
    this.#isFresh = false;
    this.#app.show(log);
    await this.#recalculate();
    return true;
  }

  #opened(id: string, name: string): void {
    sessionStorage.setItem(openLogKey, id);
    this.#name = name;
    this.#target = undefined;
    this.#isFresh = true;
    part('log-name').textContent = name;
    this.#app.tell('', false);
  }

  /** The saved values are on the screen by now; this puts the right ones in their place. */
  async #recalculate(): Promise<void> {
    const { circles, left } = await this.#app.worker.ask('recalculate');
    const words: string[] = [];
    if (circles > 0) words.push(`${circles} groups of cells wait for each other and show errors.`);
    if (left > 0)
      words.push(`${left} formulas are beyond this page; they keep the values they were saved with.`);
    if (words.length > 0) this.#app.tell(words.join(' '), true);
    this.#app.look();
    document.documentElement.dataset.ready = 'true';
  }

  async #samples(): Promise<Sample[]> {
    const answer = await fetch('samples/index.json');
    return (await answer.json()) as Sample[];
  }

  async #firstSample(): Promise<Sample> {
    const samples = await this.#samples();
    return samples.find(({ file }) => file === 'visit-log.xlsx') ?? (samples[0] as Sample);
  }

  async #sample({ file }: Sample, name = file): Promise<void> {
    const answer = await fetch(`samples/${file}`);
    if (!answer.ok) throw new Error(`the sample ${file} is not there`);
    await this.#show(name, new Uint8Array(await answer.arrayBuffer()));
  }

  async #offerKept(): Promise<void> {
    const kept = await this.#app.worker.ask('kept');
    const box = part('kept');
    box.hidden = kept.length === 0;
    box.replaceChildren(...kept.slice(0, 3).map((log) => this.#keptLine(log)));
  }

  #keptLine(log: KeptLog): HTMLElement {
    const when = new Date(log.changedAt).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' });
    const open = element('button', { type: 'button', class: 'main' }, 'Go on with it');
    const drop = element('button', { type: 'button' }, 'Throw it away');
    const line = element(
      'p',
      {},
      `${log.name} was changed on ${when} and not saved to a file. `,
      open,
      ' ',
      drop,
    );
    open.addEventListener('click', () => {
      void this.#reopen(log.id)
        .then((isOpen) => {
          if (!isOpen) this.#app.tell(`${log.name} is open in another tab.`, true);
          return this.#offerKept();
        })
        .catch((problem: unknown) => this.#app.tell(wordsOf(problem), true));
    });
    drop.addEventListener('click', () => {
      void ask(
        `Throw away the changes to ${log.name}?`,
        ['They cannot be brought back.'],
        [
          { text: 'Keep them', value: false, isMain: true },
          { text: 'Throw away', value: true },
        ],
      ).then(async (isSure) => {
        if (isSure !== true) return;
        await this.#app.worker.ask('discard', log.id);
        await this.#offerKept();
      });
    });
    return line;
  }

  #state(view: View): void {
    part('log-name').textContent = this.#name;
    part('log-state').textContent = view.isChanged
      ? 'changes kept in this browser, not yet in a file'
      : this.#isFresh
        ? 'sample, unchanged'
        : 'as in its file';
    part<HTMLButtonElement>('undo').disabled = !view.canUndo;
    part<HTMLButtonElement>('redo').disabled = !view.canRedo;
  }
}

function wordsOf(problem: unknown): string {
  return (problem instanceof Error ? problem.message : String(problem)).replace(/\.$/, '');
}
