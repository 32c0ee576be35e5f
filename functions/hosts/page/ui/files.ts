/// <reference lib="dom" />
import { element } from './element.ts';

/** A file the user chose, with the means to write it back where the browser has them. */
export interface ChosenFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly handle: FileHandle | undefined;
  readonly lastModified: number;
}

/** The part of the File System Access interface in use here; not every browser has it. */
export interface FileHandle {
  readonly name: string;
  getFile(): Promise<File>;
  createWritable(): Promise<{ write(bytes: Uint8Array): Promise<void>; close(): Promise<void> }>;
}

interface Pickers {
  showOpenFilePicker?: (options: object) => Promise<FileHandle[]>;
  showSaveFilePicker?: (options: object) => Promise<FileHandle>;
}

export const workbookType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
const types = [{ description: 'Workbook', accept: { [workbookType]: ['.xlsx'] } }];

function pickers(): Pickers {
  return globalThis as unknown as Pickers;
}

function isCancelled(problem: unknown): boolean {
  return problem instanceof DOMException && problem.name === 'AbortError';
}

/** Lets the user choose any number of logs, workbooks or tables of text; none when they turn away. */
export function chooseLogs(input: HTMLInputElement): Promise<File[]> {
  const usual = input.accept;
  return new Promise((resolve) => {
    const done = (files: File[]): void => {
      input.multiple = false;
      input.accept = usual;
      resolve(files);
    };
    input.value = '';
    input.multiple = true;
    input.accept = '.xlsx,.ods,.csv,.tsv';
    input.onchange = () => done([...(input.files ?? [])]);
    input.oncancel = () => done([]);
    input.click();
  });
}

/** Lets the user choose a file; undefined when they do not. */
export async function chooseFile(input: HTMLInputElement): Promise<ChosenFile | undefined> {
  const { showOpenFilePicker } = pickers();
  if (showOpenFilePicker !== undefined) {
    try {
      const [handle] = await showOpenFilePicker.call(globalThis, { types });
      return handle === undefined ? undefined : await readChosen(await handle.getFile(), handle);
    } catch (problem) {
      if (isCancelled(problem)) return undefined;
      throw problem;
    }
  }
  return new Promise((resolve, reject) => {
    input.value = '';
    input.onchange = () => {
      const file = input.files?.[0];
      if (file === undefined) resolve(undefined);
      else readChosen(file, undefined).then(resolve, reject);
    };
    input.oncancel = () => resolve(undefined);
    input.click();
  });
}

/** Largest file read into memory; the worker has the finer limits. */
const largestFile = 64 * 2 ** 20;

export async function readChosen(file: File, handle: FileHandle | undefined): Promise<ChosenFile> {
  if (file.size > largestFile)
    throw new Error(`${file.name} is larger than 64 MB, which this page does not open.`);
  const bytes = new Uint8Array(await file.arrayBuffer());
  return { name: file.name, bytes, handle, lastModified: file.lastModified };
}

export interface SaveTarget {
  readonly handle: FileHandle;
  readonly lastModified: number;
}

/** Somebody else wrote the file since it was opened or saved here. */
export async function isChangedOutside({ handle, lastModified }: SaveTarget): Promise<boolean> {
  try {
    return (await handle.getFile()).lastModified !== lastModified;
  } catch {
    // A file that is gone is not overwritten by writing it again.
    return false;
  }
}

/** Writes to the file, or asks for one, or downloads. Undefined when the user turned away. */
export async function writeFile(
  bytes: Uint8Array,
  name: string,
  known: FileHandle | undefined,
): Promise<{ name: string; target: SaveTarget | undefined } | undefined> {
  const { showSaveFilePicker } = pickers();
  if (showSaveFilePicker === undefined) {
    download(bytes, name);
    return { name, target: undefined };
  }
  try {
    const handle = known ?? (await showSaveFilePicker.call(globalThis, { suggestedName: name, types }));
    const stream = await handle.createWritable();
    await stream.write(bytes);
    // The browser writes to a copy and puts it in place of the file at the end.
    await stream.close();
    return {
      name: handle.name,
      target: { handle, lastModified: (await handle.getFile()).lastModified },
    };
  } catch (problem) {
    if (isCancelled(problem)) return undefined;
    throw problem;
  }
}

function download(bytes: Uint8Array, name: string): void {
  const address = URL.createObjectURL(new Blob([bytes as BlobPart], { type: workbookType }));
  const link = element('a', { href: address, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
