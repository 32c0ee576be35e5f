/// <reference lib="dom" />
import type { KeptLog, MadeWorkbook, NamedFile, View } from '../protocol.ts';
import type { App } from './app.ts';
import { ask } from './dialogs.ts';
import { element, part } from './element.ts';
import type { ChosenFile, SaveTarget } from './files.ts';
import { chooseFile, chooseLogs, isChangedOutside, readChosen, writeFile } from './files.ts';
import { chooseNew } from './new-log.ts';
import type { EmptyForm, Sample } from './new-log.ts';

/** Which log this tab shows: a reload brings it back. */
const openLogKey = 'ouncewise-open-log';

/** Logs from files, from samples and from what the browser kept; saving to files. */
export class LogFiles {
  readonly #app: App;
  #name = '';
  #target: SaveTarget | undefined;
  #origin = '';
  #asksToKeep = false;

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
        await this.#sample(await this.#firstSample());
        // After the sample is there, whose opening clears what was said before.
        if (known !== null) {
          this.#app.tell(
            'The log of this tab is open in another tab. So that neither writes over the other, this tab begins with the sample.',
            true,
          );
        }
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
    const unit = this.#app.view?.unit ?? '';
    const choice = await chooseNew(await this.#samples(), unit);
    if (choice === undefined) return;
    if (choice.kind === 'sample') await this.#sample(choice.sample);
    else if (choice.kind === 'fleet') await this.#fleet();
    else if (choice.kind === 'estimate') await this.#estimate(unit);
    else await this.#empty(choice);
  }

  /** A sample without its rows, for one's own. */
  async #empty({ file, name, tables, cells, goTo, words }: EmptyForm): Promise<void> {
    await this.#sample({ file, title: '' }, name);
    const sheets = this.#app.log?.sheets ?? [];
    for (const table of tables) {
      const index = sheets.findIndex((sheet) => sheet.tables.some((each) => each.name === table));
      const area = sheets[index]?.tables.find((each) => each.name === table);
      if (area === undefined) continue;
      this.#app.goTo(index);
      await this.#app.act((gaze) => this.#app.worker.ask('clear', { ...area, top: area.top + 1 }, gaze));
    }
    const place = (name: string): number =>
      Math.max(
        sheets.findIndex((sheet) => sheet.name === name),
        0,
      );
    for (const [name, row, column] of cells) {
      this.#app.goTo(place(name));
      const area = { top: row, bottom: row, left: column, right: column };
      await this.#app.act((gaze) => this.#app.worker.ask('clear', area, gaze));
    }
    if (goTo === undefined) this.#app.showVisit();
    else this.#app.goTo(place(goTo));
    this.#app.tell(words, false);
  }

  async #fleet(): Promise<void> {
    const logs = await chooseLogs(part<HTMLInputElement>('file'));
    if (logs.length === 0) return;
    const units = await ask<'US' | 'SI'>(
      `A fleet summary from ${logs.length === 1 ? 'one log' : `${logs.length} logs`}`,
      ['What should it be written in? Logs may be in either.'],
      [
        { text: 'US: oz, °F, psig', value: 'US', isMain: true },
        { text: 'SI: g, °C, kPa', value: 'SI' },
      ],
    );
    if (units === undefined) return;
    const files: NamedFile[] = [];
    for (const log of logs) {
      const { name, bytes } = await readChosen(log, undefined);
      files.push({ name, bytes });
    }
    const template = await this.#form('fleet-template.xlsx');
    await this.#made(await this.#app.worker.ask('gather', files, template, units));
  }

  async #estimate(unit: string): Promise<void> {
    const template = await this.#form('repair-or-replace.xlsx');
    await this.#made(await this.#app.worker.ask('estimate', unit, template));
  }

  async #made({ name, bytes, opensOn, words, remarks }: MadeWorkbook): Promise<void> {
    if (!(await this.#show(name, bytes))) return;
    this.#origin = 'new, not yet in a file';
    const first = this.#app.log?.sheets.findIndex((sheet) => sheet.name === opensOn) ?? -1;
    if (first >= 0) this.#app.goTo(first);
    const more = remarks.length > 3 ? [`and ${remarks.length - 3} more`] : [];
    const told = [...remarks.slice(0, 3), ...more].join('; ');
    this.#app.tell(told === '' ? words : `${words} Look at: ${told}.`, false);
    this.#app.look();
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
    this.#origin = 'as in its file';
    this.#app.look();
    this.#app.tell(`Saved to ${written.name}.`, false);
  }

  async #use(chosen: ChosenFile): Promise<void> {
    const { name, bytes, handle, lastModified } = chosen;
    if (!(await this.#show(name, bytes))) return;
    this.#target = handle === undefined ? undefined : { handle, lastModified };
    this.#origin = 'as in its file';
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
    this.#origin = 'as in its file';
    this.#app.show(log);
    await this.#recalculate();
    return true;
  }

  #opened(id: string, name: string): void {
    sessionStorage.setItem(openLogKey, id);
    this.#name = name;
    this.#target = undefined;
    this.#origin = 'sample, unchanged';
    part('log-name').textContent = name;
    this.#app.tell('', false);
  }

  /** The saved values are on the screen by now; this puts the right ones in their place. */
  async #recalculate(): Promise<void> {
    const { circles, left } = await this.#app.worker.ask('recalculate');
    const words: string[] = [];
    if (circles > 0) {
      const groups = circles === 1 ? 'A group of cells that' : `${circles} groups of cells that`;
      words.push(`${groups} wait for each other ${circles === 1 ? 'shows' : 'show'} errors.`);
    }
    if (left > 0)
      words.push(
        left === 1
          ? 'One formula is beyond this page; it keeps the value it was saved with.'
          : `${left} formulas are beyond this page; they keep the values they were saved with.`,
      );
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
    await this.#show(name, await this.#form(file));
  }

  async #form(file: string): Promise<Uint8Array> {
    const answer = await fetch(`samples/${file}`);
    if (!answer.ok) throw new Error(`the sample ${file} is not there`);
    return new Uint8Array(await answer.arrayBuffer());
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
    if (view.isChanged && !this.#asksToKeep) {
      this.#asksToKeep = true;
      // Without it a browser short of room may throw away what it keeps, work of this page among it.
      navigator.storage.persist().catch(() => false);
    }
    part('log-name').textContent = this.#name;
    part('log-state').textContent = view.isChanged ? 'kept in this browser only' : this.#origin;
    part<HTMLButtonElement>('undo').disabled = !view.canUndo;
    part<HTMLButtonElement>('redo').disabled = !view.canRedo;
  }
}

function wordsOf(problem: unknown): string {
  return (problem instanceof Error ? problem.message : String(problem)).replace(/\.$/, '');
}
