import { CellError, errorFromText } from '../../../workbook/model/values.ts';
import type { KeptLog } from '../protocol.ts';
import type { CellStep, LogStep, WidthStep } from './log-steps.ts';

/** A log in the browser's own storage: the file it began with, and behind it every change in order. */
export interface StoredLog {
  readonly id: string;
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly changedAt: number;
  readonly isChanged: boolean;
}

const databaseName = 'ouncewise';

function answer<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('the browser storage failed'));
  });
}

function done(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new Error('the browser storage failed'));
  });
}

let database: Promise<IDBDatabase> | undefined;

function opened(): Promise<IDBDatabase> {
  database ??= (() => {
    const request = indexedDB.open(databaseName, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore('logs', { keyPath: 'id' });
      request.result.createObjectStore('steps', { autoIncrement: true }).createIndex('log', 'log');
    };
    return answer(request);
  })();
  return database;
}

/** Errors lose their class when stored. */
type StoredStep =
  | WidthStep
  | (Omit<CellStep, 'content'> & {
      readonly content:
        | { formula: string }
        | { value: number | string | boolean | null; format?: string | undefined }
        | { error: string };
    });

function stored(step: LogStep): StoredStep {
  if ('width' in step) return step;
  const { content, ...place } = step;
  if ('formula' in content) return { ...place, content };
  const { value } = content;
  return value instanceof CellError
    ? { ...place, content: { error: value.code } }
    : { ...place, content: { value, format: content.format } };
}

function restored(step: StoredStep): LogStep {
  if ('width' in step) return step;
  const { content, ...place } = step;
  return 'error' in content
    ? { ...place, content: { value: errorFromText(content.error) } }
    : { ...place, content };
}

/** Keeps a log from here on; changes kept before for it are part of the bytes. */
export async function keepLog(log: StoredLog): Promise<void> {
  const transaction = (await opened()).transaction(['logs', 'steps'], 'readwrite', { durability: 'strict' });
  transaction.objectStore('logs').put(log);
  deleteSteps(transaction, log.id);
  await done(transaction);
}

export async function keepSteps(id: string, steps: readonly LogStep[]): Promise<void> {
  const transaction = (await opened()).transaction(['logs', 'steps'], 'readwrite');
  transaction.objectStore('steps').add({ log: id, steps: steps.map(stored) });
  mark(transaction, id, (log) => ({ ...log, changedAt: Date.now(), isChanged: true }));
  await done(transaction);
}

/** The log is in a file now. */
export async function markSaved(id: string, name: string): Promise<void> {
  const transaction = (await opened()).transaction('logs', 'readwrite');
  mark(transaction, id, (log) => ({ ...log, name, isChanged: false }));
  await done(transaction);
}

function mark(transaction: IDBTransaction, id: string, change: (log: StoredLog) => StoredLog): void {
  const logs = transaction.objectStore('logs');
  const request = logs.get(id) as IDBRequest<StoredLog | undefined>;
  request.onsuccess = () => {
    if (request.result !== undefined) logs.put(change(request.result));
  };
}

export async function readLog(
  id: string,
): Promise<{ log: StoredLog; steps: readonly LogStep[] } | undefined> {
  const transaction = (await opened()).transaction(['logs', 'steps'], 'readonly');
  const log = await answer(transaction.objectStore('logs').get(id) as IDBRequest<StoredLog | undefined>);
  if (log === undefined) return undefined;
  const groups = await answer(
    transaction.objectStore('steps').index('log').getAll(id) as IDBRequest<{ steps: StoredStep[] }[]>,
  );
  return { log, steps: groups.flatMap(({ steps }) => steps.map(restored)) };
}

export async function listLogs(): Promise<readonly (KeptLog & { readonly isChanged: boolean })[]> {
  const transaction = (await opened()).transaction('logs', 'readonly');
  const logs = await answer(transaction.objectStore('logs').getAll() as IDBRequest<StoredLog[]>);
  return logs
    .map(({ id, name, changedAt, isChanged }) => ({ id, name, changedAt, isChanged }))
    .sort((one, other) => other.changedAt - one.changedAt);
}

export async function deleteLog(id: string): Promise<void> {
  const transaction = (await opened()).transaction(['logs', 'steps'], 'readwrite');
  transaction.objectStore('logs').delete(id);
  deleteSteps(transaction, id);
  await done(transaction);
}

function deleteSteps(transaction: IDBTransaction, id: string): void {
  const steps = transaction.objectStore('steps');
  const request = steps.index('log').getAllKeys(id);
  request.onsuccess = () => {
    for (const key of request.result) steps.delete(key);
  };
}
